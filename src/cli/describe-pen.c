/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A pen as somebody finds it who stands in its doorway: how large it is, what
 * opens where, and each thing by the clock face and in steps of the tape. */
#include "config.h"

#include "cli/describe.h"

#include "base/box.h"
#include "base/ring.h"
#include "drawing/wall-outline.h"
#include "words/words.h"

#include <glib/gi18n.h>
#include <math.h>

/**
 * Doorway:
 * @at: where one stands
 * @ahead: the direction one looks in, of length 1
 * @by: what one came in by
 */
typedef struct
{
  HcPoint at;
  HcPoint ahead;
  const HcOpening *by;
} Doorway;

static const char *
opening_name (int kind)
{
  static const char *const names[HC_N_OPENING_KINDS]
      = { N_("keeper door"), N_("pop hole"), N_("window"), N_("vent"), N_("egg door") };

  return _(names[kind]);
}

static char *
size_of (const GArray *ring, HcUnits units)
{
  const HcPoint *points = (const HcPoint *) ring->data;
  HcBox box = hc_box_around (points, ring->len);
  g_autofree char *width = hc_length_format (box.width_mm, units);
  g_autofree char *depth = hc_length_format (box.depth_mm, units);
  g_autofree char *area = hc_area_format (fabs (hc_ring_area_mm2 (points, ring->len)), units);

  /* Translators: two lengths and an area. */
  return g_strdup_printf (_("%s by %s inside, %s of floor"), width, depth, area);
}

static void
add_floor (const HcCall *call, const HcPenValues *pen, GString *text)
{
  guint layers = pen->floor_layers ? g_strv_length (pen->floor_layers) : 0;
  const HcFloorLayer *top
      = layers ? hc_book_get_floor_layer (call->book, pen->floor_layers[layers - 1]) : NULL;
  const HcBedding *bedding = pen->bedding && *pen->bedding
                                 ? hc_book_get_bedding (call->book, pen->bedding)
                                 : NULL;
  g_autofree char *depth = hc_length_format (pen->bedding_mm, call->units);

  if (top != NULL)
    g_string_append_printf (text, _(" The floor is of %s."), hc_material_get_name (top->name));
  if (bedding != NULL)
    /* Translators: a depth, then a material. */
    g_string_append_printf (text, _(" On it lie %s of %s."), depth,
                            hc_material_get_name (bedding->name));
}

/**
 * hc_describe_pen:
 * @call: a call with its plan open
 * @pen: a pen
 *
 * Returns: (transfer full): what kind of place it is and how large
 */
char *
hc_describe_pen (const HcCall *call, const HcPen *pen)
{
  HcLayout *layout = hc_plan_get_layout (call->plan);
  const HcPenValues *values = hc_pen_get (pen);
  g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, pen);
  GString *text = g_string_new (values->kind == HC_PEN_RUN ? _("A run") : _("An indoor pen"));
  g_autofree char *height = hc_length_format (values->height_mm, call->units);

  if (ring->len >= 3)
    {
      g_autofree char *size = size_of (ring, call->units);

      g_string_append_printf (text, ", %s", size);
    }
  if (values->height_mm > 0)
    /* Translators: a height. */
    g_string_append_printf (text, _(", %s high"), height);
  g_string_append (text, ".");
  add_floor (call, values, text);
  return g_string_free (text, FALSE);
}

static gboolean
is_on_wall_of (const HcOpeningValues *opening, const HcPenValues *pen)
{
  return pen->walls != NULL
         && g_strv_contains ((const char *const *) pen->walls, opening->wall);
}

static const char *
pen_behind (const HcLayout *layout, const HcOpeningValues *opening, const HcPen *pen)
{
  HcPen *beside[2];
  guint n = hc_layout_get_pens_beside (layout, opening->wall, beside);

  if (n < 2)
    return NULL;
  return hc_pen_get (beside[0] == pen ? beside[1] : beside[0])->name;
}

static HcPoint
inward_for (const HcLayout *layout, const HcPen *pen, const HcWallFaces *faces, double along)
{
  g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, pen);
  double inside = faces->inner_mm + 1;

  if (hc_ring_contains_point ((const HcPoint *) ring->data, ring->len,
                              hc_wall_faces_at (faces, along, inside)))
    return faces->inward;
  return hc_point_scale (faces->inward, -1);
}

static gboolean
stand_in (const HcLayout *layout, const HcPen *pen, const HcOpening *opening, Doorway *door)
{
  const HcOpeningValues *values = hc_opening_get (opening);
  HcWall *wall = hc_layout_get_wall (layout, values->wall);
  HcWallFaces faces;

  if (wall == NULL || !hc_wall_faces (layout, wall, &faces))
    return FALSE;
  door->by = opening;
  door->at = hc_wall_faces_at (&faces, values->along_mm, 0);
  door->ahead = inward_for (layout, pen, &faces, values->along_mm);
  return TRUE;
}

