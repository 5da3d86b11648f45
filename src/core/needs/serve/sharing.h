/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Serving birds from places they share by amount. */
#pragma once

#include "needs/allot/flow.h"
#include "needs/serve/serving.h"

G_BEGIN_DECLS

/* Private to needs/: one sort of place, what is asked of it, and the unit
 * word of both. */
typedef struct
{
  HcOfferKind kind;
  const char *figure;
  const char *unit;
} HcSharedSort;

/* Private to needs/.
 * @sorts: the sorts of place, any one of which serves a bird
 * @split: (nullable): which sort a place is of, where one kind of offer has
 *   several
 * @most: (nullable): birds a place is made for, whatever it measures; 0 where
 *   nobody says
 * @test: (nullable): rooms whose places count
 * @bodies: birds it concerns; those no figure speaks of are left out
 * @times: makes the ask larger
 * @basis: (nullable): what shares in figures are shares of */
typedef struct
{
  const HcSharedSort *sorts;
  guint n_sorts;
  guint (*split) (const HcNeedContext *context, const HcPlace *place);
  gint64 (*most) (const HcNeedContext *context, const HcPlace *place);
  HcRoomTest test;
  HcBodies bodies;
  double times;
  const HcBasis *basis;
} HcSharing;

void hc_sharing_serve (const HcSharing *self, const HcNeedContext *context, HcLevel level,
                       gboolean details, HcServing *serving);

G_END_DECLS
