/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the keeper can set of each part of a plan: one row of a table each. */
#pragma once

#include "book/book.h"
#include "plan/plan.h"

G_BEGIN_DECLS

/**
 * HcChoices:
 * @HC_CHOICES_NONE: the member is not an id of the book
 * @HC_CHOICES_BEDDING: beddings
 * @HC_CHOICES_MESH: meshes
 * @HC_CHOICES_LATCH: latches
 * @HC_CHOICES_FLOOR: floor layers
 * @HC_CHOICES_BREED: breeds
 * @HC_CHOICES_KIND: kinds of bird
 * @HC_CHOICES_PEN: pens of the plan
 *
 * Which entries of the book, or of the plan, a text member is one of.
 */
typedef enum
{
  HC_CHOICES_NONE,
  HC_CHOICES_BEDDING,
  HC_CHOICES_MESH,
  HC_CHOICES_LATCH,
  HC_CHOICES_FLOOR,
  HC_CHOICES_BREED,
  HC_CHOICES_KIND,
  HC_CHOICES_PEN,
  HC_CHOICES_BUILDING,
} HcChoices;

/**
 * HcProperty:
 * @member: the member's name in plan files
 * @label: what the keeper reads, marked for translation
 * @suits: (nullable): whether a part with these values has it
 * @words: (nullable): what the keeper reads for each word of the member
 * @choices: which entries of the book it is one of
 */
typedef struct
{
  const char *member;
  const char *label;
  gboolean (*suits) (gconstpointer values, HcBook *book);
  const char *const *words;
  HcChoices choices;
} HcProperty;

const HcProperty *hc_properties_of (const HcPartClass *klass, guint *n_properties);
gboolean hc_property_suits (const HcPartClass *klass, const char *member, gconstpointer values,
                            HcBook *book);
const HcMember *hc_property_find_member (const HcPartClass *klass, const char *name);

G_END_DECLS
