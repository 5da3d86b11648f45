/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * night: the air of the coldest night, and how far to open the vents. */
#include "config.h"

#include "cli/verb.h"

#include "cli/json-writer.h"
#include "climate/risk.h"
#include "mend/air.h"
#include "words/air-words.h"
#include "words/night-words.h"
#include "words/remedy-words.h"

#include <glib/gi18n.h>

/* The chart goes from the night asked about to this much warmer, K. */
#define CHART_SPAN_K 35

typedef struct
{
  HcHouse *house;
  HcHouseAirAsk ask;
  HcNight night;
  HcVentAdvice advice;
  double open;
  HcHotHelp hot;
  GArray *chicks;
  HcHouseNight *as_planned;
  HcBirdRange birds;
  GPtrArray *remedies;
} Answer;

static gboolean
take_number (const char *option, const char *word, double *number, GError **error)
{
  char *end = NULL;
  double read;

  if (word == NULL)
    return TRUE;
  read = g_ascii_strtod (word, &end);
  if (end == word || *end != '\0')
    {
      g_set_error (error, HC_CALL_ERROR, HC_CALL_ERROR_WORDS, _("%s %s: say a number."), option,
                   word);
      return FALSE;
    }
  *number = read;
  return TRUE;
}

static gboolean
take_weather (const HcCall *call, HcWeather *weather, GError **error)
{
  double percent = weather->humidity * 100;
  gboolean fine = take_number ("--outside", call->outside, &weather->t_c, error)
                  && take_number ("--humidity", call->humidity, &percent, error)
                  && take_number ("--wind", call->wind, &weather->wind_m_s, error);

  weather->humidity = percent / 100;
  return fine;
}

static gboolean
work_out (const HcCall *call, Answer *answer, GError **error)
{
  answer->house = hc_house_new (hc_plan_get_layout (call->plan), NULL);
  hc_house_air_ask_init (&answer->ask, answer->house, call->flock, hc_plan_get_site (call->plan));
  if (!take_weather (call, &answer->ask.weather, error))
    return FALSE;
  hc_night_work_out (&answer->ask, &answer->night);
  answer->advice = hc_night_advise (&answer->ask, &answer->night, &answer->open);
  hc_hot_help_work_out (&answer->ask, &answer->hot);
  answer->chicks = hc_chick_nights (call->plan, answer->house, call->flock,
                                    hc_plan_get_day (call->plan));
  answer->as_planned
      = hc_house_night_new (call->plan, answer->house, call->flock, &answer->ask.weather);
  hc_night_find_bird_range (answer->as_planned, &answer->birds);
  answer->remedies = hc_mend_air (answer->as_planned);
  return TRUE;
}

static void
append_cell (GString *text, double number, const char *after)
{
  char cell[G_ASCII_DTOSTR_BUF_SIZE];

  g_string_append_printf (text, "%s%s", g_ascii_formatd (cell, sizeof cell, "%.3f", number), after);
}

static char *
make_chart (const HcHouseAirAsk *ask)
{
  GString *text = g_string_new ("outside_c,open,inside_c,humidity,co2_ppm,ammonia_ppm,water_g_h,"
                                "avoidable,cold\n");
  double coldest_c = ask->weather.t_c;
  g_autoptr (GArray) points
      = hc_night_chart (ask, coldest_c, coldest_c + CHART_SPAN_K, HC_NIGHT_CHART_MOST);

  for (guint i = 0; i < points->len; i++)
    {
      const HcNightPoint *point = &g_array_index (points, HcNightPoint, i);

      append_cell (text, point->outside_c, ",");
      append_cell (text, point->open, ",");
      append_cell (text, point->t_c, ",");
      append_cell (text, point->humidity, ",");
      append_cell (text, point->co2_ppm, ",");
      append_cell (text, point->ammonia_ppm, ",");
      append_cell (text, point->water_g_h, ",");
      g_string_append_printf (text, "%u,%u\n", point->faults, (guint) point->cold);
    }
  return g_string_free (text, FALSE);
}

