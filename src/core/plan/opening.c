/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Openings as a table of their members. */
#include "config.h"

#include "plan/opening.h"

#include "plan/bounds.h"
#include "plan/fixing-words.h"

static const char *const kinds[]
    = { "keeper_door", "pop_hole", "window", "vent", "egg_door", NULL };
static const char *const swings[] = { "in", "out", "slides", NULL };
static const char *const hinges[] = { "start", "end", NULL };

static const HcMember members[] = {
  HC_WORD_REQUIRED (HcOpeningValues, kind, "kind", kinds),
  HC_TEXT_REQUIRED (HcOpeningValues, wall, "wall"),
  HC_LENGTH_REQUIRED (HcOpeningValues, along_mm, "along_mm", 0, HC_FARTHEST_MM),
  HC_LENGTH_REQUIRED (HcOpeningValues, width_mm, "width_mm", 10, HC_TALLEST_MM),
  HC_LENGTH_REQUIRED (HcOpeningValues, height_mm, "height_mm", 10, HC_TALLEST_MM),
  HC_LENGTH (HcOpeningValues, sill_mm, "sill_mm", 0, HC_TALLEST_MM, 0),
  HC_NUMBER (HcOpeningValues, open_winter, "open_winter", 0, 1, 1),
  HC_NUMBER (HcOpeningValues, open_summer, "open_summer", 0, 1, 1),
  HC_FLAG (HcOpeningValues, shut_at_dusk, "shut_at_dusk", TRUE),
  HC_FLAG (HcOpeningValues, open_by_day, "open_by_day", TRUE),
  HC_NUMBER (HcOpeningValues, glazed, "glazed", 0, 1, 0),
  HC_WORD (HcOpeningValues, swing, "swing", swings, HC_SWING_OUT),
  HC_WORD (HcOpeningValues, hinge, "hinge", hinges, HC_HINGE_START),
  HC_TEXT (HcOpeningValues, mesh, "mesh"),
  HC_WORD (HcOpeningValues, fixing, "fixing", hc_fixing_words, HC_FIXING_SCREWS),
  HC_LENGTH (HcOpeningValues, gap_mm, "gap_mm", 0, 500, 0),
  HC_TEXT (HcOpeningValues, latch, "latch"),
};

HC_DEFINE_PART (HcOpening, hc_opening, TRUE, members)

/**
 * hc_opening_kind_get_word:
 * @kind: a kind
 *
 * Returns: the word for @kind in plan files
 */
const char *
hc_opening_kind_get_word (HcOpeningKind kind)
{
  g_return_val_if_fail (kind < HC_N_OPENING_KINDS, NULL);
  return kinds[kind];
}

/**
 * hc_opening_lets_birds_through:
 * @opening: an opening
 *
 * Returns: whether birds can walk through it while it stands open: a pop
 *   hole, or a keeper's door left open by day
 */
gboolean
hc_opening_lets_birds_through (const HcOpening *opening)
{
  const HcOpeningValues *values = hc_opening_get (opening);

  return values->open_by_day
         && (values->kind == HC_OPENING_POP_HOLE || values->kind == HC_OPENING_KEEPER_DOOR);
}
