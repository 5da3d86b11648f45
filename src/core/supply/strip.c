/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Cutting lines by what stands within a distance measured square to them. */
#include "config.h"

#include "supply/strip.h"

#include "base/shape-relate.h"
#include "base/whole.h"

/* A place in the strip's own measure. */
typedef struct
{
  double along_mm;
  double square_mm;
} Place;

/**
 * hc_strip_init: (skip)
 * @strip: (out caller-allocates): the strip
 * @from: where its line starts
 * @to: where its line ends
 * @near_mm: where it begins, square to the line
 * @far_mm: where it ends, square to the line
 */
void
hc_strip_init (HcStrip *strip, HcPoint from, HcPoint to, double near_mm, double far_mm)
{
  HcPoint along = hc_point_unit (hc_point_subtract (to, from));

  *strip = (HcStrip){ from, along, hc_point (-along.y_mm, along.x_mm),
                      hc_mm (hc_point_distance (from, to)), near_mm, far_mm };
}

/**
 * hc_strip_get_point: (skip)
 * @strip: a strip
 * @along_mm: how far along its line
 * @square_mm: how far off it
 *
 * Returns: the point in the plan
 */
HcPoint
hc_strip_get_point (const HcStrip *strip, double along_mm, double square_mm)
{
  HcPoint on_line = hc_point_add (strip->from, hc_point_scale (strip->along, along_mm));

  return hc_point_add (on_line, hc_point_scale (strip->square, square_mm));
}

/**
 * hc_strip_get_bounds: (skip)
 * @strip: a strip
 *
 * Returns: the box around it
 */
HcBox
hc_strip_get_bounds (const HcStrip *strip)
{
  HcPoint corners[] = {
    hc_strip_get_point (strip, 0, strip->near_mm),
    hc_strip_get_point (strip, strip->length_mm, strip->near_mm),
    hc_strip_get_point (strip, strip->length_mm, strip->far_mm),
    hc_strip_get_point (strip, 0, strip->far_mm),
  };

  return hc_box_around (corners, G_N_ELEMENTS (corners));
}

static Place
place_of (const HcStrip *strip, HcPoint p)
{
  HcPoint way = hc_point_subtract (p, strip->from);

  return (Place){ hc_point_dot (way, strip->along), hc_point_dot (way, strip->square) };
}

static Place
place_between (Place a, Place b, double square_mm)
{
  double part = (square_mm - a.square_mm) / (b.square_mm - a.square_mm);

  return (Place){ a.along_mm + part * (b.along_mm - a.along_mm), square_mm };
}

/* Keeps the piece of a line that lies within the strip's breadth; what only
 * touches its sides stays outside. */
static gboolean
clip_to_breadth (const HcStrip *strip, Place *a, Place *b)
{
  double near_mm = strip->near_mm + HC_SHAPE_TOUCH_MM;
  double far_mm = strip->far_mm - HC_SHAPE_TOUCH_MM;
  Place low = a->square_mm <= b->square_mm ? *a : *b;
  Place high = a->square_mm <= b->square_mm ? *b : *a;

  if (high.square_mm <= near_mm || low.square_mm >= far_mm)
    return FALSE;
  *a = low.square_mm < near_mm ? place_between (low, high, near_mm) : low;
  *b = high.square_mm > far_mm ? place_between (low, high, far_mm) : high;
  return TRUE;
}

static gboolean
keep_on_line (const HcStrip *strip, double first_mm, double last_mm, HcStretch *cut)
{
  cut->from_mm = CLAMP (hc_mm (MIN (first_mm, last_mm)), 0, strip->length_mm);
  cut->to_mm = CLAMP (hc_mm (MAX (first_mm, last_mm)), 0, strip->length_mm);
  return cut->to_mm - cut->from_mm > HC_SHAPE_TOUCH_MM;
}

/**
 * hc_strip_is_cut_by_line: (skip)
 * @strip: a strip
 * @a: where another line starts
 * @b: where it ends
 * @cut: (out): the stretch of the strip's line it stands beside
 *
 * Returns: whether the line reaches into the strip by more than its thickness
 */
gboolean
hc_strip_is_cut_by_line (const HcStrip *strip, HcPoint a, HcPoint b, HcStretch *cut)
{
  Place first = place_of (strip, a);
  Place last = place_of (strip, b);

  return clip_to_breadth (strip, &first, &last)
         && keep_on_line (strip, first.along_mm, last.along_mm, cut);
}

/**
 * hc_strip_is_cut_by: (skip)
 * @strip: a strip
 * @thing: a shape without dents
 * @cut: (out): the stretch of the strip's line it stands beside
 *
 * Returns: whether @thing reaches into the strip
 */
