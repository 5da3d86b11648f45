/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A flock as a value, and flocks made from it with other counts. */
#include "config.h"

#include "flock/flock-private.h"

#include "base/whole.h"
#include "flock/apportion.h"

G_DEFINE_BOXED_TYPE (HcFlock, hc_flock, hc_flock_ref, hc_flock_unref)

HcFlock *
hc_flock_new (HcBook *book, GArray *bodies)
{
  HcFlock *flock = g_new0 (HcFlock, 1);

  g_atomic_ref_count_init (&flock->refs);
  flock->book = hc_book_ref (book);
  flock->bodies = g_array_ref (bodies);
  flock->rows = g_array_new (FALSE, FALSE, sizeof (HcFlockRow));
  return flock;
}

void
hc_flock_add_row (HcFlock *flock, const HcFlockRow *row)
{
  g_array_append_vals (flock->rows, row, 1);
  flock->total += row->count;
}

/* Finds @body in the table or adds it; FALSE when the table is full. */
gboolean
hc_bodies_intern (GArray *bodies, const HcBody *body, guint *index)
{
  for (*index = 0; *index < bodies->len; (*index)++)
    if (hc_body_equal (&g_array_index (bodies, HcBody, *index), body))
      return TRUE;
  if (bodies->len == HC_MOST_BODIES)
    return FALSE;
  g_array_append_vals (bodies, body, 1);
  return TRUE;
}

HcFlock *
hc_flock_ref (HcFlock *flock)
{
  g_return_val_if_fail (flock != NULL, NULL);
  g_atomic_ref_count_inc (&flock->refs);
  return flock;
}

void
hc_flock_unref (HcFlock *flock)
{
  g_return_if_fail (flock != NULL);
  if (!g_atomic_ref_count_dec (&flock->refs))
    return;
  g_array_unref (flock->bodies);
  g_array_unref (flock->rows);
  hc_book_unref (flock->book);
  g_free (flock);
}

/**
 * hc_flock_get_book: (skip)
 * @flock: a flock
 *
 * Returns: (transfer none): the book its kinds of bird are from
 */
HcBook *
hc_flock_get_book (const HcFlock *flock)
{
  return flock->book;
}

guint
hc_flock_get_n_bodies (const HcFlock *flock)
{
  return flock->bodies->len;
}

/**
 * hc_flock_get_body: (skip)
 * @flock: a flock
 * @body: index of a body
 *
 * Returns: (transfer none): the body, good as long as @flock
 */
const HcBody *
hc_flock_get_body (const HcFlock *flock, guint body)
{
  g_return_val_if_fail (body < flock->bodies->len, NULL);
  return &g_array_index (flock->bodies, HcBody, body);
}

guint
hc_flock_get_n_rows (const HcFlock *flock)
{
  return flock->rows->len;
}

/**
 * hc_flock_get_row: (skip)
 * @flock: a flock
 * @row: index of a row
 *
 * Returns: (transfer none): the row, good as long as @flock
 */
const HcFlockRow *
hc_flock_get_row (const HcFlock *flock, guint row)
{
  g_return_val_if_fail (row < flock->rows->len, NULL);
  return &g_array_index (flock->rows, HcFlockRow, row);
}

gint64
hc_flock_get_total (const HcFlock *flock)
{
  return flock->total;
}

/**
 * hc_flock_with_counts:
 * @flock: a flock
 * @counts: (array): birds of each row
 *
 * Returns: (transfer full): the same bodies and rows with other counts
 */
HcFlock *
hc_flock_with_counts (HcFlock *flock, const gint64 *counts)
{
  HcFlock *other = hc_flock_new (flock->book, flock->bodies);

  for (guint i = 0; i < flock->rows->len; i++)
    {
      HcFlockRow row = *hc_flock_get_row (flock, i);

      row.count = MAX (counts[i], 0);
      hc_flock_add_row (other, &row);
    }
  return other;
}

static gint64 *
get_counts (const HcFlock *flock)
{
  gint64 *counts = g_new0 (gint64, flock->rows->len + 1);

  for (guint i = 0; i < flock->rows->len; i++)
    counts[i] = hc_flock_get_row (flock, i)->count;
  return counts;
}

/**
 * hc_flock_scaled:
 * @flock: a flock
 * @total: birds it is to have
 *
 * Scales the mix by the divisor method of Sainte-Laguë: the flock of n birds
 * is always contained in the flock of n + 1.
 *
 * Returns: (transfer full): the same mix with @total birds; no birds when
 *   @flock has none
 */
HcFlock *
hc_flock_scaled (HcFlock *flock, gint64 total)
{
  g_autofree gint64 *counts = get_counts (flock);
  g_autofree gint64 *shares = g_new0 (gint64, flock->rows->len + 1);

  hc_apportion (counts, flock->rows->len, CLAMP (total, 0, HC_WHOLE_MANY), shares);
  return hc_flock_with_counts (flock, shares);
}

/**
 * hc_flock_in_pens:
 * @flock: a flock
 * @pens: (array zero-terminated=1): ids of pens
 *
 * Returns: (transfer full): the rows whose home is one of @pens, with the same
 *   table of bodies
 */
HcFlock *
hc_flock_in_pens (HcFlock *flock, const char *const *pens)
{
  HcFlock *inside = hc_flock_new (flock->book, flock->bodies);

  for (guint i = 0; i < flock->rows->len; i++)
    {
      const HcFlockRow *row = hc_flock_get_row (flock, i);

      if (g_strv_contains (pens, row->pen))
        hc_flock_add_row (inside, row);
    }
  return inside;
}
