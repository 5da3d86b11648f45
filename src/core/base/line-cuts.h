/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where lines on a grid cross or touch each other. */
#pragma once

#include "base/linework.h"

G_BEGIN_DECLS

/* @along is how far along the line, times the length of the line. */
typedef struct
{
  guint line;
  gint64 along;
  HcGridPoint at;
} HcLineCut;

GArray *hc_line_cuts_find (const GArray *sorted) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
