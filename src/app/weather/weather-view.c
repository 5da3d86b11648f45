/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The weather view: the coldest night in the house, and what to do about it. */
#include "config.h"

#include "app/weather/weather-view.h"

#include "app/fields/hand-on-focus.h"
#include "app/needs/set-text.h"
#include "app/weather/air-picture.h"
#include "app/weather/chart-picture.h"
#include "app/weather/readings.h"
#include "app/weather/remedy-list.h"
#include "app/weather/vent-handle.h"
#include "app/weather/weather-task.h"

#include "climate/season-curve.h"
#include "words/air-words.h"
#include "words/night-words.h"
#include "words/words.h"

#include <glib/gi18n.h>

/* The chart is told in words at every so many of its temperatures. */
#define TOLD_EVERY 5

/* Northern midsummer, for the mildest night. */
#define MIDSUMMER_DAY_OF_YEAR 207

struct _HcWeatherView
{
  HcPanel parent_instance;

  GtkLabel *sentence;
  GtkLabel *weather;
  GtkLabel *note;
  GtkDropDown *where;
  HcAirPicture *picture;
  HcVentHandle *handle;
  GtkFlowBox *readings;
  GtkLabel *picture_words;
  GtkLabel *avoidable;
  GtkLabel *cold;
  GtkLabel *help_heading;
  HcRemedyList *remedies;
  GtkLabel *birds;
  HcChartPicture *chart;
  GtkLabel *chart_words;
  GtkLabel *chicks_heading;
  GtkLabel *chicks;
  GtkLabel *hot;

  HcDocument *document;
  GArray *spaces;
  char *pen;
  gboolean listing;
  HcHouseNight *night;
  HcWeatherTask *task;
};

G_DEFINE_FINAL_TYPE (HcWeatherView, hc_weather_view, HC_TYPE_PANEL)

static HcUnits
units_of (HcWeatherView *self)
{
  return (HcUnits) hc_plan_get_site (self->night->plan)->units;
}

/* The space looked at, or %NULL where no bird sleeps under a roof. */
static const HcNightSpace *
shown_space (HcWeatherView *self)
{
  guint which = gtk_drop_down_get_selected (self->where);

  return which < self->spaces->len
             ? &self->night->night.spaces[g_array_index (self->spaces, guint, which)]
             : hc_night_get_worst (&self->night->night);
}

static guint
shown_at (HcWeatherView *self)
{
  const HcNightSpace *space = shown_space (self);

  return space != NULL ? (guint) (space - self->night->night.spaces) : 0;
}

static void
show_sentence (HcWeatherView *self)
{
  g_autofree char *text = hc_words_night (shown_space (self), units_of (self));

  hc_set_text (self->sentence, text);
}

static void
show_weather (HcWeatherView *self)
{
  const HcWeather *weather = &self->night->ask.weather;
  g_autofree char *outside = hc_temperature_format (weather->t_c, units_of (self));
  double over_ice = self->night->air != NULL ? self->night->air->air.outside.humidity
                                             : weather->humidity;
  /* Translators: a temperature, two humidities in percent, a wind. */
  g_autofree char *text = g_strdup_printf (
      _("The coldest night you plan for: %s, %.0f %% humid as weather services say it (%.0f %% "
        "over ice), wind %.0f m/s. Change it with the place, on the left."),
      outside, 100 * weather->humidity, 100 * over_ice, weather->wind_m_s);

  hc_set_text (self->weather, text);
}

/* What is odd about the answer. */
static void
show_note (HcWeatherView *self)
{
  g_autofree char *note = hc_words_night_note (&self->night->night);

  hc_set_text (self->note, note);
}

/* All that moves while a vent is dragged. */
static void
show_air (HcWeatherView *self)
{
  const HcNightSpace *shown = shown_space (self);
  g_autofree char *avoidable = hc_words_avoidable (shown != NULL ? shown->faults : 0);

  show_sentence (self);
  show_note (self);
  hc_air_picture_show_air (self->picture);
  hc_set_text (self->avoidable, avoidable);
  hc_set_text (self->cold, hc_words_cold_risk (shown != NULL ? shown->cold : HC_COLD_NONE));
  gtk_widget_set_visible (GTK_WIDGET (self->readings), shown != NULL);
  if (shown != NULL)
    hc_readings_show (self->readings, shown, units_of (self));
}

/* Words are for reading, and wait until the drag is over. */
static void
show_picture_words (HcWeatherView *self)
{
  g_autofree char *words = hc_words_air_picture (self->night, units_of (self));

  hc_set_text (self->picture_words, words);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->picture), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  words, -1);
}

static void
vents_moved (HcWeatherView *self)
{
  if (self->night == NULL)
    return;
  hc_vent_handle_move (self->handle, self->night);
  hc_house_night_settle_again (self->night);
  hc_chart_picture_mark (self->chart, hc_vent_handle_get_open (self->handle));
  show_air (self);
}