static void
write_range (HcJsonWriter *json, const char *name, HcRange range)
{
  hc_json_open (json, name, '{');
  hc_json_number (json, "low", range.low);
  hc_json_number (json, "high", range.high);
  hc_json_close (json, '}');
}

static void
write_faults (HcJsonWriter *json, guint faults)
{
  static const char *const words[] = { "damp_air", "sweating", "open_water", "draught", "stale" };

  hc_json_open (json, "avoidable", '[');
  for (guint i = 0; i < G_N_ELEMENTS (words); i++)
    if (faults & 1u << i)
      hc_json_text (json, NULL, words[i]);
  hc_json_close (json, ']');
}

static void
write_space (HcJsonWriter *json, const HcNightSpace *space)
{
  static const char *const colds[] = { "none", "low", "moderate", "high", "severe" };

  hc_json_open (json, NULL, '{');
  hc_json_text (json, "pen", space->pen);
  hc_json_count (json, "birds", space->birds);
  hc_json_number (json, "inside_c", space->air.t_c);
  write_range (json, "inside_c_range", space->t_c);
  hc_json_number (json, "humidity", space->air.humidity);
  write_range (json, "humidity_range", space->humidity);
  hc_json_number (json, "dew_point_c", space->air.dew_point_c);
  hc_json_number (json, "fresh_m3_h", space->fresh_m3_h);
  hc_json_number (json, "co2_ppm", space->air.co2_ppm);
  write_range (json, "co2_ppm_range", space->co2_ppm);
  hc_json_number (json, "ammonia_ppm", space->air.ammonia_ppm);
  hc_json_number (json, "water_g_h", space->water_g_h);
  hc_json_number (json, "draught_m_s", space->draught_m_s);
  hc_json_count (json, "wet_surfaces", space->n_wet_surfaces);
  write_faults (json, space->faults);
  hc_json_text (json, "plain_cold", colds[space->cold]);
  hc_json_close (json, '}');
}

static void
write_chick_week (HcJsonWriter *json, const HcChickWeek *week)
{
  hc_json_open (json, NULL, '{');
  hc_json_count (json, "week", week->week);
  hc_json_number (json, "wanted_c", week->wanted_c);
  hc_json_number (json, "room_c", week->room_c);
  hc_json_number (json, "heater_c", week->heater_c);
  hc_json_close (json, '}');
}

static void
write_chicks (HcJsonWriter *json, const GArray *chicks)
{
  hc_json_open (json, "chicks", '[');
  for (guint i = 0; i < chicks->len; i++)
    {
      const HcChickNights *nights = &g_array_index (chicks, HcChickNights, i);

      hc_json_open (json, NULL, '{');
      hc_json_text (json, "pen", nights->pen);
      hc_json_count (json, "chicks", nights->chicks);
      hc_json_number (json, "watts", nights->watts);
      hc_json_number (json, "kwh", nights->kwh);
      hc_json_flag (json, "room_too_cold", nights->is_room_too_cold);
      hc_json_open (json, "weeks", '[');
      for (guint week = 0; week < nights->n_weeks; week++)
        write_chick_week (json, &nights->weeks[week]);
      hc_json_close (json, ']');
      hc_json_close (json, '}');
    }
  hc_json_close (json, ']');
}

static void
write_remedies (HcJsonWriter *json, const HcCall *call, const Answer *answer)
{
  hc_json_open (json, "remedies", '[');
  for (guint i = 0; i < answer->remedies->len; i++)
    {
      const HcRemedy *remedy = answer->remedies->pdata[i];
      g_autofree char *label
          = hc_words_remedy (call->plan, remedy, hc_plan_get_site (call->plan)->units);

      hc_json_open (json, NULL, '{');
      hc_json_text (json, "code", remedy->code);
      hc_json_text (json, "label", label);
      hc_json_text (json, "why", hc_words_remedy_why (remedy));
      hc_json_count (json, "avoidable_before", remedy->before);
      hc_json_count (json, "avoidable_after", remedy->after);
      hc_json_close (json, '}');
    }
  hc_json_close (json, ']');
}

