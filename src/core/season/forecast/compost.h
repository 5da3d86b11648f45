/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A compost heap: what is on it, and what would make it right. */
#pragma once

#include "book/life.h"

G_BEGIN_DECLS

/**
 * HcHeap:
 * @kg: all of it, as it lies there
 * @carbon_kg: the carbon in it
 * @nitrogen_kg: the nitrogen in it
 * @water_kg: the water in it
 *
 * What is on a compost heap.
 */
typedef struct
{
  double kg;
  double carbon_kg;
  double nitrogen_kg;
  double water_kg;
} HcHeap;

void hc_heap_add (HcHeap *self, const HcCompost *what, double kg);
double hc_heap_get_ratio (const HcHeap *self);
double hc_heap_get_moisture (const HcHeap *self);
double hc_heap_find_kg (const HcHeap *self, const HcCompost *what, double ratio);

G_END_DECLS
