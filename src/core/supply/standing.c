/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A bird stands square to an edge, its whole length free of walls and things
 * lower than its back. */
#include "config.h"

#include "supply/standing.h"

#include "base/whole.h"
#include "supply/stand.h"

/* The measures of a body that decide where it can stand. */
typedef struct
{
  double length_mm;
  double back_mm;
  HcBodies bodies;
  GArray *stretches;
} Stature;

static void
clear_stature (gpointer stature)
{
  if (((Stature *) stature)->stretches != NULL)
    g_array_unref (((Stature *) stature)->stretches);
}

static GArray *
find_statures (const HcOfferContext *context)
{
  GArray *statures = g_array_new (FALSE, TRUE, sizeof (Stature));

  g_array_set_clear_func (statures, clear_stature);
  for (guint i = 0; i < hc_flock_get_n_bodies (context->flock); i++)
    {
      const HcBody *body = hc_flock_get_body (context->flock, i);
      Stature own = { hc_body_get_length_mm (body), hc_body_get_back_mm (body), 0, NULL };
      guint at = 0;

      while (at < statures->len
             && (g_array_index (statures, Stature, at).length_mm != own.length_mm
                 || g_array_index (statures, Stature, at).back_mm != own.back_mm))
        at++;
      if (at == statures->len)
        g_array_append_val (statures, own);
      g_array_index (statures, Stature, at).bodies |= (HcBodies) 1 << i;
    }
  return statures;
}

static void
cut_by_things (const HcRoom *room, guint fitting, const HcStrip *strip, double back_mm,
               GArray *cuts)
{
  HcParts *fittings = hc_room_get (room)->fittings;
  g_autoptr (GArray) near = hc_room_find_fittings (room, hc_strip_get_bounds (strip));

  for (guint i = 0; i < near->len; i++)
    {
      guint at = g_array_index (near, guint, i);
      HcStretch cut;

      if (at != fitting && hc_stand_takes_floor (fittings->pdata[at], back_mm)
          && hc_strip_is_cut_by (strip, hc_room_get_footprint (room, at), &cut))
        g_array_append_val (cuts, cut);
    }
}

static GArray *
find_stretches (const HcRoom *room, guint fitting, HcPoint from, HcPoint to,
                const Stature *stature)
{
  const HcShape *outline = hc_room_get_outline (room);
  g_autoptr (GArray) cuts = g_array_new (FALSE, FALSE, sizeof (HcStretch));
  g_autoptr (GArray) inside = NULL;
  HcStrip strip;

  hc_strip_init (&strip, from, to, 0, stature->length_mm);
  inside = hc_strip_get_inside (&strip, outline);
  hc_strip_cut_by_edges (&strip, outline, cuts);
  cut_by_things (room, fitting, &strip, stature->back_mm, cuts);
  hc_stretches_sort (cuts);
  return hc_stretches_without (inside, cuts);
}

static int
compare_lengths (gconstpointer a, gconstpointer b)
{
  double one = *(const double *) a, other = *(const double *) b;

  return (one > other) - (one < other);
}

static GArray *
find_ends (const GArray *statures)
{
  GArray *ends = g_array_new (FALSE, FALSE, sizeof (double));

  for (guint i = 0; i < statures->len; i++)
    {
      const GArray *stretches = g_array_index (statures, Stature, i).stretches;

      for (guint j = 0; j < stretches->len; j++)
        g_array_append_vals (ends, &g_array_index (stretches, HcStretch, j), 2);
    }
  g_array_sort (ends, compare_lengths);
  return ends;
}

static gboolean
hold (const GArray *stretches, double at_mm)
{
  for (guint i = 0; i < stretches->len; i++)
    {
      const HcStretch *stretch = &g_array_index (stretches, HcStretch, i);

      if (stretch->from_mm <= at_mm && at_mm <= stretch->to_mm)
        return TRUE;
    }
  return FALSE;
}

static HcBodies
find_bodies_at (const GArray *statures, double at_mm)
{
  HcBodies bodies = 0;

  for (guint i = 0; i < statures->len; i++)
    if (hold (g_array_index (statures, Stature, i).stretches, at_mm))
      bodies |= g_array_index (statures, Stature, i).bodies;
  return bodies;
}

static void
add_piece (GArray *pieces, double from_mm, double to_mm, HcBodies bodies)
{
  HcStandingPiece piece = { { from_mm, to_mm }, bodies };
  HcStandingPiece *last
      = pieces->len > 0 ? &g_array_index (pieces, HcStandingPiece, pieces->len - 1) : NULL;

  if (last != NULL && last->bodies == bodies && last->stretch.to_mm == from_mm)
    last->stretch.to_mm = to_mm;
  else if (bodies != 0)
    g_array_append_val (pieces, piece);
}

/**
 * hc_standing_get_pieces: (skip)
 * @context: the room and who there is
 * @fitting: index of the feeder or drinker among the room's fittings
 * @from: where its edge starts
 * @to: where it ends; birds stand on the side that is turned from x towards y
 *
 * Returns: (transfer full) (element-type HcStandingPiece): pieces of the edge
 *   that somebody can stand in front of, apart from each other
 */
GArray *
hc_standing_get_pieces (const HcOfferContext *context, guint fitting, HcPoint from, HcPoint to)
{
  g_autoptr (GArray) statures = find_statures (context);
  g_autoptr (GArray) ends = NULL;
  GArray *pieces = g_array_new (FALSE, FALSE, sizeof (HcStandingPiece));

  for (guint i = 0; i < statures->len; i++)
    {
      Stature *stature = &g_array_index (statures, Stature, i);

      stature->stretches = find_stretches (context->room, fitting, from, to, stature);
    }
  ends = find_ends (statures);
  for (guint i = 0; i + 1 < ends->len; i++)
    {
      double from_mm = g_array_index (ends, double, i);
      double to_mm = g_array_index (ends, double, i + 1);

      if (from_mm < to_mm)
        add_piece (pieces, from_mm, to_mm, find_bodies_at (statures, (from_mm + to_mm) / 2));
    }
  return pieces;
}

/**
 * hc_standing_get_side: (skip)
 * @fitting: a trough or a line of nipples
 * @side: 0 for its front, 1 for its back
 * @from: (out): where that long side starts
 * @to: (out): where it ends
 */
void
hc_standing_get_side (const HcFitting *fitting, guint side, HcPoint *from, HcPoint *to)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  double sign = side == 0 ? 1 : -1;

  *from = hc_stand_to_plan (fitting,
                            hc_point (-sign * values->width_mm / 2, sign * values->depth_mm / 2));
  *to = hc_stand_to_plan (fitting,
                          hc_point (sign * values->width_mm / 2, sign * values->depth_mm / 2));
}
