/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The shared life of the immutable parts of a plan, and lists of them. */
#include "config.h"

#include "base/part.h"
#include "base/whole.h"

#include <string.h>

/* Values follow the head, aligned for any member. */
#define HEAD (G_STRUCT_OFFSET (struct { HcPart part; gint64 values; }, values))

static gpointer
member_in (gconstpointer values, const HcMember *member)
{
  return (char *) values + member->offset;
}

static void
own_member (gpointer values, const HcMember *member)
{
  gpointer at = member_in (values, member);

  switch (member->kind)
    {
    case HC_MEMBER_LENGTH:
    case HC_MEMBER_NUMBER:
      *(double *) at = hc_mm (*(double *) at);
      break;
    case HC_MEMBER_FIGURE:
      *(double *) at = hc_fine (*(double *) at);
      break;
    case HC_MEMBER_TEXT:
      *(char **) at = g_strdup (*(char **) at);
      break;
    case HC_MEMBER_IDS:
      *(char ***) at = *(char ***) at != NULL ? g_strdupv (*(char ***) at) : g_new0 (char *, 1);
      break;
    case HC_MEMBER_PARTS:
      *(HcParts **) at = *(HcParts **) at != NULL ? g_ptr_array_ref (*(HcParts **) at)
                                                  : hc_parts_new ();
      break;
    case HC_MEMBER_PART:
      *(gpointer *) at = *(gpointer *) at != NULL ? hc_part_ref (*(gpointer *) at)
                                                  : hc_part_new (member->of, NULL, NULL);
      break;
    default:
      break;
    }
}

static void
free_member (gpointer values, const HcMember *member)
{
  gpointer at = member_in (values, member);

  switch (member->kind)
    {
    case HC_MEMBER_TEXT:
      g_free (*(char **) at);
      break;
    case HC_MEMBER_IDS:
      g_strfreev (*(char ***) at);
      break;
    case HC_MEMBER_PARTS:
      g_ptr_array_unref (*(HcParts **) at);
      break;
    case HC_MEMBER_PART:
      hc_part_unref (*(gpointer *) at);
      break;
    default:
      break;
    }
}

static gboolean
same_text (const char *a, const char *b)
{
  return g_str_equal (a != NULL ? a : "", b != NULL ? b : "");
}

static gboolean
same_ids (char **a, char **b)
{
  const char *none[] = { NULL };

  return g_strv_equal (a != NULL ? (const char *const *) a : none,
                       b != NULL ? (const char *const *) b : none);
}

static gboolean
same_parts (HcParts *a, HcParts *b)
{
  if (a == NULL || b == NULL)
    return (a == NULL || a->len == 0) && (b == NULL || b->len == 0);
  return hc_parts_equal (a, b);
}

static gboolean
same_member (gconstpointer a, gconstpointer b, const HcMember *member)
{
  gconstpointer one = member_in (a, member);
  gconstpointer other = member_in (b, member);

  switch (member->kind)
    {
    case HC_MEMBER_LENGTH:
    case HC_MEMBER_NUMBER:
      return hc_mm (*(const double *) one) == hc_mm (*(const double *) other);
    case HC_MEMBER_FIGURE:
      return hc_fine (*(const double *) one) == hc_fine (*(const double *) other);
    case HC_MEMBER_TEXT:
      return same_text (*(char *const *) one, *(char *const *) other);
    case HC_MEMBER_IDS:
      return same_ids (*(char **const *) one, *(char **const *) other);
    case HC_MEMBER_PARTS:
      return same_parts (*(HcParts *const *) one, *(HcParts *const *) other);
    case HC_MEMBER_PART:
      return hc_part_equal (*(const gpointer *) one, *(const gpointer *) other);
    default:
      return *(const int *) one == *(const int *) other;
    }
}

