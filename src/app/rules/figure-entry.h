/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A figure as the rules window tells it: for whom, how much, who says so. */
#pragma once

#include "book/book.h"

G_BEGIN_DECLS

/**
 * HcFigureEntry:
 * @book: the book
 * @from: the rules it is stated in, kept by the book
 * @limit: (nullable): the limit it is
 * @demand: (nullable): the demand it is, when it is no limit
 */
typedef struct
{
  HcBook *book;
  HcStandard *from;
  const HcLimit *limit;
  const HcDemand *demand;
} HcFigureEntry;

const HcFigure *hc_figure_entry_get_figure (const HcFigureEntry *self);
const char *hc_figure_entry_get_heading (const HcFigureEntry *self);
char *hc_figure_entry_say_who (const HcFigureEntry *self) G_GNUC_WARN_UNUSED_RESULT;
char *hc_figure_entry_say_levels (const HcFigureEntry *self) G_GNUC_WARN_UNUSED_RESULT;
char *hc_figure_entry_say_source (const HcFigureEntry *self) G_GNUC_WARN_UNUSED_RESULT;
gboolean hc_figure_entry_matches (const HcFigureEntry *self, const char *text);

G_END_DECLS
