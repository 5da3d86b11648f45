/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Moves from pen to pen as a table of their members. */
#include "config.h"

#include "plan/move.h"

static const HcMember members[] = {
  HC_DATE (HcMoveValues, on, "on"),
  HC_TEXT (HcMoveValues, from, "from"),
  HC_TEXT (HcMoveValues, pen, "pen"),
  HC_COUNT (HcMoveValues, females, "females", 0, 100000, 0),
  HC_COUNT (HcMoveValues, males, "males", 0, 100000, 0),
};

HC_DEFINE_PART (HcMove, hc_move, TRUE, members)
