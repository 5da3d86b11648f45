/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What can be unsound about a plan, and how it is said. */
#pragma once

#include "base/part.h"

G_BEGIN_DECLS

/**
 * HcFaultKind: (skip)
 * @HC_FAULT_NONE: the plan is sound
 * @HC_FAULT_NUMBER: a number is outside its bounds, or is none
 * @HC_FAULT_WORD: a kind that does not exist
 * @HC_FAULT_DATE: a day that does not exist
 * @HC_FAULT_TEXT: text that is not UTF-8
 * @HC_FAULT_EMPTY: a member that must say something says nothing
 * @HC_FAULT_ID: an id no part may have
 * @HC_FAULT_ID_TWICE: two parts with one id
 * @HC_FAULT_NO_LAYOUT: a plan without a layout
 * @HC_FAULT_NO_SUCH: the id of a part that does not exist
 * @HC_FAULT_SHORT_WALL: a wall without length
 * @HC_FAULT_CROWDED_WALL: a wall with more than two pens beside it
 * @HC_FAULT_TOO_MANY: more walls round one pen, or openings in one wall, than
 *   can be meant
 * @HC_FAULT_NO_RING: a pen whose walls do not close
 * @HC_FAULT_CROSSING: a pen whose outline crosses itself
 * @HC_FAULT_NO_FLOOR: a pen whose walls lie on one line
 * @HC_FAULT_PAST_END: an opening that sticks out past its wall's end
 * @HC_FAULT_OVERLAP: two openings over each other in one wall
 * @HC_FAULT_BEFORE_HATCH: something happens to birds before they hatch
 * @HC_FAULT_MORE_THAN_THERE: more birds go than there are
 * @HC_FAULT_LOW_ABOVE_HIGH: a range whose low end is above its high end
 * @HC_FAULT_MORE_THAN_SET: more chicks or fertile eggs than eggs were set
 */
typedef enum
{
  HC_FAULT_NONE,
  HC_FAULT_NUMBER,
  HC_FAULT_WORD,
  HC_FAULT_DATE,
  HC_FAULT_TEXT,
  HC_FAULT_EMPTY,
  HC_FAULT_ID,
  HC_FAULT_ID_TWICE,
  HC_FAULT_NO_LAYOUT,
  HC_FAULT_NO_SUCH,
  HC_FAULT_SHORT_WALL,
  HC_FAULT_CROWDED_WALL,
  HC_FAULT_TOO_MANY,
  HC_FAULT_NO_RING,
  HC_FAULT_CROSSING,
  HC_FAULT_NO_FLOOR,
  HC_FAULT_PAST_END,
  HC_FAULT_OVERLAP,
  HC_FAULT_BEFORE_HATCH,
  HC_FAULT_MORE_THAN_THERE,
  HC_FAULT_LOW_ABOVE_HIGH,
  HC_FAULT_MORE_THAN_SET,
} HcFaultKind;

/**
 * HcFault: (skip)
 * @kind: what is wrong
 * @path: (nullable): where, such as "variants[0].pens[2].height_mm"
 * @id: (nullable): the id of the part at fault, or the id that names nothing
 * @other: (nullable): the id of the other part concerned
 * @member: (nullable): the row of the member at fault, with its bounds and words
 *
 * The first thing found to be wrong with a plan.
 */
typedef struct
{
  HcFaultKind kind;
  char *path;
  char *id;
  char *other;
  const HcMember *member;
} HcFault;

void hc_fault_clear (HcFault *self);
char *hc_fault_describe (const HcFault *self) G_GNUC_WARN_UNUSED_RESULT;

G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (HcFault, hc_fault_clear)

G_END_DECLS
