/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Birds and eggs whose pen goes have none then, now and at later moves. */
#include "config.h"

#include "plan/forget-pen.h"

/* @pen goes, and @heir takes its place; none when %NULL. */
typedef struct
{
  const char *pen;
  const char *heir;
} Change;

typedef gpointer (*ForgetIn) (gpointer part, const Change *change);

static void
forget (char **at, const Change *change)
{
  if (g_strcmp0 (*at, change->pen) == 0)
    *at = (char *) change->heir;
}

static HcParts *
forget_in_all (HcParts *parts, const Change *change, ForgetIn forget_in)
{
  HcParts *after = hc_parts_new ();

  for (guint i = 0; i < parts->len; i++)
    g_ptr_array_add (after, forget_in (parts->pdata[i], change));
  return after;
}

static gpointer
forget_in_move (gpointer part, const Change *change)
{
  HcMoveValues values = *hc_move_get (part);

  forget (&values.pen, change);
  forget (&values.from, change);
  return hc_move_with (part, &values);
}

static gpointer
forget_in_leaving (gpointer part, const Change *change)
{
  HcLeavingValues values = *hc_leaving_get (part);

  forget (&values.from, change);
  return hc_leaving_with (part, &values);
}

static gpointer
forget_in_batch (gpointer part, const Change *change)
{
  HcBatchValues values = *hc_batch_get (part);
  g_autoptr (HcParts) moves = forget_in_all (values.moves, change, forget_in_move);
  g_autoptr (HcParts) leavings = forget_in_all (values.leavings, change, forget_in_leaving);

  forget (&values.pen, change);
  values.moves = moves;
  values.leavings = leavings;
  return hc_batch_with (part, &values);
}

static gpointer
forget_in_step (gpointer part, const Change *change)
{
  HcStepValues values = *hc_step_get (part);

  forget (&values.pen, change);
  return hc_step_with (part, &values);
}

static gpointer
forget_in_clutch (gpointer part, const Change *change)
{
  HcClutchValues values = *hc_clutch_get (part);
  g_autoptr (HcParts) steps = forget_in_all (values.steps, change, forget_in_step);

  forget (&values.pen, change);
  values.steps = steps;
  return hc_clutch_with (part, &values);
}

/**
 * hc_edit_forget_pen: (skip)
 * @plan: a plan
 * @pen: id of a pen that goes
 * @heir: (nullable): id of the pen that takes its place
 *
 * Returns: (transfer full): the plan in which nobody lives in @pen or moves
 *   there, but in @heir, @plan when nobody did
 */
HcPlan *
hc_edit_forget_pen (HcPlan *plan, const char *pen, const char *heir)
{
  Change change = { pen, heir };
  HcPlanValues values = *hc_plan_get (plan);
  g_autoptr (HcParts) batches = forget_in_all (values.batches, &change, forget_in_batch);
  g_autoptr (HcParts) clutches = forget_in_all (values.clutches, &change, forget_in_clutch);

  values.batches = batches;
  values.clutches = clutches;
  return hc_plan_with (plan, &values);
}
