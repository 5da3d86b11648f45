/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every text and number comes out as JSON that reads back. */
#include "config.h"

#include "cli/json-writer.h"

#include <json-glib/json-glib.h>
#include <math.h>

static JsonNode *
parse (const GString *text)
{
  g_autoptr (GError) error = NULL;
  JsonNode *node = json_from_string (text->str, &error);

  g_assert_no_error (error);
  return node;
}

static void
test_texts_read_back (void)
{
  static const char *const texts[]
      = { "", "a \"quoted\" word", "back\\slash", "two\nlines\ttab", "\x01", "hønsehus 鶏" };

  for (guint i = 0; i < G_N_ELEMENTS (texts); i++)
    {
      g_autoptr (GString) out = g_string_new (NULL);
      g_autoptr (JsonNode) node = NULL;
      HcJsonWriter json = { out };

      hc_json_open (&json, NULL, '{');
      hc_json_text (&json, "text", texts[i]);
      hc_json_close (&json, '}');
      node = parse (out);
      g_assert_cmpstr (json_object_get_string_member (json_node_get_object (node), "text"), ==,
                       texts[i]);
    }
}

static void
test_numbers_without_an_end_are_null (void)
{
  static const double odd[] = { INFINITY, -INFINITY, NAN, 1e300 };

  for (guint i = 0; i < G_N_ELEMENTS (odd); i++)
    {
      g_autoptr (GString) out = g_string_new (NULL);
      HcJsonWriter json = { out };

      hc_json_open (&json, NULL, '[');
      hc_json_number (&json, NULL, odd[i]);
      hc_json_close (&json, ']');
      g_assert_cmpstr (out->str, ==, "[\n  null\n]\n");
    }
}

static void
test_members_stand_in_lines (void)
{
  g_autoptr (GString) out = g_string_new (NULL);
  HcJsonWriter json = { out };

  hc_json_open (&json, NULL, '{');
  hc_json_number (&json, "width", 12.5);
  hc_json_count (&json, "birds", 3);
  hc_json_count (&json, "most", G_MAXINT64);
  hc_json_flag (&json, "lined", TRUE);
  hc_json_text (&json, "unit", NULL);
  hc_json_open (&json, "ids", '[');
  hc_json_close (&json, ']');
  hc_json_close (&json, '}');
  g_assert_cmpstr (out->str, ==,
                   "{\n  \"width\": 12.5,\n  \"birds\": 3,\n  \"most\": null,\n"
                   "  \"lined\": true,\n  \"unit\": null,\n  \"ids\": []\n}\n");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/json-writer/texts", test_texts_read_back);
  g_test_add_func ("/json-writer/no-end", test_numbers_without_an_end_are_null);
  g_test_add_func ("/json-writer/lines", test_members_stand_in_lines);
  return g_test_run ();
}
