/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Sentences about a night in the house. */
#include "config.h"

#include "words/night-words.h"

#include "climate/risk.h"

#include <glib/gi18n-lib.h>

/**
 * hc_words_night_fault: (skip)
 * @fault: one fault
 *
 * Returns: (transfer none): what is wrong and what to do
 */
const char *
hc_words_night_fault (HcNightFault fault)
{
  switch (fault)
    {
    case HC_NIGHT_DAMP_AIR:
      return _("The air at the roost is damp. Let more air through above the birds, and keep "
               "the bedding dry.");
    case HC_NIGHT_SWEATING:
      return _("Walls or roof sweat or freeze over. Insulate them, or let more air through.");
    case HC_NIGHT_OPEN_WATER:
      return _("Open water stands where the birds sleep in frost. Put it outside at dusk, so "
               "that no wattle gets wet.");
    case HC_NIGHT_DRAUGHT:
      return _("Air blows on the roost. Shut what is open beside it, and open higher up.");
    case HC_NIGHT_STALE:
      return _("The air is stale. Air the house before you work in it, and clean out more "
               "often.");
    }
  return "";
}

/**
 * hc_words_cold_risk: (skip)
 * @risk: what cold alone does
 *
 * Returns: (transfer none): a sentence; indicative
 */
const char *
hc_words_cold_risk (HcColdRisk risk)
{
  static const char *const words[] = {
    [HC_COLD_NONE] = N_("The cold alone does no harm to combs."),
    [HC_COLD_LOW] = N_("The cold alone hardly harms combs."),
    [HC_COLD_MODERATE] = N_("The cold alone may nip large combs. Look at them in the morning."),
    [HC_COLD_HIGH] = N_("The cold alone is likely to nip combs. Wide flat bars keep feet warm; "
                        "look at combs every morning."),
    [HC_COLD_SEVERE] = N_("The cold alone freezes combs. Think of breeds with small combs; a "
                          "bird that is hurt wants a vet."),
  };

  return _(words[risk]);
}

/**
 * hc_words_heat_risk: (skip)
 * @risk: what the heat does
 *
 * Returns: (transfer none): a sentence; indicative
 */
const char *
hc_words_heat_risk (HcHeatRisk risk)
{
  static const char *const words[] = {
    [HC_HEAT_COMFORT] = N_("Birds are at ease on the hottest day."),
    [HC_HEAT_WATCH] = N_("Watch the birds on the hottest day: shade, and water twice as often."),
    [HC_HEAT_STRESS] = N_("Birds suffer on the hottest day. Shade the roof and open more."),
    [HC_HEAT_DANGER] = N_("Birds are in danger on the hottest day. Insulate or shade the roof, "
                          "open all there is, and let them out into shade."),
  };

  return _(words[risk]);
}

/**
 * hc_words_air_fault: (skip)
 * @fault: one fault
 *
 * Returns: (transfer none): what was put right, or could not be
 */
const char *
hc_words_air_fault (HcAirFault fault)
{
  switch (fault)
    {
    case HC_AIR_FAULT_TEMPERATURE:
      return _("No place is so cold or hot: −60 to 60 °C are reckoned with.");
    case HC_AIR_FAULT_HUMIDITY:
      return _("Humidity is 0 to 100 %; the nearest of those is reckoned with.");
    case HC_AIR_FAULT_WIND:
      return _("Wind is 0 to 60 m/s; the nearest of those is reckoned with.");
    case HC_AIR_FAULT_PRESSURE:
      return _("No place is so high or deep; the nearest there is is reckoned with.");
    case HC_AIR_FAULT_SEALED:
      return _("No air gets into a pen at all. Give it a vent above the birds.");
    case HC_AIR_FAULT_UNSETTLED:
      return _("The air of this house comes to no rest; the figures are a guess.");
    }
  return "";
}

/**
 * hc_words_vent_advice: (skip)
 * @advice: what to do
 * @open: how far to open, 0 to 1
 * @night: the night as it is
 *
 * Returns: (transfer full): a sentence
 */
