/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Ways to mend the air of the night. */
#pragma once

#include "climate/house-night.h"
#include "mend/remedy.h"

G_BEGIN_DECLS

GPtrArray *hc_mend_air (const HcHouseNight *night) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