/* The last move may settle when another view is in sight already. */
static void
apply_out_of_sight (HcWeatherView *self, HcPlan *plan, GError *error)
{
  if (plan != NULL && !hc_document_is_read_only (self->document))
    hc_document_apply (self->document, plan, _("Open Vents"), "vents");
  g_clear_pointer (&plan, hc_plan_unref);
  g_clear_error (&error);
}

static void
vents_settled (HcWeatherView *self)
{
  HcPanel *panel = HC_PANEL (self);
  GError *error = NULL;
  HcPlan *plan;

  if (self->document == NULL)
    return;
  hc_remedy_list_stop_trying (self->remedies);
  plan = hc_vent_handle_edit (self->handle, hc_document_get_settled_plan (self->document),
                              &error);
  if (hc_panel_get_checker (panel) != NULL)
    hc_panel_apply (panel, plan, error, _("Open Vents"), "vents");
  else
    apply_out_of_sight (self, plan, error);
}

static void
show_chart (HcWeatherView *self, const HcWeatherAnswer *answer)
{
  HcSeasonDay summer
      = hc_season_day (hc_panel_get_book (HC_PANEL (self)), hc_plan_get_site (answer->plan), 1,
                       MIDSUMMER_DAY_OF_YEAR);
  const HcAirChart chart = {
    .points = answer->points,
    .side = answer->side,
    .now_c = self->night->ask.weather.t_c,
    .now_open = hc_vent_handle_get_open (self->handle),
    .coldest_c = self->night->ask.weather.t_c,
    .mildest_c = summer.night_c,
  };
  g_autoptr (GString) words = g_string_new (NULL);

  hc_chart_picture_show (self->chart, &chart);
  for (guint column = 0; answer->points->len > 0 && column < answer->side; column += TOLD_EVERY)
    {
      g_autofree char *row
          = hc_words_chart_row (answer->points, answer->side, column, units_of (self));

      g_string_append_printf (words, column > 0 ? "\n%s" : "%s", row);
    }
  hc_set_text (self->chart_words, words->str);
}

static void
show_chicks (HcWeatherView *self, const HcWeatherAnswer *answer)
{
  g_autoptr (GString) words = g_string_new (NULL);

  for (guint i = 0; i < answer->chicks->len; i++)
    {
      g_autofree char *pen
          = hc_words_chicks (answer->plan, &g_array_index (answer->chicks, HcChickNights, i),
                             units_of (self));

      g_string_append_printf (words, i > 0 ? "\n%s" : "%s", pen);
    }
  hc_set_text (self->chicks, words->str);
  gtk_widget_set_visible (GTK_WIDGET (self->chicks_heading), answer->chicks->len > 0);
}

static void
show_answer (HcWeatherView *self)
{
  const HcWeatherAnswer *answer = hc_weather_task_get_answer (self->task);
  HcPanel *panel = HC_PANEL (self);
  g_autofree char *hot = NULL;
  g_autofree char *birds = NULL;

  if (answer == NULL || self->night == NULL || hc_panel_get_checker (panel) == NULL
      || hc_document_is_previewing (hc_panel_get_document (panel)))
    return;
  hot = hc_words_hot_day (&answer->hot, units_of (self));
  birds = hc_words_bird_range (&answer->birds, hc_flock_get_total (self->night->ask.flock));
  hc_remedy_list_show (self->remedies, panel, answer->plan, answer->remedies);
  gtk_widget_set_visible (GTK_WIDGET (self->help_heading), answer->remedies->len > 0);
  hc_set_text (self->birds, answer->night.n_spaces > 0 ? birds : NULL);
  hc_set_text (self->hot, hot);
  if (answer->night.n_spaces > shown_at (self) && !hc_vent_handle_is_moving (self->handle))
    hc_readings_show_ranges (self->readings, &answer->night.spaces[shown_at (self)],
                             units_of (self));
  show_chart (self, answer);
  show_chicks (self, answer);
}

/* The space to look at first: the one that is worst off, or where most birds sleep. */
static guint
find_first (const HcNight *night)
{
  guint first = night->worst;

  for (guint i = 0; night->spaces[night->worst].faults == 0 && i < night->n_spaces; i++)
    if (night->spaces[i].birds > night->spaces[first].birds)
      first = i;
  return first;
}

/* The pen chosen stays chosen. */
static void
list_spaces (HcWeatherView *self)
{
  const HcNight *night = &self->night->night;
  g_autoptr (GtkStringList) names = gtk_string_list_new (NULL);
  guint first = find_first (night);
  guint chosen = 0;

  g_array_set_size (self->spaces, 0);
  for (guint i = 0; i < night->n_spaces; i++)
    {
      g_autofree char *name
          = hc_words_part (hc_plan_get_layout (self->night->plan), night->spaces[i].pen);

      if (night->spaces[i].birds == 0)
        continue;
      if (self->pen != NULL ? g_str_equal (self->pen, night->spaces[i].pen) : i == first)
        chosen = self->spaces->len;
      gtk_string_list_append (names, name);
      g_array_append_val (self->spaces, i);
    }
  self->listing = TRUE;
  gtk_drop_down_set_model (self->where, G_LIST_MODEL (names));
  gtk_drop_down_set_selected (self->where, chosen);
  self->listing = FALSE;
  gtk_widget_set_visible (GTK_WIDGET (self->where), self->spaces->len > 1);
}

