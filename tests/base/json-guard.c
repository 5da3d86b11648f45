/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the guard before JSON readers lets through, and where it points when
 * it does not. */
#include "config.h"

#include "base/error.h"
#include "base/json-escape.h"
#include "base/json-guard.h"
#include "base/json-text.h"

#include <string.h>

static const char *const allowed[] = {
  "{}",
  "[]",
  " [ ] ",
  "0",
  "-0",
  "-0.5e-10",
  "1E+5",
  "12345678901234567890123",
  "\"\"",
  "\"\\u00e9\\n\\\"\\/\\\\\"",
  "\"\\ud83d\\udc14\"",
  "\"h\xc3\xa9\"",
  "[true, false, null]",
  "{\"a\": {\"a\": 1}, \"b\": [{\"a\": 2}, {\"a\": 3}]}\r\n",
  "{\"a\": 1, \"A\": 2, \"\": 3}",
};

static const struct
{
  const char *text;
  guint line, column;
} refused[] = {
  { "", 1, 1 },
  { "  ", 1, 3 },
  { "{", 1, 2 },
  { "[1", 1, 3 },
  { "[1,]", 1, 4 },
  { "[1 2]", 1, 4 },
  { "{\"a\": 1,}", 1, 9 },
  { "{\"a\" 1}", 1, 6 },
  { "{a: 1}", 1, 2 },
  { "{\n  \"a\": 1,\n  \"b\": 2,\n  \"a\": 3\n}", 4, 4 },
  { "{\"a\": 1, \"\\u0061\": 2}", 1, 11 },
  { "[1] x", 1, 5 },
  { "{} {}", 1, 4 },
  { "'x'", 1, 1 },
  { "[NaN]", 1, 2 },
  { "[Infinity]", 1, 2 },
  { "[-Infinity]", 1, 3 },
  { "[1e999]", 1, 2 },
  { "[-1e999]", 1, 2 },
  { "[01]", 1, 2 },
  { "[0x10]", 1, 3 },
  { "[1.]", 1, 4 },
  { "[.5]", 1, 2 },
  { "[+1]", 1, 2 },
  { "[1e]", 1, 4 },
  { "[-]", 1, 3 },
  { "[tru]", 1, 2 },
  { "nul", 1, 1 },
  { "/* note */ {}", 1, 1 },
  { "var x = {};", 1, 1 },
  { "[\n\"h\xc3\xa9\", 'x']", 2, 7 },
  { "\"a\nb\"", 1, 3 },
  { "\"a\tb\"", 1, 3 },
  { "\"\\x\"", 1, 3 },
  { "\"\\u12g4\"", 1, 6 },
  { "\"\\u0000\"", 1, 4 },
  { "\"\\ud83d\"", 1, 4 },
  { "\"\\udc14\"", 1, 4 },
  { "\"\\ud83dx\"", 1, 4 },
  { "\"\\ud83d\\u0041\"", 1, 4 },
  { "\"open", 1, 6 },
  { "\"open\\\"", 1, 8 },
  { "\"\\", 1, 3 },
  { "[\"\xff\"]", 1, 3 },
  { "\xef\xbb\xbf{}", 1, 1 },
};

static void
lets_strict_json_through (gconstpointer data)
{
  const char *text = data;
  g_autoptr (GError) error = NULL;
  gboolean passed = hc_json_guard (text, strlen (text), NULL, &error);

  g_assert_no_error (error);
  g_assert_true (passed);
}

static void
points_at_what_is_wrong (gconstpointer data)
{
  guint i = GPOINTER_TO_UINT (data);
  g_autoptr (GError) error = NULL;
  g_autofree char *place
      = g_strdup_printf ("Line %u, column %u: ", refused[i].line, refused[i].column);
  gboolean passed = hc_json_guard (refused[i].text, strlen (refused[i].text), NULL, &error);

  g_assert_false (passed);
  g_assert_error (error, HC_ERROR, HC_ERROR_FILE);
  g_assert_cmpstr (error->message, !=, NULL);
  g_test_message ("%s", error->message);
  g_assert_true (g_str_has_prefix (error->message, place));
}

static char *
repeated (const char *before,
          guint n,
          const char *after)
{
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < n; i++)
    g_string_append (text, before);
  g_string_append (text, after);
  return g_string_free (text, FALSE);
}

