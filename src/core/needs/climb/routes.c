/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A way is as good as its worst hop; a bird takes the best way there is. */
#include "config.h"

#include "needs/climb/routes.h"

/* Hops by the ledge they begin or end at. */
static void
sort_hops (HcRoutes *self)
{
  guint n = self->climb->ledges->len;
  g_autofree guint *next = NULL;

  self->first_hop = g_new0 (guint, n + 1);
  for (guint i = 0; i < self->climb->hops->len; i++)
    {
      self->first_hop[hc_climb_get_hop (self->climb, i)->low + 1]++;
      self->first_hop[hc_climb_get_hop (self->climb, i)->high + 1]++;
    }
  for (guint i = 0; i < n; i++)
    self->first_hop[i + 1] += self->first_hop[i];
  next = g_memdup2 (self->first_hop, sizeof (guint) * (n + 1));
  self->hops_of = g_array_new (FALSE, FALSE, sizeof (guint));
  g_array_set_size (self->hops_of, 2 * self->climb->hops->len);
  for (guint i = 0; i < self->climb->hops->len; i++)
    {
      g_array_index (self->hops_of, guint, next[hc_climb_get_hop (self->climb, i)->low]++) = i;
      g_array_index (self->hops_of, guint, next[hc_climb_get_hop (self->climb, i)->high]++) = i;
    }
}

/* How good @hop is for a bird that takes it away from @from; backwards, for one
 * that takes it towards @from. */
static HcLevel
get_level (const HcRoutes *self, guint hop, guint from, gboolean backwards)
{
  gboolean up = (hc_climb_get_hop (self->climb, hop)->low == from) != backwards;

  return self->grades[up][hop].level;
}

/* Marks every ledge that is joined to @start by hops of at least @level. */
static gboolean *
find_joined (const HcRoutes *self, guint start, HcLevel level, gboolean backwards)
{
  gboolean *joined = g_new0 (gboolean, self->climb->ledges->len);
  g_autoptr (GArray) ahead = g_array_new (FALSE, FALSE, sizeof (guint));

  joined[start] = TRUE;
  g_array_append_val (ahead, start);
  for (guint next = 0; next < ahead->len; next++)
    {
      guint at = g_array_index (ahead, guint, next);

      for (guint i = self->first_hop[at]; i < self->first_hop[at + 1]; i++)
        {
          guint hop = g_array_index (self->hops_of, guint, i);
          const HcHop *way = hc_climb_get_hop (self->climb, hop);
          guint other = way->low == at ? way->high : way->low;

          if (joined[other] || get_level (self, hop, at, backwards) < level)
            continue;
          joined[other] = TRUE;
          g_array_append_val (ahead, other);
        }
    }
  return joined;
}

static void
find_levels (HcRoutes *self, HcRoute route)
{
  self->levels[route] = g_new0 (HcLevel, self->climb->ledges->len);
  for (HcLevel level = HC_LEVEL_TIGHT; level <= HC_LEVEL_PLENTY; level++)
    {
      g_autofree gboolean *joined = find_joined (self, 0, level, route == HC_ROUTE_DOWN);

      for (guint i = 0; i < self->climb->ledges->len; i++)
        if (joined[i])
          self->levels[route][i] = level;
    }
}

void
hc_routes_find (HcRoutes *self, const HcClimb *climb, const HcClimber *climber)
{
  self->climb = climb;
  for (int up = 0; up < 2; up++)
    {
      self->grades[up] = g_new (HcHopGrade, climb->hops->len + 1);
      for (guint i = 0; i < climb->hops->len; i++)
        self->grades[up][i] = hc_climber_grade (climber, climb, hc_climb_get_hop (climb, i), up);
    }
  sort_hops (self);
  find_levels (self, HC_ROUTE_UP);
  find_levels (self, HC_ROUTE_DOWN);
}

void
hc_routes_clear (HcRoutes *self)
{
  for (int i = 0; i < 2; i++)
    {
      g_free (self->grades[i]);
      g_free (self->levels[i]);
    }
  g_array_unref (self->hops_of);
  g_free (self->first_hop);
}

/* How far a hop is from the level asked: 1 where it just reaches it. */
static double
get_excess (const HcHopGrade *grade, HcLevel level)
{
  double bound;

  if (grade->limit == NULL || !hc_limit_get (grade->limit, level, &bound))
    return 1;
  if (grade->limit->direction == HC_DIRECTION_AT_LEAST)
    return grade->measured > 0 ? bound / grade->measured : G_MAXDOUBLE;
  return bound > 0 ? grade->measured / bound : G_MAXDOUBLE;
}

/* Of hops that miss as much, the one between things whose ids come first: the
 * order of things in a plan tells nothing. */
static gboolean
comes_first (const HcRoutes *self, const HcHop *one, const HcHop *other)
{
  const char *ids[] = { hc_climb_get_ledge (self->climb, one->low)->id,
                        hc_climb_get_ledge (self->climb, other->low)->id,
                        hc_climb_get_ledge (self->climb, one->high)->id,
                        hc_climb_get_ledge (self->climb, other->high)->id };
  int order = g_strcmp0 (ids[0], ids[1]);

  return (order != 0 ? order : g_strcmp0 (ids[2], ids[3])) < 0;
}

typedef struct
{
  const HcHop *hop;
  HcHopGrade grade;
} Missing;

static gboolean
misses_less (const HcRoutes *self, const Missing *one, const Missing *other, HcLevel level)
{
  double excess = get_excess (&one->grade, level);
  double other_excess = get_excess (&other->grade, level);

  if (one->grade.level != other->grade.level)
    return one->grade.level > other->grade.level;
  if (excess != other_excess)
    return excess < other_excess;
  return comes_first (self, one->hop, other->hop);
}

/* Of the hops that would lead on from what is reached at @wanted, to where the
 * rest of the way is of level @rest, the one that misses least. */
static Missing
find_missing (const HcRoutes *self, HcRoute route, guint ledge, HcLevel wanted, HcLevel rest)
{
  gboolean down = route == HC_ROUTE_DOWN;
  g_autofree gboolean *before = find_joined (self, 0, wanted, down);
  g_autofree gboolean *after = find_joined (self, ledge, rest, !down);
  Missing least = { NULL };

  for (guint i = 0; i < self->climb->hops->len; i++)
    for (int up = 0; up < 2; up++)
      {
        Missing this = { hc_climb_get_hop (self->climb, i), self->grades[up][i] };
        guint from = (up == 1) != down ? this.hop->low : this.hop->high;
        guint to = (up == 1) != down ? this.hop->high : this.hop->low;

        if (before[from] && !before[to] && after[to]
            && (least.hop == NULL || misses_less (self, &this, &least, wanted)))
          least = this;
      }
  return least;
}

/* The hop that keeps the way to @ledge from being better; %NULL where it is as
 * good as can be. */
const HcHop *
hc_routes_find_worst (const HcRoutes *self, HcRoute route, guint ledge, HcHopGrade *grade)
{
  HcLevel level = self->levels[route][ledge];
  Missing worst;

  if (level == HC_LEVEL_PLENTY)
    return NULL;
  worst = find_missing (self, route, ledge, level + 1, level + 1);
  if (level > HC_LEVEL_SHORT && (worst.hop == NULL || worst.grade.level < level))
    worst = find_missing (self, route, ledge, level + 1, level);
  *grade = worst.grade;
  return worst.hop;
}
