/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Makes the JSON Schema of plan files, so that the published one can be held
 * against the tables the reader goes by. */
#include "config.h"

#include "plan-schema.h"

#include "files/format.h"
#include "files/read.h"

#include <json-glib/json-glib.h>
#include <math.h>

static const HcPartClass *const classes[]
    = { &hc_site_class,   &hc_rules_class,  &hc_own_figure_class, &hc_building_class,
        &hc_layout_class, &hc_corner_class, &hc_wall_class,       &hc_opening_class,
        &hc_pen_class,    &hc_fitting_class, &hc_batch_class,
        &hc_move_class,   &hc_leaving_class, &hc_clutch_class,    &hc_step_class,
        &hc_result_class, &hc_chore_class,  &hc_keeping_class,    &hc_price_class,
        &hc_stock_class };

/* "HcOwnFigure" is "own_figure" in the schema. */
static char *
name_of (const HcPartClass *klass)
{
  GString *name = g_string_new (NULL);

  for (const char *at = klass->name + 2; *at != '\0'; at++)
    {
      if (g_ascii_isupper (*at) && name->len > 0)
        g_string_append_c (name, '_');
      g_string_append_c (name, g_ascii_tolower (*at));
    }
  return g_string_free (name, FALSE);
}

static void
put_text (JsonBuilder *builder,
          const char *name,
          const char *text)
{
  json_builder_set_member_name (builder, name);
  json_builder_add_string_value (builder, text);
}

static void
put_number (JsonBuilder *builder,
            const char *name,
            double number)
{
  json_builder_set_member_name (builder, name);
  if (number == floor (number))
    json_builder_add_int_value (builder, (gint64) number);
  else
    json_builder_add_double_value (builder, number);
}

static void
put_reference (JsonBuilder *builder,
               const char *name)
{
  g_autofree char *path = g_strconcat ("#/$defs/", name, NULL);

  put_text (builder, "$ref", path);
}

static void
put_reference_to_part (JsonBuilder *builder,
                       const HcPartClass *klass)
{
  g_autofree char *name = name_of (klass);

  put_reference (builder, name);
}

static void
put_range (JsonBuilder *builder,
           const char *type,
           const HcMember *member)
{
  put_text (builder, "type", type);
  put_number (builder, "minimum", member->least);
  put_number (builder, "maximum", member->most);
  if (!member->required)
    put_number (builder, "default", member->normal);
}

static void
put_words (JsonBuilder *builder,
           const HcMember *member)
{
  json_builder_set_member_name (builder, "enum");
  json_builder_begin_array (builder);
  for (guint i = 0; member->words[i] != NULL; i++)
    json_builder_add_string_value (builder, member->words[i]);
  json_builder_end_array (builder);
  if (!member->required)
    put_text (builder, "default", member->words[(int) member->normal]);
}

static void
put_flag (JsonBuilder *builder,
          const HcMember *member)
{
  put_text (builder, "type", "boolean");
  json_builder_set_member_name (builder, "default");
  json_builder_add_boolean_value (builder, member->normal != 0);
}

static void
put_string (JsonBuilder *builder,
            gboolean required)
{
  put_text (builder, "type", "string");
  if (required)
    put_number (builder, "minLength", 1);
}

static void
put_list (JsonBuilder *builder,
          const HcMember *member)
{
  put_text (builder, "type", "array");
  if (member->of == &hc_layout_class)
    put_number (builder, "minItems", 1);
  json_builder_set_member_name (builder, "items");
  json_builder_begin_object (builder);
  if (member->kind == HC_MEMBER_PARTS)
    put_reference_to_part (builder, member->of);
  else
    put_string (builder, TRUE);
  json_builder_end_object (builder);
}

static void
put_kind (JsonBuilder *builder,
          const HcMember *member)
{
  switch (member->kind)
    {
    case HC_MEMBER_LENGTH:
    case HC_MEMBER_FIGURE:
    case HC_MEMBER_NUMBER:
      put_range (builder, "number", member);
      break;
    case HC_MEMBER_COUNT:
      put_range (builder, "integer", member);
      break;
    case HC_MEMBER_FLAG:
      put_flag (builder, member);
      break;
    case HC_MEMBER_DATE:
      put_reference (builder, "date");
      break;
    case HC_MEMBER_WORD:
      put_words (builder, member);
      break;
    case HC_MEMBER_TEXT:
      put_string (builder, member->required);
      break;
    case HC_MEMBER_PART:
      put_reference_to_part (builder, member->of);
      break;
    default:
      put_list (builder, member);
      break;
    }
}

