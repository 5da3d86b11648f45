/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Small linear programmes: the most of something within a few bounds. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* Private to core. Room for @n_rows bounds on @n_columns amounts; every
 * amount counts one towards what is made largest, and none is negative. */
typedef struct _HcSimplex HcSimplex;

HcSimplex *hc_simplex_new (guint n_rows, guint n_columns) G_GNUC_WARN_UNUSED_RESULT;
void hc_simplex_free (HcSimplex *self);
void hc_simplex_set (HcSimplex *self, guint row, guint column, double factor);
void hc_simplex_set_bound (HcSimplex *self, guint row, double bound);
double hc_simplex_solve (HcSimplex *self, double *amounts);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcSimplex, hc_simplex_free)

G_END_DECLS