static void
assert_refused (const char *text,
                gsize length,
                const char *words)
{
  g_autoptr (GError) error = NULL;

  g_assert_false (hc_json_guard (text, length, NULL, &error));
  g_assert_error (error, HC_ERROR, HC_ERROR_FILE);
  g_assert_nonnull (strstr (error->message, words));
}

static void
lists_stand_64_deep_at_most (void)
{
  g_autofree char *deep = repeated ("[", 64, "1");
  g_autofree char *ends = repeated ("]", 64, "");
  g_autofree char *whole = g_strconcat (deep, ends, NULL);
  g_autofree char *deeper = g_strconcat ("[", whole, "]", NULL);
  g_autofree char *hostile = repeated ("[", 100000, "");

  g_assert_true (hc_json_guard (whole, strlen (whole), NULL, NULL));
  assert_refused (deeper, strlen (deeper), "Line 1, column 65:");
  assert_refused (hostile, strlen (hostile), "Line 1, column 65:");
}

static void
more_than_200_000_values_are_refused (void)
{
  g_autofree char *items = repeated ("0,", 199998, "0]");
  g_autofree char *most = g_strconcat ("[", items, NULL);
  g_autofree char *more = g_strconcat ("[0,", items, NULL);

  g_assert_true (hc_json_guard (most, strlen (most), NULL, NULL));
  assert_refused (more, strlen (more), "Line 1, column");
}

static void
files_larger_than_16_mib_are_refused (void)
{
  gsize most = 16 * 1024 * 1024;
  g_autofree char *text = g_malloc (most + 1);

  memset (text, ' ', most + 1);
  text[0] = '0';
  g_assert_true (hc_json_guard (text, most, NULL, NULL));
  assert_refused (text, most + 1, "too large");
}

static void
the_character_0_is_refused (void)
{
  assert_refused ("[\"a\0b\"]", 7, "Line 1, column 4:");
}

static void
numbers_of_400_digits_are_read_and_longer_ones_refused (void)
{
  g_autofree char *fraction = repeated ("1", 398, "");
  g_autofree char *most = g_strconcat ("0.", fraction, NULL);
  g_autofree char *more = g_strconcat ("0.1", fraction, NULL);
  g_autofree char *infinite = repeated ("9", 400, "");

  g_assert_true (hc_json_guard (most, strlen (most), NULL, NULL));
  assert_refused (more, strlen (more), "too many digits");
  assert_refused (infinite, strlen (infinite), "too large");
}

static void
limits_can_be_narrower (void)
{
  const HcJsonGuardLimits limits = { 10, 1, 3 };

  g_assert_true (hc_json_guard ("[1,2]", 5, &limits, NULL));
  g_assert_false (hc_json_guard ("[1,2,3]", 7, &limits, NULL));
  g_assert_false (hc_json_guard ("[[1]]", 5, &limits, NULL));
  g_assert_false (hc_json_guard ("          1", 11, &limits, NULL));
}

/* Members of one object, the last one there twice, far apart. */
static void
a_member_twice_among_thousands_is_found (void)
{
  GString *text = g_string_new ("{\"twice\": 0");
  g_autofree char *whole = NULL;

  for (guint i = 0; i < 50000; i++)
    g_string_append_printf (text, ",\"m%u\": 0", i);
  g_string_append (text, ",\n\"twice\": 1}");
  whole = g_string_free (text, FALSE);
  assert_refused (whole, strlen (whole), "Line 2, column 2:");
}

static void
finds_members_by_their_path (void)
{
  const char *text = "{\n  \"variants\": [\n    {\"pens\": [{}, {\"height_mm\": 5}]}\n  ]\n}";
  HcTextPlace place;

  g_assert_true (hc_json_locate (text, strlen (text), "variants[0].pens[1].height_mm", &place));
  g_assert_cmpuint (place.line, ==, 3);
  g_assert_cmpuint (place.column, ==, 33);
  g_assert_false (hc_json_locate (text, strlen (text), "variants[0].pens[1].ridge_mm", &place));
  g_assert_cmpuint (place.line, ==, 3);
  g_assert_cmpuint (place.column, ==, 19);
  g_assert_false (hc_json_locate (text, strlen (text), "variants[7].pens", &place));
  g_assert_cmpuint (place.line, ==, 2);
  g_assert_false (hc_json_locate ("[", 1, "", &place));
}

