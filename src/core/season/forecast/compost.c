/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Carbon and nitrogen of a mixture: R = Σ Q·C·(100 − M) / Σ Q·N·(100 − M), with
 * masses Q, water M and shares C and N of the dry mass in percent. */
#include "config.h"

#include "season/forecast/compost.h"

static double
get_nitrogen_share (const HcCompost *what)
{
  return (100 - what->moisture_percent) / 100 * what->nitrogen_percent / 100;
}

/**
 * hc_heap_add: (skip)
 * @self: a heap
 * @what: what goes on it
 * @kg: how much, as it comes
 */
void
hc_heap_add (HcHeap *self, const HcCompost *what, double kg)
{
  double nitrogen_kg = kg * get_nitrogen_share (what);

  self->kg += kg;
  self->nitrogen_kg += nitrogen_kg;
  self->carbon_kg += nitrogen_kg * what->carbon_to_nitrogen;
  self->water_kg += kg * what->moisture_percent / 100;
}

/**
 * hc_heap_get_ratio: (skip)
 * @self: a heap
 *
 * Returns: carbon for one of nitrogen, 0 for an empty heap
 */
double
hc_heap_get_ratio (const HcHeap *self)
{
  return self->nitrogen_kg > 0 ? self->carbon_kg / self->nitrogen_kg : 0;
}

/**
 * hc_heap_get_moisture: (skip)
 * @self: a heap
 *
 * Returns: the share of it that is water
 */
double
hc_heap_get_moisture (const HcHeap *self)
{
  return self->kg > 0 ? self->water_kg / self->kg : 0;
}

/**
 * hc_heap_find_kg: (skip)
 * @self: a heap
 * @what: what could be added
 * @ratio: carbon for one of nitrogen it shall have
 *
 * Returns: how much of @what brings it there, kg; 0 when it is there already,
 *   or @what leads away from it
 */
double
hc_heap_find_kg (const HcHeap *self, const HcCompost *what, double ratio)
{
  double short_of = ratio * self->nitrogen_kg - self->carbon_kg;
  double each = get_nitrogen_share (what) * (what->carbon_to_nitrogen - ratio);

  if (each == 0 || short_of / each <= 0)
    return 0;
  return short_of / each;
}
