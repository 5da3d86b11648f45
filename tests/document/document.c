/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The document goes back and forth, and tells of each change once. */
#include "config.h"

#include "document/document.h"
#include "plan/edit-fitting.h"

#include "../sample/two-pens.h"

static const char *const feeder[] = { "feeder", NULL };
static const char *const nothing[] = { NULL };

typedef struct
{
  HcDocument *document;
  GHashTable *told;
} Fixture;

static void
count (GObject *object, GParamSpec *pspec, Fixture *fixture)
{
  guint so_far = GPOINTER_TO_UINT (g_hash_table_lookup (fixture->told, pspec->name));

  g_hash_table_insert (fixture->told, (char *) pspec->name, GUINT_TO_POINTER (so_far + 1));
}

static guint
times_told (Fixture *fixture, const char *property)
{
  return GPOINTER_TO_UINT (g_hash_table_lookup (fixture->told, property));
}

static void
set_up (Fixture *fixture, gconstpointer data)
{
  g_autoptr (HcPlan) plan = two_pens_new ();

  fixture->document = hc_document_new (plan);
  fixture->told = g_hash_table_new (g_str_hash, g_str_equal);
  g_signal_connect (fixture->document, "notify", G_CALLBACK (count), fixture);
}

static void
tear_down (Fixture *fixture, gconstpointer data)
{
  g_assert_finalize_object (fixture->document);
  g_hash_table_unref (fixture->told);
}

static HcPlan *
moved (HcPlan *plan, double by_mm)
{
  return hc_plan_move_fittings (plan, feeder, hc_point (by_mm, 0), NULL);
}

static void
move (Fixture *fixture, double by_mm, const char *merge)
{
  g_autoptr (HcPlan) after = moved (hc_document_get_plan (fixture->document), by_mm);

  hc_document_apply (fixture->document, after, "Move feeder", merge);
}

static char *
text_of (Fixture *fixture, const char *property)
{
  char *text;

  g_object_get (fixture->document, property, &text, NULL);
  return text;
}

static void
test_undo_of_an_edit_is_the_same_plan (Fixture *fixture, gconstpointer data)
{
  g_autoptr (HcPlan) before = hc_plan_ref (hc_document_get_plan (fixture->document));
  g_autoptr (HcPlan) after = NULL;

  move (fixture, 100, NULL);
  after = hc_plan_ref (hc_document_get_plan (fixture->document));
  g_assert_true (hc_document_undo (fixture->document));
  g_assert_true (hc_document_get_plan (fixture->document) == before);
  g_assert_true (hc_document_redo (fixture->document));
  g_assert_true (hc_document_get_plan (fixture->document) == after);
  g_assert_false (hc_document_redo (fixture->document));
}

static void
test_tells_of_each_change_once (Fixture *fixture, gconstpointer data)
{
  static const char *const changed[] = { "plan", "modified", "can-undo", "undo-label" };
  static const char *const same[] = { "title", "can-redo", "redo-label", "selection", "file" };

  move (fixture, 100, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (changed); i++)
    g_assert_cmpuint (times_told (fixture, changed[i]), ==, 1);
  for (guint i = 0; i < G_N_ELEMENTS (same); i++)
    g_assert_cmpuint (times_told (fixture, same[i]), ==, 0);
  move (fixture, 100, NULL);
  g_assert_cmpuint (times_told (fixture, "plan"), ==, 2);
  g_assert_cmpuint (times_told (fixture, "modified"), ==, 1);
}

static void
test_no_change_is_no_step (Fixture *fixture, gconstpointer data)
{
  move (fixture, 0, NULL);
  g_assert_cmpuint (g_hash_table_size (fixture->told), ==, 0);
  g_assert_false (hc_document_undo (fixture->document));
}

static void
test_steps_of_one_key_are_one (Fixture *fixture, gconstpointer data)
{
  g_autoptr (HcPlan) before = hc_plan_ref (hc_document_get_plan (fixture->document));

  for (guint i = 0; i < 5; i++)
    move (fixture, 10, "nudge");
  g_assert_true (hc_document_undo (fixture->document));
  g_assert_true (hc_document_get_plan (fixture->document) == before);
}

static void
test_other_keys_and_undo_part_steps (Fixture *fixture, gconstpointer data)
{
  move (fixture, 10, "nudge");
  move (fixture, 10, "other");
  move (fixture, 10, "nudge");
  hc_document_undo (fixture->document);
  hc_document_undo (fixture->document);
  move (fixture, 10, "nudge");
  hc_document_undo (fixture->document);
  g_assert_cmpfloat (fitting_in (hc_document_get_plan (fixture->document), "feeder")->x_mm, ==,
                     1010);
  g_assert_true (hc_document_undo (fixture->document));
  g_assert_false (hc_document_undo (fixture->document));
}

