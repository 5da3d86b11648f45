/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The place the house stands in, and what the plan is called. */
#include "config.h"

#include "app/site/site-page.h"

#include "app/properties/property-list.h"
#include "app/site/predator-list.h"

#include "climate/hardiness-zone.h"
#include "plan/edit-plan.h"
#include "plan/edit-site.h"

#include <glib/gi18n.h>

struct _HcSitePage
{
  HcPanel parent_instance;

  GtkEntry *title;
  HcPropertyList *fields;
  HcPredatorList *predators;
  GtkDropDown *zone;
  gboolean showing_zone;
  GtkTextView *notes;
};

G_DEFINE_FINAL_TYPE (HcSitePage, hc_site_page, HC_TYPE_PANEL)

static HcPlan *
plan_of (HcSitePage *self)
{
  return hc_document_get_settled_plan (hc_panel_get_document (HC_PANEL (self)));
}

static void
title_entered (HcSitePage *self)
{
  const char *title = gtk_editable_get_text (GTK_EDITABLE (self->title));

  if (hc_panel_get_document (HC_PANEL (self)) != NULL)
    hc_panel_apply (HC_PANEL (self), hc_plan_set_title (plan_of (self), title), NULL,
                    _("Set Title"), "title");
}

static void
notes_entered (HcSitePage *self)
{
  GtkTextBuffer *buffer = gtk_text_view_get_buffer (self->notes);
  g_autofree char *notes = NULL;

  if (hc_panel_get_document (HC_PANEL (self)) == NULL)
    return;
  g_object_get (buffer, "text", &notes, NULL);
  hc_panel_apply (HC_PANEL (self), hc_plan_set_notes (plan_of (self), notes), NULL,
                  _("Write Notes"), "notes");
}

static void
field_entered (HcSitePage *self, HcPropertyField *field)
{
  HcPlan *plan = plan_of (self);
  g_autofree gpointer values
      = hc_property_list_store (self->fields, field, hc_plan_get (plan)->site);
  g_autofree char *step = hc_property_list_get_step (field);
  GError *error = NULL;

  hc_panel_apply (HC_PANEL (self), hc_plan_set_site (plan, values, &error), error, step,
                  hc_property_field_get_property_row (field)->member);
}

/* The first choice is the figure as it was typed. */
static void
zone_chosen (HcSitePage *self)
{
  guint chosen = gtk_drop_down_get_selected (self->zone);
  HcSiteValues values;
  GError *error = NULL;

  if (self->showing_zone || chosen == 0 || chosen == GTK_INVALID_LIST_POSITION
      || hc_panel_get_document (HC_PANEL (self)) == NULL)
    return;
  values = *hc_plan_get_site (plan_of (self));
  values.coldest_night_c = hc_hardiness_zone_get_coldest_c (chosen - 1);
  hc_panel_apply (HC_PANEL (self), hc_plan_set_site (plan_of (self), &values, &error), error,
                  _("Choose a Zone"), "zone");
}

static void
list_zones (HcSitePage *self, HcUnits units)
{
  g_autoptr (GtkStringList) names = gtk_string_list_new (NULL);

  gtk_string_list_append (names, _("As typed above"));
  for (guint zone = 0; zone < HC_N_HARDINESS_ZONES; zone++)
    {
      g_autofree char *name = hc_hardiness_zone_get_name (zone);
      g_autofree char *coldest
          = hc_temperature_format (hc_hardiness_zone_get_coldest_c (zone), units);
      /* Translators: a plant hardiness zone such as “7b”, then its coldest night. */
      g_autofree char *row = g_strdup_printf (_("Zone %s: %s"), name, coldest);

      gtk_string_list_append (names, row);
    }
  gtk_drop_down_set_model (self->zone, G_LIST_MODEL (names));
}

static void
show_zone (HcSitePage *self, const HcSiteValues *site)
{
  guint zone = 0;
  gboolean is_zone = hc_hardiness_zone_find (site->coldest_night_c, &zone);

  self->showing_zone = TRUE;
  if (gtk_drop_down_get_model (self->zone) == NULL)
    list_zones (self, (HcUnits) site->units);
  gtk_drop_down_set_selected (self->zone, is_zone ? zone + 1 : 0);
  self->showing_zone = FALSE;
}

static void
predators_entered (HcSitePage *self)
{
  HcPlan *plan = plan_of (self);
  HcSiteValues values = *hc_plan_get_site (plan);
  g_auto (GStrv) ids = hc_predator_list_get_ids (self->predators, values.predators);
  GError *error = NULL;

  values.predators = ids;
  hc_panel_apply (HC_PANEL (self), hc_plan_set_site (plan, &values, &error), error,
                  _("Tick Predators"), NULL);
}

static void
show_title (HcSitePage *self, const char *title)
{
  if (!g_str_equal (gtk_editable_get_text (GTK_EDITABLE (self->title)), title))
    gtk_editable_set_text (GTK_EDITABLE (self->title), title);
}

static void
show_notes (HcSitePage *self, const char *notes)
{
  GtkTextBuffer *buffer = gtk_text_view_get_buffer (self->notes);
  g_autofree char *shown = NULL;

  g_object_get (buffer, "text", &shown, NULL);
  if (!g_str_equal (shown, notes))
    gtk_text_buffer_set_text (buffer, notes, -1);
}

static void
hc_site_page_plan_changed (HcPanel *panel)
{
  HcSitePage *self = HC_SITE_PAGE (panel);
  const HcPlanValues *plan = hc_plan_get (hc_panel_get_plan (panel));

  if (hc_document_is_previewing (hc_panel_get_document (panel)))
    return;
  hc_property_list_set_class (self->fields, &hc_site_class, panel);
  show_title (self, plan->title != NULL ? plan->title : "");
  show_notes (self, plan->notes != NULL ? plan->notes : "");
  hc_property_list_show (self->fields, hc_site_get (plan->site));
  hc_predator_list_show (self->predators, hc_panel_get_book (panel),
                         hc_site_get (plan->site)->predators);
  show_zone (self, hc_site_get (plan->site));
}

static void
hc_site_page_class_init (HcSitePageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  g_type_ensure (HC_TYPE_PROPERTY_LIST);
  g_type_ensure (HC_TYPE_PREDATOR_LIST);
  HC_PANEL_CLASS (klass)->plan_changed = hc_site_page_plan_changed;
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/site-page.ui");
  gtk_widget_class_bind_template_child (widget_class, HcSitePage, title);
  gtk_widget_class_bind_template_child (widget_class, HcSitePage, fields);
  gtk_widget_class_bind_template_child (widget_class, HcSitePage, predators);
  gtk_widget_class_bind_template_child (widget_class, HcSitePage, zone);
  gtk_widget_class_bind_template_child (widget_class, HcSitePage, notes);
  gtk_widget_class_bind_template_callback (widget_class, title_entered);
  gtk_widget_class_bind_template_callback (widget_class, notes_entered);
  gtk_widget_class_bind_template_callback (widget_class, field_entered);
  gtk_widget_class_bind_template_callback (widget_class, predators_entered);
  gtk_widget_class_bind_template_callback (widget_class, zone_chosen);
}

static void
hc_site_page_init (HcSitePage *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}
