/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The picture of a thing to add. */
#pragma once

#include "app/fields/picture.h"

#include "plan/fitting.h"
#include "plan/opening.h"
#include "plan/pen.h"

G_BEGIN_DECLS

#define HC_TYPE_THING_PICTURE (hc_thing_picture_get_type ())
G_DECLARE_FINAL_TYPE (HcThingPicture, hc_thing_picture, HC, THING_PICTURE, HcPicture)

void hc_thing_picture_set_fitting (HcThingPicture *self, HcFitting *fitting);
void hc_thing_picture_set_opening (HcThingPicture *self, HcOpening *opening);
void hc_thing_picture_set_pen (HcThingPicture *self, HcPenKind kind);

GdkPaintable *hc_fitting_paintable_new (HcFitting *fitting,
                                        double scale) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
