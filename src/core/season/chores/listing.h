/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A list of things to do while it is put together. */
#pragma once

#include "season/chores/tasks.h"

G_BEGIN_DECLS

/* Private to season/chores/. */
typedef struct
{
  HcPlan *plan;
  HcBook *book;
  HcStandard *standard;
  HcTimeline *timeline;
  GArray *bands;
  guint32 from;
  guint32 until;
  GArray *tasks;
} HcListing;

void hc_listing_add (HcListing *self, HcTask task);
void hc_listing_add_hatching (HcListing *self);
void hc_listing_add_birds (HcListing *self);
void hc_listing_add_routines (HcListing *self);
void hc_listing_add_seasons (HcListing *self);

G_END_DECLS