static void
take_night (HcWeatherView *self)
{
  HcPanel *panel = HC_PANEL (self);
  HcHouseNight *before = self->night;
  HcCheck *check = hc_checker_get_check (hc_panel_get_checker (panel), HC_CONDITION_NIGHT);

  self->night = hc_house_night_new (hc_panel_get_plan (panel), hc_check_get_house (check),
                                    hc_check_get_flock (check), NULL);
  g_clear_pointer (&before, hc_house_night_free);
  list_spaces (self);
  hc_air_picture_show_house (self->picture, check, self->night, shown_at (self));
}

static void
where_chosen (HcWeatherView *self)
{
  HcChecker *checker = hc_panel_get_checker (HC_PANEL (self));

  if (self->listing || self->night == NULL || checker == NULL)
    return;
  g_free (self->pen);
  self->pen = g_strdup (shown_space (self)->pen);
  hc_air_picture_show_house (self->picture,
                             hc_checker_get_check (checker, HC_CONDITION_NIGHT), self->night,
                             shown_at (self));
  show_air (self);
}

static void
hc_weather_view_checked (HcPanel *panel)
{
  HcWeatherView *self = HC_WEATHER_VIEW (panel);

  if (!gtk_widget_get_mapped (GTK_WIDGET (self)))
    return;
  g_set_object (&self->document, hc_panel_get_document (panel));
  take_night (self);
  hc_vent_handle_show (self->handle, self->night);
  if (hc_vent_handle_is_moving (self->handle))
    vents_moved (self);
  show_weather (self);
  show_air (self);
  show_picture_words (self);
  if (!hc_document_is_previewing (hc_panel_get_document (panel)))
    hc_weather_task_ask (self->task, hc_panel_get_plan (panel), hc_panel_get_book (panel));
}

static void
hc_weather_view_map (GtkWidget *widget)
{
  GTK_WIDGET_CLASS (hc_weather_view_parent_class)->map (widget);
  if (hc_panel_get_checker (HC_PANEL (widget)) != NULL)
    hc_weather_view_checked (HC_PANEL (widget));
}

/* Out of sight nothing is tried and nothing waits. */
static void
hc_weather_view_unmap (GtkWidget *widget)
{
  HcWeatherView *self = HC_WEATHER_VIEW (widget);

  hc_vent_handle_settle (self->handle);
  hc_remedy_list_stop_trying (self->remedies);
  GTK_WIDGET_CLASS (hc_weather_view_parent_class)->unmap (widget);
}

static gboolean
hc_weather_view_grab_focus (GtkWidget *widget)
{
  return hc_hand_on_focus (widget, GTK_WIDGET (HC_WEATHER_VIEW (widget)->handle));
}

static void
hc_weather_view_finalize (GObject *object)
{
  HcWeatherView *self = HC_WEATHER_VIEW (object);

  g_clear_object (&self->task);
  g_clear_object (&self->document);
  g_array_unref (self->spaces);
  g_free (self->pen);
  g_clear_pointer (&self->night, hc_house_night_free);
  G_OBJECT_CLASS (hc_weather_view_parent_class)->finalize (object);
}

static void
hc_weather_view_class_init (HcWeatherViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  g_type_ensure (HC_TYPE_AIR_PICTURE);
  g_type_ensure (HC_TYPE_CHART_PICTURE);
  g_type_ensure (HC_TYPE_REMEDY_LIST);
  g_type_ensure (HC_TYPE_VENT_HANDLE);
  G_OBJECT_CLASS (klass)->finalize = hc_weather_view_finalize;
  widget_class->grab_focus = hc_weather_view_grab_focus;
  widget_class->map = hc_weather_view_map;
  widget_class->unmap = hc_weather_view_unmap;
  HC_PANEL_CLASS (klass)->checked = hc_weather_view_checked;
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hencote/Hencote/weather-view.ui");
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, sentence);
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, weather);
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, picture);
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, where);
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, note);
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, handle);
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, readings);
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, picture_words);
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, avoidable);
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, cold);
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, help_heading);
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, remedies);
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, birds);
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, chart);
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, chart_words);
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, chicks_heading);
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, chicks);
  gtk_widget_class_bind_template_child (widget_class, HcWeatherView, hot);
  gtk_widget_class_bind_template_callback (widget_class, where_chosen);
  gtk_widget_class_bind_template_callback (widget_class, vents_moved);
  gtk_widget_class_bind_template_callback (widget_class, vents_settled);
}

static void
hc_weather_view_init (HcWeatherView *self)
{
  self->task = hc_weather_task_new ();
  self->spaces = g_array_new (FALSE, FALSE, sizeof (guint));
  gtk_widget_init_template (GTK_WIDGET (self));
  g_signal_connect_object (self->task, "answered", G_CALLBACK (show_answer), self,
                           G_CONNECT_SWAPPED);
}
