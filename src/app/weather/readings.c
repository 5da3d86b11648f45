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

/* What is read off a card: the figure, and how sure it is. */
typedef struct
{
  GtkLabel *value;
  GtkLabel *range;
} Card;

static GtkWidget *
make_label (const char *text, const char *css_class)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_add_css_class (label, css_class);
  return label;
}

static Card
add_card (GtkFlowBox *box, const char *name)
{
  GtkWidget *card = gtk_box_new (GTK_ORIENTATION_VERTICAL, 2);
  GtkWidget *title = make_label (name, "dim-label");
  GtkWidget *value = make_label (NULL, "heading");
  GtkWidget *range = make_label (NULL, "caption");

  gtk_widget_add_css_class (card, "hc-rung");
  gtk_box_append (GTK_BOX (card), title);
  gtk_box_append (GTK_BOX (card), value);
  gtk_box_append (GTK_BOX (card), range);
  gtk_widget_set_visible (range, FALSE);
  gtk_flow_box_append (box, card);
  gtk_accessible_update_relation (GTK_ACCESSIBLE (value), GTK_ACCESSIBLE_RELATION_DESCRIBED_BY,
                                  title, NULL, -1);
  return (Card){ GTK_LABEL (value), GTK_LABEL (range) };
}

static Card *
get_cards (GtkFlowBox *box)
{
  Card *cards = g_object_get_data (G_OBJECT (box), "readings");

  if (cards != NULL)
    return cards;
  cards = g_new (Card, N_READINGS);
  for (guint i = 0; i < N_READINGS; i++)
    cards[i] = add_card (box, _(names[i]));
  g_object_set_data_full (G_OBJECT (box), "readings", cards, g_free);
  return cards;
}

/* Takes over @text. What was known of how sure the last figure was no longer holds. */
static void
write_value (const Card *card, char *text)
{
  hc_set_text (card->value, text);
  gtk_widget_set_visible (GTK_WIDGET (card->range), FALSE);
  g_free (text);
}

/* Takes over @low and @high. */
static void
write_range (const Card *card, char *low, char *high)
{
  /* Translators: the least and the most a figure may be. */
  g_autofree char *text = g_strdup_printf (_("%s to %s"), low, high);

  hc_set_text (card->range, text);
  g_free (low);
  g_free (high);
}

static char *
say_percent (double share)
{
  return g_strdup_printf (_("%.0f %%"), 100 * share);
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
  const Card *cards = get_cards (box);

  write_value (&cards[TEMPERATURE], hc_temperature_format (space->air.t_c, units));
  write_value (&cards[HUMIDITY], say_percent (space->air.humidity));
  write_value (&cards[DEW_POINT], hc_temperature_format (space->air.dew_point_c, units));
  write_value (&cards[FRESH_AIR],
               g_strdup_printf (_("%.1f m³/h"), space->fresh_m3_h / MAX (space->birds, 1)));
  write_value (&cards[CARBON_DIOXIDE], g_strdup_printf (_("%.0f ppm"), space->air.co2_ppm));
  write_value (&cards[AMMONIA], g_strdup_printf (_("%.1f ppm"), space->air.ammonia_ppm));
}

/**
 * hc_readings_show_ranges: (skip)
 * @box: where the cards are
 * @space: the space they tell of, with the ranges of its figures
 * @units: what the keeper measures in
 */
void
hc_readings_show_ranges (GtkFlowBox *box, const HcNightSpace *space, HcUnits units)
{
  const Card *cards = get_cards (box);

  write_range (&cards[TEMPERATURE], hc_temperature_format (space->t_c.low, units),
               hc_temperature_format (space->t_c.high, units));
  write_range (&cards[HUMIDITY], say_percent (space->humidity.low),
               say_percent (space->humidity.high));
  write_range (&cards[CARBON_DIOXIDE], g_strdup_printf ("%.0f", space->co2_ppm.low),
               g_strdup_printf (_("%.0f ppm"), space->co2_ppm.high));
}