static void
write_json (const HcCall *call, const Answer *answer, GString *out)
{
  static const char *const advices[] = { "fine", "open", "less_harm", "no_vents" };
  HcJsonWriter json = { out };
  g_autofree char *day = hc_call_format_day (call);

  hc_json_open (&json, NULL, '{');
  hc_json_text (&json, "title", hc_plan_get (call->plan)->title);
  hc_json_text (&json, "date", day);
  hc_json_number (&json, "outside_c", answer->ask.weather.t_c);
  hc_json_number (&json, "outside_humidity", answer->ask.weather.humidity);
  hc_json_number (&json, "wind_m_s", answer->ask.weather.wind_m_s);
  hc_json_count (&json, "states", answer->night.n_states);
  hc_json_flag (&json, "indicative", TRUE);
  hc_json_open (&json, "spaces", '[');
  for (guint i = 0; i < answer->night.n_spaces; i++)
    write_space (&json, &answer->night.spaces[i]);
  hc_json_close (&json, ']');
  hc_json_text (&json, "advice", advices[answer->advice]);
  hc_json_number (&json, "advised_opening", answer->open);
  hc_json_count (&json, "birds_well_from", answer->birds.least);
  hc_json_count (&json, "birds_well_to", answer->birds.most);
  write_remedies (&json, call, answer);
  hc_json_number (&json, "hot_day_inside_c", answer->hot.day.t_c);
  hc_json_number (&json, "hot_day_index_c", answer->hot.day.index_c);
  hc_json_number (&json, "hot_day_shade_k", answer->hot.shaded_k);
  hc_json_number (&json, "hot_day_vents_m2", answer->hot.vents_m2);
  hc_json_number (&json, "hot_day_water_l", answer->hot.water_l);
  write_chicks (&json, answer->chicks);
  hc_json_close (&json, '}');
}

static void
tell_space (const HcNightSpace *space, GString *out)
{
  g_string_append_printf (out, _("  Inside %.1f °C (%.1f to %.1f), humidity %.0f %% (%.0f to "
                                 "%.0f), dew point %.1f °C.\n"),
                          space->air.t_c, space->t_c.low, space->t_c.high,
                          100 * space->air.humidity, 100 * space->humidity.low,
                          100 * space->humidity.high, space->air.dew_point_c);
  g_string_append_printf (
      out, _("  Fresh air %.1f m³/h a bird, carbon dioxide %.0f ppm, ammonia %.1f ppm.\n"),
      space->fresh_m3_h / MAX (space->birds, 1), space->air.co2_ppm, space->air.ammonia_ppm);
  for (guint fault = HC_NIGHT_DAMP_AIR; fault <= HC_NIGHT_STALE; fault <<= 1)
    if (space->faults & fault)
      g_string_append_printf (out, "  - %s\n", hc_words_night_fault ((HcNightFault) fault));
  g_string_append_printf (out, "  %s\n", hc_words_cold_risk (space->cold));
}

static void
tell_remedies (const HcCall *call, const Answer *answer, GString *out)
{
  if (answer->remedies->len > 0)
    g_string_append_printf (out, "\n%s\n", _("What helps"));
  for (guint i = 0; i < answer->remedies->len; i++)
    {
      const HcRemedy *remedy = answer->remedies->pdata[i];
      g_autofree char *label
          = hc_words_remedy (call->plan, remedy, hc_plan_get_site (call->plan)->units);
      g_autofree char *gain = hc_words_remedy_gain (remedy);

      g_string_append_printf (out, "  - %s\n    %s %s\n", label, hc_words_remedy_why (remedy),
                              gain);
    }
}

