/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reads measures such as 2' 3 1/2" or 0,7 m by a table of units. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* A way of writing a unit. */
typedef struct
{
  const char *spelling;
  double factor;
  double next_factor;
} HcUnitSpelling;

typedef enum
{
  HC_MEASURE_READ,
  HC_MEASURE_NOT_UNDERSTOOD,
  HC_MEASURE_TWO_READINGS,
} HcMeasureResult;

HcMeasureResult hc_measure_read (const char *text,
                                 const HcUnitSpelling *spellings,
                                 double bare_factor,
                                 double *value);

G_END_DECLS
