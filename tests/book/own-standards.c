/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The keeper's own standards: read like the program's, left out when faulty. */
#include "config.h"

#include "shelf.h"

#include <glib/gstdio.h>

#include <string.h>

typedef struct
{
  char *dir;
} Folder;

static void
set_up (Folder *folder, gconstpointer data)
{
  folder->dir = g_dir_make_tmp ("hencote-book-XXXXXX", NULL);
  g_assert_nonnull (folder->dir);
}

static void
tear_down (Folder *folder, gconstpointer data)
{
  GDir *dir = g_dir_open (folder->dir, 0, NULL);
  const char *name;

  while ((name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (folder->dir, name, NULL);

      g_remove (path);
    }
  g_dir_close (dir);
  g_rmdir (folder->dir);
  g_free (folder->dir);
}

static void
put (Folder *folder, const char *name, const char *text, gssize length)
{
  g_autofree char *path = g_build_filename (folder->dir, name, NULL);
  g_autoptr (GError) error = NULL;

  g_file_set_contents (path, text, length, &error);
  g_assert_no_error (error);
}

static HcBook *
load (Folder *folder, GPtrArray **faults)
{
  g_autoptr (GError) error = NULL;
  HcBook *book = hc_book_load (folder->dir, faults, &error);

  g_assert_no_error (error);
  return book;
}

#define HEAD(id)                                                          \
  "{\n\"format\": \"hencote-standard\", \"version\": 1, \"id\": \"" id "\",\n" \
  "\"name\": \"Our club\", \"about\": \"Rules of our club.\",\n"
#define SOUND_LIMIT                                                                     \
  "{\"id\": \"bars\", \"need\": \"roost\", \"measure\": \"bar-to-bar\", \"unit\": \"in\",\n" \
  "\"direction\": \"at_least\", \"least\": 12, \"good\": 14, \"basis\": \"memory\"}"
#define SOUND_DEMAND                                                                         \
  "{\"id\": \"floor\", \"need\": \"floor\", \"measure\": \"area\", \"kinds\": [\"duck\"],\n" \
  "\"unit\": \"ft2\", \"least\": [{\"each\": 4}], \"basis\": \"memory\"}"

static void
test_a_sound_one_is_used (Folder *folder, gconstpointer data)
{
  g_autoptr (GPtrArray) faults = NULL;
  g_autoptr (HcBook) book = NULL;
  HcStandard *club;
  const HcDemand *floor;

  put (folder, "club.json",
       HEAD ("our-club") "\"falls_back_to\": \"home-cold\",\n\"limits\": [" SOUND_LIMIT
                         "], \"demands\": [" SOUND_DEMAND "]}",
       -1);
  put (folder, "notes.txt", "not rules", -1);
  book = load (folder, &faults);
  g_assert_cmpuint (faults->len, ==, 0);
  club = hc_book_get_standard (book, "our-club");
  g_assert_nonnull (club);
  floor = hc_standard_find_demand (club, "floor.area", hc_book_get_kind (book, "duck"), 40,
                                   HC_CONDITION_DAY);
  g_assert_cmpstr (floor->figure.standard, ==, "our-club");
  g_assert_cmpfloat_with_epsilon (hc_demand_required (floor, HC_LEVEL_GOOD, 1, 3, NULL),
                                  4 * 92903.04, 1e-6);
  g_assert_nonnull (
      hc_standard_find_limit (club, "reach.headroom", NULL, 1, HC_CONDITION_DAY));
}

/* The example of docs/rules-format.md. */
static void
test_the_documented_example_is_used (Folder *folder, gconstpointer data)
{
  g_autofree char *path
      = g_test_build_filename (G_TEST_DIST, "..", "docs", "rules-format.md", NULL);
  g_autofree char *page = NULL;
  g_autoptr (GPtrArray) faults = NULL;
  g_autoptr (HcBook) book = NULL;
  char *from;
  char *to;

  g_assert_true (g_file_get_contents (path, &page, NULL, NULL));
  from = strstr (page, "```json\n");
  g_assert_nonnull (from);
  from += strlen ("```json\n");
  to = strstr (from, "```");
  g_assert_nonnull (to);
  put (folder, "club.json", from, to - from);
  book = load (folder, &faults);
  g_assert_cmpuint (faults->len, ==, 0);
  g_assert_nonnull (hc_book_get_standard (book, "our-club"));
}

static void
test_no_folder_is_no_fault (void)
{
  g_autoptr (GPtrArray) faults = NULL;
  g_autoptr (HcBook) book = hc_book_load ("/nowhere/at/all", &faults, NULL);

  g_assert_nonnull (book);
  g_assert_cmpuint (faults->len, ==, 0);
}

typedef struct
{
  const char *name;
  const char *text;
  const char *told;
} Fault;

#define LIMITS(id, limit) HEAD (id) "\"limits\": [\n" limit "]}"
#define DEMANDS(id, demand) HEAD (id) "\"demands\": [\n" demand "]}"
#define BARS "\"id\": \"a\", \"need\": \"roost\", \"measure\": \"bar-to-bar\", "
#define FLOOR "\"id\": \"a\", \"need\": \"floor\", \"measure\": \"area\", \"basis\": \"memory\", "

static const Fault faulty[] = {
  { "empty", "", "empty" },
  { "cut-short", HEAD ("a") "\"limits\": [", "too early" },
  { "a-list", "[]", "{ }" },
  { "another-format", "{\"format\": \"recipe\"}", "hencote-standard" },
  { "newer",
    "{\"format\": \"hencote-standard\", \"version\": 2, \"id\": \"a\", \"name\": \"a\", "
    "\"about\": \"a\"}",
    "newer version" },
  { "no-name", "{\"format\": \"hencote-standard\", \"version\": 1, \"id\": \"a\"}",
    "name: this is missing" },
  { "bad-id", HEAD ("Our Club!") "\"limits\": []}", "small letters" },
  { "taken-id", HEAD ("home-cold") "\"limits\": []}", "already" },
  { "unknown-member", HEAD ("a") "\"limit\": []}", "limit: nothing is called this" },
  { "unknown-fallback", HEAD ("a") "\"falls_back_to\": \"nobody\"}", "nobody" },
  { "member-twice", HEAD ("a") "\"name\": \"b\"}", "twice" },
  { "limits-no-list", HEAD ("a") "\"limits\": {}}", "limits: this should be a list" },
  { "text-for-number",
    LIMITS ("a", "{" BARS "\"unit\": \"cm\", \"direction\": \"at_least\", \"least\": \"30\", "
                 "\"basis\": \"memory\"}"),
    "Line 5, column 104: limits[0].least: this should be a number" },
  { "unknown-unit",
    LIMITS ("a", "{" BARS "\"unit\": \"ell\", \"direction\": \"at_least\", \"least\": 30, "
                 "\"basis\": \"memory\"}"),
    "“ell” is not known here; it should be one of: mm, cm" },
  { "wrong-unit",
    LIMITS ("a", "{" BARS "\"unit\": \"kg\", \"direction\": \"at_least\", \"least\": 30, "
                 "\"basis\": \"memory\"}"),
    "limits[0]: roost.bar-to-bar is not measured in kg but in cm" },
  { "wrong-direction",
    LIMITS ("a", "{" BARS "\"unit\": \"cm\", \"direction\": \"at_most\", \"least\": 30, "
                 "\"basis\": \"memory\"}"),
    "direction" },
  { "easier-good",
    LIMITS ("a", "{" BARS "\"unit\": \"cm\", \"direction\": \"at_least\", \"least\": 30, "
                 "\"good\": 20, \"basis\": \"memory\"}"),
    "good: this should not be easier" },
  { "no-level",
    LIMITS ("a", "{" BARS "\"unit\": \"cm\", \"direction\": \"at_least\", \"basis\": \"memory\"}"),
    "state least, good or plenty" },
  { "unknown-measure",
    LIMITS ("a", "{\"id\": \"a\", \"need\": \"roost\", \"measure\": \"colour\", \"unit\": \"cm\", "
                 "\"direction\": \"at_least\", \"least\": 1, \"basis\": \"memory\"}"),
    "roost.colour" },
  { "no-source",
    LIMITS ("a", "{" BARS "\"unit\": \"cm\", \"direction\": \"at_least\", \"least\": 30, "
                 "\"basis\": \"published\"}"),
    "needs a source" },
  { "unknown-source",
    LIMITS ("a", "{" BARS "\"unit\": \"cm\", \"direction\": \"at_least\", \"least\": 30, "
                 "\"basis\": \"published\", \"source\": \"X\"}"),
    "“X” is listed under sources" },
  { "same-id", LIMITS ("a", SOUND_LIMIT ", " SOUND_LIMIT), "limits[1]: another figure" },
  { "unknown-kind",
    DEMANDS ("a", "{" FLOOR "\"kinds\": [\"emu\"], \"unit\": \"m2\", \"least\": [{\"each\": 1}]}"),
    "“emu” is not known here" },
  { "negative",
    DEMANDS ("a", "{" FLOOR "\"unit\": \"m2\", \"least\": [{\"each\": -1}]}"),
    "demands[0].least[0].each: this should be a number from 0" },
  { "nobody-shares",
    DEMANDS ("a", "{" FLOOR "\"unit\": \"m2\", \"least\": [{\"birds_per\": 0}]}"),
    "birds_per: this should be a number from 0.001" },
  { "weeks-backwards",
    DEMANDS ("a", "{" FLOOR "\"unit\": \"m2\", \"weeks_from\": 9, \"weeks_to\": 3, "
                  "\"least\": [{\"each\": 1}]}"),
    "weeks_to: this should not be before" },
  { "half-a-week",
    DEMANDS ("a", "{" FLOOR "\"unit\": \"m2\", \"weeks_from\": 1.5, \"least\": [{\"each\": 1}]}"),
    "whole number" },
  { "good-asks-less",
    DEMANDS ("a", "{" FLOOR "\"unit\": \"m2\", \"least\": [{\"each\": 1}], "
                  "\"good\": [{\"birds_per\": 2}]}"),
    "good: this should not ask for less" },
  { "share-of-nothing",
    DEMANDS ("a", "{" FLOOR "\"unit\": \"m2\", \"share_of\": {\"figure\": \"b\", "
                  "\"percent\": 50}}"),
    "demands[0]: share_of should name another demand" },
  { "share-of-itself",
    DEMANDS ("a", "{" FLOOR "\"unit\": \"m2\", \"share_of\": {\"figure\": \"a\", "
                  "\"percent\": 50}}"),
    "share_of should name another demand" },
  { "steps-without-step",
    DEMANDS ("a", "{" FLOOR "\"unit\": \"m2\", \"least\": [{\"step_amount\": 1}]}"),
    "needs the birds in a step" },
  { "five-clauses",
    DEMANDS ("a", "{" FLOOR "\"unit\": \"m2\", \"least\": [{\"each\": 1}, {\"each\": 1}, "
                  "{\"each\": 1}, {\"each\": 1}, {\"each\": 1}]}"),
    "at most 4" },
};

static void
test_a_faulty_one_is_named_and_left_out (Folder *folder, gconstpointer data)
{
  const Fault *fault = data;
  g_autoptr (GPtrArray) faults = NULL;
  g_autoptr (HcBook) book = NULL;

  put (folder, "club.json", fault->text, -1);
  book = load (folder, &faults);
  g_assert_cmpuint (faults->len, ==, 1);
  g_test_message ("%s", (const char *) faults->pdata[0]);
  g_assert_true (g_str_has_prefix (faults->pdata[0], "club.json: "));
  g_assert_nonnull (strstr (faults->pdata[0], fault->told));
  g_assert_cmpuint (hc_book_get_n_standards (book), ==, 5);
}

static void
test_one_faulty_file_spoils_no_other (Folder *folder, gconstpointer data)
{
  g_autoptr (GPtrArray) faults = NULL;
  g_autoptr (HcBook) book = NULL;

  put (folder, "a.json", LIMITS ("first", SOUND_LIMIT), -1);
  put (folder, "b.json", "{", -1);
  put (folder, "c.json", LIMITS ("first", SOUND_LIMIT), -1);
  put (folder, "d.json", LIMITS ("second", SOUND_LIMIT), -1);
  book = load (folder, &faults);
  g_assert_cmpuint (faults->len, ==, 2);
  g_assert_nonnull (hc_book_get_standard (book, "first"));
  g_assert_nonnull (hc_book_get_standard (book, "second"));
}

static void
test_hostile_files_are_refused (Folder *folder, gconstpointer data)
{
  g_autofree char *deep = g_strnfill (900000, '[');
  g_autofree char *large = g_strnfill (2 * 1024 * 1024, ' ');
  g_autoptr (GPtrArray) faults = NULL;
  g_autoptr (HcBook) book = NULL;
  g_autofree char *folder_like = g_build_filename (folder->dir, "folder.json", NULL);

  put (folder, "deep.json", deep, -1);
  put (folder, "large.json", large, -1);
  put (folder, "zero.json", "{\"a\": \"\0\"}", 10);
  put (folder, "latin.json", "{\"a\": \"\xe9\"}", -1);
  put (folder, "huge.json", "{\"a\": 1e999}", -1);
  g_assert_cmpint (g_mkdir (folder_like, 0700), ==, 0);
  book = load (folder, &faults);
  g_assert_cmpuint (faults->len, ==, 6);
  g_rmdir (folder_like);
}

static void
test_random_bytes_never_crash (Folder *folder, gconstpointer data)
{
  static const char sound[] = LIMITS ("a", SOUND_LIMIT);

  for (int round = 0; round < 60; round++)
    {
      g_autofree char *text = g_strdup (sound);
      g_autoptr (GPtrArray) faults = NULL;
      g_autoptr (HcBook) book = NULL;

      for (int i = 0; i < 3; i++)
        text[g_test_rand_int_range (0, sizeof sound - 1)] = (char) g_test_rand_int_range (1, 256);
      put (folder, "club.json", text, sizeof sound - 1);
      book = load (folder, &faults);
      g_assert_cmpuint (hc_book_get_n_standards (book) + faults->len, ==, 6);
    }
}

#define ADD(path, data, test) g_test_add (path, Folder, data, set_up, test, tear_down)

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  ADD ("/own-standards/a-sound-one-is-used", NULL, test_a_sound_one_is_used);
  ADD ("/own-standards/the-documented-example-is-used", NULL,
       test_the_documented_example_is_used);
  g_test_add_func ("/own-standards/no-folder-is-no-fault", test_no_folder_is_no_fault);
  for (guint i = 0; i < G_N_ELEMENTS (faulty); i++)
    {
      g_autofree char *path = g_strdup_printf ("/own-standards/faulty/%s", faulty[i].name);

      ADD (path, &faulty[i], test_a_faulty_one_is_named_and_left_out);
    }
  ADD ("/own-standards/one-faulty-file-spoils-no-other", NULL,
       test_one_faulty_file_spoils_no_other);
  ADD ("/own-standards/hostile-files-are-refused", NULL, test_hostile_files_are_refused);
  ADD ("/own-standards/random-bytes-never-crash", NULL, test_random_bytes_never_crash);
  return g_test_run ();
}
