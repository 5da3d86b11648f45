/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How many birds the plan carries, and what runs out next. */
#pragma once

#include "app/window/panel.h"

G_BEGIN_DECLS

#define HC_TYPE_HOW_MANY (hc_how_many_get_type ())
G_DECLARE_FINAL_TYPE (HcHowMany, hc_how_many, HC, HOW_MANY, HcPanel)

G_END_DECLS
