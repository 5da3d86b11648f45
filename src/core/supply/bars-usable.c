/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What walls, things and other bars leave of each bar. */
#include "config.h"

#include "supply/bars.h"

#include "base/shape-relate.h"

#include <math.h>

/* Up to so many bars with seats are gone through one by one, faster than those
 * nearby are found: of bars over bars only few have seats. */
#define FEW_BARS 16

/* Work on the bars of one room by one set of limits. */
typedef struct
{
  const HcRoom *room;
  const GArray *bars;
  const HcBarLimits *limits;
  HcNearby *nearby;
  HcNearby *things;
  GArray *usable;
  GArray *seated;
} Work;

static const HcRoomBar *
bar_at (const Work *work, guint bar)
{
  return &g_array_index (work->bars, HcRoomBar, bar);
}

static HcUsableBar *
usable_at (const Work *work, guint bar)
{
  return &g_array_index (work->usable, HcUsableBar, bar);
}

/* What is cut begins and ends a touch late, which leaves ends no bird sits on. */
static void
drop_slivers (GArray *stretches)
{
  for (guint i = stretches->len; i > 0; i--)
    {
      const HcStretch *stretch = &g_array_index (stretches, HcStretch, i - 1);

      if (stretch->to_mm - stretch->from_mm <= 2 * HC_SHAPE_TOUCH_MM)
        g_array_remove_index (stretches, i - 1);
    }
}

/* Takes @cuts off what is left; @most_mm is the most any cause took so far. */
static void
take_off (HcUsableBar *usable, GArray *cuts, HcBarCause cause, const char *blocker,
          double *most_mm)
{
  GArray *before = usable->stretches;
  double taken_mm;

  hc_stretches_sort (cuts);
  usable->stretches = hc_stretches_without (before, cuts);
  drop_slivers (usable->stretches);
  taken_mm = hc_stretches_total_mm (before) - hc_stretches_total_mm (usable->stretches);
  g_array_unref (before);
  if (taken_mm <= *most_mm)
    return;
  *most_mm = taken_mm;
  usable->cause = cause;
  usable->blocker = blocker;
}

static void
take_off_one (HcUsableBar *usable, HcStretch cut, HcBarCause cause, const char *blocker,
              double *most_mm)
{
  g_autoptr (GArray) cuts = g_array_new (FALSE, FALSE, sizeof (HcStretch));

  g_array_append_val (cuts, cut);
  take_off (usable, cuts, cause, blocker, most_mm);
}

static void
keep_from_walls (const Work *work, const HcStrip *strip, HcUsableBar *usable, double *most_mm)
{
  const HcShape *outline = hc_room_get_outline (work->room);
  g_autoptr (GArray) cuts = g_array_new (FALSE, FALSE, sizeof (HcStretch));

  usable->stretches = hc_strip_get_inside (strip, outline);
  *most_mm = strip->length_mm - hc_stretches_total_mm (usable->stretches);
  if (*most_mm > HC_SHAPE_TOUCH_MM)
    usable->cause = HC_BAR_CAUSE_WALL;
  hc_strip_cut_by_edges (strip, outline, cuts);
  take_off (usable, cuts, HC_BAR_CAUSE_WALL, NULL, most_mm);
}

/* Where on the bar the ceiling is @height_mm high or higher, from its start. */
static HcStretch
find_high_enough (const Work *work, const HcRoomBar *bar, double height_mm)
{
  const HcRoof *roof = hc_room_get_roof (work->room);
  double start_mm = hc_point_dot (bar->bar.from, roof->across);
  double rises = hc_point_dot (hc_point_unit (hc_point_subtract (bar->bar.to, bar->bar.from)),
                               roof->across);
  double one_mm, other_mm;

  if (!hc_roof_find_band (roof, height_mm, &one_mm, &other_mm)
      || hc_room_get_ceiling_along_mm (work->room, bar->bar.from, bar->bar.to) < height_mm)
    return (HcStretch){ 0, 0 };
  if (fabs (rises) < HC_SHAPE_TOUCH_MM / MAX (bar->length_mm, 1))
    return (HcStretch){ 0, bar->length_mm };
  one_mm = CLAMP ((one_mm - start_mm) / rises, 0, bar->length_mm);
  other_mm = CLAMP ((other_mm - start_mm) / rises, 0, bar->length_mm);
  return (HcStretch){ MIN (one_mm, other_mm), MAX (one_mm, other_mm) };
}

