/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Bringing what is seen from the side in step with the plan judged last. */
#include "config.h"

#include "app/side/side-private.h"

#include "base/shape-line.h"
#include "drawing/bird-places.h"
#include "drawing/side-wall.h"
#include "words/height-words.h"
#include "words/house-words.h"
#include "words/words.h"

/* Bedding is caught even where it is thin. */
#define LEAST_CATCH_MM 60.0

/* Storeys count down from here with the depth beyond the cut; bedding is lowest. */
#define DEEPEST_MM 1e6
#define STOREY_BEDDING 0

/* @box: round all that is seen of it */
typedef struct
{
  const char *id;
  HcItemKind kind;
  HcBox box;
  double depth_mm;
} Seen;

static gboolean
can_be_chosen (const HcSectionItem *item)
{
  return item->kind == HC_SECTION_OPENING || item->kind == HC_SECTION_FITTING
         || item->kind == HC_SECTION_BAR;
}

/* The bars of a roost are one thing. */
static void
add_seen (GArray *seen, GHashTable *at, const HcSectionItem *item)
{
  HcBox box = hc_side_item_get_box (item);
  gpointer index;

  if (g_hash_table_lookup_extended (at, item->id, NULL, &index))
    {
      Seen *before = &g_array_index (seen, Seen, GPOINTER_TO_UINT (index));

      before->box = hc_box_join (before->box, box);
      before->depth_mm = MIN (before->depth_mm, item->depth_mm);
      return;
    }
  g_hash_table_insert (at, (gpointer) item->id, GUINT_TO_POINTER (seen->len));
  g_array_append_val (seen, ((Seen){
                                item->id,
                                item->kind == HC_SECTION_OPENING ? HC_ITEM_OPENING
                                                                 : HC_ITEM_FITTING,
                                box, item->depth_mm }));
}

static GArray *
list_seen (const HcSideScene *scene)
{
  GArray *seen = g_array_new (FALSE, FALSE, sizeof (Seen));
  g_autoptr (GHashTable) at = g_hash_table_new (g_direct_hash, g_direct_equal);

  for (guint i = 0; i < scene->items->len; i++)
    {
      const HcSectionItem *item = hc_side_scene_get_item (scene, i);

      if (can_be_chosen (item) && hc_side_scene_shows (scene, i))
        add_seen (seen, at, item);
    }
  return seen;
}

static HcItemFrame
frame_of (HcBox box)
{
  return (HcItemFrame){ hc_box_centre (box), 0, MAX (box.width_mm, 1), MAX (box.depth_mm, 1) };
}

static gpointer
part_of (HcLayout *layout, const Seen *seen)
{
  return seen->kind == HC_ITEM_OPENING
             ? (gpointer) hc_layout_get_opening (layout, seen->id)
             : (gpointer) hc_layout_get_fitting (layout, seen->id, NULL);
}

/* The room over a thing that stays as it is, is told again after the drag. */
static void
follow_item (HcSide *self, GHashTable *ids, HcItemKind kind, gpointer part, HcBox box,
             guint storey)
{
  HcCanvas *canvas = &self->canvas;
  HcCanvasItem *item = hc_canvas_item_for (canvas, kind, part, hc_side_draw_thing, storey);
  HcItemFrame frame = frame_of (box);
  gboolean is_other;

  g_hash_table_add (ids, (gpointer) hc_canvas_item_get_id (item));
  is_other = hc_canvas_item_set_part (item, part);
  hc_canvas_item_set_frame (item, &frame);
  if (is_other || !hc_document_is_previewing (hc_panel_get_document (HC_PANEL (self))))
    hc_side_tell_item (canvas, item);
}

static HcBox
bedding_box (const HcPenValues *pen, const HcStretch *stretch)
{
  double high_mm = MAX (pen->bedding_mm, LEAST_CATCH_MM);

  return (HcBox){ stretch->from_mm, -high_mm, stretch->to_mm - stretch->from_mm, high_mm };
}

static void
follow_bedding (HcSide *self, GHashTable *ids, const HcRoom *room)
{
  const HcSideCut *cut = &self->scene->cut;
  const HcPenValues *pen = hc_room_get (room);
  g_autoptr (GArray) inside
      = hc_shape_clip_line (hc_room_get_outline (room), cut->from, cut->to);

  if (inside->len > 0 && pen->bedding != NULL && *pen->bedding != '\0')
    follow_item (self, ids, HC_ITEM_BEDDING, hc_room_get_pen (room),
                 bedding_box (pen, &g_array_index (inside, HcStretch, 0)), STOREY_BEDDING);
}

