/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The needs, how many birds the plan holds, and what is wrong. */
#include "config.h"

#include "app/needs/needs-panel.h"

#include "app/needs/how-many.h"
#include "app/needs/need-row.h"
#include "app/window/late-panel.h"

#include <glib/gi18n.h>

struct _HcNeedsPanel
{
  HcPanel parent_instance;

  GtkListBox *rows;
  GtkWidget *needs[HC_N_NEEDS];
  gboolean held;
};

G_DEFINE_FINAL_TYPE (HcNeedsPanel, hc_needs_panel, HC_TYPE_PANEL)

/* Fix now, worth doing, fine. */
static int
group_of (GtkListBoxRow *row)
{
  HcLevel level = hc_need_row_get_level (HC_NEED_ROW (row));

  return MIN ((int) level, (int) HC_LEVEL_GOOD);
}

static int
compare_rows (GtkListBoxRow *a, GtkListBoxRow *b, gpointer data)
{
  int groups = group_of (a) - group_of (b);

  return groups != 0 ? groups
                     : (int) hc_need_row_get_need (HC_NEED_ROW (a))
                           - (int) hc_need_row_get_need (HC_NEED_ROW (b));
}

static void
head_group (GtkListBoxRow *row, GtkListBoxRow *before, gpointer data)
{
  static const char *const names[] = { N_ ("Fix now"), N_ ("Worth doing"), N_ ("Fine") };
  const char *name = _(names[group_of (row)]);
  GtkWidget *heading = gtk_list_box_row_get_header (row);

  if (before != NULL && group_of (before) == group_of (row))
    {
      gtk_list_box_row_set_header (row, NULL);
      return;
    }
  if (heading == NULL)
    {
      heading = gtk_label_new (NULL);
      gtk_label_set_xalign (GTK_LABEL (heading), 0);
      gtk_widget_add_css_class (heading, "hc-group");
      gtk_list_box_row_set_header (row, heading);
    }
  gtk_label_set_text (GTK_LABEL (heading), name);
}

static void
hc_needs_panel_checked (HcPanel *panel)
{
  HcNeedsPanel *self = HC_NEEDS_PANEL (panel);
  HcCheck *check = hc_panel_get_check (panel);
  HcUnits units;
  gboolean moved = FALSE;

  if (check == NULL || self->held)
    return;
  units = (HcUnits) hc_plan_get_site (hc_check_get_plan (check))->units;
  for (guint i = 0; i < HC_N_NEEDS; i++)
    moved = hc_need_row_show (HC_NEED_ROW (self->needs[i]), check, units) || moved;
  if (!moved)
    return;
  gtk_list_box_invalidate_sort (self->rows);
  gtk_list_box_invalidate_headers (self->rows);
}

/**
 * hc_needs_panel_set_held: (skip)
 * @self: the panel
 * @held: whether it stays as it is while a remedy is tried out on the floor
 */
void
hc_needs_panel_set_held (HcNeedsPanel *self, gboolean held)
{
  if (self->held == held)
    return;
  self->held = held;
  if (!held)
    hc_needs_panel_checked (HC_PANEL (self));
}

static void
refresh (GtkWidget *widget, const char *name, GVariant *parameter)
{
  if (hc_panel_get_checker (HC_PANEL (widget)) != NULL)
    hc_needs_panel_checked (HC_PANEL (widget));
}

static void
hc_needs_panel_class_init (HcNeedsPanelClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  HC_PANEL_CLASS (klass)->checked = hc_needs_panel_checked;
  g_type_ensure (HC_TYPE_HOW_MANY);
  g_type_ensure (HC_TYPE_LATE_PANEL);
  gtk_widget_class_install_action (widget_class, "needs.refresh", NULL, refresh);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/needs-panel.ui");
  gtk_widget_class_bind_template_child (widget_class, HcNeedsPanel, rows);
}

static void
hc_needs_panel_init (HcNeedsPanel *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  for (guint i = 0; i < HC_N_NEEDS; i++)
    {
      self->needs[i] = hc_need_row_new ((HcNeedId) i);
      gtk_widget_set_visible (self->needs[i], FALSE);
      gtk_list_box_append (self->rows, self->needs[i]);
    }
  gtk_list_box_set_sort_func (self->rows, compare_rows, NULL, NULL);
  gtk_list_box_set_header_func (self->rows, head_group, NULL, NULL);
}
