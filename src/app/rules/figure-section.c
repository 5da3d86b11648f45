/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The figures of one need, under a heading that opens them. */
#include "config.h"

#include "app/rules/figure-section.h"

#include "app/needs/set-text.h"

#include "plan/edit-rules.h"

#include <glib/gi18n.h>

struct _HcFigureSection
{
  GtkBox parent_instance;

  GtkToggleButton *header;
  GtkImage *arrow;
  GtkLabel *title;
  GtkLabel *count;
  GtkLabel *own;
  GtkListBox *rows;

  GArray *entries;
  HcPlan *plan;
  char *text;
  gboolean read_only;
};

G_DEFINE_FINAL_TYPE (HcFigureSection, hc_figure_section, GTK_TYPE_BOX)

const char *
hc_figure_section_get_heading (HcFigureSection *self)
{
  return gtk_label_get_text (self->title);
}

static const HcFigureEntry *
entry_at (HcFigureSection *self, guint index)
{
  return &g_array_index (self->entries, HcFigureEntry, index);
}

static HcOwnFigure *
find_own (HcFigureSection *self, const HcFigureEntry *entry)
{
  return self->plan != NULL
             ? hc_plan_find_own_figure (self->plan, hc_figure_entry_get_figure (entry)->id)
             : NULL;
}

static gboolean
is_looked_for (HcFigureSection *self, const HcFigureEntry *entry)
{
  return *self->text == '\0' || hc_figure_entry_matches (entry, self->text);
}

static gboolean
row_is_looked_for (GtkListBoxRow *row, gpointer self)
{
  return is_looked_for (self, hc_figure_row_get_entry (HC_FIGURE_ROW (row)));
}

static void
fill (HcFigureSection *self)
{
  for (guint i = 0; i < self->entries->len; i++)
    {
      GtkWidget *row = hc_figure_row_new (entry_at (self, i), self->read_only);

      hc_figure_row_show_own (HC_FIGURE_ROW (row), find_own (self, entry_at (self, i)));
      gtk_list_box_append (self->rows, row);
    }
}

/* The rules have hundreds of figures, and few are looked at: rows are made when
 * the section is opened for the first time. */
static void
header_toggled (HcFigureSection *self)
{
  gboolean open = gtk_toggle_button_get_active (self->header);

  if (open && gtk_list_box_get_row_at_index (self->rows, 0) == NULL)
    fill (self);
  gtk_image_set_from_icon_name (self->arrow, open ? "pan-down-symbolic" : "pan-end-symbolic");
  gtk_accessible_update_state (GTK_ACCESSIBLE (self->header), GTK_ACCESSIBLE_STATE_EXPANDED, open,
                               -1);
}

/**
 * hc_figure_section_add: (skip)
 * @self: a section
 * @entry: a figure that belongs to it
 */
void
hc_figure_section_add (HcFigureSection *self, const HcFigureEntry *entry)
{
  g_array_append_vals (self->entries, entry, 1);
}

/**
 * hc_figure_section_show_own: (skip)
 * @self: a section
 * @plan: the plan whose own figures are shown
 */
void
hc_figure_section_show_own (HcFigureSection *self, HcPlan *plan)
{
  g_autofree char *own = NULL;
  GtkListBoxRow *row;
  guint n = 0;

  g_clear_pointer (&self->plan, hc_plan_unref);
  self->plan = hc_plan_ref (plan);
  for (guint i = 0; i < self->entries->len; i++)
    n += find_own (self, entry_at (self, i)) != NULL;
  for (int i = 0; (row = gtk_list_box_get_row_at_index (self->rows, i)) != NULL; i++)
    hc_figure_row_show_own (HC_FIGURE_ROW (row),
                            find_own (self, hc_figure_row_get_entry (HC_FIGURE_ROW (row))));
  if (n > 0)
    /* Translators: how many figures the keeper has set instead of those of the rules */
    own = g_strdup_printf (ngettext ("%u of my own", "%u of my own", n), n);
  hc_set_text (self->own, own);
}

/**
 * hc_figure_section_look_for: (skip)
 * @self: a section
 * @text: what the keeper looks for, empty for nothing
 *
 * Hides what does not speak of it, and the section when nothing does.
 *
 * Returns: how many figures are left
 */
guint
hc_figure_section_look_for (HcFigureSection *self, const char *text)
{
  g_autofree char *count = NULL;
  guint n = 0;

  g_free (self->text);
  self->text = g_strdup (text);
  for (guint i = 0; i < self->entries->len; i++)
    n += is_looked_for (self, entry_at (self, i));
  count = g_strdup_printf (ngettext ("%u figure", "%u figures", n), n);
  hc_set_text (self->count, count);
  gtk_widget_set_visible (GTK_WIDGET (self), n > 0);
  gtk_list_box_invalidate_filter (self->rows);
  return n;
}

gboolean
hc_figure_section_is_open (HcFigureSection *self)
{
  return gtk_toggle_button_get_active (self->header);
}

void
hc_figure_section_set_open (HcFigureSection *self, gboolean open)
{
  gtk_toggle_button_set_active (self->header, open);
}

/**
 * hc_figure_section_find_row: (skip)
 * @self: a section
 * @figure: id of a figure
 *
 * Opens the section when the figure is in it.
 *
 * Returns: (nullable) (transfer none): its row
 */
HcFigureRow *
hc_figure_section_find_row (HcFigureSection *self, const char *figure)
{
  for (guint i = 0; i < self->entries->len; i++)
    if (g_str_equal (hc_figure_entry_get_figure (entry_at (self, i))->id, figure))
      {
        hc_figure_section_set_open (self, TRUE);
        return HC_FIGURE_ROW (gtk_list_box_get_row_at_index (self->rows, (int) i));
      }
  return NULL;
}

static void
hc_figure_section_finalize (GObject *object)
{
  HcFigureSection *self = HC_FIGURE_SECTION (object);

  g_clear_pointer (&self->plan, hc_plan_unref);
  g_array_unref (self->entries);
  g_free (self->text);
  G_OBJECT_CLASS (hc_figure_section_parent_class)->finalize (object);
}

static void
hc_figure_section_class_init (HcFigureSectionClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = hc_figure_section_finalize;
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hencote/Hencote/figure-section.ui");
  gtk_widget_class_bind_template_child (widget_class, HcFigureSection, header);
  gtk_widget_class_bind_template_child (widget_class, HcFigureSection, arrow);
  gtk_widget_class_bind_template_child (widget_class, HcFigureSection, title);
  gtk_widget_class_bind_template_child (widget_class, HcFigureSection, count);
  gtk_widget_class_bind_template_child (widget_class, HcFigureSection, own);
  gtk_widget_class_bind_template_child (widget_class, HcFigureSection, rows);
  gtk_widget_class_bind_template_callback (widget_class, header_toggled);
}

static void
hc_figure_section_init (HcFigureSection *self)
{
  self->entries = g_array_new (FALSE, FALSE, sizeof (HcFigureEntry));
  self->text = g_strdup ("");
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_list_box_set_filter_func (self->rows, row_is_looked_for, self, NULL);
}

/**
 * hc_figure_section_new: (skip)
 * @heading: what its figures are about
 * @read_only: whether the keeper can set none of their own
 *
 * Returns: a section that is shut
 */
GtkWidget *
hc_figure_section_new (const char *heading, gboolean read_only)
{
  HcFigureSection *self = g_object_new (HC_TYPE_FIGURE_SECTION, NULL);

  self->read_only = read_only;
  gtk_label_set_text (self->title, heading);
  return GTK_WIDGET (self);
}
