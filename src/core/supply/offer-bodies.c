/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whom a place suits, and the figures that decide it. */
#include "config.h"

#include "supply/offer-private.h"

HcBodies
hc_bodies_all (const HcOfferContext *context)
{
  return hc_bodies_which (context, NULL);
}

HcBodies
hc_bodies_which (const HcOfferContext *context, HcBodyFilter filter)
{
  HcBodies bodies = 0;

  for (guint i = 0; i < hc_flock_get_n_bodies (context->flock); i++)
    if (filter == NULL || filter (hc_flock_get_body (context->flock, i)))
      bodies |= (HcBodies) 1 << i;
  return bodies;
}

gboolean
hc_bodies_have (HcBodies bodies, guint body)
{
  return (bodies >> body & 1) != 0;
}

/* The limit of that name for @body, or for no bird in particular. */
const HcLimit *
hc_figure_for (const HcOfferContext *context, const char *name, const HcBody *body)
{
  return hc_standard_find_limit (context->standard, name, body != NULL ? body->kind : NULL,
                                 body != NULL ? hc_body_get_week (body) : HC_WEEK_GROWN,
                                 context->condition);
}

/* The bound of a figure that knows no birds; 0 where nothing is asked. */
double
hc_figure_get_bound (const HcOfferContext *context, const char *name, HcLevel level)
{
  const HcLimit *limit = hc_figure_for (context, name, NULL);
  double bound;

  return limit != NULL && hc_limit_get (limit, level, &bound) ? bound : 0;
}

static void
drop_body (HcPlace *place, guint body, const HcLimit *limit, double measured)
{
  for (guint i = 0; i < HC_N_ASKED_LEVELS; i++)
    if (hc_bodies_have (place->suits[i], body)
        && !hc_limit_is_met (limit, HC_LEVEL_TIGHT + i, measured))
      {
        place->suits[i] &= ~((HcBodies) 1 << body);
        if (place->why_not == NULL)
          place->why_not = limit->figure.id;
      }
}

/* Takes from the place the bodies whose limit of that name is not met. */
void
hc_place_keep_within (HcPlace *place, const HcOfferContext *context, const char *name,
                      double measured)
{
  for (guint i = 0; i < hc_flock_get_n_bodies (context->flock); i++)
    {
      const HcLimit *limit
          = hc_figure_for (context, name, hc_flock_get_body (context->flock, i));

      if (limit != NULL)
        drop_body (place, i, limit, measured);
    }
}
