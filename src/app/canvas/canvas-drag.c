/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A drag from its beginning to the plan it leads to. */
#include "config.h"

#include "app/canvas/canvas.h"

#include "flock/own-standard.h"
#include "supply/rule-distances.h"

#define SNAP_REACH_PX 9.0

void
hc_drag_free (HcDrag *drag)
{
  hc_plan_unref (drag->start);
  g_free (drag->id);
  g_strfreev (drag->ids);
  g_strfreev (drag->new_ids);
  g_free (drag);
}

/**
 * hc_drag_get_reach_mm: (skip)
 * @drag: a drag
 *
 * Returns: how far from a line it is caught by it
 */
double
hc_drag_get_reach_mm (const HcDrag *drag)
{
  return drag->free ? 0 : SNAP_REACH_PX / drag->sight.scale;
}

/**
 * hc_drag_get_way: (skip)
 * @drag: a drag
 *
 * Returns: from where it began to where it is
 */
HcPoint
hc_drag_get_way (const HcDrag *drag)
{
  return hc_point_subtract (drag->to, drag->from);
}

static char **
fittings_selected (HcCanvas *self)
{
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();
  const char *const *ids = hc_canvas_get_selection (self);

  for (guint i = 0; ids[i] != NULL; i++)
    {
      HcFitting *fitting = hc_layout_get_fitting (self->layout, ids[i], NULL);

      if (fitting != NULL && !hc_fitting_get (fitting)->locked)
        g_strv_builder_add (builder, ids[i]);
    }
  return g_strv_builder_end (builder);
}

static HcSnapRules
distances_asked (HcPlan *plan, HcBook *book)
{
  g_autoptr (HcStandard) standard = hc_plan_get_own_standard (plan, book);

  return hc_standard_get_distances (standard, HC_LEVEL_GOOD);
}

/**
 * hc_canvas_new_drag: (skip)
 * @self: a canvas
 * @item: (nullable): what it begins on
 * @from: where it begins, mm
 *
 * Returns: (transfer full): a drag that has not moved yet
 */
HcDrag *
hc_canvas_new_drag (HcCanvas *self, HcCanvasItem *item, HcPoint from)
{
  HcDocument *document = hc_panel_get_document (HC_PANEL (self));
  HcDrag *drag = g_new0 (HcDrag, 1);

  drag->kind = HC_DRAG_PAN;
  drag->start = hc_plan_ref (hc_document_get_settled_plan (document));
  drag->rules = distances_asked (drag->start, hc_panel_get_book (HC_PANEL (self)));
  drag->sight = self->sight;
  drag->from = drag->to = from;
  drag->id = item != NULL ? g_strdup (hc_canvas_item_get_id (item)) : NULL;
  drag->role = item != NULL ? hc_canvas_item_get_number (item) : 0;
  drag->ids = fittings_selected (self);
  if (!hc_document_is_read_only (document) && (item != NULL || self->draws))
    HC_CANVAS_GET_CLASS (self)->begin_drag (self, drag, item);
  return drag;
}

/**
 * hc_canvas_nudge_item: (skip)
 * @self: a canvas
 * @item: a handle, or another thing
 * @by: how far an arrow key moves it, mm
 *
 * What is nudged is dragged a little.
 */
void
hc_canvas_nudge_item (HcCanvas *self, HcCanvasItem *item, HcPoint by)
{
  HcCanvasClass *klass = HC_CANVAS_GET_CLASS (self);
  g_autoptr (HcDrag) drag
      = hc_canvas_new_drag (self, item, hc_canvas_item_get_frame (item)->centre);
  g_autofree char *merge = g_strdup_printf ("%s %u", hc_canvas_item_get_id (item),
                                            hc_canvas_item_get_number (item));
  GError *error = NULL;
  HcPlan *plan;

  drag->free = TRUE;
  drag->to = hc_point_add (drag->from, by);
  plan = klass->get_drag_plan (self, drag, &error);
  hc_canvas_apply (self, plan, error, klass->get_drag_label (self, drag), merge);
}

/**
 * hc_canvas_cancel_drag: (skip)
 * @self: a canvas
 *
 * Puts all back as it was before the drag began.
 */
void
hc_canvas_cancel_drag (HcCanvas *self)
{
  HcDocument *document = hc_panel_get_document (HC_PANEL (self));

  if (document != NULL && hc_document_is_previewing (document))
    hc_document_cancel_preview (document);
  g_clear_pointer (&self->drag, hc_drag_free);
  gtk_widget_queue_draw (self->marks);
}