static void
every_value_knows_its_path (void)
{
  const char *text = "{\"a\": 1, \"b\": [[], {\"c\": [2, 3]}, 4], \"d\": {}}";
  g_autoptr (HcJsonText) scanned = hc_json_text_scan (text, strlen (text), NULL, NULL);

  for (guint i = 0; i < scanned->n_values; i++)
    {
      g_autofree char *path = hc_json_text_path_of (scanned, i);
      guint found;

      g_assert_true (hc_json_text_find (scanned, path, &found));
      g_assert_cmpuint (found, >=, i);
      g_assert_cmpuint (found, <=, i + 1);
    }
}

static void
numbers_are_read_as_the_c_library_reads_them (void)
{
  const char *const numbers[] = { "0",   "-0.001", "123456789012345", "0.1",
                                  "1e3", "2.5E-3", "1234567890123456", "0.300000000000000004" };

  for (guint i = 0; i < G_N_ELEMENTS (numbers); i++)
    {
      g_autoptr (HcJsonText) scanned
          = hc_json_text_scan (numbers[i], strlen (numbers[i]), NULL, NULL);

      g_assert_cmpfloat (hc_json_text_number (scanned, 0), ==, g_ascii_strtod (numbers[i], NULL));
    }
}

static void
text_survives_being_escaped (void)
{
  const char *text = "a\"b\\c\n\t\r\b\f\x01/\x7f h\xc3\xa9n \xf0\x9f\x90\x94";
  g_autoptr (GString) escaped = g_string_new (NULL);
  g_autoptr (GString) back = g_string_new (NULL);
  g_autoptr (HcJsonText) scanned = NULL;

  hc_json_escape (text, escaped);
  scanned = hc_json_text_scan (escaped->str, escaped->len, NULL, NULL);
  g_assert_nonnull (scanned);
  hc_json_text_decode (scanned, 0, back);
  g_assert_cmpstr (back->str, ==, text);
  g_assert_true (hc_json_text_is (scanned, 0, text));
}

static void
escapes_mean_their_characters (void)
{
  const char *text = "\"\\b\\f\\n\\r\\t\\/\\\\\\\"\\u00e9\\ud83d\\udc14!\"";
  g_autoptr (HcJsonText) scanned = hc_json_text_scan (text, strlen (text), NULL, NULL);

  g_assert_true (hc_json_text_is (scanned, 0, "\b\f\n\r\t/\\\"\xc3\xa9\xf0\x9f\x90\x94!"));
  g_assert_false (hc_json_text_is (scanned, 0, "\b\f"));
}

static void
add_tables (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (allowed); i++)
    {
      g_autofree char *path = g_strdup_printf ("/json-guard/lets-through/%u", i);

      g_test_add_data_func (path, allowed[i], lets_strict_json_through);
    }
  for (guint i = 0; i < G_N_ELEMENTS (refused); i++)
    {
      g_autofree char *path = g_strdup_printf ("/json-guard/refuses/%u", i);

      g_test_add_data_func (path, GUINT_TO_POINTER (i), points_at_what_is_wrong);
    }
}

int
main (int argc,
      char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  add_tables ();
  g_test_add_func ("/json-guard/depth", lists_stand_64_deep_at_most);
  g_test_add_func ("/json-guard/values", more_than_200_000_values_are_refused);
  g_test_add_func ("/json-guard/size", files_larger_than_16_mib_are_refused);
  g_test_add_func ("/json-guard/character-0", the_character_0_is_refused);
  g_test_add_func ("/json-guard/digits", numbers_of_400_digits_are_read_and_longer_ones_refused);
  g_test_add_func ("/json-guard/limits", limits_can_be_narrower);
  g_test_add_func ("/json-guard/twice", a_member_twice_among_thousands_is_found);
  g_test_add_func ("/json-guard/locate", finds_members_by_their_path);
  g_test_add_func ("/json-guard/paths", every_value_knows_its_path);
  g_test_add_func ("/json-guard/numbers", numbers_are_read_as_the_c_library_reads_them);
  g_test_add_func ("/json-guard/escape", text_survives_being_escaped);
  g_test_add_func ("/json-guard/unescape", escapes_mean_their_characters);
  return g_test_run ();
}