/**
 * hc_part_class_fill_normal: (skip)
 * @klass: what the part is
 * @values: (out caller-allocates): the struct of the part's values
 *
 * Sets every member to what a missing one means; text and lists to %NULL.
 */
void
hc_part_class_fill_normal (const HcPartClass *klass, gpointer values)
{
  memset (values, 0, klass->values_size);
  for (guint i = 0; i < klass->n_members; i++)
    {
      const HcMember *member = &klass->members[i];
      gpointer at = member_in (values, member);

      if (member->kind <= HC_MEMBER_NUMBER)
        *(double *) at = member->normal;
      else if (member->kind <= HC_MEMBER_WORD)
        *(int *) at = (int) member->normal;
    }
}

/**
 * hc_part_read: (skip)
 * @klass: what the part is
 * @id: (nullable): its id
 * @values: (nullable): its values, copied; %NULL for the normal ones
 * @given: which members stood in the file
 * @extra: (nullable): members not known, as the text of one JSON object
 *
 * Returns: (transfer full): the part
 */
gpointer
hc_part_read (const HcPartClass *klass, const char *id, gconstpointer values,
              guint64 given, const char *extra)
{
  HcPart *part = g_malloc0 (HEAD + klass->values_size);
  gpointer own = (char *) part + HEAD;

  part->klass = klass;
  g_atomic_ref_count_init (&part->refs);
  part->id = g_strdup (id != NULL ? id : "");
  part->given = given;
  part->extra = g_strdup (extra);
  if (values != NULL)
    memcpy (own, values, klass->values_size);
  else
    hc_part_class_fill_normal (klass, own);
  for (guint i = 0; i < klass->n_members; i++)
    own_member (own, &klass->members[i]);
  return part;
}

/**
 * hc_part_new: (skip)
 * @klass: what the part is
 * @id: (nullable): its id
 * @values: (nullable): its values, copied; %NULL for the normal ones
 *
 * Returns: (transfer full): the part
 */
gpointer
hc_part_new (const HcPartClass *klass, const char *id, gconstpointer values)
{
  return hc_part_read (klass, id, values, 0, NULL);
}

gpointer
hc_part_ref (gpointer part)
{
  HcPart *self = part;

  g_return_val_if_fail (self != NULL, NULL);
  g_atomic_ref_count_inc (&self->refs);
  return self;
}

void
hc_part_unref (gpointer part)
{
  HcPart *self = part;

  g_return_if_fail (self != NULL);
  if (!g_atomic_ref_count_dec (&self->refs))
    return;
  for (guint i = 0; i < self->klass->n_members; i++)
    free_member ((char *) self + HEAD, &self->klass->members[i]);
  g_free (self->id);
  g_free (self->extra);
  g_free (self);
}

static gboolean
same_values (const HcPartClass *klass, gconstpointer a, gconstpointer b)
{
  for (guint i = 0; i < klass->n_members; i++)
    if (!same_member (a, b, &klass->members[i]))
      return FALSE;
  return TRUE;
}

gboolean
hc_part_equal (gconstpointer a, gconstpointer b)
{
  const HcPart *one = a;
  const HcPart *other = b;

  if (one == other)
    return TRUE;
  if (one == NULL || other == NULL || one->klass != other->klass)
    return FALSE;
  return g_str_equal (one->id, other->id) && g_strcmp0 (one->extra, other->extra) == 0
         && same_values (one->klass, hc_part_get_values (a), hc_part_get_values (b));
}

const char *
hc_part_get_id (gconstpointer part)
{
  g_return_val_if_fail (part != NULL, NULL);
  return ((const HcPart *) part)->id;
}

/**
 * hc_part_get_extra: (skip)
 * @part: a part
 *
 * Returns: (nullable): the members this version does not know, as the text of
 *   one JSON object
 */
const char *
hc_part_get_extra (gconstpointer part)
{
  g_return_val_if_fail (part != NULL, NULL);
  return ((const HcPart *) part)->extra;
}

