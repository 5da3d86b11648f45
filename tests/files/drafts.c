/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Drafts: kept apart, listed whenever they exist, never lost. */
#include "config.h"

#include "base/error.h"
#include "files/drafts.h"
#include "plan-maker.h"
#include "scratch.h"

#include <glib/gstdio.h>
#include <string.h>
#include <sys/stat.h>
#include <utime.h>

typedef struct
{
  char *parent;
  char *folder;
} Fixture;

static void
set_up (Fixture *fixture,
        gconstpointer data)
{
  fixture->parent = scratch_folder_new ();
  fixture->folder = g_build_filename (fixture->parent, "hencote", "drafts", NULL);
}

static void
tear_down (Fixture *fixture,
           gconstpointer data)
{
  scratch_folder_remove (fixture->parent);
  g_free (fixture->folder);
}

static void
write_draft (Fixture *fixture,
             const char *key,
             HcPlan *plan,
             const char *uri,
             const char *etag)
{
  g_autoptr (HcDraft) draft = hc_draft_new (key, plan, uri, etag);
  g_autoptr (GError) error = NULL;

  hc_drafts_write (fixture->folder, draft, &error);
  g_assert_no_error (error);
}

static GPtrArray *
list (Fixture *fixture,
      guint n_drafts,
      guint n_set_aside)
{
  guint n_aside;
  GPtrArray *drafts = hc_drafts_list (fixture->folder, &n_aside);

  g_assert_cmpuint (drafts->len, ==, n_drafts);
  g_assert_cmpuint (n_aside, ==, n_set_aside);
  return drafts;
}

static char *
path_in (Fixture *fixture,
         const char *name)
{
  return g_build_filename (fixture->folder, name, NULL);
}

static void
a_draft_is_listed_as_it_was_written (Fixture *fixture,
                                     gconstpointer data)
{
  g_autoptr (HcPlan) plan = plan_maker_make_wild (7, 2, 5);
  g_autoptr (GPtrArray) drafts = NULL;
  const HcDraft *draft;

  write_draft (fixture, "first", plan, "file:///home/\"croft\".hencote", "12:34");
  drafts = list (fixture, 1, 0);
  draft = drafts->pdata[0];
  g_assert_cmpstr (draft->key, ==, "first");
  g_assert_cmpstr (draft->uri, ==, "file:///home/\"croft\".hencote");
  g_assert_cmpstr (draft->etag, ==, "12:34");
  g_assert_true (hc_plan_equal (draft->plan, plan));
  g_assert_cmpint (draft->written, >, 0);
}

static void
a_draft_never_saved_has_no_place (Fixture *fixture,
                                  gconstpointer data)
{
  g_autoptr (HcPlan) plan = hc_plan_new_empty ("croft", "Skerry Croft");
  g_autoptr (GPtrArray) drafts = NULL;
  const HcDraft *draft;

  write_draft (fixture, "first", plan, NULL, NULL);
  drafts = list (fixture, 1, 0);
  draft = drafts->pdata[0];
  g_assert_null (draft->uri);
  g_assert_null (draft->etag);
}

static void
a_document_has_one_draft (Fixture *fixture,
                          gconstpointer data)
{
  g_autoptr (HcPlan) before = hc_plan_new_empty ("croft", "Before");
  g_autoptr (HcPlan) after = hc_plan_new_empty ("croft", "After");
  g_autoptr (GPtrArray) drafts = NULL;

  write_draft (fixture, "first", before, NULL, NULL);
  write_draft (fixture, "first", after, NULL, NULL);
  drafts = list (fixture, 1, 0);
  g_assert_true (hc_plan_equal (((HcDraft *) drafts->pdata[0])->plan, after));
}

static void
set_time (Fixture *fixture,
          const char *name,
          time_t when)
{
  g_autofree char *path = path_in (fixture, name);
  struct utimbuf times = { when, when };

  g_assert_cmpint (utime (path, &times), ==, 0);
}

static void
the_newest_draft_comes_first (Fixture *fixture,
                              gconstpointer data)
{
  g_autoptr (HcPlan) plan = hc_plan_new_empty ("croft", "Skerry Croft");
  g_autoptr (GPtrArray) drafts = NULL;

  write_draft (fixture, "a", plan, NULL, NULL);
  write_draft (fixture, "b", plan, NULL, NULL);
  write_draft (fixture, "c", plan, NULL, NULL);
  set_time (fixture, "a.hencote-draft", 100);
  set_time (fixture, "b.hencote-draft", 300);
  set_time (fixture, "c.hencote-draft", 200);
  drafts = list (fixture, 3, 0);
  g_assert_cmpstr (((HcDraft *) drafts->pdata[0])->key, ==, "b");
  g_assert_cmpstr (((HcDraft *) drafts->pdata[1])->key, ==, "c");
  g_assert_cmpstr (((HcDraft *) drafts->pdata[2])->key, ==, "a");
  g_assert_cmpint (((HcDraft *) drafts->pdata[0])->written, ==, 300);
}

static void
removing_a_draft_leaves_the_others (Fixture *fixture,
                                    gconstpointer data)
{
  g_autoptr (HcPlan) plan = hc_plan_new_empty ("croft", "Skerry Croft");

  write_draft (fixture, "a", plan, NULL, NULL);
  write_draft (fixture, "b", plan, NULL, NULL);
  g_assert_true (hc_drafts_remove (fixture->folder, "a", NULL));
  g_assert_true (hc_drafts_remove (fixture->folder, "a", NULL));
  g_ptr_array_unref (list (fixture, 1, 0));
}

