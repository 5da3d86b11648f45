/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: what the edits have in common. */
#pragma once

#include "base/error.h"
#include "plan/plan.h"

G_BEGIN_DECLS

gpointer hc_edit_refuse (GError **error, const char *sentence, ...) G_GNUC_PRINTF (2, 3);
gboolean hc_edit_accepts (const HcPlan *plan, const HcPartClass *klass, gconstpointer values,
                          GError **error);
gboolean hc_plan_has_id (const HcPlan *plan, const char *id);
gboolean hc_edit_id_is_free (const HcPlan *plan, const char *id, GError **error);
HcPlan *hc_edit_with_layout (HcPlan *plan, const HcLayoutValues *values)
    G_GNUC_WARN_UNUSED_RESULT;
void hc_edit_put (HcParts **parts, gpointer part);
void hc_edit_drop (HcParts **parts, const char *id);
HcLayoutValues hc_edit_hold_layout (const HcLayout *layout);
void hc_edit_let_go_layout (HcLayoutValues *values);

G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (HcLayoutValues, hc_edit_let_go_layout)

G_END_DECLS