gboolean
hc_strip_is_cut_by (const HcStrip *strip, const HcShape *thing, HcStretch *cut)
{
  guint n;
  const HcPoint *ring;
  double first_mm = G_MAXDOUBLE, last_mm = -G_MAXDOUBLE;

  if (hc_shape_is_empty (thing))
    return FALSE;
  ring = hc_shape_get_ring (thing, 0, 0, &n);
  for (guint i = 0; i < n; i++)
    {
      Place a = place_of (strip, ring[i]);
      Place b = place_of (strip, ring[(i + 1) % n]);

      if (!clip_to_breadth (strip, &a, &b))
        continue;
      first_mm = MIN (first_mm, MIN (a.along_mm, b.along_mm));
      last_mm = MAX (last_mm, MAX (a.along_mm, b.along_mm));
    }
  return first_mm <= last_mm && keep_on_line (strip, first_mm, last_mm, cut);
}

/* Keeps the part of the way on which a measure that starts at @start and
 * changes by @change lies between @low and @high. */
static gboolean
keep_between (double start, double change, double low, double high, double *from, double *to)
{
  double one, other;

  if (change == 0)
    return low < start && start < high;
  one = (low - start) / change;
  other = (high - start) / change;
  *from = MAX (*from, MIN (one, other));
  *to = MIN (*to, MAX (one, other));
  return *from < *to;
}

/**
 * hc_strip_covers_line: (skip)
 * @strip: a strip
 * @a: where another line starts
 * @b: where it ends
 * @covered: (out): the stretch of that other line, measured from @a
 *
 * Returns: whether a piece of the other line lies on the strip
 */
gboolean
hc_strip_covers_line (const HcStrip *strip, HcPoint a, HcPoint b, HcStretch *covered)
{
  Place start = place_of (strip, a);
  Place end = place_of (strip, b);
  double length_mm = hc_point_distance (a, b);
  double from = 0, to = 1;

  if (!keep_between (start.along_mm, end.along_mm - start.along_mm, HC_SHAPE_TOUCH_MM,
                     strip->length_mm - HC_SHAPE_TOUCH_MM, &from, &to)
      || !keep_between (start.square_mm, end.square_mm - start.square_mm,
                        strip->near_mm + HC_SHAPE_TOUCH_MM, strip->far_mm - HC_SHAPE_TOUCH_MM,
                        &from, &to))
    return FALSE;
  covered->from_mm = hc_mm (from * length_mm);
  covered->to_mm = hc_mm (to * length_mm);
  return covered->to_mm - covered->from_mm > HC_SHAPE_TOUCH_MM;
}

static void
cut_by_ring (const HcStrip *strip, const HcPoint *ring, guint n, GArray *cuts)
{
  HcStretch cut;

  for (guint i = 0; i < n; i++)
    if (hc_strip_is_cut_by_line (strip, ring[i], ring[(i + 1) % n], &cut))
      g_array_append_val (cuts, cut);
}

/**
 * hc_strip_cut_by_edges: (skip)
 * @strip: a strip
 * @outline: the floor of a room
 * @cuts: (element-type HcStretch): receives the stretches beside a wall
 */
void
hc_strip_cut_by_edges (const HcStrip *strip, const HcShape *outline, GArray *cuts)
{
  for (guint part = 0; part < hc_shape_get_n_parts (outline); part++)
    for (guint ring = 0; ring < hc_shape_get_n_rings (outline, part); ring++)
      {
        guint n;
        const HcPoint *points = hc_shape_get_ring (outline, part, ring, &n);

        cut_by_ring (strip, points, n, cuts);
      }
}

/**
 * hc_strip_get_inside: (skip)
 * @strip: a strip
 * @outline: the floor of a room
 *
 * Returns: (transfer full) (element-type HcStretch): the stretches whose
 *   middle, square to the line, lies in the room
 */
GArray *
hc_strip_get_inside (const HcStrip *strip, const HcShape *outline)
{
  double middle_mm = (strip->near_mm + strip->far_mm) / 2;

  return hc_shape_clip_line (outline, hc_strip_get_point (strip, 0, middle_mm),
                             hc_strip_get_point (strip, strip->length_mm, middle_mm));
}

static int
compare_starts (gconstpointer a, gconstpointer b)
{
  const HcStretch *one = a, *other = b;

  return (one->from_mm > other->from_mm) - (one->from_mm < other->from_mm);
}

/**
 * hc_stretches_sort: (skip)
 * @stretches: (element-type HcStretch): stretches to put in order
 */
void
hc_stretches_sort (GArray *stretches)
{
  g_array_sort (stretches, compare_starts);
}
