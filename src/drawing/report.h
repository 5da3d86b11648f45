/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The pages behind the drawing: needs, findings, what runs out next. */
#pragma once

#include "drawing/sheet.h"

G_BEGIN_DECLS

/**
 * HcReport:
 *
 * A report laid out in lines, to be drawn page by page.
 */
typedef struct _HcReport HcReport;

HcReport *hc_report_new (const HcSheet *sheet, const HcSheetSize *size, const HcInk *ink);
void hc_report_free (HcReport *self);
guint hc_report_get_n_pages (const HcReport *self);
void hc_report_draw_page (const HcReport *self, const HcInk *ink, guint page);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcReport, hc_report_free)

G_END_DECLS
