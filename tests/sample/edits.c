/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One edit of each sort. */
#include "config.h"

#include "edits.h"

#include "plan/edit-corner.h"
#include "plan/edit-fitting.h"
#include "plan/edit-flock.h"
#include "plan/edit-opening.h"
#include "plan/edit-pen.h"
#include "plan/edit-plan.h"
#include "plan/edit-rules.h"
#include "plan/edit-site.h"
#include "plan/edit-wall.h"

#include "two-pens.h"

static const char *const feeder[] = { "feeder", NULL };
static const char *const hole[] = { "hole", NULL };

static HcPlan *
draw_run (HcPlan *plan, GError **error)
{
  g_auto (GStrv) ids = hc_pen_ids_new ();

  return hc_plan_add_pen (plan, HC_PEN_RUN, hc_point (0, 2000), hc_point (3000, 4000),
                          (const char *const *) ids, error);
}

static HcPlan *
name_pen (HcPlan *plan, GError **error)
{
  HcPenValues values = *hc_pen_get (hc_layout_get_pen (hc_plan_get_layout (plan), "left"));

  values.name = (char *) "Hens' side";
  return hc_plan_set_pen (plan, "left", &values, error);
}

static HcPlan *
remove_pen (HcPlan *plan, GError **error)
{
  return hc_plan_remove_pen (plan, "right", error);
}

static HcPlan *
move_wall (HcPlan *plan, GError **error)
{
  return hc_plan_move_wall (plan, "m", 333.333, error);
}

static HcPlan *
insert_corner (HcPlan *plan, GError **error)
{
  return hc_plan_insert_corner (plan, "g", 1000, "k7", "h", error);
}

static HcPlan *
add_opening (HcPlan *plan, GError **error)
{
  g_autoptr (HcOpening) opening = sample_opening ("new-hole", "g", 1500, 300);

  return hc_plan_add_opening (plan, opening, error);
}

static HcPlan *
slide_opening (HcPlan *plan, GError **error)
{
  return hc_plan_slide_opening (plan, "door", "a", 1000.0 / 3 + 600, error);
}

static HcPlan *
remove_opening (HcPlan *plan, GError **error)
{
  return hc_plan_remove_openings (plan, hole, error);
}

static HcPlan *
add_fitting (HcPlan *plan, GError **error)
{
  g_autoptr (HcFitting) fitting = sample_fitting ("second", 2000, 1500);

  return hc_plan_add_fitting (plan, fitting, error);
}

static HcPlan *
turn_fitting (HcPlan *plan, GError **error)
{
  return hc_plan_turn_fittings (plan, feeder, 100.0 / 3, error);
}

static HcPlan *
remove_fitting (HcPlan *plan, GError **error)
{
  return hc_plan_remove_fittings (plan, feeder, error);
}

static HcPlan *
add_batch (HcPlan *plan, GError **error)
{
  g_autoptr (HcBatch) batch = NULL;
  HcBatchValues values;

  hc_batch_values_init (&values);
  values.females = 5;
  values.pen = (char *) "right";
  batch = hc_batch_new ("ducks", &values);
  return hc_plan_add_batch (plan, batch, error);
}

static HcPlan *
set_batch (HcPlan *plan, GError **error)
{
  HcBatchValues values = *hc_batch_get (hc_plan_get (plan)->batches->pdata[0]);

  values.males = 1;
  return hc_plan_set_batch (plan, "hens", &values, error);
}

static HcPlan *
remove_batch (HcPlan *plan, GError **error)
{
  return hc_plan_remove_batch (plan, "hens");
}

static HcPlan *
set_own_figure (HcPlan *plan, GError **error)
{
  return hc_plan_set_own_figure (plan, "mine", "feed.walk", 100.0 / 3, "Steep “floor”\n", error);
}

static HcPlan *
set_site (HcPlan *plan, GError **error)
{
  HcSiteValues values = *hc_plan_get_site (plan);

  values.coldest_night_c = -17.5;
  return hc_plan_set_site (plan, &values, error);
}

static HcPlan *
set_notes (HcPlan *plan, GError **error)
{
  return hc_plan_set_notes (plan, "Two lines\nand a \\ stroke");
}

static const SampleEdit edits[] = {
  { "draw-run", draw_run },
  { "name-pen", name_pen },
  { "remove-pen", remove_pen },
  { "move-wall", move_wall },
  { "insert-corner", insert_corner },
  { "add-opening", add_opening },
  { "slide-opening", slide_opening },
  { "remove-opening", remove_opening },
  { "add-fitting", add_fitting },
  { "turn-fitting", turn_fitting },
  { "remove-fitting", remove_fitting },
  { "add-batch", add_batch },
  { "set-batch", set_batch },
  { "remove-batch", remove_batch },
  { "set-own-figure", set_own_figure },
  { "set-site", set_site },
  { "set-notes", set_notes },
};

guint
sample_edits_get_n (void)
{
  return G_N_ELEMENTS (edits);
}

const SampleEdit *
sample_edits_get (guint index)
{
  return &edits[index];
}

HcPlan *
sample_edit_make (const SampleEdit *edit, HcPlan *plan)
{
  g_autoptr (GError) error = NULL;
  HcPlan *after = edit->make (plan, &error);

  g_assert_no_error (error);
  g_assert_false (hc_plan_equal (after, plan));
  return after;
}
