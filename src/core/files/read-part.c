/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reads parts, and the parts inside them, by their tables of members. */
#include "config.h"

#include "files/extra.h"
#include "files/reader.h"

#include <glib/gi18n-lib.h>

/* A part being read: its values are filled in place, then copied whole. */
typedef struct
{
  const HcPartClass *klass;
  const char *id;
  char *values;
  guint64 given;
  GString *extra;
  guint likely;
} Draft;

static gpointer
member_at (const Draft *draft,
           guint index)
{
  return draft->values + draft->klass->members[index].offset;
}

static void
draft_init (Draft *draft,
            const HcPartClass *klass,
            const char *id)
{
  *draft = (Draft){ .klass = klass, .id = id };
  draft->values = g_malloc (klass->values_size);
  hc_part_class_fill_normal (klass, draft->values);
}

/* Texts belong to the reader; lists and parts are let go here. */
static void
draft_clear (Draft *draft)
{
  for (guint i = 0; i < draft->klass->n_members; i++)
    switch (draft->klass->members[i].kind)
      {
      case HC_MEMBER_IDS:
        g_clear_pointer ((gpointer *) member_at (draft, i), g_free);
        break;
      case HC_MEMBER_PARTS:
        g_clear_pointer ((HcParts **) member_at (draft, i), g_ptr_array_unref);
        break;
      case HC_MEMBER_PART:
        g_clear_pointer ((gpointer *) member_at (draft, i), hc_part_unref);
        break;
      default:
        break;
      }
  if (draft->extra != NULL)
    g_string_free (draft->extra, TRUE);
  g_free (draft->values);
}

static gboolean
read_ids (HcReader *self,
          guint list,
          const HcMember *member,
          char ***ids)
{
  const HcJsonValue *values = self->json->values;
  g_autoptr (GPtrArray) read = g_ptr_array_new ();

  if (values[list].kind != HC_JSON_LIST)
    return hc_reader_fail_member (self, list, member);
  for (guint at = list + 1; at < values[list].next; at = values[at].next)
    if (values[at].kind == HC_JSON_TEXT)
      g_ptr_array_add (read, (char *) hc_reader_text (self, at));
    else
      return hc_reader_fail (self, at, _("text in quotes stands here."));
  g_ptr_array_add (read, NULL);
  *ids = (char **) g_ptr_array_free (g_steal_pointer (&read), FALSE);
  return TRUE;
}

static gboolean
add_part (HcReader *self,
          guint value,
          const HcPartClass *klass,
          HcParts *parts)
{
  gpointer part;

  if (hc_reader_passes_over (self, value))
    return TRUE;
  part = hc_reader_read_part (self, value, klass, NULL, NULL);
  if (part == NULL)
    return hc_reader_forgives (self, value);
  g_ptr_array_add (parts, part);
  return TRUE;
}

static gboolean
read_parts (HcReader *self,
            guint list,
            const HcMember *member,
            HcParts **parts)
{
  const HcJsonValue *values = self->json->values;
  g_autoptr (HcParts) read = hc_parts_new ();

  if (values[list].kind != HC_JSON_LIST)
    return hc_reader_fail_member (self, list, member);
  for (guint at = list + 1; at < values[list].next; at = values[at].next)
    if (!add_part (self, at, member->of, read))
      return FALSE;
  *parts = g_steal_pointer (&read);
  return TRUE;
}

static gboolean
read_member (HcReader *self,
             guint value,
             const HcMember *member,
             gpointer at)
{
  switch (member->kind)
    {
    case HC_MEMBER_IDS:
      return read_ids (self, value, member, at);
    case HC_MEMBER_PARTS:
      return read_parts (self, value, member, at);
    case HC_MEMBER_PART:
      *(gpointer *) at = hc_reader_read_part (self, value, member->of, NULL, NULL);
      return *(gpointer *) at != NULL;
    default:
      return hc_reader_read_scalar (self, value, member, at);
    }
}