static void
follow_scene (HcSide *self)
{
  g_autoptr (GHashTable) ids = g_hash_table_new (g_str_hash, g_str_equal);
  g_autoptr (GArray) seen = list_seen (self->scene);
  HcLayout *layout = self->canvas.layout;

  for (guint i = 0; i < hc_house_get_n_rooms (self->scene->house); i++)
    follow_bedding (self, ids, hc_house_get_room (self->scene->house, i));
  for (guint i = 0; i < seen->len; i++)
    {
      const Seen *thing = &g_array_index (seen, Seen, i);

      follow_item (self, ids, thing->kind, part_of (layout, thing), thing->box,
                   (guint) (DEEPEST_MM - thing->depth_mm));
    }
  hc_canvas_take_away_unseen (&self->canvas, ids);
}

static void
let_go_of_scene (HcSide *self)
{
  g_autoptr (GHashTable) none = g_hash_table_new (g_str_hash, g_str_equal);

  g_clear_pointer (&self->scene, hc_side_scene_free);
  hc_canvas_take_away_unseen (&self->canvas, none);
}

/**
 * hc_side_look_again: (skip)
 * @self: the side view
 *
 * Looks at the house judged last from where it stands now.
 */
void
hc_side_look_again (HcSide *self)
{
  HcCanvas *canvas = &self->canvas;
  HcHouse *house = hc_side_get_house (self);
  HcSideCut cut;

  if (house == NULL)
    return;
  g_clear_pointer (&canvas->layout, hc_layout_unref);
  canvas->layout = hc_layout_ref (hc_house_get_layout (house));
  if (hc_side_find_cut (self, house, &cut))
    {
      g_clear_pointer (&self->scene, hc_side_scene_free);
      self->scene = hc_side_scene_new (house, hc_panel_get_book (HC_PANEL (self)), &cut);
      follow_scene (self);
    }
  else
    let_go_of_scene (self);
  hc_canvas_follow_levels (canvas, HC_ITEM_PEN);
  hc_canvas_follow_selection (canvas);
  hc_canvas_redraw_sheets (canvas);
  gtk_widget_queue_allocate (GTK_WIDGET (self));
}

/**
 * hc_side_follow_check: (skip)
 * @self: the side view
 *
 * Birds wait for the end of a drag to find new places, as on the floor.
 */
void
hc_side_follow_check (HcSide *self)
{
  HcCheck *check = hc_panel_get_check (HC_PANEL (self));

  if (check == NULL)
    return;
  self->units = hc_panel_get_units (HC_PANEL (self));
  if (self->places == NULL
      || !hc_document_is_previewing (hc_panel_get_document (HC_PANEL (self))))
    {
      g_clear_pointer (&self->places, g_array_unref);
      self->places = hc_bird_places (check);
    }
  hc_side_look_again (self);
}

/**
 * hc_side_tell_item: (skip)
 * @canvas: the side view
 * @item: a child that stands for a part
 *
 * Says what it is and how high.
 */
void
hc_side_tell_item (HcCanvas *canvas, HcCanvasItem *item)
{
  HcSide *self = HC_SIDE (canvas);
  gpointer part = hc_canvas_item_get_part (item);
  g_autofree char *label = NULL;
  g_autofree char *place = NULL;
  HcUpright upright;

  switch (hc_canvas_item_get_kind (item))
    {
    case HC_ITEM_FITTING:
      label = hc_words_fitting (part, self->units);
      if (hc_house_measure_upright (self->scene->house, hc_part_get_id (part), &upright))
        place = hc_words_upright (&upright, self->units);
      break;
    case HC_ITEM_OPENING:
      label = hc_words_opening (part, self->units);
      place = hc_words_opening_height (part, self->units);
      break;
    default:
      label = hc_words_bedding (part, self->units);
    }
  hc_canvas_item_tell (item, label, place);
}

HcBox
hc_side_get_extents (HcCanvas *canvas)
{
  HcSide *self = HC_SIDE (canvas);

  return self->scene != NULL ? hc_side_scene_get_bounds (self->scene)
                             : (HcBox){ 0, -3000, 4000, 3000 };
}
