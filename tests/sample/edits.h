/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One edit of each sort, for what has to hold of all of them. */
#pragma once

#include "plan/plan.h"

/* An edit of the plan of two pens, which it changes. */
typedef struct
{
  const char *name;
  HcPlan *(*make) (HcPlan *plan, GError **error);
} SampleEdit;

guint sample_edits_get_n (void);
const SampleEdit *sample_edits_get (guint index);
HcPlan *sample_edit_make (const SampleEdit *edit, HcPlan *plan);
