/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Short random names for the parts of a plan. */
#include "config.h"

#include "base/ids.h"

#include <string.h>

#define LONGEST_ID 64

/* Base 32 with the letters first; i, l, o and u are left out because they are
 * misread or make words. */
static const char alphabet[] = "abcdefghjkmnpqrstvwxyz0123456789";
#define N_LETTERS 22

struct _HcIdSource
{
  GRand *chance;
};

/**
 * hc_id_source_new: (skip)
 *
 * Returns: (transfer full): a source that gives different ids every time
 */
HcIdSource *
hc_id_source_new (void)
{
  HcIdSource *self = g_new (HcIdSource, 1);

  self->chance = g_rand_new ();
  return self;
}

/**
 * hc_id_source_new_seeded: (skip)
 * @seed: any number
 *
 * Returns: (transfer full): a source that gives the same ids in the same order
 *   for the same @seed
 */
HcIdSource *
hc_id_source_new_seeded (guint32 seed)
{
  HcIdSource *self = g_new (HcIdSource, 1);

  self->chance = g_rand_new_with_seed (seed);
  return self;
}

/**
 * hc_id_source_free: (skip)
 * @self: (transfer full): a source
 *
 * Frees it.
 */
void
hc_id_source_free (HcIdSource *self)
{
  g_rand_free (self->chance);
  g_free (self);
}

static char *
draw_id (GRand *chance)
{
  char *id = g_new0 (char, HC_ID_LENGTH + 1);

  id[0] = alphabet[g_rand_int_range (chance, 0, N_LETTERS)];
  for (guint i = 1; i < HC_ID_LENGTH; i++)
    id[i] = alphabet[g_rand_int_range (chance, 0, sizeof alphabet - 1)];
  return id;
}

/**
 * hc_id_source_next: (skip)
 * @self: a source
 *
 * Returns: (transfer full): the next id
 */
char *
hc_id_source_next (HcIdSource *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  return draw_id (self->chance);
}

static void
free_chance (gpointer chance)
{
  g_rand_free (chance);
}

/**
 * hc_id_new:
 *
 * Makes an id of ten lower-case letters and digits, a letter first. May be
 * called from any thread.
 *
 * Returns: (transfer full): the id
 */
char *
hc_id_new (void)
{
  static GPrivate chance_of_thread = G_PRIVATE_INIT (free_chance);
  GRand *chance = g_private_get (&chance_of_thread);

  if (chance == NULL)
    {
      chance = g_rand_new ();
      g_private_set (&chance_of_thread, chance);
    }
  return draw_id (chance);
}

/**
 * hc_id_is_valid:
 * @id: (nullable): text
 *
 * Tells whether @id may name a part of a plan: a lower-case letter, then
 * letters, digits, '-' or '_', 64 characters at most. Ids written by hand are
 * welcome, so this is wider than what [func@id_new] makes.
 *
 * Returns: whether it may
 */
gboolean
hc_id_is_valid (const char *id)
{
  gsize length = id != NULL ? strlen (id) : 0;

  if (length == 0 || length > LONGEST_ID || !g_ascii_islower (id[0]))
    return FALSE;
  for (gsize i = 1; i < length; i++)
    if (!g_ascii_islower (id[i]) && !g_ascii_isdigit (id[i]) && id[i] != '-' && id[i] != '_')
      return FALSE;
  return TRUE;
}