static void
put_members (JsonBuilder *builder,
             const HcPartClass *klass)
{
  for (guint i = 0; i < klass->n_members; i++)
    {
      json_builder_set_member_name (builder, klass->members[i].name);
      json_builder_begin_object (builder);
      put_kind (builder, &klass->members[i]);
      json_builder_end_object (builder);
    }
}

static void
put_required (JsonBuilder *builder,
              const HcPartClass *klass)
{
  json_builder_set_member_name (builder, "required");
  json_builder_begin_array (builder);
  if (klass->has_id)
    json_builder_add_string_value (builder, "id");
  for (guint i = 0; i < klass->n_members; i++)
    if (klass->members[i].required)
      json_builder_add_string_value (builder, klass->members[i].name);
  json_builder_end_array (builder);
}

static void
begin_definition (JsonBuilder *builder,
                  const char *name)
{
  json_builder_set_member_name (builder, name);
  json_builder_begin_object (builder);
}

static void
put_id_property (JsonBuilder *builder,
                 const char *name)
{
  begin_definition (builder, name);
  put_reference (builder, "id");
  json_builder_end_object (builder);
}

static void
put_class (JsonBuilder *builder,
           const HcPartClass *klass)
{
  g_autofree char *name = name_of (klass);

  begin_definition (builder, name);
  put_text (builder, "type", "object");
  put_required (builder, klass);
  begin_definition (builder, "properties");
  if (klass->has_id)
    put_id_property (builder, "id");
  put_members (builder, klass);
  json_builder_end_object (builder);
  json_builder_end_object (builder);
}

static void
put_pattern (JsonBuilder *builder,
             const char *name,
             const char *pattern)
{
  begin_definition (builder, name);
  put_text (builder, "type", "string");
  put_text (builder, "pattern", pattern);
  json_builder_end_object (builder);
}

static void
put_definitions (JsonBuilder *builder)
{
  begin_definition (builder, "$defs");
  put_pattern (builder, "id", "^[a-z][a-z0-9_-]{0,63}$");
  put_pattern (builder, "date", "^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$");
  for (guint i = 0; i < G_N_ELEMENTS (classes); i++)
    put_class (builder, classes[i]);
  json_builder_end_object (builder);
}

static void
put_properties (JsonBuilder *builder)
{
  begin_definition (builder, "properties");
  begin_definition (builder, "format");
  put_text (builder, "const", HC_PLAN_FORMAT);
  json_builder_end_object (builder);
  begin_definition (builder, "version");
  put_number (builder, "const", HC_PLAN_VERSION);
  json_builder_end_object (builder);
  put_id_property (builder, "uid");
  put_members (builder, &hc_plan_class);
  json_builder_end_object (builder);
}

static void
put_required_of_file (JsonBuilder *builder)
{
  const char *const names[] = { "format", "version", "uid", "variants" };

  json_builder_set_member_name (builder, "required");
  json_builder_begin_array (builder);
  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    json_builder_add_string_value (builder, names[i]);
  json_builder_end_array (builder);
}

char *
plan_schema_make (void)
{
  g_autoptr (JsonBuilder) builder = json_builder_new ();
  g_autoptr (JsonNode) root = NULL;
  g_autofree char *text = NULL;

  json_builder_begin_object (builder);
  put_text (builder, "$schema", "https://json-schema.org/draft/2020-12/schema");
  put_text (builder, "$id", "urn:hencote:plan:1");
  put_text (builder, "title", "A Hencote plan, version 1");
  put_text (builder, "type", "object");
  put_required_of_file (builder);
  put_properties (builder);
  put_definitions (builder);
  json_builder_end_object (builder);
  root = json_builder_get_root (builder);
  text = json_to_string (root, TRUE);
  return g_strconcat (text, "\n", NULL);
}
