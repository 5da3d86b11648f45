/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What goes on paper: which plan, on which sheet, how large. */
#pragma once

#include "drawing/ink.h"

#include "base/box.h"
#include "book/book.h"
#include "needs/check.h"
#include "needs/ladder.h"

G_BEGIN_DECLS

/**
 * HcPaper:
 * @HC_PAPER_A4: 210 × 297 mm
 * @HC_PAPER_A3: 297 × 420 mm
 * @HC_PAPER_LETTER: 8 1/2 × 11 inches
 */
typedef enum
{
  HC_PAPER_A4,
  HC_PAPER_A3,
  HC_PAPER_LETTER,
  HC_N_PAPERS
} HcPaper;

/**
 * HcSheet:
 * @check: the plan judged
 * @headline: (nullable): how many birds it carries
 * @ladder: (nullable): what runs out next
 * @book: (nullable): what roofs and floors are made of
 * @rules: (nullable): name of the rules it is judged by
 * @paper: the paper
 * @scale: 20 for 1:20; 0 for the largest of the usual scales that fits
 * @wall: (nullable): id of the wall looked at from the side; %NULL to choose one
 */
typedef struct
{
  const HcCheck *check;
  const HcHeadline *headline;
  const HcLadder *ladder;
  const HcBook *book;
  const char *rules;
  HcPaper paper;
  int scale;
  const char *wall;
} HcSheet;

/**
 * HcSheetSize:
 * @width: in points
 * @height: in points
 * @scale: the scale of the floor, 20 for 1:20
 */
typedef struct
{
  double width;
  double height;
  int scale;
} HcSheetSize;

#define HC_POINTS_PER_MM (72.0 / 25.4)
#define HC_SHEET_MARGIN 28.0

double hc_scale_to_units (int scale);
gboolean hc_paper_from_string (const char *word, HcPaper *paper);
gboolean hc_sheet_fit (const HcSheet *sheet, HcSheetSize *size, GError **error);
void hc_sheet_draw_floor (const HcSheet *sheet, const HcSheetSize *size, const HcInk *ink);

G_END_DECLS
