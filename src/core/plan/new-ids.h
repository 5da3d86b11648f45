/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: ids handed into an edit, used up one by one. */
#pragma once

#include "plan/edit.h"

G_BEGIN_DECLS

typedef struct
{
  const char *const *ids;
  guint next;
} HcNewIds;

const char *hc_new_ids_take (HcNewIds *self, const HcPlan *plan, GError **error);

G_END_DECLS
