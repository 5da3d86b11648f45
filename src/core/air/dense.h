/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A few linear equations, solved. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HC_DENSE_MOST:
 *
 * The most equations.
 */
#define HC_DENSE_MOST 8

typedef double HcDense[HC_DENSE_MOST][HC_DENSE_MOST];

void hc_dense_solve (guint n, HcDense matrix, double *right);

G_END_DECLS
