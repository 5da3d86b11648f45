/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Bars are looked at in rows of parallel ones, each row from one side: of bars
 * too near to each other that keeps as many as there can be, and taking a bar
 * away never gives more. */
#include "config.h"

#include "supply/bars.h"

#include <math.h>

/* Bars turned by less than five degrees count as parallel. */
#define PARALLEL_SINE 0.087

/* A bar in a row of parallel ones; @square_mm is how far it is from the row's
 * first. */
typedef struct
{
  guint bar;
  double square_mm;
  double height_mm;
  double length_mm;
} InRow;

static void
add_bars_of (const HcFitting *roost, GArray *bars)
{
  for (int i = 0; i < hc_fitting_get (roost)->bars; i++)
    {
      HcRoomBar bar = { .roost = roost, .part = (guint) i,
                        .length_mm = hc_fitting_get (roost)->width_mm };

      hc_stand_get_bar (roost, bar.part, &bar.bar);
      g_array_append_val (bars, bar);
    }
}

/**
 * hc_bars_of_room: (skip)
 * @room: a room
 *
 * Returns: (transfer full) (element-type HcRoomBar): the bars of its roosts
 */
GArray *
hc_bars_of_room (const HcRoom *room)
{
  HcParts *fittings = hc_room_get (room)->fittings;
  GArray *bars = g_array_new (FALSE, FALSE, sizeof (HcRoomBar));

  for (guint i = 0; i < fittings->len; i++)
    if (hc_fitting_get (fittings->pdata[i])->kind == HC_FITTING_ROOST)
      add_bars_of (fittings->pdata[i], bars);
  return bars;
}

static HcPoint
way_of (const HcRoomBar *bar)
{
  return hc_point_unit (hc_point_subtract (bar->bar.to, bar->bar.from));
}

static int
compare_measures (double a, double b)
{
  return (a > b) - (a < b);
}

/* Longer bars first, of equal ones the higher. */
static int
compare_bars (gconstpointer a, gconstpointer b, gpointer bars)
{
  const HcRoomBar *one = &g_array_index ((GArray *) bars, HcRoomBar, *(const guint *) a);
  const HcRoomBar *other = &g_array_index ((GArray *) bars, HcRoomBar, *(const guint *) b);
  int longer = compare_measures (other->length_mm, one->length_mm);

  return longer != 0 ? longer : compare_measures (other->bar.height_mm, one->bar.height_mm);
}

/* Higher bars first, of equal ones the longer. */
static int
compare_merits (const InRow *one, const InRow *other)
{
  int higher = compare_measures (other->height_mm, one->height_mm);

  return higher != 0 ? higher : compare_measures (other->length_mm, one->length_mm);
}

static int
compare_in_row (gconstpointer a, gconstpointer b)
{
  const InRow *one = a, *other = b;
  int farther = compare_measures (one->square_mm, other->square_mm);

  return farther != 0 ? farther : compare_merits (one, other);
}

static gboolean
is_better_from_behind (const GArray *row)
{
  for (guint i = 0; i < row->len; i++)
    {
      int merits = compare_merits (&g_array_index (row, InRow, i),
                                   &g_array_index (row, InRow, row->len - 1 - i));

      if (merits != 0)
        return merits > 0;
    }
  return FALSE;
}

/* A row is looked at from the side of its higher bars, whichever way the plan
 * is turned. */
static void
sort_row (GArray *row)
{
  g_array_sort (row, compare_in_row);
  if (!is_better_from_behind (row))
    return;
  for (guint i = 0; i < row->len; i++)
    g_array_index (row, InRow, i).square_mm *= -1;
  g_array_sort (row, compare_in_row);
}

/* Rounded coarsely, so that turning a plan does not change the order. */
static double
get_distance_mm (const HcRoomBar *first, const HcRoomBar *bar)
{
  HcPoint way = hc_point_subtract (bar->bar.from, first->bar.from);

  return round (hc_point_cross (way_of (first), way) * 10) / 10;
}

static GArray *
find_row (const GArray *bars, const guint *by_length, guint first, gboolean *taken)
{
  GArray *row = g_array_new (FALSE, FALSE, sizeof (InRow));
  const HcRoomBar *seed = &g_array_index (bars, HcRoomBar, by_length[first]);

  for (guint i = first; i < bars->len; i++)
    {
      guint at = by_length[i];
      const HcRoomBar *bar = &g_array_index (bars, HcRoomBar, at);
      InRow in_row
          = { at, get_distance_mm (seed, bar), bar->bar.height_mm, bar->length_mm };

      if (taken[at] || fabs (hc_point_cross (way_of (seed), way_of (bar))) > PARALLEL_SINE)
        continue;
      taken[at] = TRUE;
      g_array_append_val (row, in_row);
    }
  sort_row (row);
  return row;
}

/**
 * hc_bars_get_order: (skip)
 * @bars: (element-type HcRoomBar): bars of a room
 *
 * Returns: (transfer full): the bars' indices in the order they are looked at
 */
guint *
hc_bars_get_order (const GArray *bars)
{
  g_autofree guint *by_length = g_new (guint, bars->len + 1);
  g_autofree gboolean *taken = g_new0 (gboolean, bars->len + 1);
  guint *order = g_new (guint, bars->len + 1);
  guint n = 0;

  for (guint i = 0; i < bars->len; i++)
    by_length[i] = i;
  g_qsort_with_data (by_length, (int) bars->len, sizeof (guint), compare_bars,
                     (gpointer) bars);
  for (guint i = 0; i < bars->len; i++)
    if (!taken[by_length[i]])
      {
        g_autoptr (GArray) row = find_row (bars, by_length, i, taken);

        for (guint j = 0; j < row->len; j++)
          order[n++] = g_array_index (row, InRow, j).bar;
      }
  return order;
}