/* The keeper's own door, or the largest other way in. */
static gboolean
find_doorway (const HcLayout *layout, const HcPen *pen, Doorway *door)
{
  HcParts *openings = hc_layout_get (layout)->openings;
  const HcOpening *best = NULL;

  for (guint i = 0; i < openings->len; i++)
    {
      const HcOpeningValues *values = hc_opening_get (openings->pdata[i]);

      if (!is_on_wall_of (values, hc_pen_get (pen))
          || !hc_opening_lets_birds_through (openings->pdata[i]))
        continue;
      if (best == NULL || values->kind < hc_opening_get (best)->kind)
        best = openings->pdata[i];
    }
  return best != NULL && stand_in (layout, pen, best, door);
}

/* Twelve o'clock is straight ahead, three to the right. */
static int
clock_hour (const Doorway *door, HcPoint at)
{
  HcPoint way = hc_point_subtract (at, door->at);
  HcPoint right = hc_point (-door->ahead.y_mm, door->ahead.x_mm);
  double turn = atan2 (hc_point_dot (way, right), hc_point_dot (way, door->ahead));
  int hour = (int) lround (turn * 6 / G_PI);

  return (hour + 11) % 12 + 1;
}

static char *
place_from (const Doorway *door, HcPoint at, HcUnits units)
{
  g_autofree char *far = hc_length_format (
      10 * round (hc_point_distance (door->at, at) / 10), units);

  /* Translators: an hour of the clock face, then a distance. */
  return g_strdup_printf (_("at %d o'clock, %s away"), clock_hour (door, at), far);
}

static char *
tell_opening (const HcCall *call, const HcPen *pen, const HcOpening *opening,
              const Doorway *door)
{
  HcLayout *layout = hc_plan_get_layout (call->plan);
  const HcOpeningValues *values = hc_opening_get (opening);
  const char *behind = pen_behind (layout, values, pen);
  g_autofree char *width = hc_length_format (values->width_mm, call->units);
  GString *text = g_string_new (opening_name (values->kind));
  Doorway here;

  if (behind != NULL)
    g_string_append_printf (text, _(" to %s"), behind);
  g_string_append_printf (text, _(", %s wide"), width);
  if (door->by == opening)
    g_string_append (text, _(", where you stand"));
  else if (door->by != NULL && stand_in (layout, pen, opening, &here))
    {
      g_autofree char *place = place_from (door, here.at, call->units);

      g_string_append_printf (text, ", %s", place);
    }
  if (values->shut_at_dusk && hc_opening_lets_birds_through (opening))
    g_string_append (text, _(", shut at dusk"));
  return g_string_free (text, FALSE);
}

/**
 * hc_describe_openings:
 * @call: a call with its plan open
 * @pen: a pen
 *
 * Returns: (transfer full): a sentence on its doors, holes and windows
 */
char *
hc_describe_openings (const HcCall *call, const HcPen *pen)
{
  HcLayout *layout = hc_plan_get_layout (call->plan);
  HcParts *openings = hc_layout_get (layout)->openings;
  g_autoptr (GPtrArray) told = g_ptr_array_new_with_free_func (g_free);
  g_autofree char *joined = NULL;
  Doorway door = { .by = NULL };

  find_doorway (layout, pen, &door);
  for (guint i = 0; i < openings->len; i++)
    if (is_on_wall_of (hc_opening_get (openings->pdata[i]), hc_pen_get (pen)))
      g_ptr_array_add (told, tell_opening (call, pen, openings->pdata[i], &door));
  if (told->len == 0)
    return g_strdup (_("Nothing opens in its walls."));
  g_ptr_array_add (told, NULL);
  joined = g_strjoinv ("; ", (char **) told->pdata);
  return g_strdup_printf (_("In its walls: %s."), joined);
}

static char *
tell_fitting (const HcCall *call, const HcFitting *fitting, const Doorway *door)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  g_autofree char *what = hc_words_fitting (fitting, call->units);
  g_autofree char *base = hc_length_format (values->base_mm, call->units);
  GString *text = g_string_new (what);

  if (door->by != NULL)
    {
      g_autofree char *place
          = place_from (door, hc_point (values->x_mm, values->y_mm), call->units);

      g_string_append_printf (text, ", %s", place);
    }
  if (values->base_mm > 0)
    /* Translators: a height. */
    g_string_append_printf (text, _(", %s above the floor"), base);
  return g_string_free (text, FALSE);
}

/**
 * hc_describe_fittings:
 * @call: a call with its plan open
 * @pen: a pen
 *
 * Returns: (transfer full) (element-type utf8): a line on each thing in it
 */
GPtrArray *
hc_describe_fittings (const HcCall *call, const HcPen *pen)
{
  HcLayout *layout = hc_plan_get_layout (call->plan);
  HcParts *fittings = hc_pen_get (pen)->fittings;
  GPtrArray *lines = g_ptr_array_new_with_free_func (g_free);
  Doorway door = { .by = NULL };

  find_doorway (layout, pen, &door);
  for (guint i = 0; i < fittings->len; i++)
    g_ptr_array_add (lines, tell_fitting (call, fittings->pdata[i], &door));
  return lines;
}
