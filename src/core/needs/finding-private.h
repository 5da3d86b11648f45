/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How a finding is written, before it is handed out. */
#pragma once

#include "needs/finding.h"

G_BEGIN_DECLS

/* Private to needs/. Findings are shared by reference between checks. */
HcFinding *hc_finding_new (const char *code, HcLevel level) G_GNUC_WARN_UNUSED_RESULT;
HcFinding *hc_finding_ref (HcFinding *finding);
void hc_finding_unref (HcFinding *finding);
HcFinding *hc_finding_with_others (const HcFinding *finding, HcFinding *const *others,
                                   guint n_others) G_GNUC_WARN_UNUSED_RESULT;
void hc_finding_add_id (HcFinding *finding, const char *id);
void hc_finding_add_animal (HcFinding *finding, const char *animal);
void hc_finding_add_line (HcFinding *finding, HcPoint from, HcPoint to);
void hc_finding_set_measure (HcFinding *finding, double measured, double required,
                             const char *unit);
void hc_finding_set_area (HcFinding *finding, HcShape *area);
void hc_finding_set_figure (HcFinding *finding, HcStandard *standard, const HcFigure *figure);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcFinding, hc_finding_unref)

G_END_DECLS