static void
no_folder_means_no_drafts (Fixture *fixture,
                           gconstpointer data)
{
  g_ptr_array_unref (list (fixture, 0, 0));
}

static void
put_file (Fixture *fixture,
          const char *name,
          const char *text)
{
  g_autofree char *path = path_in (fixture, name);

  g_assert_cmpint (g_mkdir_with_parents (fixture->folder, 0700), ==, 0);
  scratch_write (path, text);
}

static void
drafts_that_cannot_be_read_are_set_aside (Fixture *fixture,
                                          gconstpointer data)
{
  const char *const broken[]
      = { "", "{\"format\": \"hencote-draft\", \"vers", "[]", "{}",
          "{\"format\": \"hencote-draft\", \"version\": 1}",
          "{\"format\": \"hencote-draft\", \"version\": 1, \"plan\": {\"format\": \"x\"}}" };

  for (guint i = 0; i < G_N_ELEMENTS (broken); i++)
    {
      g_autofree char *path
          = i == 0 ? path_in (fixture, "a.hencote-draft.set-aside")
                   : g_strdup_printf ("%s/a.hencote-draft.set-aside-%u", fixture->folder, i + 1);
      g_autofree char *kept = NULL;

      put_file (fixture, "a.hencote-draft", broken[i]);
      g_ptr_array_unref (list (fixture, 0, 1));
      g_ptr_array_unref (list (fixture, 0, 0));
      kept = scratch_read (path);
      g_assert_cmpstr (kept, ==, broken[i]);
    }
}

static void
drafts_of_newer_versions_stay_where_they_are (Fixture *fixture,
                                              gconstpointer data)
{
  put_file (fixture, "a.hencote-draft", "{\"format\": \"hencote-draft\", \"version\": 2}");
  put_file (fixture, "b.hencote-draft",
            "{\"format\": \"hencote-draft\", \"version\": 1, \"plan\": {\"format\": "
            "\"hencote-plan\", \"version\": 2, \"uid\": \"u\", \"variants\": [{\"id\": \"a\"}]}}");
  g_ptr_array_unref (list (fixture, 0, 0));
  g_assert_cmpuint (scratch_folder_count (fixture->folder), ==, 2);
}

static void
other_files_are_let_be (Fixture *fixture,
                        gconstpointer data)
{
  put_file (fixture, "a.hencote-draft.X12345", "half written");
  put_file (fixture, "notes.txt", "mine");
  put_file (fixture, "No Key.hencote-draft", "mine too");
  g_ptr_array_unref (list (fixture, 0, 0));
  g_assert_cmpuint (scratch_folder_count (fixture->folder), ==, 3);
}

static void
drafts_are_for_their_owner_only (Fixture *fixture,
                                 gconstpointer data)
{
  g_autoptr (HcPlan) plan = hc_plan_new_empty ("croft", "Skerry Croft");
  struct stat found;

  write_draft (fixture, "a", plan, NULL, NULL);
  g_assert_cmpint (stat (fixture->folder, &found), ==, 0);
  g_assert_cmpuint (found.st_mode & 0077, ==, 0);
}

static void
a_folder_that_cannot_be_made_is_an_error (Fixture *fixture,
                                          gconstpointer data)
{
  g_autofree char *blocked = g_build_filename (fixture->parent, "hencote", NULL);
  g_autoptr (HcPlan) plan = hc_plan_new_empty ("croft", "Skerry Croft");
  g_autoptr (HcDraft) draft = hc_draft_new ("a", plan, NULL, NULL);
  g_autoptr (GError) error = NULL;

  scratch_write (blocked, "a file in the way");
  g_assert_false (hc_drafts_write (fixture->folder, draft, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_SAVE);
}

static void
drafts_live_in_the_state_folder (void)
{
  g_autofree char *folder = hc_drafts_get_folder ();

  g_assert_true (g_str_has_prefix (folder, g_get_user_state_dir ()));
  g_assert_true (g_str_has_suffix (folder, "hencote/drafts"));
}

static void
add (const char *path,
     void (*test) (Fixture *, gconstpointer))
{
  g_test_add (path, Fixture, NULL, set_up, test, tear_down);
}

int
main (int argc,
      char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  add ("/drafts/round-trip", a_draft_is_listed_as_it_was_written);
  add ("/drafts/never-saved", a_draft_never_saved_has_no_place);
  add ("/drafts/one-each", a_document_has_one_draft);
  add ("/drafts/order", the_newest_draft_comes_first);
  add ("/drafts/remove", removing_a_draft_leaves_the_others);
  add ("/drafts/none", no_folder_means_no_drafts);
  add ("/drafts/set-aside", drafts_that_cannot_be_read_are_set_aside);
  add ("/drafts/newer", drafts_of_newer_versions_stay_where_they_are);
  add ("/drafts/others", other_files_are_let_be);
  add ("/drafts/private", drafts_are_for_their_owner_only);
  add ("/drafts/blocked", a_folder_that_cannot_be_made_is_an_error);
  g_test_add_func ("/drafts/folder", drafts_live_in_the_state_folder);
  return g_test_run ();
}
