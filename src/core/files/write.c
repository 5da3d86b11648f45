/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Writes a plan as the text of a plan file: in the order of the tables, and
 * only what the reader takes. */
#include "config.h"

#include "files/write.h"

#include "base/error.h"
#include "base/json-escape.h"
#include "base/json-guard.h"
#include "files/extra.h"
#include "files/format.h"
#include "files/indent.h"
#include "files/read.h"
#include "files/write-scalar.h"
#include "plan/soundness.h"

#include <glib/gi18n-lib.h>

typedef struct
{
  GString *text;
  guint depth;
  gboolean first;
} Writer;

static void write_part (Writer *writer, const HcPart *part);

static void
open_object (Writer *writer)
{
  g_string_append_c (writer->text, '{');
  writer->depth++;
  writer->first = TRUE;
}

static void
close_object (Writer *writer)
{
  writer->depth--;
  if (!writer->first)
    hc_indent (writer->text, writer->depth);
  g_string_append_c (writer->text, '}');
  writer->first = FALSE;
}

static void
start_member (Writer *writer)
{
  if (!writer->first)
    g_string_append_c (writer->text, ',');
  writer->first = FALSE;
  hc_indent (writer->text, writer->depth);
}

static void
write_name (Writer *writer,
            const char *name)
{
  start_member (writer);
  g_string_append_c (writer->text, '"');
  g_string_append (writer->text, name);
  g_string_append (writer->text, "\": ");
}

static void
write_text_member (Writer *writer,
                   const char *name,
                   const char *text)
{
  write_name (writer, name);
  hc_json_escape (text, writer->text);
}

static void
write_ids (Writer *writer,
           char **ids)
{
  g_string_append_c (writer->text, '[');
  for (guint i = 0; ids[i] != NULL; i++)
    {
      if (i > 0)
        g_string_append (writer->text, ", ");
      hc_json_escape (ids[i], writer->text);
    }
  g_string_append_c (writer->text, ']');
}

static void
write_parts (Writer *writer,
             HcParts *parts)
{
  g_string_append_c (writer->text, '[');
  writer->depth++;
  writer->first = TRUE;
  for (guint i = 0; i < parts->len; i++)
    {
      start_member (writer);
      write_part (writer, parts->pdata[i]);
    }
  writer->depth--;
  if (parts->len > 0)
    hc_indent (writer->text, writer->depth);
  g_string_append_c (writer->text, ']');
  writer->first = FALSE;
}

static void
write_value (Writer *writer,
             const HcMember *member,
             gconstpointer at)
{
  switch (member->kind)
    {
    case HC_MEMBER_IDS:
      write_ids (writer, *(char **const *) at);
      break;
    case HC_MEMBER_PARTS:
      write_parts (writer, *(HcParts *const *) at);
      break;
    case HC_MEMBER_PART:
      write_part (writer, *(const HcPart *const *) at);
      break;
    default:
      hc_scalar_write (member, at, writer->text);
      break;
    }
}

/* A part without an id goes without saying when all in it does. */
static gboolean
is_left_out (const HcPart *part,
             guint index)
{
  const HcMember *member = &part->klass->members[index];
  const HcPart *inner;

  if (member->kind != HC_MEMBER_PART || part->given >> index & 1)
    return hc_member_is_left_out (part, index);
  inner = *(HcPart *const *) ((const char *) hc_part_get_values (part) + member->offset);
  for (guint i = 0; i < inner->klass->n_members; i++)
    if (!is_left_out (inner, i))
      return FALSE;
  return inner->extra == NULL;
}

static void
write_members (Writer *writer,
               const HcPart *part)
{
  for (guint i = 0; i < part->klass->n_members; i++)
    {
      const HcMember *member = &part->klass->members[i];

      if (is_left_out (part, i))
        continue;
      write_name (writer, member->name);
      write_value (writer, member,
                   (const char *) hc_part_get_values (part) + member->offset);
    }
  if (part->extra == NULL)
    return;
  start_member (writer);
  hc_extra_write (part->extra, writer->depth, writer->text);
}

static void
write_part (Writer *writer,
            const HcPart *part)
{
  open_object (writer);
  if (part->klass->has_id)
    write_text_member (writer, "id", part->id);
  write_members (writer, part);
  close_object (writer);
}

static void
write_plan (Writer *writer,
            const HcPlan *plan)
{
  open_object (writer);
  write_text_member (writer, "format", HC_PLAN_FORMAT);
  write_name (writer, "version");
  g_string_append_printf (writer->text, "%u", HC_PLAN_VERSION);
  write_text_member (writer, "uid", hc_plan_get_id (plan));
  write_members (writer, (const HcPart *) plan);
  close_object (writer);
  g_string_append_c (writer->text, '\n');
}

static gboolean
check_sound (const HcPlan *plan,
             GError **error)
{
  g_auto (HcFault) fault = { HC_FAULT_NONE };
  g_autofree char *sentence = NULL;

  if (!hc_plan_find_fault (plan, &fault))
    return TRUE;
  sentence = hc_fault_describe (&fault);
  g_set_error (error, HC_ERROR, HC_ERROR_SAVE,
               _("The plan cannot be saved as it is. At %s: %s"), fault.path, sentence);
  return FALSE;
}

static gboolean
check_readable (const GString *text,
                GError **error)
{
  if (hc_json_guard (text->str, text->len, NULL, NULL))
    return TRUE;
  g_set_error_literal (error, HC_ERROR, HC_ERROR_SAVE,
                       _("The plan has grown too large for one file. Remove variants or "
                         "fittings that are not needed, then save again."));
  return FALSE;
}

/**
 * hc_plan_write:
 * @plan: a plan
 * @length: (out) (optional): the length of the text in bytes
 * @error: where to put %HC_ERROR_SAVE
 *
 * Writes nothing that [func@PlanFile.read] would not take.
 *
 * Returns: (transfer full) (nullable): the text of its file, in UTF-8
 */
char *
hc_plan_write (const HcPlan *plan,
               gsize *length,
               GError **error)
{
  Writer writer = { NULL, 0, TRUE };

  g_return_val_if_fail (plan != NULL, NULL);
  if (!check_sound (plan, error))
    return NULL;
  writer.text = g_string_sized_new (16384);
  write_plan (&writer, plan);
  if (!check_readable (writer.text, error))
    {
      g_string_free (writer.text, TRUE);
      return NULL;
    }
  if (length != NULL)
    *length = writer.text->len;
  return g_string_free (writer.text, FALSE);
}
