/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every sort of edit is undone to the plan before it and done again. */
#include "config.h"

#include "document/document.h"

#include "../sample/edits.h"
#include "../sample/two-pens.h"

static void
goes_back_and_forth (gconstpointer edit)
{
  g_autoptr (HcPlan) before = two_pens_new ();
  g_autoptr (HcPlan) after = sample_edit_make (edit, before);
  g_autoptr (HcDocument) document = hc_document_new (before);

  hc_document_apply (document, after, "Edit", NULL);
  g_assert_true (hc_document_undo (document));
  g_assert_true (hc_document_get_plan (document) == before);
  g_assert_false (hc_document_is_modified (document));
  g_assert_true (hc_document_redo (document));
  g_assert_true (hc_document_get_plan (document) == after);
}

static void
all_in_a_row_go_back (void)
{
  g_autoptr (HcPlan) first = two_pens_new ();
  g_autoptr (HcDocument) document = hc_document_new (first);
  guint steps = 0;

  for (guint i = 0; i < sample_edits_get_n (); i++)
    {
      g_autoptr (HcPlan) after
          = sample_edits_get (i)->make (hc_document_get_plan (document), NULL);

      if (after == NULL)
        continue;
      hc_document_apply (document, after, "Edit", NULL);
      steps++;
    }
  g_assert_cmpuint (steps, >, sample_edits_get_n () / 2);
  while (hc_document_undo (document))
    steps--;
  g_assert_cmpuint (steps, ==, 0);
  g_assert_true (hc_document_get_plan (document) == first);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < sample_edits_get_n (); i++)
    {
      g_autofree char *path = g_strconcat ("/undo/", sample_edits_get (i)->name, NULL);

      g_test_add_data_func (path, sample_edits_get (i), goes_back_and_forth);
    }
  g_test_add_func ("/undo/all-in-a-row", all_in_a_row_go_back);
  return g_test_run ();
}
