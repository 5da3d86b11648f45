/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * With how many birds the nights are well. */
#include "config.h"

#include "climate/bird-range.h"

#include "climate/risk.h"

/* How many sizes of flock are tried, and up to how many times the flock there is. */
#define N_TRIED 24
#define TIMES 8

static gboolean
is_well (const HcHouseNight *asked, gint64 birds)
{
  g_autoptr (HcFlock) flock = hc_flock_scaled (asked->ask.flock, birds);
  g_autoptr (HcHouseNight) night
      = hc_house_night_new (asked->plan, asked->ask.house, flock, &asked->ask.weather);

  return hc_night_count_faults (&night->night, HC_NIGHT_VENT_FAULTS) == 0;
}

/* The last number like @same on the way to @other, which is not. */
static gint64
find_edge (const HcHouseNight *asked, gint64 same, gint64 other)
{
  while (ABS (other - same) > 1)
    {
      gint64 middle = same + (other - same) / 2;

      if (is_well (asked, middle))
        same = middle;
      else
        other = middle;
    }
  return same;
}

static guint
list_sizes (gint64 birds, gint64 *sizes)
{
  gint64 most = TIMES * birds;
  guint n = 0;

  for (guint i = 0; i < N_TRIED; i++)
    {
      gint64 size = 1 + (most - 1) * (gint64) ((i + 1) * (i + 1)) / (N_TRIED * N_TRIED);

      if (n == 0 || size > sizes[n - 1])
        sizes[n++] = size;
    }
  return n;
}

/* The well size nearest to the birds there are, or @n where there is none. */
static guint
find_nearest_well (const gboolean *well, const gint64 *sizes, guint n, gint64 birds)
{
  guint nearest = n;

  for (guint i = 0; i < n; i++)
    if (well[i] && (nearest == n || ABS (sizes[i] - birds) < ABS (sizes[nearest] - birds)))
      nearest = i;
  return nearest;
}

/**
 * hc_night_find_bird_range: (skip)
 * @asked: a night
 * @range: (out caller-allocates): with how many of these birds it is well: nothing that
 *   air can mend is wrong
 *
 * Air is a balance, not a count: with few birds a house can be damp for want of
 * warmth, with many for their breath. Of several intervals the one nearest to the birds
 * there are is told.
 */
void
hc_night_find_bird_range (const HcHouseNight *asked, HcBirdRange *range)
{
  gint64 birds = hc_flock_get_total (asked->ask.flock);
  gint64 sizes[N_TRIED];
  gboolean well[N_TRIED];
  guint n = birds > 0 && birds < G_MAXINT32 ? list_sizes (birds, sizes) : 0;
  guint first, last;

  *range = (HcBirdRange){ 0 };
  for (guint i = 0; i < n; i++)
    well[i] = is_well (asked, sizes[i]);
  first = last = find_nearest_well (well, sizes, n, birds);
  if (first == n)
    return;
  while (first > 0 && well[first - 1])
    first--;
  while (last + 1 < n && well[last + 1])
    last++;
  range->is_open = last + 1 == n;
  range->least = first > 0 ? find_edge (asked, sizes[first], sizes[first - 1]) : 1;
  range->most = range->is_open ? sizes[last] : find_edge (asked, sizes[last], sizes[last + 1]);
}
