/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One line or paragraph of a report; private to the report. */
#pragma once

#include "drawing/sheet.h"
#include "drawing/text.h"

G_BEGIN_DECLS

#define HC_REPORT_NO_LEVEL -1

/**
 * HcReportLine:
 * @hand: how it is written
 * @text: what it says
 * @aside: (nullable): what stands at the right
 * @level: a #HcLevel whose mark stands before it, %HC_REPORT_NO_LEVEL for none
 * @share: part of a bar at the right that is filled, negative for no bar
 * @indent: from the left, in points
 * @above: empty room above it, in points
 * @height: its height, in points
 * @page: the page it is on, from 0
 * @y: where on that page it starts
 */
typedef struct
{
  HcHand hand;
  char *text;
  char *aside;
  int level;
  double share;
  double indent;
  double above;
  double height;
  guint page;
  double y;
} HcReportLine;

GArray *hc_report_lines_write (const HcSheet *sheet) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
