/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How much is wrong with a plan, as one thing that can only be more or less. */
#pragma once

#include "needs/check.h"

G_BEGIN_DECLS

/* Private to mend/. What is to be fixed now, and what is worth doing: the first
 * outweighs any of the second. */
typedef struct
{
  double now;
  double soon;
} HcScore;

HcScore hc_score_of (const HcCheck *check);
gboolean hc_score_is_less (HcScore one, HcScore other);
double hc_score_weigh (const HcCheck *check, const HcFinding *finding);
const HcFinding *hc_score_find_same (const HcCheck *check, HcNeedId need,
                                     const HcFinding *finding);

G_END_DECLS
