/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The parts of the house in words: pens and openings. */
#pragma once

#include "base/units.h"
#include "plan/building.h"
#include "plan/layout.h"

G_BEGIN_DECLS

const char *hc_words_opening_kind (HcOpeningKind kind);
char *hc_words_opening (const HcOpening *opening, HcUnits units) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_building_name (const HcBuilding *building) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_pen_name (const HcPen *pen) G_GNUC_WARN_UNUSED_RESULT;
char *hc_words_pen (const HcLayout *layout, const HcPen *pen,
                    HcUnits units) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
