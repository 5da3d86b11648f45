/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Who got which place, kept for finding reasons and for drawing birds. */
#include "config.h"

#include "needs/allotment.h"

#include "needs/allot/allotment-private.h"

struct _HcAllotment
{
  gatomicrefcount refs;
  GPtrArray *offers;
  GArray *seats;
  gint64 served;
  gint64 left_over[HC_MOST_BODIES];
  gboolean exact;
};

HcAllotment *
hc_allotment_new (gboolean exact)
{
  HcAllotment *self = g_new0 (HcAllotment, 1);

  g_atomic_ref_count_init (&self->refs);
  self->offers = g_ptr_array_new_with_free_func ((GDestroyNotify) hc_offer_unref);
  self->seats = g_array_new (FALSE, FALSE, sizeof (HcSeat));
  self->exact = exact;
  return self;
}

guint
hc_allotment_add_offer (HcAllotment *self, HcOffer *offer)
{
  guint index;

  if (g_ptr_array_find (self->offers, offer, &index))
    return index;
  g_ptr_array_add (self->offers, hc_offer_ref (offer));
  return self->offers->len - 1;
}

void
hc_allotment_add_seat (HcAllotment *self, const HcSeat *seat)
{
  g_array_append_vals (self->seats, seat, 1);
  self->served += seat->count;
}

void
hc_allotment_set_left_over (HcAllotment *self, guint body, gint64 birds)
{
  self->left_over[body] = birds;
}

HcAllotment *
hc_allotment_ref (HcAllotment *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  g_atomic_ref_count_inc (&self->refs);
  return self;
}

void
hc_allotment_unref (HcAllotment *self)
{
  g_return_if_fail (self != NULL);
  if (!g_atomic_ref_count_dec (&self->refs))
    return;
  g_ptr_array_unref (self->offers);
  g_array_unref (self->seats);
  g_free (self);
}

guint
hc_allotment_get_n_seats (const HcAllotment *self)
{
  return self->seats->len;
}

/**
 * hc_allotment_get_seat: (skip)
 * @self: an allotment
 * @seat: index of a seat
 *
 * Returns: (transfer none): birds of one body that have one place
 */
const HcSeat *
hc_allotment_get_seat (const HcAllotment *self, guint seat)
{
  g_return_val_if_fail (seat < self->seats->len, NULL);
  return &g_array_index (self->seats, HcSeat, seat);
}

/**
 * hc_allotment_get_offer: (skip)
 * @self: an allotment
 * @offer: index of an offer, as seats name it
 *
 * Returns: (transfer none): the offer
 */
HcOffer *
hc_allotment_get_offer (const HcAllotment *self, guint offer)
{
  g_return_val_if_fail (offer < self->offers->len, NULL);
  return g_ptr_array_index (self->offers, offer);
}

/**
 * hc_allotment_get_served: (skip)
 * @self: an allotment
 *
 * Returns: birds that have a place
 */
gint64
hc_allotment_get_served (const HcAllotment *self)
{
  return self->served;
}

/**
 * hc_allotment_get_left_over: (skip)
 * @self: an allotment
 * @body: index of a body
 *
 * Returns: birds of that body that have none
 */
gint64
hc_allotment_get_left_over (const HcAllotment *self, guint body)
{
  g_return_val_if_fail (body < HC_MOST_BODIES, 0);
  return self->left_over[body];
}

/**
 * hc_allotment_is_exact: (skip)
 * @self: an allotment
 *
 * Returns: whether no better one exists; otherwise at least so many fit
 */
gboolean
hc_allotment_is_exact (const HcAllotment *self)
{
  return self->exact;
}
