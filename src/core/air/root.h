/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where a function of one number is nothing. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef double (*HcRootFunc) (gpointer data, double x);

/**
 * HcRootPoint:
 * @x: where
 * @y: the function there
 */
typedef struct
{
  double x;
  double y;
} HcRootPoint;

HcRootPoint hc_root_between (HcRootFunc func, gpointer data, HcRootPoint a, HcRootPoint b,
                             double enough);

G_END_DECLS
