/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: whether walls still enclose pens after an edit. */
#pragma once

#include "plan/edit.h"

G_BEGIN_DECLS

HcPlan *hc_edit_if_sound (HcPlan *before, HcPlan *after, GError **error);

G_END_DECLS