static void
test_a_drag_is_one_step (Fixture *fixture, gconstpointer data)
{
  HcPlan *start = hc_document_get_settled_plan (fixture->document);

  for (guint i = 1; i <= 10; i++)
    {
      g_autoptr (HcPlan) dragged = moved (start, 10 * i);

      hc_document_preview (fixture->document, dragged);
      g_assert_true (hc_document_get_plan (fixture->document) == dragged);
      g_assert_true (hc_document_get_settled_plan (fixture->document) == start);
    }
  g_assert_false (hc_document_is_modified (fixture->document));
  hc_document_commit_preview (fixture->document, "Move feeder");
  g_assert_false (hc_document_is_previewing (fixture->document));
  g_assert_true (hc_document_is_modified (fixture->document));
  hc_document_undo (fixture->document);
  g_assert_true (hc_document_get_plan (fixture->document) == start);
}

static void
test_a_drag_given_up_leaves_nothing (Fixture *fixture, gconstpointer data)
{
  HcPlan *start = hc_document_get_plan (fixture->document);
  g_autoptr (HcPlan) dragged = moved (start, 50);

  hc_document_preview (fixture->document, dragged);
  hc_document_cancel_preview (fixture->document);
  g_assert_true (hc_document_get_plan (fixture->document) == start);
  g_assert_false (hc_document_undo (fixture->document));
}

static void
test_undo_brings_the_selection_back (Fixture *fixture, gconstpointer data)
{
  static const char *const drinker[] = { "drinker", NULL };
  HcPlan *plan = hc_document_get_plan (fixture->document);
  g_autoptr (HcPlan) without = hc_plan_remove_fittings (plan, feeder, NULL);

  hc_document_select (fixture->document, feeder);
  hc_document_apply (fixture->document, without, "Remove feeder", NULL);
  g_assert_false (hc_document_is_selected (fixture->document, "feeder"));
  hc_document_select (fixture->document, drinker);
  hc_document_undo (fixture->document);
  g_assert_true (g_strv_equal (hc_document_get_selection (fixture->document), feeder));
  hc_document_redo (fixture->document);
  g_assert_true (g_strv_equal (hc_document_get_selection (fixture->document), drinker));
}

static void
test_only_what_is_there_is_selected (Fixture *fixture, gconstpointer data)
{
  static const char *const ids[] = { "ghost", "feeder", NULL };

  hc_document_select (fixture->document, ids);
  g_assert_true (g_strv_equal (hc_document_get_selection (fixture->document), feeder));
  hc_document_select (fixture->document, NULL);
  g_assert_true (g_strv_equal (hc_document_get_selection (fixture->document), nothing));
  g_assert_cmpuint (times_told (fixture, "selection"), ==, 2);
}

static void
test_labels_name_the_steps (Fixture *fixture, gconstpointer data)
{
  g_autofree char *undo = NULL;
  g_autofree char *redo = NULL;

  move (fixture, 10, NULL);
  undo = text_of (fixture, "undo-label");
  g_assert_cmpstr (undo, ==, "Move feeder");
  hc_document_undo (fixture->document);
  redo = text_of (fixture, "redo-label");
  g_assert_cmpstr (redo, ==, "Move feeder");
  move (fixture, 20, NULL);
  g_assert_false (hc_document_redo (fixture->document));
}

static void
test_any_way_back_is_the_way_there (Fixture *fixture, gconstpointer data)
{
  g_autoptr (GPtrArray) seen = g_ptr_array_new_with_free_func (hc_part_unref);

  for (guint i = 0; i < 300; i++)
    {
      g_ptr_array_add (seen, hc_plan_ref (hc_document_get_plan (fixture->document)));
      move (fixture, g_test_rand_int_range (1, 9), NULL);
    }
  for (guint i = seen->len; i > 0; i--)
    {
      g_assert_true (hc_document_undo (fixture->document));
      g_assert_true (hc_document_get_plan (fixture->document) == seen->pdata[i - 1]);
    }
  g_assert_false (hc_document_is_modified (fixture->document));
}

#define ADD(name, test) \
  g_test_add ("/document/" name, Fixture, NULL, set_up, test, tear_down)

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  ADD ("undo-is-the-same-plan", test_undo_of_an_edit_is_the_same_plan);
  ADD ("tells-once", test_tells_of_each_change_once);
  ADD ("no-change-is-no-step", test_no_change_is_no_step);
  ADD ("steps-of-one-key-are-one", test_steps_of_one_key_are_one);
  ADD ("other-keys-part-steps", test_other_keys_and_undo_part_steps);
  ADD ("a-drag-is-one-step", test_a_drag_is_one_step);
  ADD ("a-drag-given-up", test_a_drag_given_up_leaves_nothing);
  ADD ("undo-brings-the-selection-back", test_undo_brings_the_selection_back);
  ADD ("only-what-is-there-is-selected", test_only_what_is_there_is_selected);
  ADD ("labels-name-the-steps", test_labels_name_the_steps);
  ADD ("any-way-back", test_any_way_back_is_the_way_there);
  return g_test_run ();
}
