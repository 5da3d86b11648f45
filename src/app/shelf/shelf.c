/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The things to add, by what birds do with them. */
#include "config.h"

#include "app/shelf/shelf.h"

#include "app/fields/hand-on-focus.h"
#include "app/shelf/thing.h"

#include <glib/gi18n.h>

struct _HcShelf
{
  HcPanel parent_instance;

  GtkSearchEntry *search;
  GtkBox *groups;
  GtkWidget *nothing;
};

G_DEFINE_FINAL_TYPE (HcShelf, hc_shelf, HC_TYPE_PANEL)

static GtkWidget *
add_group (HcShelf *self, const char *name)
{
  GtkWidget *group = g_object_new (GTK_TYPE_BOX, "orientation", GTK_ORIENTATION_VERTICAL,
                                   "accessible-role", GTK_ACCESSIBLE_ROLE_GROUP, NULL);
  GtkWidget *heading = gtk_label_new (name);

  gtk_label_set_xalign (GTK_LABEL (heading), 0);
  gtk_widget_add_css_class (heading, "hc-group");
  gtk_accessible_update_relation (GTK_ACCESSIBLE (group), GTK_ACCESSIBLE_RELATION_LABELLED_BY,
                                  heading, NULL, -1);
  gtk_box_append (GTK_BOX (group), heading);
  gtk_box_append (self->groups, group);
  return group;
}

static void
fill_house (HcShelf *self, HcBook *book)
{
  GtkBox *group = GTK_BOX (add_group (self, _("The house")));

  gtk_box_append (group, hc_thing_new_pen (HC_PEN_INDOOR, _("draw a pen"),
                                           _("Drag from corner to corner on the floor.")));
  gtk_box_append (group, hc_thing_new_pen (HC_PEN_RUN, _("draw a run"),
                                           _("Birds go out here. Drag from corner to corner.")));
  for (guint i = 0; i < hc_book_get_n_opening_types (book); i++)
    gtk_box_append (group, hc_thing_new_opening (hc_book_get_opening_type_at (book, i)));
}

static void
fill_group (HcShelf *self, HcBook *book, HcFittingGroup which)
{
  GtkWidget *group = NULL;

  for (guint i = 0; i < hc_book_get_n_fitting_types (book); i++)
    {
      const HcFittingType *type = hc_book_get_fitting_type_at (book, i);

      if (type->group != which)
        continue;
      if (group == NULL)
        group = add_group (self, hc_fitting_group_get_name (which));
      gtk_box_append (GTK_BOX (group), hc_thing_new_fitting (type));
    }
}

static void
hc_shelf_plan_changed (HcPanel *panel)
{
  HcShelf *self = HC_SHELF (panel);
  HcBook *book = hc_panel_get_book (panel);

  if (gtk_widget_get_first_child (GTK_WIDGET (self->groups)) != NULL)
    return;
  fill_house (self, book);
  for (int group = 0; group <= HC_FITTING_GROUP_STAY_SAFE; group++)
    fill_group (self, book, (HcFittingGroup) group);
}

static gboolean
filter_group (GtkWidget *group, const char *text)
{
  gboolean any = FALSE;

  for (GtkWidget *at = gtk_widget_get_first_child (group); at != NULL;
       at = gtk_widget_get_next_sibling (at))
    if (HC_IS_THING (at))
      {
        gboolean shown = *text == '\0' || hc_thing_matches (HC_THING (at), text);

        gtk_widget_set_visible (at, shown);
        any = any || shown;
      }
  gtk_widget_set_visible (group, any);
  return any;
}

static void
filter (HcShelf *self)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->search));
  gboolean any = FALSE;

  for (GtkWidget *group = gtk_widget_get_first_child (GTK_WIDGET (self->groups)); group != NULL;
       group = gtk_widget_get_next_sibling (group))
    any = filter_group (group, text) || any;
  gtk_widget_set_visible (self->nothing, !any);
}

/* Of things in sight, the one called what was typed, else the first. */
static GtkWidget *
find_thing (HcShelf *self, const char *text)
{
  GtkWidget *group = gtk_widget_get_first_child (GTK_WIDGET (self->groups));
  GtkWidget *first = NULL;

  for (; group != NULL; group = gtk_widget_get_next_sibling (group))
    for (GtkWidget *at = gtk_widget_get_first_child (group); at != NULL;
         at = gtk_widget_get_next_sibling (at))
      {
        if (!HC_IS_THING (at) || !gtk_widget_get_visible (at))
          continue;
        if (g_ascii_strcasecmp (hc_thing_get_name (HC_THING (at)), text) == 0)
          return at;
        if (first == NULL)
          first = at;
      }
  return first;
}

static void
clear_search (HcShelf *self)
{
  gtk_editable_set_text (GTK_EDITABLE (self->search), "");
}

/* Enter may come sooner than the list follows what is typed. */
static void
add_found (HcShelf *self)
{
  GtkWidget *thing;

  filter (self);
  thing = find_thing (self, gtk_editable_get_text (GTK_EDITABLE (self->search)));
  if (thing == NULL)
    return;
  clear_search (self);
  gtk_widget_activate_action (thing, "thing.add", NULL);
}

static gboolean
hc_shelf_grab_focus (GtkWidget *widget)
{
  return hc_hand_on_focus (widget, GTK_WIDGET (HC_SHELF (widget)->search));
}

static void
hc_shelf_class_init (HcShelfClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  HC_PANEL_CLASS (klass)->plan_changed = hc_shelf_plan_changed;
  widget_class->grab_focus = hc_shelf_grab_focus;
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/shelf.ui");
  gtk_widget_class_bind_template_child (widget_class, HcShelf, search);
  gtk_widget_class_bind_template_child (widget_class, HcShelf, groups);
  gtk_widget_class_bind_template_child (widget_class, HcShelf, nothing);
  gtk_widget_class_bind_template_callback (widget_class, filter);
  gtk_widget_class_bind_template_callback (widget_class, add_found);
  gtk_widget_class_bind_template_callback (widget_class, clear_search);
}

static void
hc_shelf_init (HcShelf *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}
