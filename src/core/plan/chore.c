/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Chores as a table of their members. */
#include "config.h"

#include "plan/chore.h"

static const HcMember members[] = {
  HC_TEXT (HcChoreValues, what, "what"),
  HC_TEXT (HcChoreValues, of, "of"),
  HC_DATE (HcChoreValues, on, "on"),
  HC_TEXT (HcChoreValues, name, "name"),
  HC_DATE (HcChoreValues, done, "done"),
};

HC_DEFINE_PART (HcChore, hc_chore, TRUE, members)
