/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A tight coop, and each of its parts to be changed. */
#include "config.h"

#include "coop.h"

/* Parts are values that nobody else has seen yet. */
static gpointer
values_in (HcParts *parts, const char *id)
{
  return (gpointer) hc_part_get_values (hc_parts_find (parts, id));
}

HcPenValues *
coop_pen (House *coop, const char *id)
{
  return values_in (coop->pens, id);
}

HcWallValues *
coop_wall (House *coop, const char *id)
{
  return values_in (coop->walls, id);
}

HcOpeningValues *
coop_opening (House *coop, const char *id)
{
  return values_in (coop->openings, id);
}

static void
set_text (char **at, const char *text)
{
  g_free (*at);
  *at = g_strdup (text);
}

void
coop_floor (House *coop, const char *pen, const char *layer)
{
  HcPenValues *values = coop_pen (coop, pen);
  const char *layers[] = { layer, NULL };

  g_strfreev (values->floor_layers);
  values->floor_layers = g_strdupv ((char **) layers);
}

static void
fence_in (House *coop)
{
  static const char *const fences[] = { "q-n", "q-e", "q-s" };
  HcPenValues *run = coop_pen (coop, "q");

  for (guint i = 0; i < G_N_ELEMENTS (fences); i++)
    {
      HcWallValues *fence = coop_wall (coop, fences[i]);

      fence->kind = HC_WALL_FENCE;
      fence->height_mm = 2200;
      set_text (&fence->mesh, "cloth_12");
    }
  run->apron_mm = 600;
  run->roof = HC_ROOF_MESH;
  set_text (&run->roof_mesh, "cloth_12");
  coop_floor (coop, "q", "earth");
}

static void
add_openings (House *coop)
{
  house_add_opening (coop, HC_OPENING_POP_HOLE, "p-e", 1000, 300, 350);
  house_add_opening (coop, HC_OPENING_KEEPER_DOOR, "p-s", 1000, 800, 1900);
  house_add_opening (coop, HC_OPENING_WINDOW, "p-n", 1000, 600, 400);
  house_add_opening (coop, HC_OPENING_VENT, "p-n", 2500, 400, 200);
  house_add_opening (coop, HC_OPENING_EGG_DOOR, "p-w", 1500, 400, 300);
  house_add_opening (coop, HC_OPENING_KEEPER_DOOR, "q-s", 1500, 800, 1900);
  set_text (&coop_opening (coop, COOP_WINDOW)->mesh, "cloth_12");
  set_text (&coop_opening (coop, COOP_VENT)->mesh, "cloth_12");
  for (guint i = 0; i < coop->openings->len; i++)
    set_text (&coop_opening (coop, hc_part_get_id (coop->openings->pdata[i]))->latch, "two_step");
}

void
coop_init (House *coop, const char *animal)
{
  static char *about[2];

  house_init (coop);
  about[0] = (char *) animal;
  coop->site.predators = about;
  coop->site.birds_go_out = TRUE;
  house_add_pen (coop, "p", HC_PEN_INDOOR, 4000, 3000);
  house_add_pen (coop, "q", HC_PEN_RUN, 5000, 3000);
  coop_floor (coop, "p", "concrete");
  fence_in (coop);
  add_openings (coop);
  house_add_roost (coop, "p", 2000, 1500, 2000, 100, 1);
  house_add_birds (coop, "medium_layer", "p", 8, 0, -1);
}