static void
keep_from_ceiling (const Work *work, const HcRoomBar *bar, const HcStrip *strip,
                   HcUsableBar *usable, double *most_mm)
{
  double wanted_mm = bar->bar.height_mm + work->limits->headroom_mm - HC_SHAPE_TOUCH_MM;
  HcStretch high;

  if (MIN (hc_room_get_ceiling_mm (work->room, bar->bar.from),
           hc_room_get_ceiling_mm (work->room, bar->bar.to))
      >= wanted_mm)
    return;
  high = find_high_enough (work, bar, wanted_mm);
  take_off_one (usable, (HcStretch){ 0, high.from_mm }, HC_BAR_CAUSE_HEADROOM, NULL, most_mm);
  take_off_one (usable, (HcStretch){ high.to_mm, strip->length_mm }, HC_BAR_CAUSE_HEADROOM, NULL,
                most_mm);
}

/* A thing beside the bar, as high as a bird on it, is a wall to the bird; one
 * above it is a low ceiling. */
static HcBarCause
get_cause (const Work *work, const HcFitting *thing, const HcRoomBar *bar)
{
  double bottom_mm, top_mm;

  hc_stand_get_heights (thing, &bottom_mm, &top_mm);
  if (top_mm <= bar->bar.height_mm + HC_SHAPE_TOUCH_MM
      || bottom_mm >= bar->bar.height_mm + work->limits->headroom_mm - HC_SHAPE_TOUCH_MM)
    return HC_BAR_CAUSE_NONE;
  return bottom_mm > bar->bar.height_mm ? HC_BAR_CAUSE_HEADROOM : HC_BAR_CAUSE_WALL;
}

static void
keep_from_things (const Work *work, const HcRoomBar *bar, const HcStrip *strip,
                  HcUsableBar *usable, double *most_mm)
{
  HcParts *fittings = hc_room_get (work->room)->fittings;
  g_autoptr (GArray) near = hc_nearby_find (work->things, hc_strip_get_bounds (strip));

  for (guint i = 0; i < near->len && usable->stretches->len > 0; i++)
    {
      guint at = g_array_index (near, guint, i);
      HcBarCause cause = get_cause (work, fittings->pdata[at], bar);
      HcStretch cut;

      if (cause != HC_BAR_CAUSE_NONE
          && hc_strip_is_cut_by (strip, hc_room_get_footprint (work->room, at), &cut))
        take_off_one (usable, cut, cause, hc_fitting_get_id (fittings->pdata[at]), most_mm);
    }
}

static void
keep_from_bar (const Work *work, guint other, const HcRoomBar *bar, HcUsableBar *usable,
               double *most_mm)
{
  const GArray *stretches = usable_at (work, other)->stretches;
  const HcRoomBar *seated = bar_at (work, other);
  HcStrip line, seats;
  HcStretch cut;

  hc_strip_init (&line, seated->bar.from, seated->bar.to, 0, 0);
  for (guint i = 0; i < stretches->len; i++)
    {
      const HcStretch *stretch = &g_array_index (stretches, HcStretch, i);

      hc_strip_init (&seats, hc_strip_get_point (&line, stretch->from_mm, 0),
                     hc_strip_get_point (&line, stretch->to_mm, 0), -work->limits->to_bar_mm,
                     work->limits->to_bar_mm);
      if (hc_strip_covers_line (&seats, bar->bar.from, bar->bar.to, &cut))
        take_off_one (usable, cut, HC_BAR_CAUSE_BAR, hc_fitting_get_id (seated->roost),
                      most_mm);
    }
}

