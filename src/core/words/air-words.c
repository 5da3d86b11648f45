/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pictures and charts of the air, in words for those who do not see them. */
#include "config.h"

#include "words/air-words.h"

#include "words/night-words.h"
#include "words/words.h"

#include <glib/gi18n-lib.h>

#define KG_S_M3_H (3600 / 1.3)

/* Less than this through an opening is not told, m³/h. */
#define WORTH_TELLING_M3_H 0.5

/* Takes over @sentence. */
static void
add (GString *text, char *sentence)
{
  g_string_append_printf (text, text->len > 0 ? "\n%s" : "%s", sentence);
  g_free (sentence);
}

static void
add_way (GString *text, const HcHouseNight *night, guint way, HcUnits units)
{
  HcAirFlow flow = hc_air_state_get_flow (&night->night.state, &night->air->air,
                                          &night->air->air.paths[way]);
  double in_m3_h = flow.in_kg_s * KG_S_M3_H, out_m3_h = flow.out_kg_s * KG_S_M3_H;
  const char *id = hc_house_air_get_way (night->air, way)->id;
  g_autofree char *place = NULL;

  if (*id == '\0' || MAX (in_m3_h, out_m3_h) < WORTH_TELLING_M3_H)
    return;
  place = hc_words_opening_place (hc_plan_get_layout (night->plan), id, units);
  if (MIN (in_m3_h, out_m3_h) >= WORTH_TELLING_M3_H)
    add (text, g_strdup_printf (_("Air comes in (%.0f m³/h) and goes out (%.0f m³/h) by %s."),
                                in_m3_h, out_m3_h, place));
  else if (in_m3_h > out_m3_h)
    add (text, g_strdup_printf (_("Air comes in (%.0f m³/h) by %s."), in_m3_h, place));
  else
    add (text, g_strdup_printf (_("Air goes out (%.0f m³/h) by %s."), out_m3_h, place));
}

static char *
name_surface (const HcHouseNight *night, const char *part)
{
  const HcLayout *layout = hc_plan_get_layout (night->plan);
  HcPen *beside[2];
  g_autofree char *pen = NULL;

  if (hc_layout_get_pen (layout, part) != NULL)
    {
      pen = hc_words_part (layout, part);
      return g_strdup_printf (_("the roof of %s"), pen);
    }
  if (hc_layout_get_pens_beside (layout, part, beside) == 0)
    return g_strdup (_("a wall"));
  pen = hc_words_part (layout, hc_pen_get_id (beside[0]));
  return g_strdup_printf (_("a wall of %s"), pen);
}

static void
add_surface (GString *text, const HcHouseNight *night, guint surface)
{
  g_autofree char *name = NULL;
  double face_c;

  if (!hc_night_is_sweating (&night->night, night->air, surface))
    return;
  name = name_surface (night, night->air->parts->pdata[surface]);
  face_c = hc_air_state_get_surface_c (&night->night.state, &night->air->air,
                                       &night->air->air.surfaces[surface]);
  /* Translators: %s is “the roof of Hens” or “a wall of Hens”. */
  add (text, g_strdup_printf (face_c < 0 ? _("Frost settles on %s.") : _("Water runs down %s."),
                              name));
}

/**
 * hc_words_air_picture: (skip)
 * @night: a night
 * @units: what the keeper measures in
 *
 * Returns: (transfer full): what its picture shows, a line for each vent and surface
 */
char *
hc_words_air_picture (const HcHouseNight *night, HcUnits units)
{
  GString *text = g_string_new (NULL);

  for (guint i = 0; night->air != NULL && i < night->air->ways->len; i++)
    add_way (text, night, i, units);
  for (guint i = 0; night->air != NULL && i < night->air->surfaces->len; i++)
    add_surface (text, night, i);
  if (text->len == 0)
    g_string_append (text, _("Hardly any air moves, and no wall is wet."));
  return g_string_free (text, FALSE);
}

/**
 * hc_words_chart_row: (skip)
 * @points: (element-type HcNightPoint): a chart
 * @side: points each way
 * @column: which temperature
 * @units: what the keeper measures in
 *
 * Returns: (transfer full): how far vents may stand open at that temperature
 */
char *
hc_words_chart_row (const GArray *points, guint side, guint column, HcUnits units)
{
  const HcNightPoint *shut = &g_array_index (points, HcNightPoint, column);
  g_autofree char *outside = hc_temperature_format (shut->outside_c, units);
  double from, to;

  if (!hc_night_chart_find_free (points, side, column, &from, &to))
    return g_strdup_printf (_("%s outside: no opening keeps it dry and still."), outside);
  /* Translators: a temperature, then two whole numbers of percent. */
  return g_strdup_printf (_("%s outside: dry and still with vents %.0f to %.0f %% open."), outside,
                          100 * from, 100 * to);
}

/**
 * hc_words_avoidable: (skip)
 * @faults: a set of #HcNightFault
 *
 * Returns: (transfer full): what of the night the keeper can mend, a line each
 */
