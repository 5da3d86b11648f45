/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The birds on a day: how many of which body, and where they live. */
#pragma once

#include "book/book.h"
#include "flock/body.h"
#include "plan/plan.h"

G_BEGIN_DECLS

/**
 * HcFlockRow:
 * @body: index of the body in the flock's table
 * @count: birds
 * @pen: id of their home pen, empty when they have none
 * @batch: id of the group they belong to, empty for birds only asked about
 * @is_from_elsewhere: whether they came from another place
 * @days_here: days since they came
 */
typedef struct
{
  guint body;
  gint64 count;
  const char *pen;
  const char *batch;
  gboolean is_from_elsewhere;
  guint days_here;
} HcFlockRow;

/* Immutable, atomically reference-counted; strings are interned. */
typedef struct _HcFlock HcFlock;

GType hc_flock_get_type (void);
HcFlock *hc_flock_ref (HcFlock *flock);
void hc_flock_unref (HcFlock *flock);

HcFlock *hc_flock_on (const HcPlan *plan, HcBook *book, guint32 day) G_GNUC_WARN_UNUSED_RESULT;
HcFlock *hc_flock_of_kind (HcBook *book, const HcKind *kind, gint64 hens,
                           const char *pen) G_GNUC_WARN_UNUSED_RESULT;
HcBook *hc_flock_get_book (const HcFlock *flock);
guint hc_flock_get_n_bodies (const HcFlock *flock);
const HcBody *hc_flock_get_body (const HcFlock *flock, guint body);
guint hc_flock_get_n_rows (const HcFlock *flock);
const HcFlockRow *hc_flock_get_row (const HcFlock *flock, guint row);
gint64 hc_flock_get_total (const HcFlock *flock);
gint64 hc_flock_get_hens (const HcFlock *flock, const HcKind *kind);

/* Scaling: the same bodies and rows with other counts. */
HcFlock *hc_flock_with_counts (HcFlock *flock, const gint64 *counts) G_GNUC_WARN_UNUSED_RESULT;
HcFlock *hc_flock_scaled (HcFlock *flock, gint64 total) G_GNUC_WARN_UNUSED_RESULT;
HcFlock *hc_flock_in_pens (HcFlock *flock, const char *const *pens) G_GNUC_WARN_UNUSED_RESULT;
HcFlock *hc_flock_with_hens (HcFlock *flock, const HcKind *kind, gint64 hens,
                             const char *pen) G_GNUC_WARN_UNUSED_RESULT;

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcFlock, hc_flock_unref)

G_END_DECLS
