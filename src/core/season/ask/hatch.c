/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The largest hatch the house carries. */
#include "config.h"

#include "season/ask/asked.h"

#include <glib/gi18n-lib.h>

/* Id of eggs that are only asked about. */
#define THOUGHT_OF "eggs-asked-about"

typedef struct
{
  HcClutch *clutch;
  HcYear *without;
} Hatch;

static HcPlan *
with_eggs (const HcAsked *asked, const Hatch *hatch, gint64 eggs)
{
  HcPlanValues values = *hc_plan_get (asked->plan);
  HcClutchValues clutch = *hc_clutch_get (hatch->clutch);
  g_autoptr (HcClutch) changed = NULL;
  g_autoptr (HcParts) clutches = NULL;

  clutch.eggs = (int) eggs;
  changed = hc_clutch_with (hatch->clutch, &clutch);
  clutches = hc_parts_with (values.clutches, changed);
  values.clutches = clutches;
  return hc_plan_with (asked->plan, &values);
}

static HcYear *
look (const HcAsked *asked, HcPlan *plan)
{
  return hc_year_work_out (asked->tallier, plan, asked->question->from, asked->question->weeks,
                           HC_YEAR_EVERY_DAY);
}

static gboolean
passes (HcAsked *asked, gint64 eggs, gpointer data)
{
  const Hatch *hatch = data;
  g_autoptr (HcPlan) plan = with_eggs (asked, hatch, eggs);
  g_autoptr (HcYear) with = look (asked, plan);

  return !hc_shortfall_find_in_year (with, hatch->without, &asked->answer->shortfall);
}

/* Eggs of the plan that are not set yet, else eggs only thought of, set on the
 * first day. */
static HcClutch *
find_clutch (const HcAsked *asked, GError **error)
{
  const HcYearQuestion *question = asked->question;
  HcParts *clutches = hc_plan_get (asked->plan)->clutches;
  HcClutchValues values;

  if (question->of != NULL)
    {
      HcClutch *named = hc_parts_find (clutches, question->of);

      if (named == NULL || hc_clutch_get (named)->set_on == 0)
        hc_asked_refuse (error, _("The plan has no such eggs with a day they are set on."));
      return named != NULL && hc_clutch_get (named)->set_on != 0 ? hc_clutch_ref (named) : NULL;
    }
  for (guint i = 0; question->kind == NULL && i < clutches->len; i++)
    if (hc_clutch_get (clutches->pdata[i])->set_on >= question->from)
      return hc_clutch_ref (clutches->pdata[i]);
  if (question->kind == NULL)
    {
      hc_asked_refuse (error, _("The plan has no eggs to set yet. Say which kind of bird."));
      return NULL;
    }
  hc_clutch_values_init (&values);
  values.kind = (char *) question->kind->id;
  values.set_on = question->from;
  values.pen = (char *) (question->pen != NULL ? question->pen : "");
  return hc_clutch_new (THOUGHT_OF, &values);
}

/* Chicks without a pen are nobody's guests: the first with a heater, else the
 * first with a roof. */
static const char *
choose_pen (const HcPlan *plan)
{
  HcParts *pens = hc_layout_get (hc_plan_get_layout (plan))->pens;
  const char *roofed = NULL;

  for (guint i = 0; i < pens->len; i++)
    {
      const HcPenValues *pen = hc_pen_get (pens->pdata[i]);

      if (pen->kind != HC_PEN_INDOOR)
        continue;
      if (roofed == NULL)
        roofed = hc_pen_get_id (pens->pdata[i]);
      for (guint j = 0; j < pen->fittings->len; j++)
        if (hc_fitting_is_heater (pen->fittings->pdata[j]))
          return hc_pen_get_id (pens->pdata[i]);
    }
  return roofed != NULL ? roofed : "";
}

static void
house (HcClutch **clutch, const HcPlan *plan)
{
  HcClutchValues values = *hc_clutch_get (*clutch);
  HcClutch *housed;

  if (values.pen != NULL && *values.pen != '\0')
    return;
  values.pen = (char *) choose_pen (plan);
  housed = hc_clutch_with (*clutch, &values);
  hc_clutch_unref (*clutch);
  *clutch = housed;
}

static guint
count_chicks (const HcAsked *asked, const Hatch *hatch, gint64 eggs)
{
  g_autoptr (HcPlan) plan = with_eggs (asked, hatch, eggs);
  g_autoptr (GArray) settings = hc_settings_of (plan, hc_tallier_get_book (asked->tallier));

  for (guint i = 0; i < settings->len; i++)
    {
      const HcSetting *setting = &g_array_index (settings, HcSetting, i);

      if (g_strcmp0 (hc_clutch_get_id (setting->clutch), hc_clutch_get_id (hatch->clutch)) == 0)
        return setting->high;
    }
  return 0;
}

gboolean
hc_ask_hatch (HcAsked *asked, GError **error)
{
  g_autoptr (HcClutch) clutch = find_clutch (asked, error);
  g_autoptr (HcPlan) none = NULL;
  g_autoptr (HcYear) without = NULL;
  Hatch hatch;

  if (clutch == NULL)
    return FALSE;
  house (&clutch, asked->plan);
  hatch = (Hatch) { clutch };
  none = with_eggs (asked, &hatch, 0);
  hatch.without = without = look (asked, none);
  asked->answer->kind = hc_clutch_get_kind_of (clutch, hc_tallier_get_book (asked->tallier));
  asked->answer->day = hc_clutch_get (clutch)->set_on;
  hc_asked_find_most (asked, passes, &hatch);
  asked->answer->birds = count_chicks (asked, &hatch, asked->answer->number);
  return TRUE;
}
