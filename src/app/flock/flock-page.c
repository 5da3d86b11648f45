/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The groups of birds and the day the plan is judged on. */
#include "config.h"

#include "app/flock/flock-page.h"

#include "app/fields/date-field.h"
#include "app/fields/plain-names.h"
#include "app/flock/group-card.h"

#include "base/ids.h"
#include "plan/edit-flock.h"
#include "plan/edit-plan.h"

#include <glib/gi18n.h>

struct _HcFlockPage
{
  HcPanel parent_instance;

  AdwBin *day_place;
  HcDateField *day;
  GtkBox *groups;
};

G_DEFINE_FINAL_TYPE (HcFlockPage, hc_flock_page, HC_TYPE_PANEL)

static HcPlan *
plan_of (HcFlockPage *self)
{
  return hc_document_get_settled_plan (hc_panel_get_document (HC_PANEL (self)));
}

static void
day_entered (HcFlockPage *self)
{
  hc_panel_apply (HC_PANEL (self),
                  hc_plan_set_day (plan_of (self), hc_date_field_get_day (self->day)), NULL,
                  _("Set Day"), "day");
}

/* New birds live in the first indoor pen until the keeper says otherwise. */
static const char *
first_home (HcPlan *plan)
{
  HcParts *pens = hc_layout_get (hc_plan_get_layout (plan))->pens;

  for (guint i = 0; i < pens->len; i++)
    if (hc_pen_get (pens->pdata[i])->kind == HC_PEN_INDOOR)
      return hc_part_get_id (pens->pdata[i]);
  return NULL;
}

static void
add_group (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcFlockPage *self = HC_FLOCK_PAGE (widget);
  g_autofree char *id = hc_id_new ();
  g_autoptr (HcBatch) batch = NULL;
  HcBatchValues values;
  GError *error = NULL;

  hc_batch_values_init (&values);
  values.kind = (char *) hc_book_get_kind_at (hc_panel_get_book (HC_PANEL (self)), 0)->id;
  values.females = 1;
  values.pen = (char *) first_home (plan_of (self));
  batch = hc_batch_new (id, &values);
  hc_panel_apply (HC_PANEL (self), hc_plan_add_batch (plan_of (self), batch, &error), error,
                  _("Add Birds"), NULL);
}

static GtkWidget *
card_at (HcFlockPage *self, guint index)
{
  GtkWidget *card = gtk_widget_get_first_child (GTK_WIDGET (self->groups));

  for (guint i = 0; card != NULL && i < index; i++)
    card = gtk_widget_get_next_sibling (card);
  return card;
}

/* Cards stay for the group they show, so that a field keeps the focus. */
static void
show_groups (HcFlockPage *self, HcParts *batches)
{
  GtkWidget *surplus;

  for (guint i = 0; i < batches->len; i++)
    {
      GtkWidget *card = card_at (self, i);

      if (card == NULL)
        {
          card = hc_group_card_new (HC_PANEL (self));
          gtk_box_append (self->groups, card);
        }
      hc_group_card_show (HC_GROUP_CARD (card), batches->pdata[i]);
    }
  while ((surplus = card_at (self, batches->len)) != NULL)
    gtk_box_remove (self->groups, surplus);
}

/**
 * hc_flock_page_show_group:
 * @self: the page, in sight
 * @id: id of a group of birds
 *
 * Gives its card the focus, which brings it into sight.
 */
void
hc_flock_page_show_group (HcFlockPage *self, const char *id)
{
  GtkWidget *card = gtk_widget_get_first_child (GTK_WIDGET (self->groups));

  for (; card != NULL; card = gtk_widget_get_next_sibling (card))
    if (g_strcmp0 (hc_group_card_get_id (HC_GROUP_CARD (card)), id) == 0)
      {
        gtk_widget_grab_focus (card);
        return;
      }
}

static void
hc_flock_page_plan_changed (HcPanel *panel)
{
  HcFlockPage *self = HC_FLOCK_PAGE (panel);
  const HcPlanValues *plan = hc_plan_get (hc_panel_get_plan (panel));

  if (hc_document_is_previewing (hc_panel_get_document (panel)))
    return;
  hc_date_field_set_day (self->day, plan->as_of);
  show_groups (self, plan->batches);
}

static void
hc_flock_page_class_init (HcFlockPageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  HC_PANEL_CLASS (klass)->plan_changed = hc_flock_page_plan_changed;
  gtk_widget_class_install_action (widget_class, "flock.add", NULL, add_group);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/flock-page.ui");
  gtk_widget_class_bind_template_child (widget_class, HcFlockPage, day_place);
  gtk_widget_class_bind_template_child (widget_class, HcFlockPage, groups);
}

static void
hc_flock_page_init (HcFlockPage *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  hc_name_plainly (GTK_WIDGET (self));
  self->day = HC_DATE_FIELD (hc_date_field_new (_("today")));
  hc_date_field_set_what (self->day, _("Judged on"));
  adw_bin_set_child (self->day_place, GTK_WIDGET (self->day));
  g_signal_connect_swapped (self->day, "entered", G_CALLBACK (day_entered), self);
}
