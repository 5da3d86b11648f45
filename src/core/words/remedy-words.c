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
  const char *why;
} Row;

/* What is done to all of its parts together, %s being them, and why it helps. */
static const Row rows[] = {
  { "air.vents", NULL,
    N_("Damp air goes out where it can, and cold air comes in where no bird sleeps.") },
  { "air.water-out", N_("Take outside at dusk: %s"),
    N_("Wet wattles freeze, and open water dampens the air.") },
  { "air.droppings", N_("Take droppings out every day: %s"),
    N_("Most of the water in the air of a house comes from droppings and wet bedding.") },
  { "air.new-vent", N_("Add a vent under the eaves: %s"),
    N_("Damp warm air rises; high up it gets out without a draught on the birds.") },
  { "air.roof", N_("Insulate the roof: %s"),
    N_("A warm roof does not sweat, and keeps the birds' own warmth in.") },
  { "bar.lengthen", N_("Make its bars longer: %s"),
    N_("Birds that find a seat sleep off the cold floor.") },
  { "bar.add", N_("Add a bar: %s"),
    N_("Birds that find a seat sleep off the cold floor.") },
  { "bar.new", N_("Add a roost: %s"),
    N_("Birds that find a seat sleep off the cold floor.") },
  { "bar.lower", N_("Lower its bars: %s"),
    N_("There is headroom further down, and the hop is shorter.") },
  { "bar.widen", N_("Use wider bars: %s"),
    N_("On a wide bar the feathers cover the toes.") },
  { "nests.add", N_("Add boxes to it: %s"),
    N_("Hens that wait for a box lay on the floor.") },
  { "nests.new", N_("Add a row of boxes: %s"),
    N_("Hens that wait for a box lay on the floor.") },
  { "nests.lower", N_("Lower it: %s"),
    N_("Hens get up to it, and sleep on the bars above.") },
  { "nests.line", N_("Line it with bedding: %s"),
    N_("Bare boxes break eggs.") },
  { "trough.lengthen", N_("Make it longer: %s"),
    N_("All birds of a flock eat and drink at once.") },
  { "trough.add", N_("Add another like it: %s"),
    N_("All birds of a flock eat and drink at once.") },
  { "trough.add-other", N_("Add %s"),
    N_("All birds of a flock eat and drink at once.") },
  { "water.heat", N_("Keep it from freezing: %s"),
    N_("Birds that cannot drink do not eat either.") },
  { "floor.bed", N_("Spread bedding: %s"),
    N_("Dry bedding takes up droppings and gives birds something to scratch in.") },
  { "roof.bear-snow", N_("Use wire mesh overhead: %s"),
    N_("It does not come down under snow.") },
  { "heater.swap", N_("Put another heater in its place: %s"),
    N_("It is made for a room this cold.") },
  { "heater.add", N_("Add %s"),
    N_("Every chick must find room in the warm.") },
  { "pop-hole.widen", N_("Make it larger: %s"),
    N_("A narrow hole is guarded by one bold bird.") },
  { "pop-hole.add", N_("Add a pop hole: %s"),
    N_("One that is guarded does not shut the others in.") },
  { "door.widen", N_("Make it wider: %s"),
    N_("You come through with a bucket or a barrow.") },
  { "door.raise", N_("Make it higher: %s"),
    N_("You come through upright.") },
  { "door.add", N_("Add a door: %s"),
    N_("What you get to easily is looked at every day.") },
  { "window.widen", N_("Make it wider: %s"),
    N_("Hens lay by daylight.") },
  { "window.add", N_("Add a window: %s"),
    N_("Hens lay by daylight.") },
  { "vent.open-winter", N_("Open the vents all the way in winter: %s"),
    N_("Damp air goes out.") },
  { "vent.open-summer", N_("Open vents and windows all the way in summer: %s"),
    N_("Warm air goes out.") },
  { "vent.widen", N_("Make it wider: %s"),
    N_("Damp and warm air go out.") },
  { "vent.add", N_("Add a vent under the eaves: %s"),
    N_("Damp and warm air rise and go out there.") },
  { "opening.slide", N_("Move it along its wall: %s"),
    N_("There it is out of the way.") },
  { "guard.shut-at-dusk", N_("Shut it every dusk: %s"),
    N_("Most birds are lost through a door that was not shut.") },
  { "guard.latch", N_("Use a latch that holds: %s"),
    N_("Paws and noses open simple latches.") },
  { "guard.close-gap", N_("Close the gap: %s"),
    N_("Small hunters come through gaps a thumb wide.") },
  { "guard.mesh", N_("Use mesh that holds, screwed on: %s"),
    N_("Its holes are too small, and it is not torn.") },
  { "guard.apron", N_("Lay a dig guard round it: %s"),
    N_("What digs gives up where it meets mesh.") },
  { "guard.mesh-floor", N_("Lay mesh under the floor: %s"),
    N_("What digs and gnaws does not come through it.") },
  { "guard.raise-walls", N_("Make its walls higher: %s"),
    N_("They are not jumped, and leave no gap above.") },
  { "guard.roof", N_("Roof it over with mesh: %s"),
    N_("Nothing climbs in or comes from above.") },
  { "thing.move", N_("Move it: %s"),
    N_("There it is of more use, and less in the way.") },
  { "thing.turn", N_("Turn it: %s"),
    N_("There it is of more use, and less in the way.") },
  { "thing.move-in", N_("Put it in a pen: %s"),
    N_("In no pen it is of no use.") },
  { "thing.hang", N_("Hang it higher or lower: %s"),
    N_("At the right height it works.") },
  { "thing.take-away", N_("Take it away: %s"),
    N_("Then it is in nothing's way.") },
  { "birds.another-pen", N_("Move them to another pen: %s"),
    N_("There is room for them.") },
  { "birds.fewer-males", N_("Keep fewer males: %s"),
    N_("Hens are left in peace.") },
  { "birds.fewer", N_("Keep fewer birds: %s"),
    N_("What there is then serves them all.") },
  { "air.all", N_("All of this: %s"),
    N_("Each helps; together nothing, or the least, is left to mend.") },
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

/* What is new has its name in the plan made; a group of birds has its own. */
static char *
name_part (const HcPlan *plan, const HcRemedy *remedy, const char *id)
{
  HcBatch *batch = hc_parts_find (hc_plan_get (plan)->batches, id);
  HcLayout *before = hc_plan_get_layout ((HcPlan *) plan);
  HcLayout *after = remedy->plan != NULL ? hc_plan_get_layout (remedy->plan) : before;

  if (batch != NULL && hc_batch_get (batch)->name != NULL && *hc_batch_get (batch)->name != '\0')
    return g_strdup (hc_batch_get (batch)->name);
  if (batch != NULL)
    return g_strdup (_("a group of birds"));
  if (hc_layout_get_fitting (after, id, NULL) != NULL || hc_layout_get_opening (after, id) != NULL)
    return hc_words_part (after, id);
  return hc_words_part (before, id);
}

static char *
say_part (const HcPlan *plan, const HcRemedy *remedy, guint part, HcUnits units)
{
  const char *id = remedy->ids->pdata[part];

  if (g_str_equal (remedy->code, "air.vents"))
    return say_vent (remedy->plan, id, hc_remedy_get_amount (remedy, part), units);
  return name_part (plan, remedy, id);
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

static char *
say_fewer (const HcRemedy *remedy, const char *group)
{
  int fewer = (int) hc_remedy_get_amount (remedy, 0);

  /* Translators: %d is how many birds fewer, %s the name of their group. */
  return g_strdup_printf (
      ngettext ("Keep %d bird fewer: %s", "Keep %d birds fewer: %s", (gulong) fewer), fewer, group);
}

static char *
list_steps (const HcPlan *plan, const HcRemedy *remedy, HcUnits units)
{
  GString *list = g_string_new (NULL);

  for (guint i = 0; i < remedy->steps->len; i++)
    {
      g_autofree char *step = hc_words_remedy (plan, remedy->steps->pdata[i], units);

      g_string_append_printf (list, i > 0 ? _("; %s") : "%s", step);
    }
  return g_string_free (list, FALSE);
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
  g_autofree char *parts = remedy->steps->len > 0 ? list_steps (plan, remedy, units)
                                                  : list_parts (plan, remedy, units);

  g_return_val_if_fail (row != NULL, NULL);
  if (g_str_equal (remedy->code, "birds.fewer"))
    return say_fewer (remedy, parts);
  return row->label != NULL ? g_strdup_printf (_(row->label), parts) : with_capital (parts);
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

static char *
list_changes (const HcRemedy *remedy, gboolean better)
{
  g_autoptr (GStrvBuilder) said = g_strv_builder_new ();
  g_auto (GStrv) changes = NULL;

  for (guint i = 0; i < remedy->changes->len; i++)
    {
      const HcNeedChange *change = &g_array_index (remedy->changes, HcNeedChange, i);
      g_autofree char *one = NULL;

      if ((change->after > change->before) != better)
        continue;
      /* Translators: a need and how well it is then met: "Nest boxes: good" */
      one = g_strdup_printf (_("%s: %s"), hc_words_need_title (change->need),
                             hc_words_need_level (change->need, change->after));
      g_strv_builder_add (said, one);
    }
  changes = g_strv_builder_end (said);
  return g_strjoinv (_("; "), changes);
}

/**
 * hc_words_remedy_changes: (skip)
 * @remedy: a remedy of a finding
 *
 * Returns: (transfer full) (nullable): the needs it makes better, and those it makes
 *   worse; %NULL where it changes the level of none
 */
char *
hc_words_remedy_changes (const HcRemedy *remedy)
{
  g_autofree char *better = list_changes (remedy, TRUE);
  g_autofree char *worse = list_changes (remedy, FALSE);

  if (*worse == '\0')
    return *better != '\0' ? g_strdup_printf (_("Better: %s."), better) : NULL;
  if (*better == '\0')
    return g_strdup_printf (_("Worse: %s."), worse);
  return g_strdup_printf (_("Worse: %s. Better: %s."), worse, better);
}

/**
 * hc_words_no_remedy: (skip)
 *
 * Returns: (transfer none): what is said where nothing that was tried mends it
 */
const char *
hc_words_no_remedy (void)
{
  return _("Nothing that was tried fits here without making another thing worse: it takes a "
           "change of the house, or of the flock.");
}
