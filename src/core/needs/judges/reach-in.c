/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An arm through wide mesh, to birds on a bar beside it. */
#include "config.h"

#include "needs/judges/intrusion.h"

#include "supply/bars.h"

#include <math.h>

/* A piece of mesh: its line in the plan, and the heights it covers. */
typedef struct
{
  const char *part;
  const char *wall;
  HcPoint from;
  HcPoint to;
  double low_mm;
  double high_mm;
} Mesh;

static gboolean
is_reached_through (const HcIntrusion *self, const char *id)
{
  const HcMesh *mesh = hc_book_get_mesh (self->intruder.book, id);

  return mesh != NULL && mesh->hole_mm > self->intruder.animal->reaches_through_mm;
}

static double
distance_to_stretch_mm (HcPoint p, HcPoint a, HcPoint b)
{
  HcPoint way = hc_point_subtract (b, a);
  double square = hc_point_dot (way, way);
  double along
      = square > 0 ? CLAMP (hc_point_dot (hc_point_subtract (p, a), way) / square, 0, 1) : 0;

  return hc_point_distance (p, hc_point_add (a, hc_point_scale (way, along)));
}

/* Bars and walls do not cross, so that one of their ends is nearest. */
static double
distance_mm (const HcBar *bar, const Mesh *mesh)
{
  double flat_mm = MIN (MIN (distance_to_stretch_mm (bar->from, mesh->from, mesh->to),
                             distance_to_stretch_mm (bar->to, mesh->from, mesh->to)),
                        MIN (distance_to_stretch_mm (mesh->from, bar->from, bar->to),
                             distance_to_stretch_mm (mesh->to, bar->from, bar->to)));
  double up_mm = MAX (0, MAX (mesh->low_mm - bar->height_mm, bar->height_mm - mesh->high_mm));

  return hypot (flat_mm, up_mm);
}

static void
tell_bars (HcIntrusion *self, const HcPrey *prey, const GArray *bars, const Mesh *mesh)
{
  for (guint i = 0; i < bars->len; i++)
    {
      const HcRoomBar *bar = &g_array_index (bars, HcRoomBar, i);
      double near_mm = distance_mm (&bar->bar, mesh);
      HcFinding *finding;

      if (near_mm > self->intruder.animal->reach_mm)
        continue;
      finding = hc_intrusion_find (self, prey, "predators.reached",
                                   hc_fitting_get_id (bar->roost));
      hc_finding_add_id (finding, mesh->part);
      hc_finding_add_id (finding, mesh->wall);
      hc_finding_add_line (finding, mesh->from, mesh->to);
      if (finding->required == 0 || near_mm < finding->measured)
        hc_finding_set_measure (finding, near_mm, self->intruder.animal->reach_mm, "mm");
    }
}

static gboolean
is_approached (const HcIntrusion *self, const HcPrey *prey, const HcRoomWall *wall)
{
  guint beyond;

  if (!hc_house_find_room (self->context->about->house, wall->beyond, &beyond))
    beyond = HC_OUTSIDE;
  return hc_intrusion_comes_from (self, prey, beyond);
}

static void
look_at_walls (HcIntrusion *self, const HcPrey *prey, const HcRoom *room, const GArray *bars)
{
  for (guint i = 0; i < hc_room_get_n_walls (room); i++)
    {
      const HcRoomWall *wall = hc_room_get_wall (room, i);
      const HcWallValues *values = hc_wall_get (wall->wall);
      Mesh mesh = { NULL, hc_wall_get_id (wall->wall), wall->from, wall->to, 0, G_MAXDOUBLE };

      if (values->kind != HC_WALL_SOLID && is_reached_through (self, values->mesh)
          && is_approached (self, prey, wall))
        tell_bars (self, prey, bars, &mesh);
    }
}

static void
look_at_openings (HcIntrusion *self, const HcPrey *prey, const HcRoom *room, const GArray *bars)
{
  HcParts *openings = hc_room_get_openings (room);

  for (guint i = 0; i < openings->len; i++)
    {
      const HcOpeningValues *values = hc_opening_get (openings->pdata[i]);
      const HcRoomWall *wall = hc_room_get_wall_of (room, openings->pdata[i]);
      Mesh mesh = { .part = hc_opening_get_id (openings->pdata[i]),
                    .low_mm = values->sill_mm,
                    .high_mm = values->sill_mm + values->height_mm };
      HcPoint along;

      if (wall == NULL || !is_reached_through (self, values->mesh)
          || MAX (values->open_winter, values->open_summer) <= 0
          || !is_approached (self, prey, wall))
        continue;
      along = hc_point_unit (hc_point_subtract (wall->line_to, wall->line_from));
      mesh.from = hc_point_add (wall->line_from, hc_point_scale (along, values->along_mm
                                                                            - values->width_mm / 2));
      mesh.to = hc_point_add (mesh.from, hc_point_scale (along, values->width_mm));
      tell_bars (self, prey, bars, &mesh);
    }
}

void
hc_intrusion_reach_in (HcIntrusion *self, const HcPrey *prey)
{
  const HcHouse *house = self->context->about->house;

  if (self->intruder.animal->reach_mm <= 0)
    return;
  for (guint room = 0; room < hc_house_get_n_rooms (house); room++)
    {
      g_autoptr (GArray) bars = NULL;

      if (!prey->rooms[room])
        continue;
      bars = hc_bars_of_room (hc_house_get_room (house, room));
      look_at_walls (self, prey, hc_house_get_room (house, room), bars);
      look_at_openings (self, prey, hc_house_get_room (house, room), bars);
    }
}
