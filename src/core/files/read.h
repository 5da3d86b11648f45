/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Plan files: text to plan. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

/**
 * HC_PLAN_VERSION:
 *
 * The version of plan files this library writes.
 */
#define HC_PLAN_VERSION 1

#define HC_TYPE_PLAN_FILE (hc_plan_file_get_type ())

/**
 * HcPlanFile:
 * @plan: the plan in it
 * @version: the version of the file
 * @read_only: whether it comes from a newer version: @plan then lacks what is
 *   not known here and must not be saved over the file
 * @n_unknown: how many parts and members of a newer file were left out
 *
 * A plan as it was read.
 */
typedef struct
{
  HcPlan *plan;
  guint version;
  gboolean read_only;
  guint n_unknown;
} HcPlanFile;

GType hc_plan_file_get_type (void);

HcPlanFile *hc_plan_file_read (const char *text,
                               gsize length,
                               GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlanFile *hc_plan_file_copy (const HcPlanFile *self) G_GNUC_WARN_UNUSED_RESULT;
void hc_plan_file_free (HcPlanFile *self);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcPlanFile, hc_plan_file_free)

G_END_DECLS
