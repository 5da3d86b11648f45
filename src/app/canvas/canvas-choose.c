/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is chosen on a canvas, and what its edits act on. */
#include "config.h"

#include "app/canvas/canvas.h"

#include "plan/edit-fitting.h"
#include "plan/edit-opening.h"
#include "plan/edit-pen.h"

#include <glib/gi18n.h>

const char *const *
hc_canvas_get_selection (HcCanvas *self)
{
  return hc_document_get_selection (hc_panel_get_document (HC_PANEL (self)));
}

/**
 * hc_canvas_get_plan: (skip)
 * @self: a canvas
 *
 * Returns: (transfer none): the plan that an edit begins with
 */
HcPlan *
hc_canvas_get_plan (HcCanvas *self)
{
  return hc_document_get_settled_plan (hc_panel_get_document (HC_PANEL (self)));
}

gboolean
hc_canvas_apply (HcCanvas *self, HcPlan *plan, GError *error, const char *label,
                 const char *merge)
{
  return hc_panel_apply (HC_PANEL (self), plan, error, label, merge);
}

/**
 * hc_canvas_get_selected: (skip)
 * @self: a canvas
 * @kind: what sort of thing
 *
 * Returns: (transfer full): ids of those in the selection
 */
char **
hc_canvas_get_selected (HcCanvas *self, HcItemKind kind)
{
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();
  const char *const *ids = hc_canvas_get_selection (self);

  for (guint i = 0; ids[i] != NULL; i++)
    {
      HcCanvasItem *item = hc_canvas_get_item (self, ids[i]);

      if (item != NULL && hc_canvas_item_get_kind (item) == kind)
        g_strv_builder_add (builder, ids[i]);
    }
  return g_strv_builder_end (builder);
}

gboolean
hc_canvas_is_chosen_alone (HcCanvas *self, HcCanvasItem *item)
{
  const char *const *ids = hc_canvas_get_selection (self);

  return g_strcmp0 (ids[0], hc_canvas_item_get_id (item)) == 0 && ids[1] == NULL;
}

/**
 * hc_canvas_choose: (skip)
 * @self: a canvas
 * @item: (nullable): what is chosen
 * @add: whether it joins what is chosen already, or leaves it
 */
void
hc_canvas_choose (HcCanvas *self, HcCanvasItem *item, gboolean add)
{
  static const char *const none[] = { NULL };
  HcDocument *document = hc_panel_get_document (HC_PANEL (self));
  const char *const *before = hc_document_get_selection (document);
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();
  g_auto (GStrv) ids = NULL;
  const char *id = item != NULL ? hc_canvas_item_get_id (item) : NULL;

  if (item == NULL)
    {
      if (!add)
        hc_document_select (document, none);
      return;
    }
  for (guint i = 0; add && before[i] != NULL; i++)
    if (!g_str_equal (before[i], id))
      g_strv_builder_add (builder, before[i]);
  if (!add || !hc_document_is_selected (document, id))
    g_strv_builder_add (builder, id);
  ids = g_strv_builder_end (builder);
  hc_document_select (document, (const char *const *) ids);
}

/**
 * hc_canvas_item_focused: (skip)
 * @self: a canvas
 * @item: the item the focus moved to by keys
 */
void
hc_canvas_item_focused (HcCanvas *self, HcCanvasItem *item)
{
  const char *const ids[] = { hc_canvas_item_get_id (item), NULL };
  HcDocument *document = hc_panel_get_document (HC_PANEL (self));

  HC_CANVAS_GET_CLASS (self)->focused (self, item);
  if (document == NULL || self->walking || hc_canvas_item_get_kind (item) == HC_ITEM_HANDLE
      || hc_document_is_selected (document, ids[0]))
    return;
  hc_document_select (document, ids);
}

static gboolean
is_in_sight (HcCanvas *self, HcCanvasItem *item)
{
  double x, y;

  hc_sight_to_px (&self->sight, hc_canvas_item_get_frame (item)->centre, &x, &y);
  return x >= 0 && y >= 0 && x <= gtk_widget_get_width (GTK_WIDGET (self))
         && y <= gtk_widget_get_height (GTK_WIDGET (self));
}

/**
 * hc_canvas_show_parts: (skip)
 * @self: a canvas
 * @ids: (array zero-terminated=1): ids of parts
 *
 * Selects them, brings them into sight and gives the first the focus.
 */
void
hc_canvas_show_parts (HcCanvas *self, const char *const *ids)
{
  HcCanvasItem *first = NULL;
  gboolean in_sight = TRUE;

  for (guint i = 0; ids[i] != NULL; i++)
    {
      HcCanvasItem *item = hc_canvas_get_item (self, ids[i]);

      if (item == NULL)
        continue;
      first = first != NULL ? first : item;
      in_sight = in_sight && is_in_sight (self, item);
    }
  if (first == NULL)
    return;
  if (!in_sight)
    hc_canvas_fit (self);
  gtk_widget_grab_focus (GTK_WIDGET (first));
  hc_document_select (hc_panel_get_document (HC_PANEL (self)), ids);
}

void
hc_canvas_show_part (HcCanvas *self, const char *id)
{
  const char *const ids[] = { id, NULL };

  hc_canvas_show_parts (self, ids);
}

typedef HcPlan *(*Removal) (HcPlan *plan, const char *const *ids, GError **error);

static HcPlan *
remove_pens (HcPlan *plan, const char *const *ids, GError **error)
{
  HcPlan *without = hc_plan_ref (plan);

  for (guint i = 0; without != NULL && ids[i] != NULL; i++)
    {
      g_autoptr (HcPlan) before = without;

      without = hc_plan_remove_pen (before, ids[i], error);
    }
  return without;
}

/**
 * hc_canvas_remove_selected: (skip)
 * @self: a canvas
 *
 * Takes what is selected out of the plan.
 */
void
hc_canvas_remove_selected (HcCanvas *self)
{
  static const struct
  {
    HcItemKind kind;
    Removal remove;
  } removals[] = {
    { HC_ITEM_FITTING, hc_plan_remove_fittings },
    { HC_ITEM_OPENING, hc_plan_remove_openings },
    { HC_ITEM_PEN, remove_pens },
  };
  HcPlan *plan = hc_plan_ref (hc_canvas_get_plan (self));
  GError *error = NULL;

  for (guint i = 0; plan != NULL && i < G_N_ELEMENTS (removals); i++)
    {
      g_auto (GStrv) ids = hc_canvas_get_selected (self, removals[i].kind);
      g_autoptr (HcPlan) before = plan;

      plan = removals[i].remove (before, (const char *const *) ids, &error);
    }
  hc_canvas_apply (self, plan, error, _("Remove"), NULL);
}
