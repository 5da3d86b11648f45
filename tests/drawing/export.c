/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Files: of the kind their name says, the same twice, refused with a reason. */
#include "config.h"

#include "drawing/export.h"

#include "base/error.h"
#include "plan/edit-site.h"

#include "byre.h"

#include <glib/gstdio.h>
#include <string.h>

typedef struct
{
  HcPlan *plan;
  HcCheck *check;
  char *folder;
} Fixture;

static void
set_up (Fixture *fixture, gconstpointer data)
{
  fixture->plan = test_byre_load ();
  fixture->check = test_byre_check (fixture->plan, HC_CONDITION_DAY);
  fixture->folder = g_dir_make_tmp ("hencote-XXXXXX", NULL);
}

static void
tear_down (Fixture *fixture, gconstpointer data)
{
  g_autoptr (GDir) folder = g_dir_open (fixture->folder, 0, NULL);
  const char *name;

  while ((name = g_dir_read_name (folder)) != NULL)
    {
      g_autofree char *path = g_build_filename (fixture->folder, name, NULL);

      g_assert_cmpint (g_unlink (path), ==, 0);
    }
  g_assert_cmpint (g_rmdir (fixture->folder), ==, 0);
  g_free (fixture->folder);
  hc_check_unref (fixture->check);
  hc_plan_unref (fixture->plan);
}

static GBytes *
draw (const Fixture *fixture, HcView view, const char *name)
{
  HcSheet sheet = { .check = fixture->check };
  g_autofree char *path = g_build_filename (fixture->folder, name, NULL);
  g_autoptr (GError) error = NULL;
  char *text;
  gsize length;

  g_assert_true (hc_draw_to_file (&sheet, view, path, &error));
  g_assert_no_error (error);
  g_assert_true (g_file_get_contents (path, &text, &length, NULL));
  return g_bytes_new_take (text, length);
}

static gboolean
starts_with (GBytes *bytes, const char *start)
{
  gsize length;
  const char *data = g_bytes_get_data (bytes, &length);

  return length > strlen (start) && memcmp (data, start, strlen (start)) == 0;
}

static void
test_files_are_what_their_names_say (Fixture *fixture, gconstpointer data)
{
  static const struct
  {
    const char *name, *start;
  } kinds[] = { { "a.pdf", "%PDF" }, { "a.SVG", "<?xml" }, { "a.png", "\x89PNG" } };

  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    for (int view = HC_VIEW_FLOOR; view <= HC_VIEW_SHEET; view++)
      {
        g_autoptr (GBytes) file = draw (fixture, (HcView) view, kinds[i].name);

        g_assert_true (starts_with (file, kinds[i].start));
      }
}

/* cairo numbers the groups of an SVG through the life of a process: that SVG
 * files are the same is tested with the program. */
static void
test_drawn_twice_they_are_the_same (Fixture *fixture, gconstpointer data)
{
  static const char *const names[][2] = { { "a.pdf", "b.pdf" }, { "a.png", "b.png" } };

  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    {
      g_autoptr (GBytes) one = draw (fixture, HC_VIEW_SHEET, names[i][0]);
      g_autoptr (GBytes) other = draw (fixture, HC_VIEW_SHEET, names[i][1]);

      g_assert_true (g_bytes_equal (one, other));
    }
}

static GBytes *
draw_at_place (const HcPlan *byre, const char *place)
{
  HcSiteValues site = *hc_plan_get_site (byre);
  Fixture fixture = { 0 };
  GBytes *drawn;

  site.place = (char *) place;
  set_up (&fixture, NULL);
  hc_plan_unref (fixture.plan);
  hc_check_unref (fixture.check);
  fixture.plan = hc_plan_set_site ((HcPlan *) byre, &site, NULL);
  fixture.check = test_byre_check (fixture.plan, HC_CONDITION_DAY);
  drawn = draw (&fixture, HC_VIEW_SHEET, "a.png");
  tear_down (&fixture, NULL);
  return drawn;
}

static void
test_place_is_not_told_twice (Fixture *fixture, gconstpointer data)
{
  g_autoptr (GBytes) without = draw_at_place (fixture->plan, NULL);
  g_autoptr (GBytes) same = draw_at_place (fixture->plan, hc_plan_get (fixture->plan)->title);
  g_autoptr (GBytes) other = draw_at_place (fixture->plan, "Out on the ness");

  g_assert_true (g_bytes_equal (without, same));
  g_assert_false (g_bytes_equal (without, other));
}

static void
assert_refused (const Fixture *fixture, const HcSheet *sheet, const char *name,
                const char *reason)
{
  g_autofree char *path = g_build_filename (fixture->folder, name, NULL);
  g_autoptr (GError) error = NULL;

  g_assert_false (hc_draw_to_file (sheet, HC_VIEW_SHEET, path, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_SAVE);
  g_assert_nonnull (strstr (error->message, reason));
  g_assert_false (g_file_test (path, G_FILE_TEST_EXISTS));
}

static void
test_what_cannot_be_drawn_is_refused (Fixture *fixture, gconstpointer data)
{
  HcSheet sheet = { .check = fixture->check };
  HcSheet large = { .check = fixture->check, .scale = 1 };

  assert_refused (fixture, &sheet, "a.txt", ".pdf, .svg or .png");
  assert_refused (fixture, &sheet, "no/such/folder/a.png", "could not be written");
  assert_refused (fixture, &large, "a.pdf", "Choose 1:50");
}

static void
test_a_scale_fits_its_paper (Fixture *fixture, gconstpointer data)
{
  HcSheet sheet = { .check = fixture->check };
  HcSheetSize a4, a3;

  g_assert_true (hc_sheet_fit (&sheet, &a4, NULL));
  sheet.paper = HC_PAPER_A3;
  g_assert_true (hc_sheet_fit (&sheet, &a3, NULL));
  g_assert_cmpint (a4.scale, ==, 50);
  g_assert_cmpint (a3.scale, ==, 50);
  sheet.scale = 25;
  g_assert_false (hc_sheet_fit (&sheet, &a3, NULL));
  sheet.scale = 100;
  g_assert_true (hc_sheet_fit (&sheet, &a3, NULL));
  g_assert_cmpint (a3.scale, ==, 100);
  g_assert_cmpfloat (a4.width, >, a4.height);
  /* ISO 216:2007: A4 is 210 × 297 mm. */
  g_assert_cmpfloat_with_epsilon (a4.width / HC_POINTS_PER_MM, 297, 1e-9);
  g_assert_cmpfloat_with_epsilon (a4.height / HC_POINTS_PER_MM, 210, 1e-9);
  g_assert_cmpfloat_with_epsilon (hc_scale_to_units (50) * 5000, 100 * HC_POINTS_PER_MM, 1e-9);
}

int
main (int argc, char **argv)
{
  static const struct
  {
    const char *path;
    void (*test) (Fixture *, gconstpointer);
  } tests[] = {
    { "/export/kinds", test_files_are_what_their_names_say },
    { "/export/same", test_drawn_twice_they_are_the_same },
    { "/export/place-told-once", test_place_is_not_told_twice },
    { "/export/refused", test_what_cannot_be_drawn_is_refused },
    { "/export/scale", test_a_scale_fits_its_paper },
  };

  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (tests); i++)
    g_test_add (tests[i].path, Fixture, NULL, set_up, tests[i].test, tear_down);
  return g_test_run ();
}
