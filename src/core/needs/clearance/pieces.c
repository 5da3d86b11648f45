/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A roost is its bars, with air between them; all else is a box. */
#include "config.h"

#include "needs/clearance/pieces.h"

#include "base/shape-relate.h"
#include "needs/clearance/clearance.h"
#include "supply/stand.h"

static void
clear_piece (gpointer piece)
{
  hc_shape_unref (((HcPiece *) piece)->shape);
}

static void
add_bar (GArray *pieces, const HcFitting *roost, guint index)
{
  HcPoint middle;
  HcPiece piece;
  HcBar bar;

  hc_stand_get_bar (roost, index, &bar);
  middle = hc_point_between (bar.from, bar.to, 0.5);
  piece.shape = hc_shape_new_rectangle (middle, hc_point_distance (bar.from, bar.to),
                                        MAX (bar.width_mm, 1), hc_fitting_get (roost)->turn_deg);
  piece.top_mm = bar.height_mm;
  piece.bottom_mm = bar.height_mm - bar.width_mm;
  g_array_append_val (pieces, piece);
}

GArray *
hc_pieces_of_fitting (const HcRoom *room, guint fitting)
{
  HcFitting *thing = hc_room_get (room)->fittings->pdata[fitting];
  GArray *pieces = g_array_new (FALSE, FALSE, sizeof (HcPiece));
  HcPiece whole;

  g_array_set_clear_func (pieces, clear_piece);
  if (hc_fitting_get (thing)->kind == HC_FITTING_ROOST)
    {
      for (guint i = 0; i < (guint) hc_fitting_get (thing)->bars; i++)
        add_bar (pieces, thing, i);
      return pieces;
    }
  whole.shape = hc_shape_ref (hc_room_get_footprint (room, fitting));
  hc_stand_get_heights (thing, &whole.bottom_mm, &whole.top_mm);
  g_array_append_val (pieces, whole);
  return pieces;
}

static gboolean
meet (const HcPiece *one, const HcPiece *other)
{
  double shared_mm
      = MIN (one->top_mm, other->top_mm) - MAX (one->bottom_mm, other->bottom_mm);

  return shared_mm > HC_CLEARANCE_FORGIVEN_MM
         && hc_shape_overlaps (one->shape, other->shape, HC_CLEARANCE_FORGIVEN_MM2);
}

/* Whether any two of them take the same room. */
gboolean
hc_pieces_meet (const GArray *some, const GArray *others)
{
  for (guint i = 0; i < some->len; i++)
    for (guint j = 0; j < others->len; j++)
      if (meet (&g_array_index (some, HcPiece, i), &g_array_index (others, HcPiece, j)))
        return TRUE;
  return FALSE;
}
