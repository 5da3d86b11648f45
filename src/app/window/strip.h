/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The strip: the main question answered in a sentence, and the condition. */
#pragma once

#include "app/window/panel.h"

G_BEGIN_DECLS

#define HC_TYPE_STRIP (hc_strip_get_type ())
G_DECLARE_FINAL_TYPE (HcStrip, hc_strip, HC, STRIP, HcPanel)

G_END_DECLS
