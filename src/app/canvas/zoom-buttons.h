/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Buttons that look closer, farther, and at the whole. */
#pragma once

#include <adwaita.h>

G_BEGIN_DECLS

#define HC_TYPE_ZOOM_BUTTONS (hc_zoom_buttons_get_type ())
/**
 * HcZoomButtons:
 *
 * They act on the view they are in, by its actions `view.zoom-in` and so on.
 */
G_DECLARE_FINAL_TYPE (HcZoomButtons, hc_zoom_buttons, HC, ZOOM_BUTTONS, AdwBin)

G_END_DECLS
