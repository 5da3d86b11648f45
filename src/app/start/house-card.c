/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The card of one ready house. */
#include "config.h"

#include "app/start/house-card.h"

#include "app/fields/length-field.h"
#include "app/start/home-units.h"
#include "app/start/plan-picture.h"

#include "base/ids.h"
#include "begin/stretch.h"
#include "plan/edit-site.h"

#include <glib/gi18n.h>

struct _HcHouseCard
{
  GtkBox parent_instance;

  HcPlan *plan;
  HcPlanPicture *picture;
  GtkLabel *title;
  GtkLabel *about;
  HcLengthField *width;
  HcLengthField *length;
  GtkLabel *fault;
};

G_DEFINE_FINAL_TYPE (HcHouseCard, hc_house_card, GTK_TYPE_BOX)

enum
{
  BEGIN,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

static void
show_fault (HcHouseCard *self, const char *sentence)
{
  gtk_label_set_text (self->fault, sentence != NULL ? sentence : "");
  gtk_widget_set_visible (GTK_WIDGET (self->fault), sentence != NULL);
}

static HcPlan *
stretched (HcHouseCard *self, GError **error)
{
  g_autoptr (HcPlan) own = NULL;
  g_autofree char *uid = hc_id_new ();

  own = hc_part_with_id (self->plan, uid);
  return hc_ready_house_stretch (own, hc_length_field_get_length (self->width),
                                 hc_length_field_get_length (self->length), error);
}

static void
begin (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcHouseCard *self = HC_HOUSE_CARD (widget);
  g_autoptr (GError) error = NULL;
  g_autoptr (HcPlan) plan = stretched (self, &error);

  show_fault (self, plan == NULL ? error->message : NULL);
  if (plan != NULL)
    g_signal_emit (self, signals[BEGIN], 0, plan);
}

static void
size_entered (HcHouseCard *self)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HcPlan) plan = stretched (self, &error);

  show_fault (self, plan == NULL ? error->message : NULL);
  if (plan != NULL)
    hc_plan_picture_set_plan (self->picture, plan);
}

static void
hc_house_card_finalize (GObject *object)
{
  g_clear_pointer (&HC_HOUSE_CARD (object)->plan, hc_plan_unref);
  G_OBJECT_CLASS (hc_house_card_parent_class)->finalize (object);
}

static void
hc_house_card_class_init (HcHouseCardClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  g_type_ensure (HC_TYPE_PLAN_PICTURE);
  g_type_ensure (HC_TYPE_LENGTH_FIELD);
  G_OBJECT_CLASS (klass)->finalize = hc_house_card_finalize;
  signals[BEGIN] = g_signal_new ("begin", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL,
                                 NULL, NULL, G_TYPE_NONE, 1, hc_plan_get_type ());
  gtk_widget_class_install_action (widget_class, "house.begin", NULL, begin);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/house-card.ui");
  gtk_widget_class_bind_template_child (widget_class, HcHouseCard, picture);
  gtk_widget_class_bind_template_child (widget_class, HcHouseCard, title);
  gtk_widget_class_bind_template_child (widget_class, HcHouseCard, about);
  gtk_widget_class_bind_template_child (widget_class, HcHouseCard, width);
  gtk_widget_class_bind_template_child (widget_class, HcHouseCard, length);
  gtk_widget_class_bind_template_child (widget_class, HcHouseCard, fault);
}

static void
hc_house_card_init (HcHouseCard *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  g_signal_connect_swapped (self->width, "entered", G_CALLBACK (size_entered), self);
  g_signal_connect_swapped (self->length, "entered", G_CALLBACK (size_entered), self);
}

/* The house as it comes, in the units keepers here use. */
static HcPlan *
open_house (const HcReadyHouse *house)
{
  g_autofree char *uid = hc_id_new ();
  g_autoptr (HcPlan) plan = hc_ready_house_open (house->id, uid, NULL);
  HcSiteValues site;

  if (plan == NULL)
    return NULL;
  site = *hc_plan_get_site (plan);
  site.units = hc_home_units ();
  return hc_plan_set_site (plan, &site, NULL);
}

static void
show_size (HcHouseCard *self)
{
  double width_mm, length_mm;

  hc_ready_house_get_outside (self->plan, &width_mm, &length_mm);
  hc_length_field_set_units (self->width, hc_home_units ());
  hc_length_field_set_units (self->length, hc_home_units ());
  hc_length_field_set_length (self->width, width_mm);
  hc_length_field_set_length (self->length, length_mm);
}

GtkWidget *
hc_house_card_new (const HcReadyHouse *house)
{
  HcHouseCard *self = g_object_new (HC_TYPE_HOUSE_CARD, NULL);

  gtk_label_set_text (self->title, _(house->title));
  gtk_label_set_text (self->about, _(house->about));
  self->plan = open_house (house);
  hc_plan_picture_set_plan (self->picture, self->plan);
  if (self->plan != NULL)
    show_size (self);
  return GTK_WIDGET (self);
}
