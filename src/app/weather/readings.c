/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The figures of a night, a card each: made once, written anew. */
#include "config.h"

#include "app/weather/readings.h"

#include "app/needs/set-text.h"

#include <glib/gi18n.h>

enum
{
  TEMPERATURE,
  HUMIDITY,
  DEW_POINT,
  FRESH_AIR,
  CARBON_DIOXIDE,
  AMMONIA,
  N_READINGS
};

static const char *const names[N_READINGS] = {
  [TEMPERATURE] = N_("At the roost"),
  [HUMIDITY] = N_("Humidity there"),
  [DEW_POINT] = N_("Dew point"),
  [FRESH_AIR] = N_("Air per bird"),
  [CARBON_DIOXIDE] = N_("Carbon dioxide"),
  [AMMONIA] = N_("Ammonia"),
};

static GtkLabel *
add_card (GtkFlowBox *box, const char *name)
{
  GtkWidget *card = gtk_box_new (GTK_ORIENTATION_VERTICAL, 2);
  GtkWidget *title = gtk_label_new (name);
  GtkWidget *value = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (title), 0);
  gtk_label_set_xalign (GTK_LABEL (value), 0);
  gtk_widget_add_css_class (title, "dim-label");
  gtk_widget_add_css_class (value, "heading");
  gtk_widget_add_css_class (card, "hc-rung");
  gtk_box_append (GTK_BOX (card), title);
  gtk_box_append (GTK_BOX (card), value);
  gtk_flow_box_append (box, card);
  gtk_accessible_update_relation (GTK_ACCESSIBLE (value), GTK_ACCESSIBLE_RELATION_DESCRIBED_BY,
                                  title, NULL, -1);
  return GTK_LABEL (value);
}

static void
make_cards (GtkFlowBox *box)
{
  GPtrArray *values = g_ptr_array_new ();

  for (guint i = 0; i < N_READINGS; i++)
    g_ptr_array_add (values, add_card (box, _(names[i])));
  g_object_set_data_full (G_OBJECT (box), "readings", values,
                          (GDestroyNotify) g_ptr_array_unref);
}

/* Takes over @text. */
static void
write_value (GtkFlowBox *box, guint reading, char *text)
{
  const GPtrArray *values = g_object_get_data (G_OBJECT (box), "readings");

  hc_set_text (GTK_LABEL (values->pdata[reading]), text);
  g_free (text);
}

/**
 * hc_readings_show: (skip)
 * @box: where the cards are
 * @space: the space they tell of
 * @units: what the keeper measures in
 */
void
hc_readings_show (GtkFlowBox *box, const HcNightSpace *space, HcUnits units)
{
  if (g_object_get_data (G_OBJECT (box), "readings") == NULL)
    make_cards (box);
  write_value (box, TEMPERATURE, hc_temperature_format (space->air.t_c, units));
  write_value (box, HUMIDITY, g_strdup_printf (_("%.0f %%"), 100 * space->air.humidity));
  write_value (box, DEW_POINT, hc_temperature_format (space->air.dew_point_c, units));
  write_value (box, FRESH_AIR,
               g_strdup_printf (_("%.1f m³/h"), space->fresh_m3_h / MAX (space->birds, 1)));
  write_value (box, CARBON_DIOXIDE, g_strdup_printf (_("%.0f ppm"), space->air.co2_ppm));
  write_value (box, AMMONIA, g_strdup_printf (_("%.1f ppm"), space->air.ammonia_ppm));
}
