/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How a flock is laid out, for those who put one together. */
#pragma once

#include "flock/flock.h"

G_BEGIN_DECLS

/* Bodies are shared by the flocks made from this one by scaling. */
struct _HcFlock
{
  gatomicrefcount refs;
  HcBook *book;
  GArray *bodies;
  GArray *rows;
  gint64 total;
};

HcFlock *hc_flock_new (HcBook *book, GArray *bodies) G_GNUC_WARN_UNUSED_RESULT;
void hc_flock_add_row (HcFlock *flock, const HcFlockRow *row);
gboolean hc_bodies_intern (GArray *bodies, const HcBody *body, guint *index);

G_END_DECLS
