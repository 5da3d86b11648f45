/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is unsound in a plan that no text could hold: edits are kept from it
 * too. */
#include "config.h"

#include "base/error.h"
#include "plan/soundness.h"


static HcPlan *
plan_with (void (*change) (HcBatchValues *batch,
                           HcFittingValues *fitting))
{
  g_autoptr (HcPlan) empty = hc_plan_new_empty ("croft", "Skerry Croft");
  g_autoptr (HcParts) loose = hc_parts_new ();
  g_autoptr (HcParts) batches = hc_parts_new ();
  g_autoptr (HcLayout) layout = NULL;
  g_autoptr (HcPlan) furnished = NULL;
  HcLayoutValues in_layout = *hc_layout_get (hc_plan_get_layout (empty));
  HcFittingValues fitting;
  HcBatchValues batch;
  HcPlanValues values;

  hc_fitting_values_init (&fitting);
  hc_batch_values_init (&batch);
  fitting.width_mm = fitting.depth_mm = 300;
  if (change != NULL)
    change (&batch, &fitting);
  g_ptr_array_add (loose, hc_fitting_new ("f1", &fitting));
  g_ptr_array_add (batches, hc_batch_new ("b1", &batch));
  in_layout.loose = loose;
  layout = hc_layout_with (hc_plan_get_layout (empty), &in_layout);
  furnished = hc_plan_with_layout (empty, layout);
  values = *hc_plan_get (furnished);
  values.batches = batches;
  return hc_plan_with (furnished, &values);
}

static void
make_width_infinite (HcBatchValues *batch,
                     HcFittingValues *fitting)
{
  fitting->width_mm = 1e306;
}

static void
make_kind_unknown (HcBatchValues *batch,
                   HcFittingValues *fitting)
{
  fitting->kind = HC_N_FITTING_KINDS;
}

static void
make_kind_negative (HcBatchValues *batch,
                    HcFittingValues *fitting)
{
  fitting->kind = -1;
}

static void
make_count_negative (HcBatchValues *batch,
                     HcFittingValues *fitting)
{
  batch->males = -1;
}

static void
make_name_other_than_utf8 (HcBatchValues *batch,
                           HcFittingValues *fitting)
{
  batch->name = (char *) "h\xe9n";
}

static void
make_day_too_late (HcBatchValues *batch,
                   HcFittingValues *fitting)
{
  batch->hatched = 3652060; /* 10000-01-01 */
}

static const struct
{
  const char *name;
  void (*change) (HcBatchValues *, HcFittingValues *);
  HcFaultKind kind;
  const char *path;
} table[] = {
  { "infinite", make_width_infinite, HC_FAULT_NUMBER, "variants[0].loose_fittings[0].width_mm" },
  { "unknown", make_kind_unknown, HC_FAULT_WORD, "variants[0].loose_fittings[0].kind" },
  { "negative-kind", make_kind_negative, HC_FAULT_WORD, "variants[0].loose_fittings[0].kind" },
  { "negative-count", make_count_negative, HC_FAULT_NUMBER, "batches[0].males" },
  { "not-utf8", make_name_other_than_utf8, HC_FAULT_TEXT, "batches[0].name" },
  { "too-late", make_day_too_late, HC_FAULT_DATE, "batches[0].hatched" },
};

static void
the_fault_and_its_place_are_found (gconstpointer data)
{
  guint i = GPOINTER_TO_UINT (data);
  g_autoptr (HcPlan) plan = plan_with (table[i].change);
  g_auto (HcFault) fault = { HC_FAULT_NONE };
  g_autofree char *sentence = NULL;

  g_assert_true (hc_plan_find_fault (plan, &fault));
  g_assert_cmpint (fault.kind, ==, table[i].kind);
  g_assert_cmpstr (fault.path, ==, table[i].path);
  sentence = hc_fault_describe (&fault);
  g_assert_true (g_str_has_suffix (sentence, "."));
}

static void
sound_plans_have_no_fault (void)
{
  g_autoptr (HcPlan) plan = plan_with (NULL);
  g_auto (HcFault) fault = { HC_FAULT_NONE };

  g_assert_false (hc_plan_find_fault (plan, &fault));
  g_assert_cmpint (fault.kind, ==, HC_FAULT_NONE);
  g_assert_true (hc_plan_is_sound (plan, NULL));
}

static void
edits_are_told_the_place (void)
{
  g_autoptr (HcPlan) plan = plan_with (make_count_negative);
  g_autoptr (GError) error = NULL;

  g_assert_false (hc_plan_is_sound (plan, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_EDIT);
  g_assert_true (g_str_has_prefix (error->message, "batches[0].males: "));
}

static void
a_plan_has_an_id_and_a_layout (void)
{
  g_autoptr (HcPlan) nameless = hc_plan_new_empty ("", "Skerry Croft");
  g_autoptr (HcPlan) bare = hc_plan_new ("croft", NULL);
  g_auto (HcFault) fault = { HC_FAULT_NONE };

  g_assert_true (hc_plan_find_fault (nameless, &fault));
  g_assert_cmpint (fault.kind, ==, HC_FAULT_ID);
  g_assert_cmpstr (fault.path, ==, "uid");
  hc_fault_clear (&fault);
  g_assert_true (hc_plan_find_fault (bare, &fault));
  g_assert_cmpint (fault.kind, ==, HC_FAULT_NO_LAYOUT);
}

int
main (int argc,
      char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/soundness/sound", sound_plans_have_no_fault);
  g_test_add_func ("/soundness/edits", edits_are_told_the_place);
  g_test_add_func ("/soundness/layout", a_plan_has_an_id_and_a_layout);
  for (guint i = 0; i < G_N_ELEMENTS (table); i++)
    {
      g_autofree char *path = g_strconcat ("/soundness/", table[i].name, NULL);

      g_test_add_data_func (path, GUINT_TO_POINTER (i), the_fault_and_its_place_are_found);
    }
  return g_test_run ();
}
