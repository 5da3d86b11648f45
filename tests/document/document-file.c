/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Documents in files: what counts as modified, and drafts apart from files. */
#include "config.h"

#include "base/error.h"
#include "document/document.h"
#include "plan/edit-plan.h"

#include "../sample/two-pens.h"

#include <glib/gstdio.h>

static char *folder;

/* Files and drafts go where no keeper's are. GLib's own way to keep them apart
 * leaks a little, and leaks fail under the sanitizers. */
static void
keep_apart (void)
{
  folder = g_dir_make_tmp ("hencote-document-XXXXXX", NULL);
  g_setenv ("XDG_STATE_HOME", folder, TRUE);
}

static GFile *
file_named (const char *name)
{
  g_autofree char *path = g_build_filename (folder, name, NULL);

  return g_file_new_for_path (path);
}

static HcDocument *
document_new (void)
{
  g_autoptr (HcPlan) plan = two_pens_new ();

  return hc_document_new (plan);
}

static void
retitle (HcDocument *document, const char *title)
{
  g_autoptr (HcPlan) after = hc_plan_set_title (hc_document_get_plan (document), title);

  hc_document_apply (document, after, "Rename", NULL);
}

static void
test_saved_and_loaded_is_the_same (void)
{
  g_autoptr (HcDocument) document = document_new ();
  g_autoptr (GFile) file = file_named ("same.hencote");
  g_autoptr (HcDocument) loaded = NULL;
  g_autoptr (GError) error = NULL;

  hc_document_save (document, file, FALSE, &error);
  g_assert_no_error (error);
  loaded = hc_document_load (file, &error);
  g_assert_no_error (error);
  g_assert_true (
      hc_plan_equal (hc_document_get_plan (document), hc_document_get_plan (loaded)));
  g_assert_true (g_file_equal (hc_document_get_file (loaded), file));
  g_assert_false (hc_document_is_modified (loaded));
}

static void
test_saving_makes_unmodified (void)
{
  g_autoptr (HcDocument) document = document_new ();
  g_autoptr (GFile) file = file_named ("modified.hencote");

  retitle (document, "One");
  g_assert_true (hc_document_save (document, file, FALSE, NULL));
  g_assert_false (hc_document_is_modified (document));
  retitle (document, "Two");
  g_assert_true (hc_document_is_modified (document));
  hc_document_undo (document);
  g_assert_false (hc_document_is_modified (document));
  hc_document_undo (document);
  g_assert_true (hc_document_is_modified (document));
}

static void
test_a_preview_is_not_saved (void)
{
  g_autoptr (HcDocument) document = document_new ();
  g_autoptr (GFile) file = file_named ("preview.hencote");
  g_autoptr (HcPlan) dragged = hc_plan_set_title (hc_document_get_plan (document), "Dragged");
  g_autoptr (HcDocument) loaded = NULL;

  hc_document_preview (document, dragged);
  g_assert_true (hc_document_save (document, file, FALSE, NULL));
  loaded = hc_document_load (file, NULL);
  g_assert_cmpstr (hc_plan_get (hc_document_get_plan (loaded))->title, ==, "Two pens");
}

static void
test_changes_of_others_are_kept (void)
{
  g_autoptr (HcDocument) document = document_new ();
  g_autoptr (GFile) file = file_named ("changed.hencote");
  g_autoptr (HcDocument) other = NULL;
  g_autoptr (GError) error = NULL;

  g_assert_true (hc_document_save (document, file, FALSE, NULL));
  g_assert_false (hc_document_changed_on_disk (document));
  other = hc_document_load (file, NULL);
  retitle (other, "A longer title by somebody else");
  g_assert_true (hc_document_save (other, NULL, FALSE, NULL));
  g_assert_true (hc_document_changed_on_disk (document));
  g_assert_false (hc_document_save (document, NULL, FALSE, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_CHANGED);
  g_assert_true (hc_document_save (document, NULL, TRUE, NULL));
}

static void
test_what_is_no_plan_is_said (void)
{
  g_autoptr (GFile) file = file_named ("none.hencote");
  g_autoptr (GError) error = NULL;

  g_assert_true (g_file_replace_contents (file, "hens", 4, NULL, FALSE, 0, NULL, NULL, NULL));
  g_assert_null (hc_document_load (file, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_FILE);
}

static GPtrArray *
drafts (void)
{
  g_autofree char *kept = hc_drafts_get_folder ();

  return hc_drafts_list (kept, NULL);
}

static void
test_a_draft_leaves_it_modified (void)
{
  g_autoptr (HcDocument) document = document_new ();
  g_autoptr (GError) error = NULL;
  g_autoptr (GPtrArray) found = NULL;
  g_autoptr (HcDocument) back = NULL;

  retitle (document, "Unsaved");
  hc_document_write_draft (document, &error);
  g_assert_no_error (error);
  hc_document_write_draft (document, &error);
  g_assert_true (hc_document_is_modified (document));
  found = drafts ();
  g_assert_cmpuint (found->len, ==, 1);
  back = hc_document_new_from_draft (found->pdata[0]);
  g_assert_true (hc_document_is_modified (back));
  g_assert_cmpstr (hc_plan_get (hc_document_get_plan (back))->title, ==, "Unsaved");
  hc_document_drop_draft (back);
}

static void
test_a_real_save_ends_the_draft (void)
{
  g_autoptr (HcDocument) document = document_new ();
  g_autoptr (GFile) file = file_named ("drafted.hencote");
  g_autoptr (GPtrArray) before = NULL;
  g_autoptr (GPtrArray) after = NULL;

  retitle (document, "Unsaved");
  g_assert_true (hc_document_write_draft (document, NULL));
  before = drafts ();
  g_assert_cmpuint (before->len, ==, 1);
  g_assert_true (hc_document_save (document, file, FALSE, NULL));
  after = drafts ();
  g_assert_cmpuint (after->len, ==, 0);
}

int
main (int argc, char **argv)
{
  int result;

  keep_apart ();
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/document-file/saved-and-loaded", test_saved_and_loaded_is_the_same);
  g_test_add_func ("/document-file/saving-makes-unmodified", test_saving_makes_unmodified);
  g_test_add_func ("/document-file/a-preview-is-not-saved", test_a_preview_is_not_saved);
  g_test_add_func ("/document-file/changes-of-others", test_changes_of_others_are_kept);
  g_test_add_func ("/document-file/what-is-no-plan", test_what_is_no_plan_is_said);
  g_test_add_func ("/document-file/a-draft-leaves-it-modified", test_a_draft_leaves_it_modified);
  g_test_add_func ("/document-file/a-real-save-ends-the-draft", test_a_real_save_ends_the_draft);
  result = g_test_run ();
  g_free (folder);
  return result;
}
