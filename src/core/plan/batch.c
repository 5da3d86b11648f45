/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Groups of birds as a table of their members. */
#include "config.h"

#include "plan/batch.h"

static const HcMember members[] = {
  HC_TEXT (HcBatchValues, name, "name"),
  HC_TEXT (HcBatchValues, breed, "breed"),
  HC_TEXT (HcBatchValues, kind, "kind"),
  HC_COUNT (HcBatchValues, females, "females", 0, 100000, 0),
  HC_COUNT (HcBatchValues, males, "males", 0, 100000, 0),
  HC_DATE (HcBatchValues, hatched, "hatched"),
  HC_TEXT (HcBatchValues, pen, "pen"),
  HC_DATE (HcBatchValues, came, "came"),
  HC_TEXT (HcBatchValues, clutch, "clutch"),
  HC_PARTS (HcBatchValues, moves, "moves", &hc_move_class),
  HC_PARTS (HcBatchValues, leavings, "leavings", &hc_leaving_class),
};

HC_DEFINE_PART (HcBatch, hc_batch, TRUE, members)