/* Those looked at before with seats on them. */
static GArray *
find_seated (const Work *work, guint bar)
{
  HcPoint ends[] = { bar_at (work, bar)->bar.from, bar_at (work, bar)->bar.to };
  HcBox around = hc_box_grow (hc_box_around (ends, 2), work->limits->to_bar_mm);

  return work->seated->len <= FEW_BARS ? g_array_ref (work->seated)
                                       : hc_nearby_find (work->nearby, around);
}

static void
keep_from_bars (const Work *work, guint bar, HcUsableBar *usable, double *most_mm)
{
  g_autoptr (GArray) near = find_seated (work, bar);

  for (guint i = 0; i < near->len && usable->stretches->len > 0; i++)
    {
      guint other = g_array_index (near, guint, i);

      if (usable_at (work, other)->stretches != NULL)
        keep_from_bar (work, other, bar_at (work, bar), usable, most_mm);
    }
}

static void
work_on_bar (const Work *work, guint at)
{
  const HcRoomBar *bar = bar_at (work, at);
  HcUsableBar usable = { NULL };
  double most_mm = 0;
  HcStrip strip;

  hc_strip_init (&strip, bar->bar.from, bar->bar.to, -work->limits->to_wall_mm,
                 work->limits->to_wall_mm);
  keep_from_walls (work, &strip, &usable, &most_mm);
  keep_from_ceiling (work, bar, &strip, &usable, &most_mm);
  keep_from_things (work, bar, &strip, &usable, &most_mm);
  keep_from_bars (work, at, &usable, &most_mm);
  *usable_at (work, at) = usable;
  if (usable.stretches->len > 0)
    g_array_append_val (work->seated, at);
}

static HcNearby *
lay_out_bars (const GArray *bars)
{
  g_autofree HcBox *boxes = g_new (HcBox, bars->len + 1);

  for (guint i = 0; i < bars->len; i++)
    {
      const HcRoomBar *bar = &g_array_index (bars, HcRoomBar, i);
      HcPoint ends[] = { bar->bar.from, bar->bar.to };

      boxes[i] = hc_box_around (ends, G_N_ELEMENTS (ends));
    }
  return hc_nearby_new (boxes, bars->len);
}

/* All that stands in the room but roosts: boxes without a size are never near. */
static HcNearby *
lay_out_things (const HcRoom *room)
{
  HcParts *fittings = hc_room_get (room)->fittings;
  g_autofree HcBox *boxes = g_new (HcBox, fittings->len + 1);

  for (guint i = 0; i < fittings->len; i++)
    boxes[i] = hc_fitting_get (fittings->pdata[i])->kind == HC_FITTING_ROOST
                   ? hc_box_empty ()
                   : hc_shape_get_bounds (hc_room_get_footprint (room, i));
  return hc_nearby_new (boxes, fittings->len);
}

static void
clear_usable (gpointer usable)
{
  g_array_unref (((HcUsableBar *) usable)->stretches);
}

/**
 * hc_bars_get_usable: (skip)
 * @room: a room
 * @bars: (element-type HcRoomBar): its bars
 * @order: the order to look at them in
 * @limits: how near things may be
 *
 * Distances are measured square to a bar and never at its ends. Of bars too
 * near to each other those later in @order lose, for what others leave free.
 *
 * Returns: (transfer full) (element-type HcUsableBar): for each bar what birds
 *   can sit on
 */
GArray *
hc_bars_get_usable (const HcRoom *room, const GArray *bars, const guint *order,
                    const HcBarLimits *limits)
{
  g_autoptr (HcNearby) nearby = lay_out_bars (bars);
  g_autoptr (HcNearby) things = lay_out_things (room);
  GArray *usable = g_array_new (FALSE, TRUE, sizeof (HcUsableBar));
  g_autoptr (GArray) seated = g_array_new (FALSE, FALSE, sizeof (guint));
  Work work = { room, bars, limits, nearby, things, usable, seated };

  g_array_set_clear_func (usable, clear_usable);
  g_array_set_size (usable, bars->len);
  for (guint i = 0; i < bars->len; i++)
    work_on_bar (&work, order[i]);
  return usable;
}
