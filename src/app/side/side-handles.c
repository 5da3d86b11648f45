/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Handles of what is selected: its top, and the sill of an opening. */
#include "config.h"

#include "app/side/side-private.h"

#include "app/properties/property-table.h"

#include <glib/gi18n.h>

#define HANDLE_WIDE_PX 22.0
#define HANDLE_HIGH_PX 10.0

/**
 * hc_side_has_measure: (skip)
 * @self: the side view
 * @fitting: a fitting
 * @measure: a member of it
 *
 * Returns: whether the keeper may set that measure of it
 */
gboolean
hc_side_has_measure (HcSide *self, HcFitting *fitting, const char *measure)
{
  return hc_property_suits (&hc_fitting_class, measure, hc_fitting_get (fitting),
                            hc_panel_get_book (HC_PANEL (self)));
}

static void
add_handle (HcSide *self, const char *id, HcSideHandle role, const char *label)
{
  hc_canvas_item_tell (hc_canvas_add_handle (&self->canvas, id, role, hc_side_draw_handle), label,
                       _("Raise or lower it with the arrow keys"));
}

/* Of a roost with several bars the highest one is raised. */
static void
add_fitting_handles (HcSide *self, HcFitting *fitting)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  const char *id = hc_fitting_get_id (fitting);

  if (values->locked)
    return;
  if (values->kind == HC_FITTING_ROOST)
    {
      if (values->bars > 1 && hc_side_has_measure (self, fitting, "rise_mm"))
        add_handle (self, id, HC_SIDE_TOP, _("Highest bar"));
    }
  else if (hc_side_has_measure (self, fitting, "height_mm"))
    add_handle (self, id, HC_SIDE_TOP, _("Top"));
}

static void
add_handles (HcSide *self, const char *id)
{
  HcFitting *fitting = hc_layout_get_fitting (self->canvas.layout, id, NULL);

  if (fitting != NULL)
    add_fitting_handles (self, fitting);
  else if (hc_layout_get_opening (self->canvas.layout, id) != NULL)
    {
      add_handle (self, id, HC_SIDE_TOP, _("Top"));
      add_handle (self, id, HC_SIDE_BOTTOM, _("Lower edge"));
    }
}

/**
 * hc_side_follow_handles: (skip)
 * @canvas: the side view
 *
 * Gives handles to what is selected alone and seen. Those of a thing being
 * dragged stay, so that the focus does too.
 */
void
hc_side_follow_handles (HcCanvas *canvas)
{
  HcDocument *document = hc_panel_get_document (HC_PANEL (canvas));
  const char *const *ids = hc_document_get_selection (document);
  const char *only = ids[0] != NULL && ids[1] == NULL ? ids[0] : NULL;

  if (only != NULL && hc_canvas_get_item (canvas, only) == NULL)
    only = NULL;
  if (canvas->handles->len > 0 && g_strcmp0 (canvas->handled, only) == 0)
    return;
  hc_canvas_remove_handles (canvas);
  g_free (canvas->handled);
  canvas->handled = g_strdup (only);
  if (only != NULL && !hc_document_is_read_only (document))
    add_handles (HC_SIDE (canvas), only);
}

/**
 * hc_side_find_handle: (skip)
 * @canvas: the side view
 * @handle: a handle
 * @frame: (out): where the edge is that it moves
 *
 * Returns: whether that is seen
 */
gboolean
hc_side_find_handle (HcCanvas *canvas, HcCanvasItem *handle, HcItemFrame *frame)
{
  HcCanvasItem *item = hc_canvas_get_item (canvas, hc_canvas_item_get_id (handle));
  gboolean is_top = hc_canvas_item_get_number (handle) == HC_SIDE_TOP;

  if (item == NULL)
    return FALSE;
  *frame = (HcItemFrame){ hc_canvas_item_get_frame (item)->centre, 0,
                          HANDLE_WIDE_PX / canvas->sight.scale,
                          HANDLE_HIGH_PX / canvas->sight.scale };
  frame->centre.y_mm += hc_canvas_item_get_frame (item)->depth_mm / 2 * (is_top ? -1 : 1);
  return TRUE;
}
