/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How many hens of a kind can stay over the dark half of the year. */
#include "config.h"

#include "season/ask/asked.h"

#include "flock/flock-on.h"
#include "flock/own-standard.h"
#include "season/daylight.h"

#include <glib/gi18n-lib.h>

typedef struct
{
  guint32 from;
  guint32 until;
  GPtrArray *flocks;
} Winter;

/* The next dark half; where the sun knows none, all the weeks. */
static void
find_winter (const HcAsked *asked, Winter *winter)
{
  double latitude = hc_plan_get_keeping (asked->plan)->latitude_deg;
  guint32 end = asked->question->from + asked->question->weeks * 7;

  winter->from = asked->question->from;
  while (winter->from < end && !hc_daylight_is_dark_half (latitude, winter->from))
    winter->from++;
  if (winter->from == end)
    winter->from = asked->question->from;
  winter->until = winter->from + 1;
  while (winter->until < end && hc_daylight_is_dark_half (latitude, winter->until))
    winter->until++;
  if (!hc_daylight_is_dark_half (latitude, winter->from))
    winter->until = end;
}

static void
gather (HcAsked *asked, Winter *winter)
{
  HcBook *book = hc_tallier_get_book (asked->tallier);
  g_autoptr (HcTimeline) timeline = hc_timeline_of (asked->plan, book);
  g_autoptr (HcStandard) standard = hc_plan_get_own_standard (asked->plan, book);

  winter->flocks = g_ptr_array_new_with_free_func ((GDestroyNotify) hc_flock_unref);
  for (guint32 day = winter->from; day < winter->until; day++)
    g_ptr_array_add (winter->flocks, hc_flock_on_timeline (timeline, standard,
                                                           hc_plan_get_site (asked->plan), day));
}

/* The kind of which there are most hens in the winter. */
static const HcKind *
find_kind (const HcAsked *asked, const Winter *winter)
{
  HcBook *book = hc_tallier_get_book (asked->tallier);
  HcFlock *flock = winter->flocks->pdata[winter->flocks->len - 1];
  const HcKind *most = asked->question->kind;

  for (guint i = 0; asked->question->kind == NULL && i < hc_book_get_n_kinds (book); i++)
    {
      const HcKind *kind = hc_book_get_kind_at (book, i);

      if (hc_flock_get_hens (flock, kind) > 0
          && (most == NULL || hc_flock_get_hens (flock, kind) > hc_flock_get_hens (flock, most)))
        most = kind;
    }
  return most;
}

/* On every day of the winter. */
static gboolean
passes (HcAsked *asked, gint64 hens, gpointer data)
{
  const Winter *winter = data;
  const HcKind *kind = asked->answer->kind;
  const char *pen = asked->question->pen;

  for (guint i = 0; i < winter->flocks->len; i++)
    {
      HcFlock *flock = winter->flocks->pdata[i];
      g_autoptr (HcFlock) with = hc_flock_with_hens (flock, kind, hens, pen);
      g_autoptr (HcFlock) without = hc_flock_with_hens (flock, kind, 0, pen);

      if (hc_shortfall_find (asked->tallier, with, without, winter->from + i,
                             &asked->answer->shortfall))
        return FALSE;
    }
  return TRUE;
}

gboolean
hc_ask_winter (HcAsked *asked, GError **error)
{
  HcYearAnswer *answer = asked->answer;
  Winter winter;
  g_autoptr (GPtrArray) flocks = NULL;

  find_winter (asked, &winter);
  gather (asked, &winter);
  flocks = winter.flocks;
  answer->kind = find_kind (asked, &winter);
  if (answer->kind == NULL)
    return hc_asked_refuse (error, _("There are no grown hens in that winter. Say which kind of "
                                     "bird is meant."));
  answer->day = winter.from;
  answer->until = winter.until;
  answer->birds = hc_flock_get_hens (flocks->pdata[flocks->len - 1], answer->kind);
  hc_asked_find_most (asked, passes, &winter);
  return TRUE;
}
