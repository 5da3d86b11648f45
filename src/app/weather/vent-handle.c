/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A slider that opens and shuts vents, one or all. */
#include "config.h"

#include "app/weather/vent-handle.h"

#include "plan/edit-opening.h"
#include "words/words.h"

#include <glib/gi18n.h>
#include <math.h>

/* How long the slider stands still before the plan is changed. */
#define SETTLED_MS 350

/* The first choice is all of them. */
#define ALL 0

struct _HcVentHandle
{
  GtkBox parent_instance;

  GtkDropDown *which;
  GtkScale *scale;

  HcLayout *layout;
  GPtrArray *ids;
  gboolean showing;
  guint settling;
};

G_DEFINE_FINAL_TYPE (HcVentHandle, hc_vent_handle, GTK_TYPE_BOX)

enum
{
  MOVED,
  SETTLED,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

double
hc_vent_handle_get_open (HcVentHandle *self)
{
  return gtk_range_get_value (GTK_RANGE (self->scale)) / 100;
}

static gboolean
is_chosen (HcVentHandle *self, const char *id)
{
  guint which = gtk_drop_down_get_selected (self->which);

  if (which == ALL || which > self->ids->len)
    return TRUE;
  return g_strcmp0 (self->ids->pdata[which - 1], id) == 0;
}

/* The mean of what is chosen, by size. */
static double
find_open (HcVentHandle *self)
{
  double open_mm2 = 0, all_mm2 = 0;

  for (guint i = 0; i < self->ids->len; i++)
    {
      HcOpening *opening = hc_layout_get_opening (self->layout, self->ids->pdata[i]);
      const HcOpeningValues *values = opening != NULL ? hc_opening_get (opening) : NULL;

      if (values == NULL || !is_chosen (self, self->ids->pdata[i]))
        continue;
      all_mm2 += values->width_mm * values->height_mm;
      open_mm2 += values->width_mm * values->height_mm * values->open_winter;
    }
  return all_mm2 > 0 ? open_mm2 / all_mm2 : 0;
}

static void
show_open (HcVentHandle *self)
{
  self->showing = TRUE;
  gtk_range_set_value (GTK_RANGE (self->scale), round (100 * find_open (self)));
  self->showing = FALSE;
}

static void
which_chosen (HcVentHandle *self)
{
  if (!self->showing && self->layout != NULL)
    show_open (self);
}

/**
 * hc_vent_handle_is_moving: (skip)
 * @self: the slider
 *
 * Returns: whether it was moved and has not settled
 */
gboolean
hc_vent_handle_is_moving (HcVentHandle *self)
{
  return self->settling != 0;
}

/**
 * hc_vent_handle_settle: (skip)
 * @self: the slider
 *
 * What was moved and has not settled settles now.
 */
void
hc_vent_handle_settle (HcVentHandle *self)
{
  if (self->settling == 0)
    return;
  g_clear_handle_id (&self->settling, g_source_remove);
  g_signal_emit (self, signals[SETTLED], 0);
}

static gboolean
stood_still (gpointer data)
{
  HcVentHandle *self = data;

  self->settling = 0;
  g_signal_emit (self, signals[SETTLED], 0);
  return G_SOURCE_REMOVE;
}

static void
scale_moved (HcVentHandle *self)
{
  if (self->showing)
    return;
  g_clear_handle_id (&self->settling, g_source_remove);
  self->settling = g_timeout_add (SETTLED_MS, stood_still, self);
  g_signal_emit (self, signals[MOVED], 0);
}

static gboolean
list_is_still (HcVentHandle *self, const GPtrArray *ids)
{
  if (ids->len != self->ids->len)
    return FALSE;
  for (guint i = 0; i < ids->len; i++)
    if (!g_str_equal (ids->pdata[i], self->ids->pdata[i]))
      return FALSE;
  return TRUE;
}

static GPtrArray *
find_vents (const HcHouseNight *night)
{
  GPtrArray *ids = g_ptr_array_new_with_free_func (g_free);

  for (guint i = 0; night->air != NULL && i < night->air->ways->len; i++)
    if (hc_house_air_get_way (night->air, i)->is_vent)
      g_ptr_array_add (ids, g_strdup (hc_house_air_get_way (night->air, i)->id));
  return ids;
}

static void
list_vents (HcVentHandle *self, const HcHouseNight *night)
{
  g_autoptr (GtkStringList) names = gtk_string_list_new (NULL);
  HcUnits units = (HcUnits) hc_plan_get_site (night->plan)->units;

  gtk_string_list_append (names, _("All vents and windows"));
  for (guint i = 0; i < self->ids->len; i++)
    {
      g_autofree char *name = hc_words_opening_place (self->layout, self->ids->pdata[i], units);

      gtk_string_list_append (names, name);
    }
  gtk_drop_down_set_model (self->which, G_LIST_MODEL (names));
}

/**
 * hc_vent_handle_show: (skip)
 * @self: the slider
 * @night: the night whose vents it opens
 */
void
hc_vent_handle_show (HcVentHandle *self, const HcHouseNight *night)
{
  g_autoptr (GPtrArray) ids = find_vents (night);
  gboolean still = list_is_still (self, ids);

  self->showing = TRUE;
  g_clear_pointer (&self->layout, hc_layout_unref);
  self->layout = hc_layout_ref (hc_plan_get_layout (night->plan));
  if (!still)
    {
      g_ptr_array_unref (self->ids);
      self->ids = g_steal_pointer (&ids);
      list_vents (self, night);
    }
  gtk_widget_set_sensitive (GTK_WIDGET (self), self->ids->len > 0);
  self->showing = FALSE;
  if (!hc_vent_handle_is_moving (self))
    show_open (self);
}

/**
 * hc_vent_handle_move: (skip)
 * @self: the slider
 * @night: a night; its vents are opened so far
 */
void
hc_vent_handle_move (HcVentHandle *self, HcHouseNight *night)
{
  for (guint i = 0; night->air != NULL && i < night->air->ways->len; i++)
    if (hc_house_air_get_way (night->air, i)->is_vent
        && is_chosen (self, hc_house_air_get_way (night->air, i)->id))
      hc_house_air_open (night->air, i, hc_vent_handle_get_open (self));
}

/**
 * hc_vent_handle_edit: (skip)
 * @self: the slider
 * @plan: a plan
 * @error: says why it cannot be
 *
 * Returns: (transfer full): the plan with its vents open so far in winter
 */
HcPlan *
hc_vent_handle_edit (HcVentHandle *self, HcPlan *plan, GError **error)
{
  HcPlan *changed = hc_plan_ref (plan);

  for (guint i = 0; changed != NULL && i < self->ids->len; i++)
    {
      g_autoptr (HcPlan) before = NULL;
      HcOpening *opening
          = hc_layout_get_opening (hc_plan_get_layout (changed), self->ids->pdata[i]);
      HcOpeningValues values;

      if (opening == NULL || !is_chosen (self, self->ids->pdata[i]))
        continue;
      values = *hc_opening_get (opening);
      values.open_winter = hc_vent_handle_get_open (self);
      before = g_steal_pointer (&changed);
      changed = hc_plan_set_opening (before, self->ids->pdata[i], &values, error);
    }
  return changed;
}

static void
hc_vent_handle_finalize (GObject *object)
{
  HcVentHandle *self = HC_VENT_HANDLE (object);

  g_clear_handle_id (&self->settling, g_source_remove);
  g_clear_pointer (&self->layout, hc_layout_unref);
  g_ptr_array_unref (self->ids);
  G_OBJECT_CLASS (hc_vent_handle_parent_class)->finalize (object);
}

static void
hc_vent_handle_class_init (HcVentHandleClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = hc_vent_handle_finalize;
  signals[MOVED] = g_signal_new ("moved", HC_TYPE_VENT_HANDLE, G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                                 NULL, G_TYPE_NONE, 0);
  signals[SETTLED] = g_signal_new ("settled", HC_TYPE_VENT_HANDLE, G_SIGNAL_RUN_LAST, 0, NULL,
                                   NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hencote/Hencote/vent-handle.ui");
  gtk_widget_class_bind_template_child (widget_class, HcVentHandle, which);
  gtk_widget_class_bind_template_child (widget_class, HcVentHandle, scale);
  gtk_widget_class_bind_template_callback (widget_class, which_chosen);
  gtk_widget_class_bind_template_callback (widget_class, scale_moved);
}

static void
hc_vent_handle_init (HcVentHandle *self)
{
  self->ids = g_ptr_array_new_with_free_func (g_free);
  gtk_widget_init_template (GTK_WIDGET (self));
}
