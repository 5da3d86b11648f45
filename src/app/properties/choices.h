/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What there is to pick from: entries of the book, pens and buildings of the plan. */
#pragma once

#include "app/fields/picker.h"
#include "app/properties/property-table.h"

G_BEGIN_DECLS

void hc_choices_offer_book (HcPicker *picker, HcBook *book, HcChoices choices);
void hc_choices_offer_plan (HcPicker *picker, HcPlan *plan, HcChoices choices);

G_END_DECLS