char *
hc_words_vent_advice (HcVentAdvice advice, double open, const HcNight *night)
{
  int percent = (int) (open * 100 + 0.5);

  switch (advice)
    {
    case HC_VENT_ADVICE_FINE:
      if (hc_night_get_faults (night) & HC_NIGHT_OPEN_WATER)
        return g_strdup (_("The vents are right as they are. Take the water outside at dusk."));
      return g_strdup (_("Leave the vents as they are."));
    case HC_VENT_ADVICE_OPEN:
      /* Translators: %d is a whole number of percent. */
      return g_strdup_printf (_("Open vents and windows %d %%: nothing more that air can "
                                "mend is left then."),
                              percent);
    case HC_VENT_ADVICE_LESS_HARM:
      /* Translators: %d is a whole number of percent. */
      return g_strdup_printf (_("No opening clears all of it; %d %% does least harm. Insulate "
                                "the roof, keep water outside at night, keep the bedding dry."),
                              percent);
    case HC_VENT_ADVICE_NO_VENTS:
      return g_strdup (_("There is no vent to open. Add one above the birds."));
    }
  return NULL;
}

/**
 * hc_words_night_note: (skip)
 * @night: a night
 *
 * Returns: (transfer full): what was put right in the question or is odd about the
 *   answer, a line each; empty where nothing is
 */
char *
hc_words_night_note (const HcNight *night)
{
  GString *text = g_string_new (NULL);

  for (guint fault = HC_AIR_FAULT_TEMPERATURE; fault <= HC_AIR_FAULT_UNSETTLED; fault <<= 1)
    if (night->air_faults & fault)
      g_string_append_printf (text, "%s%s", text->len > 0 ? "\n" : "",
                              hc_words_air_fault ((HcAirFault) fault));
  if (night->n_states > 1)
    g_string_append_printf (text, "%s%s", text->len > 0 ? "\n" : "",
                            _("The air can come to rest in more than one way; this is the "
                              "dampest."));
  return g_string_free (text, FALSE);
}

/**
 * hc_words_bird_range: (skip)
 * @range: with how many birds the night is well
 * @birds: how many there are
 *
 * Returns: (transfer full): a sentence; indicative
 */
char *
hc_words_bird_range (const HcBirdRange *range, gint64 birds)
{
  if (range->most == 0)
    return g_strdup (_("With no number of these birds is the air well as the vents stand."));
  if (birds < range->least)
    return g_strdup_printf (_("The air would be well with %d to %d birds: these are too few to "
                              "keep the house dry."),
                            (int) range->least, (int) range->most);
  if (birds > range->most)
    return g_strdup_printf (_("The air would be well with %d to %d birds: these are too many."),
                            (int) range->least, (int) range->most);
  if (range->is_open)
    return g_strdup_printf (_("The air is well with %d birds and more; %d were tried."),
                            (int) range->least, (int) range->most);
  return g_strdup_printf (_("The air is well with %d to %d of these birds."),
                          (int) range->least, (int) range->most);
}

/**
 * hc_words_night: (skip)
 * @space: (nullable): the space looked at; %NULL where nothing is under a roof
 * @units: what the keeper measures in
 *
 * Returns: (transfer full): how it is, in one sentence
 */
char *
hc_words_night (const HcNightSpace *space, HcUnits units)
{
  g_autofree char *inside = NULL;

  if (space == NULL)
    return g_strdup (_("Nothing here is under a roof, so there is no night air to work out."));
  if (space->birds == 0)
    return g_strdup (_("No bird sleeps indoors, so nothing warms or dampens the air."));
  inside = hc_temperature_format (space->air.t_c, units);
  /* Translators: a temperature, then a humidity in percent, a whole number. */
  return g_strdup_printf (space->faults == 0
                              ? _("At the roost it is %s and %.0f %% humid: nothing to mend.")
                              : _("At the roost it is %s and %.0f %% humid, and something can be "
                                  "mended."),
                          inside, 100 * space->air.humidity);
}