/* Files keep the order of the table, so the next row is looked at first. */
static gboolean
find_row (HcReader *self,
          guint name,
          Draft *draft,
          guint *row)
{
  guint n = draft->klass->n_members;

  for (guint i = 0; i < n; i++)
    {
      *row = (draft->likely + i) % n;
      if (hc_json_text_is (self->json, name, draft->klass->members[*row].name))
        {
          draft->likely = *row + 1;
          return TRUE;
        }
    }
  return FALSE;
}

static gboolean
read_row (HcReader *self,
          guint value,
          guint row,
          Draft *draft)
{
  if (hc_reader_passes_over (self, value))
    return TRUE;
  if (!read_member (self, value, &draft->klass->members[row], member_at (draft, row)))
    return !draft->klass->has_id && hc_reader_forgives (self, value);
  draft->given |= G_GUINT64_CONSTANT (1) << row;
  return TRUE;
}

static gboolean
read_id (HcReader *self,
         guint value,
         Draft *draft)
{
  if (self->json->values[value].kind != HC_JSON_TEXT)
    return hc_reader_fail (self, value, _("text in quotes stands here."));
  draft->id = hc_reader_text (self, value);
  return TRUE;
}

static gboolean
is_one_of (HcReader *self,
           guint name,
           const char *const *words)
{
  for (; words != NULL && *words != NULL; words++)
    if (hc_json_text_is (self->json, name, *words))
      return TRUE;
  return FALSE;
}

static gboolean
read_named (HcReader *self,
            guint name,
            const char *const *known,
            Draft *draft)
{
  guint row;

  if (find_row (self, name, draft, &row))
    return read_row (self, name + 1, row, draft);
  if (draft->klass->has_id && hc_json_text_is (self->json, name, "id"))
    return read_id (self, name + 1, draft);
  if (is_one_of (self, name, known))
    return TRUE;
  if (draft->extra == NULL)
    draft->extra = g_string_new (NULL);
  hc_extra_add (draft->extra, self->json, name);
  return TRUE;
}

static gboolean
fail_missing (HcReader *self,
              guint object,
              const char *name)
{
  g_autofree char *sentence = g_strdup_printf (_("“%s” is missing here."), name);

  return hc_reader_fail (self, object, sentence);
}

static gboolean
check_complete (HcReader *self,
                guint object,
                const Draft *draft)
{
  if (draft->klass->has_id && draft->id == NULL)
    return fail_missing (self, object, "id");
  for (guint i = 0; i < draft->klass->n_members; i++)
    if (draft->klass->members[i].required && !(draft->given >> i & 1))
      return fail_missing (self, object, draft->klass->members[i].name);
  return TRUE;
}

static gboolean
read_members (HcReader *self,
              guint object,
              const char *const *known,
              Draft *draft)
{
  const HcJsonValue *values = self->json->values;

  if (values[object].kind != HC_JSON_OBJECT)
    return hc_reader_fail (self, object, _("an object in { } stands here."));
  for (guint name = object + 1; name < values[object].next; name = values[name + 1].next)
    if (!read_named (self, name, known, draft))
      return FALSE;
  return check_complete (self, object, draft);
}

/**
 * hc_reader_read_part: (skip)
 * @self: a reader
 * @value: where the part stands
 * @klass: what it is
 * @id: (nullable): its id, when that is not its member "id"
 * @known: (nullable) (array zero-terminated=1): members read elsewhere
 *
 * Returns: (transfer full) (nullable): the part; %NULL with the error set
 */
gpointer
hc_reader_read_part (HcReader *self,
                     guint value,
                     const HcPartClass *klass,
                     const char *id,
                     const char *const *known)
{
  gpointer part = NULL;
  Draft draft;

  draft_init (&draft, klass, id);
  if (read_members (self, value, known, &draft))
    part = hc_part_read (klass, draft.id, draft.values, draft.given,
                         draft.extra != NULL ? draft.extra->str : NULL);
  draft_clear (&draft);
  return part;
}
