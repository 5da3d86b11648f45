/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A thing to add, as the catalogue describes it, made a fitting. */
#pragma once

#include "book/fitting-type.h"
#include "plan/fitting.h"

#include "base/point.h"

G_BEGIN_DECLS

HcFitting *hc_fitting_type_make (const HcFittingType *self, const HcDevice *device,
                                 const char *id, HcPoint at) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