/* Each line of @text stands in from the margin. */
static void
tell_lines (const char *heading, const char *text, GString *out)
{
  g_auto (GStrv) lines = g_strsplit (text, "\n", -1);

  g_string_append_printf (out, "\n%s\n", heading);
  for (guint i = 0; lines[i] != NULL; i++)
    g_string_append_printf (out, "  %s\n", lines[i]);
}

static void
tell_chicks (const HcCall *call, const Answer *answer, GString *out)
{
  for (guint i = 0; i < answer->chicks->len; i++)
    {
      g_autofree char *text
          = hc_words_chicks (call->plan, &g_array_index (answer->chicks, HcChickNights, i),
                             hc_plan_get_site (call->plan)->units);

      tell_lines (_("Chicks"), text, out);
    }
}

static void
tell (const HcCall *call, const Answer *answer, GString *out)
{
  g_autofree char *headline = hc_words_night (hc_night_get_worst (&answer->night),
                                             hc_plan_get_site (call->plan)->units);
  g_autofree char *advice = hc_words_vent_advice (answer->advice, answer->open, &answer->night);
  g_autofree char *note = hc_words_night_note (&answer->night);
  g_autofree char *hot
      = hc_words_hot_day (&answer->hot, hc_plan_get_site (call->plan)->units);
  g_autofree char *birds
      = hc_words_bird_range (&answer->birds, hc_flock_get_total (call->flock));

  g_string_append_printf (out, "%s\n", headline);
  if (*note != '\0')
    g_string_append_printf (out, "%s\n", note);
  for (guint i = 0; i < answer->night.n_spaces; i++)
    {
      const HcNightSpace *space = &answer->night.spaces[i];
      HcPen *pen = hc_layout_get_pen (hc_plan_get_layout (call->plan), space->pen);

      if (space->birds == 0)
        continue;
      g_string_append_printf (out, "\n%s\n", hc_pen_get (pen)->name);
      tell_space (space, out);
    }
  tell_remedies (call, answer, out);
  if (answer->night.n_spaces > 0)
    g_string_append_printf (out, "\n%s\n%s\n", advice, birds);
  tell_chicks (call, answer, out);
  tell_lines (_("The hottest day"), hot, out);
  g_string_append_printf (out, "\n%s\n",
                          _("What is said of combs, draught, chicks and heat is indicative: it is "
                            "our own proposal, not published science."));
}

static HcExit
run (HcCall *call, GString *out, GError **error)
{
  Answer answer = { 0 };
  HcExit status = HC_EXIT_WRONG;

  if (!hc_call_open_plan (call, error))
    return HC_EXIT_WRONG;
  if (work_out (call, &answer, error))
    {
      g_autofree char *chart = call->chart != NULL ? make_chart (&answer.ask) : NULL;

      status = answer.night.n_spaces > 0 && answer.night.spaces[answer.night.worst].birds > 0
                       && answer.night.spaces[answer.night.worst].faults != 0
                   ? HC_EXIT_SHORT
                   : HC_EXIT_ENOUGH;
      if (call->json)
        write_json (call, &answer, out);
      else
        tell (call, &answer, out);
      if (chart != NULL && !g_file_set_contents (call->chart, chart, -1, error))
        status = HC_EXIT_WRONG;
    }
  g_clear_pointer (&answer.as_planned, hc_house_night_free);
  g_clear_pointer (&answer.chicks, g_array_unref);
  g_clear_pointer (&answer.remedies, g_ptr_array_unref);
  g_clear_pointer (&answer.house, hc_house_unref);
  return status;
}

const HcVerb hc_verb_night = {
  .name = "night",
  .summary = N_("The air of a night: cold, damp and fresh air, and how far to open the vents"),
  .argument = N_("FILE"),
  .options = HC_CALL_ON | HC_CALL_WEATHER,
  .run = run,
};
