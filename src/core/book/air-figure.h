/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Figures of air, damp, cold and heat that are uncertain, with their ranges. */
#pragma once

#include "book/source.h"

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcAirFigure:
 * @id: its id, interned
 * @value: what is reckoned with
 * @low: the lowest it may be
 * @high: the highest it may be
 * @evidence: what stands behind it
 * @source: (nullable): what was published about it
 * @note: what it is, in English
 *
 * A figure of air and damp; the limits are how sure it is.
 */
typedef struct
{
  const char *id;
  double value;
  double low;
  double high;
  HcEvidence evidence;
  const HcSource *source;
  const char *note;
} HcAirFigure;

G_END_DECLS
