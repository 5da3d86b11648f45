/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Served, left over, and why, however the places are shared out. */
#include "config.h"

#include "needs/serve/serving.h"

#include "needs/allot/allotment-private.h"

void
hc_serving_clear (HcServing *self)
{
  g_clear_pointer (&self->only, g_ptr_array_unref);
  g_clear_pointer (&self->allotment, hc_allotment_unref);
}

void
hc_serving_set_served (HcServing *self, const HcNeedContext *context, HcBodies bodies,
                       const gint64 *served)
{
  for (guint body = 0; body < hc_need_context_get_n_bodies (context); body++)
    if (bodies >> body & 1)
      {
        self->there += context->counts[body];
        self->served += served[body];
        self->left[body] = context->counts[body] - served[body];
      }
}

HcBodies
hc_serving_get_left_over (const HcServing *self)
{
  HcBodies bodies = 0;

  for (guint body = 0; body < HC_MOST_BODIES; body++)
    if (self->left[body] > 0)
      bodies |= (HcBodies) 1 << body;
  return bodies;
}

/* Keeps who competes for which places, when that is not simply all of them. */
void
hc_serving_confine (HcServing *self, HcBodies bodies, const HcFounds *founds,
                    const gboolean *within)
{
  gboolean others = FALSE;
  GPtrArray *only = g_ptr_array_new ();

  for (guint i = 0; i < founds->places->len; i++)
    {
      const HcFound *found = hc_founds_get (founds, i);
      const char *id = hc_found_get_id (found);

      if (!within[i])
        others = others || found->suits != 0;
      else if (id != NULL && !g_ptr_array_find_with_equal_func (only, id, g_str_equal, NULL))
        g_ptr_array_add (only, (gpointer) id);
    }
  if (!others || only->len == 0)
    {
      g_ptr_array_unref (only);
      return;
    }
  self->confined = bodies;
  self->only = only;
}

/* @seats: n_bodies rows of whole birds at each place. */
void
hc_serving_allot (HcServing *self, const HcFounds *founds, const gint64 *seats, guint n_bodies)
{
  guint n_places = founds->places->len;

  self->allotment = hc_allotment_new (self->exact);
  for (guint i = 0; i < founds->offers->len; i++)
    hc_allotment_add_offer (self->allotment, founds->offers->pdata[i]);
  for (guint body = 0; body < n_bodies; body++)
    {
      hc_allotment_set_left_over (self->allotment, body, self->left[body]);
      for (guint i = 0; i < n_places; i++)
        {
          const HcFound *found = hc_founds_get (founds, i);
          HcSeat seat = { 0, found->index, body, seats[body * n_places + i] };

          if (seat.count == 0 || found->offer == NULL)
            continue;
          seat.offer = hc_allotment_add_offer (self->allotment, found->offer);
          hc_allotment_add_seat (self->allotment, &seat);
        }
    }
}
