/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Flocks with more or fewer hens of one kind. */
#include "config.h"

#include "flock/flock-private.h"

#include "base/whole.h"
#include "flock/apportion.h"

static void
init_hen (HcBody *body, const HcKind *kind)
{
  hc_body_init (body, kind, TRUE, HC_WEEK_GROWN, 0);
}

static gboolean
is_hen_of (const HcFlock *flock, const HcFlockRow *row, const HcKind *kind)
{
  const HcBody *body = hc_flock_get_body (flock, row->body);

  return body->kind == kind && body->female && body->age_weeks == HC_WEEK_GROWN;
}

/**
 * hc_flock_get_hens: (skip)
 * @flock: a flock
 * @kind: a kind of bird
 *
 * Returns: grown females of @kind
 */
gint64
hc_flock_get_hens (const HcFlock *flock, const HcKind *kind)
{
  gint64 hens = 0;

  for (guint i = 0; i < flock->rows->len; i++)
    {
      const HcFlockRow *row = hc_flock_get_row (flock, i);

      if (is_hen_of (flock, row, kind))
        hens += row->count;
    }
  return hens;
}

static void
add_hens (HcFlock *flock, const HcKind *kind, gint64 hens, const char *pen)
{
  HcFlockRow row = { 0, CLAMP (hens, 0, HC_WHOLE_MANY), g_intern_string (pen != NULL ? pen : ""),
                     g_intern_static_string ("") };
  HcBody hen;

  init_hen (&hen, kind);
  if (hc_bodies_intern (flock->bodies, &hen, &row.body))
    hc_flock_add_row (flock, &row);
}

/**
 * hc_flock_of_kind: (skip)
 * @book: the book @kind is from
 * @kind: a kind of bird
 * @hens: grown females of it
 * @pen: (nullable): id of their home pen
 *
 * Returns: (transfer full): a flock of one kind alone
 */
HcFlock *
hc_flock_of_kind (HcBook *book, const HcKind *kind, gint64 hens, const char *pen)
{
  g_autoptr (GArray) bodies = g_array_new (FALSE, FALSE, sizeof (HcBody));
  HcFlock *flock = hc_flock_new (book, bodies);

  add_hens (flock, kind, hens, pen);
  return flock;
}

static HcFlock *
with_new_row (HcFlock *flock, const HcKind *kind, gint64 hens, const char *pen)
{
  g_autoptr (GArray) bodies = g_array_copy (flock->bodies);
  HcFlock *other = hc_flock_new (flock->book, bodies);

  for (guint i = 0; i < flock->rows->len; i++)
    hc_flock_add_row (other, hc_flock_get_row (flock, i));
  add_hens (other, kind, hens, pen);
  return other;
}

/* Hens of the kind by row, every other row 0; none at all when there are none. */
static gint64
get_weights (const HcFlock *flock, const HcKind *kind, gint64 *weights)
{
  gint64 sum = 0;

  for (guint i = 0; i < flock->rows->len; i++)
    {
      const HcFlockRow *row = hc_flock_get_row (flock, i);

      weights[i] = is_hen_of (flock, row, kind) ? row->count : 0;
      sum += weights[i];
    }
  return sum;
}

/**
 * hc_flock_with_hens: (skip)
 * @flock: a flock
 * @kind: a kind of bird
 * @hens: grown females of @kind it is to have
 * @pen: (nullable): home pen of the new ones when there are none of @kind yet
 *
 * Changes the number of grown females of one kind and keeps the rest. Where
 * they live in several pens, the mix of pens is kept; the flock with n hens is
 * contained in the flock with n + 1.
 *
 * Returns: (transfer full): the flock; its table of bodies may have one more
 */
HcFlock *
hc_flock_with_hens (HcFlock *flock, const HcKind *kind, gint64 hens, const char *pen)
{
  guint n = flock->rows->len;
  g_autofree gint64 *weights = g_new0 (gint64, n + 1);
  g_autofree gint64 *counts = g_new0 (gint64, n + 1);

  if (get_weights (flock, kind, weights) == 0)
    return with_new_row (flock, kind, hens, pen);
  hc_apportion (weights, n, CLAMP (hens, 0, HC_WHOLE_MANY), counts);
  for (guint i = 0; i < n; i++)
    if (weights[i] == 0)
      counts[i] = hc_flock_get_row (flock, i)->count;
  return hc_flock_with_counts (flock, counts);
}
