/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Looks along a cut once, for drawing and for pointing at. */
#include "config.h"

#include "side-scene.h"

#include "drawing/side-wall.h"

/* Room for the roof above and the ground below, in the house. */
#define ABOVE_MM 250.0
#define BELOW_MM 600.0
#define LEAST_HIGH_MM 2000.0

/* What is in the face of a wall is not behind it. */
#define IN_FACE_MM 1.0

static gboolean
is_solid_face (const HcSideScene *self, const HcSectionItem *item)
{
  HcWall *wall;

  if (item->kind != HC_SECTION_WALL || item->cut)
    return FALSE;
  wall = hc_layout_get_wall (hc_house_get_layout (self->house), item->id);
  return hc_wall_get (wall)->kind == HC_WALL_SOLID;
}

/* A solid wall that is looked at. */
typedef struct
{
  HcBox box;
  double depth_mm;
} Face;

static void
find_faces (HcSideScene *self)
{
  for (guint i = 0; i < self->items->len; i++)
    {
      const HcSectionItem *item = hc_side_scene_get_item (self, i);
      Face face = { hc_side_item_get_box (item), item->depth_mm };

      if (is_solid_face (self, item))
        g_array_append_val (self->faces, face);
    }
}

static gboolean
covers (HcBox wall, HcBox box)
{
  return box.x_mm >= wall.x_mm - IN_FACE_MM && box.y_mm >= wall.y_mm - IN_FACE_MM
         && box.x_mm + box.width_mm <= wall.x_mm + wall.width_mm + IN_FACE_MM
         && box.y_mm + box.depth_mm <= wall.y_mm + wall.depth_mm + IN_FACE_MM;
}

/* Whether a solid wall stands before a box that is so far beyond the cut. */
static gboolean
is_behind_wall (const HcSideScene *self, HcBox box, double depth_mm)
{
  for (guint i = 0; i < self->faces->len; i++)
    {
      const Face *face = &g_array_index (self->faces, Face, i);

      if (face->depth_mm < depth_mm - IN_FACE_MM && covers (face->box, box))
        return TRUE;
    }
  return FALSE;
}

/* A wall between two pens is seen from both; it is as high as the higher makes it. */
static gboolean
is_lower_part (const HcSideScene *self, const HcSectionItem *item)
{
  double top_mm = hc_side_item_get_box (item).y_mm;

  for (guint i = 0; item->kind == HC_SECTION_WALL && i < self->items->len; i++)
    {
      const HcSectionItem *other = hc_side_scene_get_item (self, i);

      if (other->kind == HC_SECTION_WALL && other->id == item->id
          && hc_side_item_get_box (other).y_mm < top_mm)
        return TRUE;
    }
  return FALSE;
}

static gboolean
is_hidden (const HcSideScene *self, const HcSectionItem *item)
{
  return is_lower_part (self, item)
         || (!item->cut && item->kind != HC_SECTION_ROOF
             && is_behind_wall (self, hc_side_item_get_box (item), item->depth_mm));
}

/**
 * hc_side_scene_new: (skip)
 * @house: a house
 * @book: (nullable): what its roofs and floors are made of; must outlive the scene
 * @cut: where it is cut
 *
 * Returns: (transfer full): what is seen
 */
HcSideScene *
hc_side_scene_new (HcHouse *house, const HcBook *book, const HcSideCut *cut)
{
  HcSideScene *self = g_new0 (HcSideScene, 1);

  self->house = hc_house_ref (house);
  self->book = book;
  self->cut = *cut;
  self->items = hc_side_cut_look (cut, house);
  self->faces = g_array_new (FALSE, FALSE, sizeof (Face));
  find_faces (self);
  self->hidden = g_array_sized_new (FALSE, FALSE, sizeof (gboolean), self->items->len);
  for (guint i = 0; i < self->items->len; i++)
    {
      gboolean hidden = is_hidden (self, hc_side_scene_get_item (self, i));

      g_array_append_val (self->hidden, hidden);
    }
  return self;
}

void
hc_side_scene_free (HcSideScene *self)
{
  g_array_unref (self->items);
  g_array_unref (self->hidden);
  g_array_unref (self->faces);
  hc_house_unref (self->house);
  g_free (self);
}

/**
 * hc_side_get_bounds: (skip)
 * @cut: a cut
 * @items: (element-type HcSectionItem): what is seen from it
 *
 * Returns: the box round the drawing without its heights, y running down from the floor
 */
HcBox
hc_side_get_bounds (const HcSideCut *cut, const GArray *items)
{
  double highest_mm = LEAST_HIGH_MM;

  for (guint i = 0; i < items->len; i++)
    highest_mm = MAX (highest_mm,
                      -hc_side_item_get_box (&g_array_index (items, HcSectionItem, i)).y_mm);
  return (HcBox){ 0, -highest_mm - ABOVE_MM, hc_point_distance (cut->from, cut->to),
                  highest_mm + ABOVE_MM + BELOW_MM };
}

HcBox
hc_side_scene_get_bounds (const HcSideScene *self)
{
  return hc_side_get_bounds (&self->cut, self->items);
}

const HcSectionItem *
hc_side_scene_get_item (const HcSideScene *self, guint item)
{
  return &g_array_index (self->items, HcSectionItem, item);
}

gboolean
hc_side_scene_shows (const HcSideScene *self, guint item)
{
  return !g_array_index (self->hidden, gboolean, item);
}

/**
 * hc_side_scene_hides: (skip)
 * @self: a scene
 * @at: how far along the cut something is, and how high above the floor
 * @depth_mm: how far beyond the cut
 *
 * Returns: whether a wall stands before it
 */
gboolean
hc_side_scene_hides (const HcSideScene *self, HcPoint at, double depth_mm)
{
  return is_behind_wall (self, (HcBox){ at.x_mm, -at.y_mm, 0, 0 }, depth_mm);
}