/**
 * hc_part_get_values: (skip)
 * @part: a part
 *
 * Returns: (transfer none): the struct of its values, good as long as @part
 */
gconstpointer
hc_part_get_values (gconstpointer part)
{
  g_return_val_if_fail (part != NULL, NULL);
  return (const char *) part + HEAD;
}

/**
 * hc_part_with: (skip)
 * @part: a part
 * @values: other values for it, copied
 *
 * Returns: (transfer full): a part with @values, or @part when they are equal
 */
gpointer
hc_part_with (gpointer part, gconstpointer values)
{
  HcPart *self = part;

  g_return_val_if_fail (self != NULL, NULL);
  if (same_values (self->klass, hc_part_get_values (part), values))
    return hc_part_ref (part);
  return hc_part_read (self->klass, self->id, values, self->given, self->extra);
}

gpointer
hc_part_with_id (gpointer part, const char *id)
{
  HcPart *self = part;

  g_return_val_if_fail (self != NULL, NULL);
  return hc_part_read (self->klass, id, hc_part_get_values (part), self->given, self->extra);
}

HcParts *
hc_parts_new (void)
{
  return g_ptr_array_new_with_free_func (hc_part_unref);
}

gboolean
hc_parts_find_index (HcParts *parts, const char *id, guint *index)
{
  if (id == NULL)
    return FALSE;
  for (guint i = 0; i < parts->len; i++)
    if (g_str_equal (hc_part_get_id (parts->pdata[i]), id))
      {
        if (index != NULL)
          *index = i;
        return TRUE;
      }
  return FALSE;
}

/**
 * hc_parts_find: (skip)
 * @parts: a list
 * @id: (nullable): the id looked for
 *
 * Returns: (nullable) (transfer none): the part with that id
 */
gpointer
hc_parts_find (HcParts *parts, const char *id)
{
  guint index;

  return hc_parts_find_index (parts, id, &index) ? parts->pdata[index] : NULL;
}

static HcParts *
copy_of (HcParts *parts)
{
  HcParts *copy = g_ptr_array_new_full (parts->len + 1, hc_part_unref);

  for (guint i = 0; i < parts->len; i++)
    g_ptr_array_add (copy, hc_part_ref (parts->pdata[i]));
  return copy;
}

/**
 * hc_parts_with: (skip)
 * @parts: a list
 * @part: the part to have in it
 *
 * Returns: (transfer full): the list with @part in the place of the one that
 *   had its id, or at the end
 */
HcParts *
hc_parts_with (HcParts *parts, gpointer part)
{
  HcParts *copy;
  guint index;

  if (!hc_parts_find_index (parts, hc_part_get_id (part), &index))
    return hc_parts_with_at (parts, parts->len, part);
  if (parts->pdata[index] == part)
    return g_ptr_array_ref (parts);
  copy = copy_of (parts);
  hc_part_unref (copy->pdata[index]);
  copy->pdata[index] = hc_part_ref (part);
  return copy;
}

HcParts *
hc_parts_with_at (HcParts *parts, guint index, gpointer part)
{
  HcParts *copy = copy_of (parts);

  g_ptr_array_insert (copy, (int) MIN (index, parts->len), hc_part_ref (part));
  return copy;
}

HcParts *
hc_parts_without (HcParts *parts, const char *id)
{
  HcParts *copy;
  guint index;

  if (!hc_parts_find_index (parts, id, &index))
    return g_ptr_array_ref (parts);
  copy = copy_of (parts);
  g_ptr_array_remove_index (copy, index);
  return copy;
}

gboolean
hc_parts_equal (HcParts *a, HcParts *b)
{
  if (a == b)
    return TRUE;
  if (a->len != b->len)
    return FALSE;
  for (guint i = 0; i < a->len; i++)
    if (!hc_part_equal (a->pdata[i], b->pdata[i]))
      return FALSE;
  return TRUE;
}
