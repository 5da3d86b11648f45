/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Which flock of n birds is meant when someone asks how many. */
#pragma once

#include "needs/ladder.h"

G_BEGIN_DECLS

/* Private to needs/. @base has the table of bodies all flocks of the question
 * share; @pen is where birds live that have no home yet. */
typedef struct
{
  HcLadderQuestion question;
  HcBook *book;
  HcFlock *asked;
  HcFlock *base;
  const HcKind *kind;
  const char *pen;
  gint64 there;
} HcQuestion;

void hc_question_init (HcQuestion *self, HcLadderQuestion question, HcBook *book,
                       HcLayout *layout, HcFlock *flock, const HcKind *kind);
void hc_question_clear (HcQuestion *self);
HcFlock *hc_question_get_flock (const HcQuestion *self, gint64 birds) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
