/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Each room points to an earlier one it is joined to, or to itself. */
#include "config.h"

#include "supply/joining.h"

struct _HcJoining
{
  guint n_rooms;
  guint *towards;
  gboolean *left_out;
};

HcJoining *
hc_joining_new (guint n_rooms)
{
  HcJoining *joining = g_new0 (HcJoining, 1);

  joining->n_rooms = n_rooms;
  joining->towards = g_new (guint, n_rooms + 1);
  joining->left_out = g_new0 (gboolean, n_rooms + 1);
  for (guint i = 0; i < n_rooms; i++)
    joining->towards[i] = i;
  return joining;
}

void
hc_joining_free (HcJoining *joining)
{
  g_free (joining->towards);
  g_free (joining->left_out);
  g_free (joining);
}

void
hc_joining_leave_out (HcJoining *joining, guint room)
{
  joining->left_out[room] = TRUE;
}

static guint
find_first (const HcJoining *joining, guint room)
{
  while (joining->towards[room] != room)
    room = joining->towards[room];
  return room;
}

void
hc_joining_join (HcJoining *joining, guint a, guint b)
{
  guint first = find_first (joining, a);
  guint other = find_first (joining, b);

  if (!joining->left_out[a] && !joining->left_out[b])
    joining->towards[MAX (first, other)] = MIN (first, other);
}

static void
free_space (gpointer space)
{
  g_array_unref (((HcSpace *) space)->rooms);
  g_free (space);
}

/**
 * hc_joining_get_spaces: (skip)
 * @joining: rooms joined
 *
 * Returns: (transfer full) (element-type HcSpace): the spaces, in the order of
 *   their first rooms, without the rooms left out
 */
GPtrArray *
hc_joining_get_spaces (const HcJoining *joining)
{
  GPtrArray *spaces = g_ptr_array_new_with_free_func (free_space);
  g_autofree HcSpace **space_of = g_new0 (HcSpace *, joining->n_rooms + 1);

  for (guint i = 0; i < joining->n_rooms; i++)
    {
      guint first = find_first (joining, i);

      if (joining->left_out[i])
        continue;
      if (space_of[first] == NULL)
        {
          space_of[first] = g_new0 (HcSpace, 1);
          space_of[first]->rooms = g_array_new (FALSE, FALSE, sizeof (guint));
          g_ptr_array_add (spaces, space_of[first]);
        }
      g_array_append_val (space_of[first]->rooms, i);
    }
  return spaces;
}
