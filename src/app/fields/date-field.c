/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A field for a day. */
#include "config.h"

#include "app/fields/date-field.h"

#include "app/fields/value-button.h"

#include <glib/gi18n.h>

struct _HcDateField
{
  GtkWidget parent_instance;

  GtkMenuButton *button;
  GtkEntry *typed;
  GtkCalendar *calendar;
  char *none;
  char *what;
  guint32 day;
  gboolean showing;
};

G_DEFINE_FINAL_TYPE (HcDateField, hc_date_field, GTK_TYPE_WIDGET)

enum
{
  ENTERED,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

/**
 * hc_date_field_format:
 * @day: a Julian day, not 0
 *
 * Returns: (transfer full): the day as the keeper's language writes it
 */
char *
hc_date_field_format (guint32 day)
{
  GDate date;
  char text[128];

  g_date_clear (&date, 1);
  g_date_set_julian (&date, day);
  /* Translators: a day with its month in letters, in strftime's form */
  g_date_strftime (text, sizeof text, _("%e %b %Y"), &date);
  g_strchug (text);
  return g_strdup (text);
}

static void
show_day (HcDateField *self)
{
  g_autofree char *text
      = self->day != 0 ? hc_date_field_format (self->day) : g_strdup (self->none);

  gtk_menu_button_set_label (self->button, text);
  hc_name_value_button (GTK_WIDGET (self->button), self->what, text);
}

/* As files write it, since that is read alike everywhere. */
static void
show_typed (HcDateField *self)
{
  GDate date;
  char text[32] = "";

  if (self->day != 0)
    {
      g_date_clear (&date, 1);
      g_date_set_julian (&date, self->day);
      g_date_strftime (text, sizeof text, "%Y-%m-%d", &date);
    }
  gtk_editable_set_text (GTK_EDITABLE (self->typed), text);
}

static void
point_calendar (HcDateField *self)
{
  g_autoptr (GDateTime) shown = NULL;
  GDate date;

  if (self->day == 0)
    shown = g_date_time_new_now_local ();
  else
    {
      g_date_clear (&date, 1);
      g_date_set_julian (&date, self->day);
      shown = g_date_time_new_local (g_date_get_year (&date), (int) g_date_get_month (&date),
                                     g_date_get_day (&date), 12, 0, 0);
    }
  self->showing = TRUE;
  gtk_calendar_select_day (self->calendar, shown);
  self->showing = FALSE;
}

static void
take_day (HcDateField *self, guint32 day)
{
  if (self->day == day)
    return;
  hc_date_field_set_day (self, day);
  g_signal_emit (self, signals[ENTERED], 0);
}

static void
day_selected (HcDateField *self)
{
  g_autoptr (GDateTime) chosen = gtk_calendar_get_date (self->calendar);
  GDate date;

  if (self->showing)
    return;
  g_date_clear (&date, 1);
  g_date_set_dmy (&date, (GDateDay) g_date_time_get_day_of_month (chosen),
                  (GDateMonth) g_date_time_get_month (chosen),
                  (GDateYear) g_date_time_get_year (chosen));
  take_day (self, g_date_get_julian (&date));
}

/* "2026-05-01" anywhere, and what is usual where the keeper lives. */
static gboolean
read_day (const char *text, guint32 *day)
{
  GDate date;
  guint year, month, of_month;
  char surplus;

  g_date_clear (&date, 1);
  if (sscanf (text, " %4u-%2u-%2u %c", &year, &month, &of_month, &surplus) == 3)
    {
      if (g_date_valid_dmy ((GDateDay) of_month, (GDateMonth) month, (GDateYear) year))
        g_date_set_dmy (&date, (GDateDay) of_month, (GDateMonth) month, (GDateYear) year);
    }
  else
    g_date_set_parse (&date, text);
  if (!g_date_valid (&date))
    return FALSE;
  *day = g_date_get_julian (&date);
  return TRUE;
}

static void
mark_typed (HcDateField *self, gboolean is_day)
{
  if (is_day)
    gtk_widget_remove_css_class (GTK_WIDGET (self->typed), "error");
  else
    gtk_widget_add_css_class (GTK_WIDGET (self->typed), "error");
  gtk_widget_set_tooltip_text (GTK_WIDGET (self->typed),
                               is_day ? NULL : _("Type a day, for example 2026-05-01"));
  gtk_accessible_update_state (GTK_ACCESSIBLE (self->typed), GTK_ACCESSIBLE_STATE_INVALID,
                               is_day ? GTK_ACCESSIBLE_INVALID_FALSE
                                      : GTK_ACCESSIBLE_INVALID_TRUE,
                               -1);
}

static void
day_typed (HcDateField *self)
{
  guint32 day;
  gboolean is_day = read_day (gtk_editable_get_text (GTK_EDITABLE (self->typed)), &day);

  mark_typed (self, is_day);
  if (!is_day)
    return;
  gtk_menu_button_popdown (self->button);
  take_day (self, day);
}

static void
clear_day (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcDateField *self = HC_DATE_FIELD (widget);

  gtk_menu_button_popdown (self->button);
  take_day (self, 0);
}

void
hc_date_field_set_day (HcDateField *self, guint32 day)
{
  self->day = day;
  show_day (self);
  show_typed (self);
  point_calendar (self);
}

/**
 * hc_date_field_set_what:
 * @self: a field
 * @what: what day it is, such as "Hatched"
 */
void
hc_date_field_set_what (HcDateField *self, const char *what)
{
  g_free (self->what);
  self->what = g_strdup (what);
  show_day (self);
}

guint32
hc_date_field_get_day (HcDateField *self)
{
  return self->day;
}

static void
hc_date_field_dispose (GObject *object)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (object))) != NULL)
    gtk_widget_unparent (child);
  g_clear_pointer (&HC_DATE_FIELD (object)->none, g_free);
  g_clear_pointer (&HC_DATE_FIELD (object)->what, g_free);
  G_OBJECT_CLASS (hc_date_field_parent_class)->dispose (object);
}

static void
hc_date_field_class_init (HcDateFieldClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hc_date_field_dispose;
  signals[ENTERED] = g_signal_new ("entered", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0,
                                   NULL, NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_install_action (widget_class, "date.clear", NULL, clear_day);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/date-field.ui");
  gtk_widget_class_bind_template_child (widget_class, HcDateField, button);
  gtk_widget_class_bind_template_child (widget_class, HcDateField, calendar);
  gtk_widget_class_bind_template_child (widget_class, HcDateField, typed);
  gtk_widget_class_bind_template_callback (widget_class, day_selected);
  gtk_widget_class_bind_template_callback (widget_class, day_typed);
}

static void
hc_date_field_init (HcDateField *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
hc_date_field_new (const char *none)
{
  HcDateField *self = g_object_new (HC_TYPE_DATE_FIELD, NULL);

  self->none = g_strdup (none);
  show_day (self);
  return GTK_WIDGET (self);
}
