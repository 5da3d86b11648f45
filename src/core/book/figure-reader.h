/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading the figures of a standard. */
#pragma once

#include "book/record.h"
#include "book/source-reader.h"
#include "book/standard-private.h"

G_BEGIN_DECLS

/* Private to book/. What the figures of one standard share. */
typedef struct
{
  const char *standard;
  const HcSources *sources;
  const char *const *kind_words;
} HcFigureContext;

/* HcReadItem, each with an HcFigureContext. */
void hc_limit_read (HcRecord *record, gpointer item, gpointer user_data);
void hc_demand_read (HcRecord *record, gpointer item, gpointer user_data);

G_END_DECLS
