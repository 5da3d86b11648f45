/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Measures a new house is laid out by where its birds ask for none. */
#pragma once

#include "book/source.h"

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcHouseMeasure:
 * @id: its id, interned; it ends in the unit
 * @value: how much
 * @evidence: what stands behind it
 * @source: (nullable): what was published about it
 * @note: what it is, in English
 *
 * A measure of new houses.
 */
typedef struct
{
  const char *id;
  double value;
  HcEvidence evidence;
  const HcSource *source;
  const char *note;
} HcHouseMeasure;

G_END_DECLS
