/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Puts birds and eggs together. */
#include "config.h"

#include "season-sample.h"

void
season_sample_init (SeasonSample *self)
{
  g_autoptr (GError) error = NULL;

  *self = (SeasonSample) { hc_book_load_default (&error) };
  g_assert_no_error (error);
  self->batches = hc_parts_new ();
  self->clutches = hc_parts_new ();
  self->results = hc_parts_new ();
  self->prices = hc_parts_new ();
  hc_keeping_values_init (&self->keeping);
}

void
season_sample_clear (SeasonSample *self)
{
  g_clear_pointer (&self->layout, hc_layout_unref);
  g_ptr_array_unref (self->batches);
  g_ptr_array_unref (self->clutches);
  g_ptr_array_unref (self->results);
  g_ptr_array_unref (self->prices);
  hc_book_unref (self->book);
}

HcPlan *
season_sample_plan (const SeasonSample *self)
{
  g_autoptr (HcPlan) empty = hc_plan_new_empty ("croft", "Skerry Croft");
  g_autoptr (HcKeeping) keeping = hc_keeping_new (NULL, &self->keeping);
  g_autoptr (HcPlan) plan = self->layout != NULL ? hc_plan_with_layout (empty, self->layout)
                                                 : hc_plan_ref (empty);
  HcPlanValues values = *hc_plan_get (plan);

  values.as_of = SAMPLE_DAY;
  values.batches = self->batches;
  values.clutches = self->clutches;
  values.results = self->results;
  values.prices = self->prices;
  values.keeping = keeping;
  return hc_plan_with (plan, &values);
}

HcFlock *
season_sample_flock (const SeasonSample *self, guint32 day)
{
  g_autoptr (HcPlan) plan = season_sample_plan (self);

  return hc_flock_on (plan, self->book, day);
}

HcTimeline *
season_sample_timeline (const SeasonSample *self)
{
  g_autoptr (HcPlan) plan = season_sample_plan (self);

  return hc_timeline_of (plan, self->book);
}

static char *
next_id (SeasonSample *self)
{
  return g_strdup_printf ("x%u", self->n_ids++);
}

/* Lists are shared with the plans made so far, so they are made anew. */
static void
put (HcParts **parts, gpointer part)
{
  HcParts *after = hc_parts_with (*parts, part);

  g_ptr_array_unref (*parts);
  *parts = after;
  hc_part_unref (part);
}

static HcBatchValues
batch_values (const SeasonSample *self, const char *id)
{
  return *hc_batch_get (hc_parts_find (self->batches, id));
}

static HcClutchValues
clutch_values (const SeasonSample *self, const char *id)
{
  return *hc_clutch_get (hc_parts_find (self->clutches, id));
}

void
season_sample_add_batch (SeasonSample *self, const char *id, const char *kind, int females,
                         int males, guint32 hatched)
{
  HcBatchValues values;

  hc_batch_values_init (&values);
  values.name = (char *) id;
  values.kind = (char *) kind;
  values.females = females;
  values.males = males;
  values.hatched = hatched;
  values.pen = (char *) "one";
  put (&self->batches, hc_batch_new (id, &values));
}

void
season_sample_set_breed (SeasonSample *self, const char *batch, const char *breed)
{
  HcBatchValues values = batch_values (self, batch);

  values.breed = (char *) breed;
  put (&self->batches, hc_batch_new (batch, &values));
}

void
season_sample_set_came (SeasonSample *self, const char *batch, guint32 came)
{
  HcBatchValues values = batch_values (self, batch);

  values.came = came;
  put (&self->batches, hc_batch_new (batch, &values));
}

void
season_sample_set_clutch (SeasonSample *self, const char *batch, const char *clutch)
{
  HcBatchValues values = batch_values (self, batch);

  values.clutch = (char *) clutch;
  put (&self->batches, hc_batch_new (batch, &values));
}

void
season_sample_add_move (SeasonSample *self, const char *batch, guint32 on, const char *pen,
                        int females, int males)
{
  HcMoveValues move = { on, NULL, (char *) pen, females, males };
  HcBatchValues values = batch_values (self, batch);
  g_autofree char *id = next_id (self);
  g_autoptr (HcMove) part = hc_move_new (id, &move);
  g_autoptr (HcParts) moves = hc_parts_with (values.moves, part);

  values.moves = moves;
  put (&self->batches, hc_batch_new (batch, &values));
}

void
season_sample_add_leaving (SeasonSample *self, const char *batch, guint32 on, HcLeavingWhy why,
                           int females, int males)
{
  HcLeavingValues leaving = { on, (int) why, NULL, females, males, NULL };
  HcBatchValues values = batch_values (self, batch);
  g_autofree char *id = next_id (self);
  g_autoptr (HcLeaving) part = hc_leaving_new (id, &leaving);
  g_autoptr (HcParts) leavings = hc_parts_with (values.leavings, part);

  values.leavings = leavings;
  put (&self->batches, hc_batch_new (batch, &values));
}

void
season_sample_add_clutch (SeasonSample *self, const char *id, const char *kind, guint32 set_on,
                          int eggs)
{
  HcClutchValues values;

  hc_clutch_values_init (&values);
  values.name = (char *) id;
  values.kind = (char *) kind;
  values.set_on = set_on;
  values.eggs = eggs;
  values.pen = (char *) "one";
  put (&self->clutches, hc_clutch_new (id, &values));
}

void
season_sample_repeat (SeasonSample *self, const char *clutch, int every_weeks, int settings,
                      int wanted)
{
  HcClutchValues values = clutch_values (self, clutch);

  values.every_weeks = every_weeks;
  values.settings = settings;
  values.wanted = wanted;
  put (&self->clutches, hc_clutch_new (clutch, &values));
}

void
season_sample_add_step (SeasonSample *self, const char *clutch, int week, HcStepDeed deed,
                        HcStepWho who, const char *pen)
{
  HcStepValues step = { week, (int) deed, (int) who, (char *) pen };
  HcClutchValues values = clutch_values (self, clutch);
  g_autofree char *id = next_id (self);
  g_autoptr (HcStep) part = hc_step_new (id, &step);
  g_autoptr (HcParts) steps = hc_parts_with (values.steps, part);

  values.steps = steps;
  put (&self->clutches, hc_clutch_new (clutch, &values));
}

void
season_sample_add_result (SeasonSample *self, const char *of, guint32 on, HcResultWhat what,
                          int count)
{
  g_autofree char *id = next_id (self);
  HcResultValues values;

  hc_result_values_init (&values);
  values.of = (char *) of;
  values.on = on;
  values.what = (int) what;
  values.count = count;
  put (&self->results, hc_result_new (id, &values));
}
