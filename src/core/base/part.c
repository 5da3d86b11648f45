/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The shared life of the immutable parts of a plan, and lists of them. */
#include "config.h"

#include "base/part.h"

#include <string.h>

/**
 * hc_part_new: (skip)
 * @klass: what the part is
 * @id: the part's id
 *
 * Makes a part with all members zero, still the caller's alone to fill.
 *
 * Returns: (transfer full): the part
 */
gpointer
hc_part_new (const HcPartClass *klass, const char *id)
{
  HcPart *part = g_malloc0 (klass->size);

  part->klass = klass;
  g_atomic_ref_count_init (&part->refs);
  part->id = g_strdup (id != NULL ? id : "");
  return part;
}

/**
 * hc_part_copy: (skip)
 * @part: a part
 *
 * Returns: (transfer full): an equal part the caller may still change
 */
gpointer
hc_part_copy (gconstpointer part)
{
  const HcPart *from = part;
  HcPart *to = hc_part_new (from->klass, from->id);

  memcpy ((char *) to + sizeof (HcPart), (const char *) from + sizeof (HcPart),
          from->klass->size - sizeof (HcPart));
  to->extra = g_strdup (from->extra);
  from->klass->duplicate (from, to);
  return to;
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
  self->klass->clear (self);
  g_free (self->id);
  g_free (self->extra);
  g_free (self);
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
         && one->klass->equal (one, other);
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

gpointer
hc_part_with_extra (gpointer part, const char *extra)
{
  HcPart *copy;

  if (g_strcmp0 (hc_part_get_extra (part), extra) == 0)
    return hc_part_ref (part);
  copy = hc_part_copy (part);
  g_free (copy->extra);
  copy->extra = g_strdup (extra);
  return copy;
}

gpointer
hc_part_with_id (gpointer part, const char *id)
{
  HcPart *copy = hc_part_copy (part);

  g_free (copy->id);
  copy->id = g_strdup (id);
  return copy;
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
