/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Looks for what is unsound in a layout: ids that stand twice or name
 * nothing, and walls and pens that enclose nothing. */
#include "config.h"

#include "plan/fault-private.h"

#define SHORTEST_WALL_MM 1.0

typedef struct
{
  const HcLayoutValues *layout;
  GHashTable *parts;
  GHashTable *buildings;
  GHashTable *beside;
  HcFault *fault;
} Survey;

/**
 * hc_named_part: (skip)
 * @parts: (element-type utf8 HcPart): the parts of a layout by id
 * @id: (nullable): an id
 * @klass: what it should name
 *
 * Returns: (nullable) (transfer none): the part
 */
gpointer
hc_named_part (GHashTable *parts,
               const char *id,
               const HcPartClass *klass)
{
  HcPart *part = id != NULL ? g_hash_table_lookup (parts, id) : NULL;

  return part != NULL && part->klass == klass ? part : NULL;
}

static gboolean
find_corner_point (GHashTable *parts,
                   const char *id,
                   HcPoint *point)
{
  HcCorner *corner = hc_named_part (parts, id, &hc_corner_class);

  if (corner == NULL)
    return FALSE;
  *point = hc_point (hc_corner_get (corner)->x_mm, hc_corner_get (corner)->y_mm);
  return TRUE;
}

gboolean
hc_wall_get_ends (const HcWall *wall,
                  GHashTable *parts,
                  HcPoint *from,
                  HcPoint *to)
{
  return find_corner_point (parts, hc_wall_get (wall)->from, from)
         && find_corner_point (parts, hc_wall_get (wall)->to, to);
}

static gboolean
add_ids (Survey *survey,
         HcParts *parts,
         const char *member)
{
  for (guint i = 0; i < parts->len; i++)
    {
      const char *id = hc_part_get_id (parts->pdata[i]);

      if (g_hash_table_insert (survey->parts, (char *) id, parts->pdata[i]))
        continue;
      hc_fault_set (survey->fault, HC_FAULT_ID_TWICE, "id", id, NULL);
      return hc_fault_inside_item (survey->fault, member, i);
    }
  return FALSE;
}

static gboolean
add_ids_of_fittings (Survey *survey)
{
  HcParts *pens = survey->layout->pens;

  for (guint i = 0; i < pens->len; i++)
    if (add_ids (survey, hc_pen_get (pens->pdata[i])->fittings, "fittings"))
      return hc_fault_inside_item (survey->fault, "pens", i);
  return FALSE;
}

static gboolean
find_id_twice (Survey *survey)
{
  const HcLayoutValues *layout = survey->layout;

  return add_ids (survey, layout->corners, "corners") || add_ids (survey, layout->walls, "walls")
         || add_ids (survey, layout->openings, "openings")
         || add_ids (survey, layout->pens, "pens") || add_ids_of_fittings (survey)
         || add_ids (survey, layout->loose, "loose_fittings");
}

static gboolean
find_fault_of_wall (Survey *survey,
                    const HcWall *wall)
{
  const HcWallValues *values = hc_wall_get (wall);
  HcPoint from, to;

  if (!find_corner_point (survey->parts, values->from, &from))
    return hc_fault_set (survey->fault, HC_FAULT_NO_SUCH, "from", values->from, NULL);
  if (!find_corner_point (survey->parts, values->to, &to))
    return hc_fault_set (survey->fault, HC_FAULT_NO_SUCH, "to", values->to, NULL);
  return hc_point_distance (from, to) < SHORTEST_WALL_MM
         && hc_fault_set (survey->fault, HC_FAULT_SHORT_WALL, NULL, hc_wall_get_id (wall), NULL);
}

static gboolean
find_fault_of_walls (Survey *survey)
{
  HcParts *walls = survey->layout->walls;

  for (guint i = 0; i < walls->len; i++)
    if (find_fault_of_wall (survey, walls->pdata[i]))
      return hc_fault_inside_item (survey->fault, "walls", i);
  return FALSE;
}

static gboolean
set_wall_fault (Survey *survey,
                HcFaultKind kind,
                const char *wall,
                guint index)
{
  hc_fault_set (survey->fault, kind, NULL, wall, NULL);
  return hc_fault_inside_item (survey->fault, "walls", index);
}

static gboolean
stand_beside (Survey *survey,
              HcWall *wall)
{
  guint n_pens = GPOINTER_TO_UINT (g_hash_table_lookup (survey->beside, wall));

  g_hash_table_insert (survey->beside, wall, GUINT_TO_POINTER (n_pens + 1));
  return n_pens < 2;
}

static gboolean
find_fault_of_pen (Survey *survey,
                   const HcPen *pen)
{
  const HcPenValues *values = hc_pen_get (pen);

  if (values->building != NULL && *values->building != '\0'
      && !g_hash_table_contains (survey->buildings, values->building))
    return hc_fault_set (survey->fault, HC_FAULT_NO_SUCH, "building", values->building, NULL);
  for (guint i = 0; values->walls[i] != NULL; i++)
    {
      HcWall *wall = hc_named_part (survey->parts, values->walls[i], &hc_wall_class);

      if (wall == NULL)
        return set_wall_fault (survey, HC_FAULT_NO_SUCH, values->walls[i], i);
      if (!stand_beside (survey, wall))
        return set_wall_fault (survey, HC_FAULT_CROWDED_WALL, values->walls[i], i);
    }
  return hc_pen_find_ring_fault (pen, survey->parts, survey->fault);
}

static gboolean
find_fault_of_pens (Survey *survey)
{
  HcParts *pens = survey->layout->pens;

  for (guint i = 0; i < pens->len; i++)
    if (find_fault_of_pen (survey, pens->pdata[i]))
      return hc_fault_inside_item (survey->fault, "pens", i);
  return FALSE;
}

/**
 * hc_layout_find_fault: (skip)
 * @layout: a layout whose members are within their rows
 * @buildings: the ids of the plan's buildings
 * @fault: (out caller-allocates): filled when something is wrong
 *
 * Returns: whether something is wrong with the layout
 */
gboolean
hc_layout_find_fault (const HcLayout *layout,
                      GHashTable *buildings,
                      HcFault *fault)
{
  g_autoptr (GHashTable) parts = g_hash_table_new (g_str_hash, g_str_equal);
  g_autoptr (GHashTable) beside = g_hash_table_new (NULL, NULL);
  Survey survey = { hc_layout_get (layout), parts, buildings, beside, fault };

  return find_id_twice (&survey) || find_fault_of_walls (&survey) || find_fault_of_pens (&survey)
         || hc_openings_find_fault (survey.layout, parts, fault);
}
