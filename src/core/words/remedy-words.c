/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a remedy does, and why, in plain words. */
#include "config.h"

#include "words/remedy-words.h"

#include "words/words.h"

#include <glib/gi18n-lib.h>

typedef struct
{
  const char *code;
  const char *label;
  const char *part;
  const char *why;
} Row;

/* What is done to all of its parts together (%s being them), what stands for it where
 * several things are done, and why it helps. */
static const Row rows[] = {
  { "air.vents", NULL, N_("set the vents"),
    N_("Damp air goes out where it can, and cold air comes in where no bird sleeps.") },
  { "air.water-out", N_("Take outside at dusk: %s"), N_("water outside at dusk"),
    N_("Wet wattles freeze, and open water dampens the air.") },
  { "air.droppings", N_("Take droppings out every day: %s"), N_("droppings out every day"),
    N_("Most of the water in the air of a house comes from droppings and wet bedding.") },
  { "air.new-vent", N_("Add a vent under the eaves: %s"), N_("a vent under the eaves"),
    N_("Damp warm air rises; high up it gets out without a draught on the birds.") },
  { "air.roof", N_("Insulate the roof: %s"), N_("an insulated roof"),
    N_("A warm roof does not sweat, and keeps the birds' own warmth in.") },
  { "air.all", NULL, NULL, N_("Each helps; together nothing, or the least, is left to mend.") },
};

static const Row *
find_row (const char *code)
{
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    if (g_str_equal (rows[i].code, code))
      return &rows[i];
  return NULL;
}

static char *
say_vent (const HcPlan *plan, const char *id, double open, HcUnits units)
{
  g_autofree char *vent = hc_words_opening_place (hc_plan_get_layout ((HcPlan *) plan), id, units);
  int percent = (int) (open * 100 + 0.5);

  if (percent == 0)
    /* Translators: %s is a vent and where it is: "the vent 1.8 m up in the north wall of
     * Hens". It stands in a list. */
    return g_strdup_printf (_("shut %s"), vent);
  if (percent == 100)
    return g_strdup_printf (_("open %s all the way"), vent);
  return g_strdup_printf (_("open %s to %d %%"), vent, percent);
}

static char *
say_part (const HcPlan *plan, const HcRemedy *remedy, guint part, HcUnits units)
{
  const char *id = remedy->ids->pdata[part];
  const Row *row = find_row (id);

  if (row != NULL)
    return g_strdup (_(row->part));
  if (g_str_equal (remedy->code, "air.vents"))
    return say_vent (plan, id, hc_remedy_get_amount (remedy, part), units);
  return hc_words_part (hc_plan_get_layout ((HcPlan *) plan), id);
}

/* Four round drinkers are told once. */
static char *
say_times (const char *part, guint times)
{
  if (times == 1)
    return g_strdup (part);
  /* Translators: a thing of which there are several alike: “the round drinker (4 of them)”. */
  return g_strdup_printf (_("%s (%u of them)"), part, times);
}

static char *
list_parts (const HcPlan *plan, const HcRemedy *remedy, HcUnits units)
{
  GString *list = g_string_new (NULL);
  g_autofree char *part = NULL;
  guint times = 1;

  for (guint i = 0; i < remedy->ids->len; i++)
    {
      g_autofree char *next = i + 1 < remedy->ids->len ? say_part (plan, remedy, i + 1, units)
                                                       : NULL;
      g_autofree char *told = NULL;

      part = part != NULL ? part : say_part (plan, remedy, i, units);
      if (g_strcmp0 (part, next) == 0)
        {
          times++;
          continue;
        }
      told = say_times (part, times);
      g_string_append_printf (list, list->len > 0 ? _("; %s") : "%s", told);
      g_free (part);
      part = g_steal_pointer (&next);
      times = 1;
    }
  return g_string_free (list, FALSE);
}

static char *
with_capital (const char *text)
{
  g_autofree char *first = g_utf8_strup (text, (gssize) (g_utf8_next_char (text) - text));

  return g_strconcat (first, g_utf8_next_char (text), NULL);
}

/**
 * hc_words_remedy: (skip)
 * @plan: the plan it is for, before it is done
 * @remedy: a remedy
 * @units: what the keeper measures in
 *
 * Returns: (transfer full): what is done: "Open the vent 1.8 m up in the north wall of
 *   Hens to 50 %"
 */
char *
hc_words_remedy (const HcPlan *plan, const HcRemedy *remedy, HcUnits units)
{
  const Row *row = find_row (remedy->code);
  g_autofree char *parts = list_parts (plan, remedy, units);

  g_return_val_if_fail (row != NULL, NULL);
  if (row->label != NULL)
    return g_strdup_printf (_(row->label), parts);
  if (g_str_equal (remedy->code, "air.all"))
    /* Translators: %s is a list of things to do. */
    return g_strdup_printf (_("All of this: %s"), parts);
  return with_capital (parts);
}

/**
 * hc_words_remedy_why: (skip)
 * @remedy: a remedy
 *
 * Returns: (transfer none): why it helps
 */
const char *
hc_words_remedy_why (const HcRemedy *remedy)
{
  const Row *row = find_row (remedy->code);

  g_return_val_if_fail (row != NULL, "");
  return _(row->why);
}

/**
 * hc_words_remedy_gain: (skip)
 * @remedy: a remedy
 *
 * Returns: (transfer full): what is left to mend afterwards
 */
char *
hc_words_remedy_gain (const HcRemedy *remedy)
{
  if (remedy->after == 0)
    return g_strdup (_("Then nothing is left to mend."));
  if (remedy->after == remedy->before)
    return g_strdup (_("It helps, but does not do it alone."));
  return g_strdup_printf (ngettext ("%u of %u things is left to mend then.",
                                    "%u of %u things are left to mend then.", remedy->after),
                          remedy->after, remedy->before);
}
