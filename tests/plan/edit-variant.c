/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Variants, what changed between two, and things pasted from one plan into
 * another. */
#include "config.h"

#include "plan/edit-variant.h"

#include "files/clip.h"
#include "plan/edit-fitting.h"
#include "plan/edit-wall.h"
#include "plan/layout-changes.h"
#include "plan/soundness.h"

#include "../sample/two-pens.h"

#include <string.h>

static HcLayout *
variant_of (HcPlan *plan, const char *id)
{
  return hc_parts_find (hc_plan_get (plan)->variants, id);
}

static const char *
main_of (HcPlan *plan)
{
  return hc_layout_get_id (hc_plan_get_layout (plan));
}

static void
test_a_variant_is_a_copy_worked_on_alone (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (GError) error = NULL;
  g_autoptr (HcPlan) with = hc_plan_add_variant (plan, "other", "Other", &error);
  g_autoptr (HcPlan) moved = hc_plan_move_fittings (with, (const char *const[]){ "feeder", NULL },
                                                    hc_point (100, 0), &error);
  g_autoptr (HcPlan) back = hc_plan_choose_variant (moved, main_of (plan), &error);

  g_assert_no_error (error);
  hc_plan_is_sound (moved, &error);
  g_assert_no_error (error);
  g_assert_cmpstr (main_of (with), ==, "other");
  g_assert_cmpfloat (fitting_in (moved, "feeder")->x_mm, ==, 1100);
  g_assert_cmpfloat (fitting_in (back, "feeder")->x_mm, ==, 1000);
  assert_refused (hc_plan_add_variant (with, "other", "Twice", &error), &error);
}

static void
test_named_and_removed (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) with = hc_plan_add_variant (plan, "other", "Other", NULL);
  g_autoptr (HcPlan) named = hc_plan_rename_variant (with, "other", "By the door", NULL);
  g_autoptr (HcPlan) without = hc_plan_remove_variant (named, "other", NULL);
  g_autoptr (GError) error = NULL;

  g_assert_cmpstr (hc_layout_get (variant_of (named, "other"))->name, ==, "By the door");
  g_assert_cmpstr (main_of (without), ==, main_of (plan));
  assert_refused (hc_plan_remove_variant (without, main_of (plan), &error), &error);
  g_clear_error (&error);
  assert_refused (hc_plan_choose_variant (without, "other", &error), &error);
}

static gboolean
has_change (const GArray *changes, HcLayoutChangeKind kind, const char *id)
{
  for (guint i = 0; i < changes->len; i++)
    {
      const HcLayoutChange *change = &g_array_index (changes, HcLayoutChange, i);

      if (change->kind == kind && g_str_equal (hc_part_get_id (change->part), id))
        return TRUE;
    }
  return FALSE;
}

static void
test_changes_between_layouts (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcFitting) added = sample_fitting ("new", 500, 500);
  g_autoptr (HcPlan) one = hc_plan_add_fitting (plan, added, NULL);
  g_autoptr (HcPlan) two = hc_plan_move_fittings (one, (const char *const[]){ "feeder", NULL },
                                                  hc_point (100, 0), NULL);
  g_autoptr (HcPlan) three
      = hc_plan_remove_fittings (two, (const char *const[]){ "drinker", NULL }, NULL);
  g_autoptr (HcPlan) after = hc_plan_move_wall (three, "f", 500, NULL);
  g_autoptr (GArray) none
      = hc_layout_find_changes (hc_plan_get_layout (plan), hc_plan_get_layout (plan));
  g_autoptr (GArray) changes
      = hc_layout_find_changes (hc_plan_get_layout (plan), hc_plan_get_layout (after));

  g_assert_cmpuint (none->len, ==, 0);
  g_assert_true (has_change (changes, HC_CHANGE_ADDED, "new"));
  g_assert_true (has_change (changes, HC_CHANGE_MOVED, "feeder"));
  g_assert_true (has_change (changes, HC_CHANGE_REMOVED, "drinker"));
  g_assert_true (has_change (changes, HC_CHANGE_MOVED, "f"));
  g_assert_false (has_change (changes, HC_CHANGE_ALTERED, "left"));
}

static void
test_pasted_things_stand_as_they_stood (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  const char *const both[] = { "feeder", "drinker", NULL };
  const char *const ids[] = { "p1", "p2", NULL };
  g_autoptr (GError) error = NULL;
  g_autofree char *text = hc_clip_write (plan, both, &error);
  g_autoptr (HcPlan) after = NULL;

  g_assert_no_error (error);
  g_assert_cmpuint (hc_clip_count (text, strlen (text), NULL), ==, 2);
  after = hc_clip_paste (plan, text, strlen (text), hc_point (3000, 1500), ids, &error);
  g_assert_no_error (error);
  g_assert_cmpfloat (fitting_in (after, "p1")->x_mm, ==, 1000);
  g_assert_cmpfloat (fitting_in (after, "p2")->x_mm, ==, 5000);
  g_assert_cmpfloat (fitting_in (after, "p1")->y_mm, ==, 1500);
  g_assert_cmpstr (home_of_fitting (after, "p2"), ==, "right");
  assert_refused (hc_clip_paste (after, text, strlen (text), hc_point (0, 0), ids, &error),
                  &error);
}

static void
test_what_is_no_plan_is_refused (void)
{
  static const char *const texts[]
      = { "", "hello", "{}", "[1, 2", "{\"format\": \"hencote\", \"version\": 1}", "\xff\xfe" };
  g_autoptr (HcPlan) plan = two_pens_new ();
  const char *const ids[] = { "p1", NULL };

  for (guint i = 0; i < G_N_ELEMENTS (texts); i++)
    {
      g_autoptr (GError) error = NULL;

      g_assert_cmpuint (hc_clip_count (texts[i], strlen (texts[i]), NULL), ==, 0);
      assert_refused (hc_clip_paste (plan, texts[i], strlen (texts[i]), hc_point (0, 0), ids,
                                     &error),
                      &error);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edit-variant/copy", test_a_variant_is_a_copy_worked_on_alone);
  g_test_add_func ("/edit-variant/named", test_named_and_removed);
  g_test_add_func ("/edit-variant/changes", test_changes_between_layouts);
  g_test_add_func ("/edit-variant/pasted", test_pasted_things_stand_as_they_stood);
  g_test_add_func ("/edit-variant/no-plan", test_what_is_no_plan_is_refused);
  return g_test_run ();
}