char *
hc_words_avoidable (guint faults)
{
  GString *text = g_string_new (NULL);

  for (guint fault = HC_NIGHT_DAMP_AIR; fault <= HC_NIGHT_STALE; fault <<= 1)
    if (faults & fault)
      add (text, g_strdup (hc_words_night_fault ((HcNightFault) fault)));
  if (text->len == 0)
    g_string_append (text, _("Nothing: the air is dry, fresh and still where birds sleep."));
  return g_string_free (text, FALSE);
}

static void
add_kinds (GString *text, const HcHotDay *day)
{
  static const char *const risks[] = { N_("at ease"), N_("to be watched"), N_("suffering"),
                                       N_("in danger") };

  for (guint i = 0; i < day->n_kinds; i++)
    /* Translators: a kind of bird, how many, an index of heat, and how they are. */
    add (text, g_strdup_printf (_("%s (%d): index of warmth and damp %.0f, %s."),
                                hc_kind_get_name (day->kinds[i].kind, 2),
                                (int) day->kinds[i].birds, day->kinds[i].index_c,
                                _(risks[day->kinds[i].risk])));
}

/**
 * hc_words_hot_day: (skip)
 * @help: the hottest day and what helps
 * @units: what the keeper measures in
 *
 * Returns: (transfer full): how hot it gets, for whom, and what to do, a line each;
 *   indicative
 */
char *
hc_words_hot_day (const HcHotHelp *help, HcUnits units)
{
  GString *text = g_string_new (NULL);
  g_autofree char *inside = hc_temperature_format (help->day.t_c, units);

  if (help->day.n_spaces == 0)
    {
      g_string_free (text, TRUE);
      return g_strdup (_("Nothing here is under a roof: birds want shade on the hottest day."));
    }
  add (text, g_strdup_printf (_("It is %s inside, %.0f °C hotter than outside. %s"), inside,
                              help->day.above_outside_k, hc_words_heat_risk (help->day.risk)));
  add_kinds (text, &help->day);
  add (text, g_strdup_printf (_("Fresh air %.0f m³/h with a breeze, %.0f by warmth alone."),
                              help->day.fresh_m3_h, help->calm_m3_h));
  add (text, g_strdup_printf (_("Put out %.0f litres of cool water."), help->water_l + 0.5));
  if (help->shaded_k >= 0.5)
    add (text, g_strdup_printf (_("The roof in shade makes it %.0f °C cooler."), help->shaded_k));
  if (help->vents_m2 > 0)
    add (text, g_strdup_printf (help->are_enough
                                    ? _("Add %.2f m² of vents that open in summer, half low and "
                                        "half high.")
                                    : _("Even %.2f m² more of vents do not get the heat out: "
                                        "shade or insulate the roof."),
                                help->vents_m2));
  return g_string_free (text, FALSE);
}

static void
add_week (GString *text, const HcChickWeek *week, HcUnits units)
{
  g_autofree char *wanted = hc_temperature_format (week->wanted_c, units);
  g_autofree char *heater = hc_temperature_format (week->heater_c, units);
  g_autofree char *room = hc_temperature_format (week->room_c, units);

  /* Translators: a week of life, then temperatures of the room, at the heater, wanted. */
  add (text, g_strdup_printf (week->is_enough
                                  ? _("Week %d: room %s, at the heater %s; they want %s.")
                                  : _("Week %d: room %s, at the heater %s; too cold, they want "
                                      "%s."),
                              week->week, room, heater, wanted));
}

/**
 * hc_words_chicks: (skip)
 * @plan: the plan
 * @nights: chicks of one pen
 * @units: what the keeper measures in
 *
 * Returns: (transfer full): the air about their heater, what it draws and what to mind,
 *   a line each; indicative
 */
char *
hc_words_chicks (const HcPlan *plan, const HcChickNights *nights, HcUnits units)
{
  g_autofree char *pen = hc_words_part (hc_plan_get_layout ((HcPlan *) plan), nights->pen);
  g_autofree char *lowest = hc_temperature_format (nights->lowest_room_c, units);
  GString *text = g_string_new (NULL);

  add (text, g_strdup_printf (ngettext ("%s: %d chick under heat.", "%s: %d chicks under heat.",
                                        (gulong) nights->chicks),
                              pen, (int) nights->chicks));
  for (guint i = 0; i < nights->n_weeks; i++)
    add_week (text, &nights->weeks[i], units);
  if (nights->is_room_too_cold)
    add (text, g_strdup_printf (_("The room gets colder than the heater's maker allows (%s). "
                                  "Brood them in a warmer room."),
                                lowest));
  add (text, g_strdup_printf (_("%.0f W: %.1f kWh a day, %.0f kWh until they are off heat."),
                              nights->watts, nights->kwh_a_day, nights->kwh));
  add (text, g_strdup (_("Look how they lie: huddled is cold, far from the heater is hot. Fix a "
                         "heater twice, keep it clear of bedding, and have wiring done by an "
                         "electrician.")));
  return g_string_free (text, FALSE);
}
