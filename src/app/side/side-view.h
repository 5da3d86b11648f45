/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The side with the wall it looks at, where it is cut, and zoom buttons. */
#pragma once

#include "app/side/side.h"

G_BEGIN_DECLS

#define HC_TYPE_SIDE_VIEW (hc_side_view_get_type ())
G_DECLARE_FINAL_TYPE (HcSideView, hc_side_view, HC, SIDE_VIEW, HcPanel)

HcSide *hc_side_view_get_side (HcSideView *self);

G_END_DECLS
