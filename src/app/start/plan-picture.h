/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A small picture of a plan's floor. */
#pragma once

#include "plan/plan.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_PLAN_PICTURE (hc_plan_picture_get_type ())
G_DECLARE_FINAL_TYPE (HcPlanPicture, hc_plan_picture, HC, PLAN_PICTURE, GtkWidget)

void hc_plan_picture_set_plan (HcPlanPicture *self, HcPlan *plan);

G_END_DECLS
