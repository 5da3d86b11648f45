/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The largest flow of birds to shared places, and the cut that bounds it.
 *
 * A flow with gains: a hen takes 100 mm of a trough or 40 mm of a round
 * feeder, and the ratio is another for a duck. Places of one sort that suit
 * the same birds are one place here, so the programme stays tiny. */
#include "config.h"

#include "needs/allot/flow.h"

#include "base/whole.h"
#include "needs/allot/simplex.h"

#include <math.h>

typedef struct
{
  guint body;
  guint pool;
} Column;

static gboolean
can_use (const HcFlow *self, guint body, const HcFlowPlace *place)
{
  return (place->suits >> body & 1) && self->each[body][place->sort] >= 0;
}

static HcFlowPlace *
find_pool (GArray *pools, const HcFlowPlace *place)
{
  HcFlowPlace fresh = { place->sort, 0, place->suits };

  for (guint i = 0; i < pools->len; i++)
    {
      HcFlowPlace *sum = &g_array_index (pools, HcFlowPlace, i);

      if (sum->sort == place->sort && sum->suits == place->suits)
        return sum;
    }
  g_array_append_val (pools, fresh);
  return &g_array_index (pools, HcFlowPlace, pools->len - 1);
}

static GArray *
pool_places (const HcFlow *self)
{
  GArray *pools = g_array_new (FALSE, FALSE, sizeof (HcFlowPlace));

  for (guint i = 0; i < self->n_places; i++)
    {
      const HcFlowPlace *place = &self->places[i];

      if (place->amount > 0 && place->suits != 0)
        find_pool (pools, place)->amount += place->amount;
    }
  return pools;
}

static GArray *
list_columns (const HcFlow *self, GArray *pools)
{
  GArray *columns = g_array_new (FALSE, FALSE, sizeof (Column));

  for (guint pool = 0; pool < pools->len; pool++)
    for (guint body = 0; body < self->n_bodies; body++)
      if (self->counts[body] > 0
          && can_use (self, body, &g_array_index (pools, HcFlowPlace, pool)))
        {
          Column column = { body, pool };
          g_array_append_val (columns, column);
        }
  return columns;
}

static HcSimplex *
write_programme (const HcFlow *self, GArray *pools, GArray *columns)
{
  HcSimplex *programme = hc_simplex_new (self->n_bodies + pools->len, columns->len);

  for (guint body = 0; body < self->n_bodies; body++)
    hc_simplex_set_bound (programme, body, (double) self->counts[body]);
  for (guint pool = 0; pool < pools->len; pool++)
    hc_simplex_set_bound (programme, self->n_bodies + pool, 1);
  for (guint i = 0; i < columns->len; i++)
    {
      Column column = g_array_index (columns, Column, i);
      const HcFlowPlace *sum = &g_array_index (pools, HcFlowPlace, column.pool);

      hc_simplex_set (programme, column.body, i, 1);
      hc_simplex_set (programme, self->n_bodies + column.pool, i,
                      self->each[column.body][sum->sort] / sum->amount);
    }
  return programme;
}

static double
count_birds (const HcFlow *self)
{
  double birds = 0;

  for (guint body = 0; body < self->n_bodies; body++)
    birds += (double) self->counts[body];
  return birds;
}

/* Everybody has a place of their own sort to go to, and one pool for all. */
static gboolean
fits_one_pool (const HcFlow *self, const HcFlowPlace *sum)
{
  double asked = 0;
  double least_each = G_MAXDOUBLE;

  for (guint body = 0; body < self->n_bodies; body++)
    {
      if (self->counts[body] == 0)
        continue;
      if (!can_use (self, body, sum))
        return FALSE;
      asked += self->each[body][sum->sort] * (double) self->counts[body];
      least_each = MIN (least_each, self->each[body][sum->sort]);
    }
  return asked <= sum->amount + least_each * HC_WHOLE_TOLERANCE;
}

/* Whether every bird can be served: a thousandth of a bird short is served. */
gboolean
hc_flow_serves_all (const HcFlow *self)
{
  g_autoptr (GArray) pools = pool_places (self);
  g_autoptr (GArray) columns = NULL;
  g_autoptr (HcSimplex) programme = NULL;
  double birds = count_birds (self);

  if (birds == 0)
    return TRUE;
  if (pools->len == 0)
    return FALSE;
  if (pools->len == 1)
    return fits_one_pool (self, &g_array_index (pools, HcFlowPlace, 0));
  columns = list_columns (self, pools);
  programme = write_programme (self, pools, columns);
  return hc_simplex_solve (programme, NULL) >= birds - HC_WHOLE_TOLERANCE;
}

/* Hands @birds of @body out to the places of one pool, in their order. */
static void
fill_places (const HcFlow *self, guint body, const HcFlowPlace *sum, double birds,
             double *room, double *shares)
{
  double each = self->each[body][sum->sort];

  for (guint i = 0; i < self->n_places && birds > 0; i++)
    {
      const HcFlowPlace *place = &self->places[i];
      double here;

      if (place->sort != sum->sort || place->suits != sum->suits || room[i] <= 0)
        continue;
      here = each > 0 ? MIN (birds, room[i] / each) : birds;
      shares[body * self->n_places + i] += here;
      room[i] -= here * each;
      birds -= here;
    }
}

/* Birds at each place, body by body (n_bodies rows of n_places): as many as
 * can be, not whole. */
double *
hc_flow_share_out (const HcFlow *self)
{
  g_autoptr (GArray) pools = pool_places (self);
  g_autoptr (GArray) columns = list_columns (self, pools);
  g_autoptr (HcSimplex) programme = write_programme (self, pools, columns);
  g_autofree double *amounts = g_new0 (double, columns->len + 1);
  g_autofree double *room = g_new0 (double, self->n_places + 1);
  double *shares = g_new0 (double, self->n_bodies * self->n_places + 1);

  hc_simplex_solve (programme, amounts);
  for (guint i = 0; i < self->n_places; i++)
    room[i] = self->places[i].amount;
  for (guint i = 0; i < columns->len; i++)
    {
      Column column = g_array_index (columns, Column, i);

      fill_places (self, column.body, &g_array_index (pools, HcFlowPlace, column.pool), amounts[i],
                   room, shares);
    }
  return shares;
}

static gboolean
reach_places (const HcFlow *self, HcBodies bodies, gboolean *places)
{
  gboolean grew = FALSE;

  for (guint i = 0; i < self->n_places; i++)
    for (guint body = 0; body < self->n_bodies && !places[i]; body++)
      if ((bodies >> body & 1) && self->places[i].amount > 0
          && can_use (self, body, &self->places[i]))
        places[i] = grew = TRUE;
  return grew;
}

/* The smallest cut: the birds that compete with those left over, and the only
 * places they can use (@places, one flag a place). */
HcBodies
hc_flow_find_cut (const HcFlow *self, const double *shares, HcBodies left_over,
                  gboolean *places)
{
  HcBodies bodies = left_over;

  while (reach_places (self, bodies, places))
    for (guint body = 0; body < self->n_bodies; body++)
      for (guint i = 0; i < self->n_places; i++)
        if (places[i] && shares[body * self->n_places + i] > HC_WHOLE_TOLERANCE)
          bodies |= (HcBodies) 1 << body;
  return bodies;
}
