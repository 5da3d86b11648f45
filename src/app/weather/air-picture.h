/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The house from the side with the air of a night in it. */
#pragma once

#include "app/fields/picture.h"

#include "climate/house-night.h"
#include "needs/check.h"

G_BEGIN_DECLS

#define HC_TYPE_AIR_PICTURE (hc_air_picture_get_type ())
G_DECLARE_FINAL_TYPE (HcAirPicture, hc_air_picture, HC, AIR_PICTURE, HcPicture)

void hc_air_picture_show_house (HcAirPicture *self, HcCheck *check, HcHouseNight *night,
                                guint space);
void hc_air_picture_show_air (HcAirPicture *self);

G_END_DECLS
