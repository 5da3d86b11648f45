/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A chore ticked off, or one of the keeper's own. */
#pragma once

#include "base/part.h"

G_BEGIN_DECLS

/**
 * HcChoreValues:
 * @what: the word of a chore that follows from the plan, empty for an own one
 * @of: id of the group, the eggs or the thing it is about
 * @on: the day it falls on
 * @name: the keeper's own words for it
 * @done: the day it was done, 0 while it is open
 */
typedef struct
{
  char *what;
  char *of;
  guint32 on;
  char *name;
  guint32 done;
} HcChoreValues;

HC_DECLARE_PART (HcChore, hc_chore)

G_END_DECLS
