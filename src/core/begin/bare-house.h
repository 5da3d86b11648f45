/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A house with nothing in it yet: its walls, its door, its run and its birds. */
#pragma once

#include "begin/three-questions.h"

G_BEGIN_DECLS

#define HC_BARE_HOUSE_PEN "indoors"
#define HC_BARE_HOUSE_RUN "run"

HcPlan *hc_bare_house (HcBook *book, const HcAnswers *answers, const char *uid,
                       GError **error) G_GNUC_WARN_UNUSED_RESULT;
const char *hc_bare_house_find_wall (const HcLayout *layout, const char *pen,
                                     HcPoint outward);

G_END_DECLS
