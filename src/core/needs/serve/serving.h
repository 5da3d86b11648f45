/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How many birds of a space are served at one level, and who is not. */
#pragma once

#include "needs/serve/asking.h"
#include "needs/serve/found.h"

G_BEGIN_DECLS

/* Private to needs/.
 * @there: birds the need concerns
 * @left: birds of each body left over
 * @nothing: there is no place of the kind at all
 * @kept: some place is made for fewer birds than its measure says
 * @offered, @required, @unit: the measure behind it
 * @confined: bodies that compete for @only, the places they can use, where
 *   there are others they cannot
 *
 * All after @exact is filled only when details are asked for. */
struct _HcServing
{
  gint64 there;
  gint64 served;
  gint64 left[HC_MOST_BODIES];
  gboolean exact;
  gboolean nothing;
  gboolean kept;
  double offered;
  double required;
  const char *unit;
  const HcFigure *figure;
  HcBodies confined;
  GPtrArray *only;
  HcAllotment *allotment;
};

void hc_serving_clear (HcServing *self);
void hc_serving_set_served (HcServing *self, const HcNeedContext *context, HcBodies bodies,
                            const gint64 *served);
HcBodies hc_serving_get_left_over (const HcServing *self);
void hc_serving_confine (HcServing *self, HcBodies bodies, const HcFounds *founds,
                         const gboolean *within);
void hc_serving_allot (HcServing *self, const HcFounds *founds, const gint64 *seats,
                       guint n_bodies);

G_END_DECLS
