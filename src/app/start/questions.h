/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The three questions: how large, which birds, how cold. */
#pragma once

#include "plan/plan.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define HC_TYPE_QUESTIONS (hc_questions_get_type ())
/**
 * HcQuestions:
 *
 * Signal `begin` with an #HcPlan: the answer.
 */
G_DECLARE_FINAL_TYPE (HcQuestions, hc_questions, HC, QUESTIONS, GtkBox)

G_END_DECLS
