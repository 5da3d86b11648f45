/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Birds and eggs whose pen goes have none then, now and at later moves. */
#include "config.h"

#include "plan/forget-pen.h"

typedef gpointer (*ForgetIn) (gpointer part, const char *pen);

static void
forget (char **at, const char *pen)
{
  if (g_strcmp0 (*at, pen) == 0)
    *at = NULL;
}

static HcParts *
forget_in_all (HcParts *parts, const char *pen, ForgetIn forget_in)
{
  HcParts *after = hc_parts_new ();

  for (guint i = 0; i < parts->len; i++)
    g_ptr_array_add (after, forget_in (parts->pdata[i], pen));
  return after;
}

static gpointer
forget_in_move (gpointer part, const char *pen)
{
  HcMoveValues values = *hc_move_get (part);

  forget (&values.pen, pen);
  forget (&values.from, pen);
  return hc_move_with (part, &values);
}

static gpointer
forget_in_leaving (gpointer part, const char *pen)
{
  HcLeavingValues values = *hc_leaving_get (part);

  forget (&values.from, pen);
  return hc_leaving_with (part, &values);
}

static gpointer
forget_in_batch (gpointer part, const char *pen)
{
  HcBatchValues values = *hc_batch_get (part);
  g_autoptr (HcParts) moves = forget_in_all (values.moves, pen, forget_in_move);
  g_autoptr (HcParts) leavings = forget_in_all (values.leavings, pen, forget_in_leaving);

  forget (&values.pen, pen);
  values.moves = moves;
  values.leavings = leavings;
  return hc_batch_with (part, &values);
}

static gpointer
forget_in_step (gpointer part, const char *pen)
{
  HcStepValues values = *hc_step_get (part);

  forget (&values.pen, pen);
  return hc_step_with (part, &values);
}

static gpointer
forget_in_clutch (gpointer part, const char *pen)
{
  HcClutchValues values = *hc_clutch_get (part);
  g_autoptr (HcParts) steps = forget_in_all (values.steps, pen, forget_in_step);

  forget (&values.pen, pen);
  values.steps = steps;
  return hc_clutch_with (part, &values);
}

/**
 * hc_edit_forget_pen: (skip)
 * @plan: a plan
 * @pen: id of a pen that goes
 *
 * Returns: (transfer full): the plan in which nobody lives in @pen or moves
 *   there, @plan when nobody did
 */
HcPlan *
hc_edit_forget_pen (HcPlan *plan, const char *pen)
{
  HcPlanValues values = *hc_plan_get (plan);
  g_autoptr (HcParts) batches = forget_in_all (values.batches, pen, forget_in_batch);
  g_autoptr (HcParts) clutches = forget_in_all (values.clutches, pen, forget_in_clutch);

  values.batches = batches;
  values.clutches = clutches;
  return hc_plan_with (plan, &values);
}
