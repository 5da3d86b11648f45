/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What an edit leaves is sound, and comes back from its file the same. */
#include "config.h"

#include "files/read.h"
#include "files/write.h"
#include "plan/soundness.h"

#include "../sample/edits.h"
#include "../sample/two-pens.h"

static void
comes_back_the_same (gconstpointer edit)
{
  g_autoptr (HcPlan) plan = two_pens_new ();
  g_autoptr (HcPlan) after = sample_edit_make (edit, plan);
  g_autoptr (GError) error = NULL;
  g_autofree char *text = NULL;
  g_autoptr (HcPlanFile) file = NULL;
  gsize length;

  hc_plan_is_sound (after, &error);
  g_assert_no_error (error);
  text = hc_plan_write (after, &length, &error);
  g_assert_no_error (error);
  file = hc_plan_file_read (text, length, &error);
  g_assert_no_error (error);
  g_assert_true (hc_plan_equal (file->plan, after));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < sample_edits_get_n (); i++)
    {
      g_autofree char *path
          = g_strconcat ("/edit-written/", sample_edits_get (i)->name, NULL);

      g_test_add_data_func (path, sample_edits_get (i), comes_back_the_same);
    }
  return g_test_run ();
}
