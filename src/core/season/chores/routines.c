/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is done in a pen again and again while birds live in it. */
#include "config.h"

#include "season/chores/listing.h"

typedef struct
{
  HcTaskWhat what;
  gboolean (*is_for) (const HcPenValues *pen);
} Routine;

static gboolean
has_fitting (const HcPenValues *pen, HcFittingKind kind)
{
  for (guint i = 0; i < pen->fittings->len; i++)
    if (hc_fitting_get (pen->fittings->pdata[i])->kind == (int) kind)
      return TRUE;
  return FALSE;
}

static gboolean
has_roost (const HcPenValues *pen)
{
  return has_fitting (pen, HC_FITTING_ROOST);
}

static gboolean
has_nests (const HcPenValues *pen)
{
  return has_fitting (pen, HC_FITTING_NEST_BOXES);
}

static gboolean
is_bedded (const HcPenValues *pen)
{
  return pen->kind == HC_PEN_INDOOR && pen->bedding != NULL && *pen->bedding != '\0';
}

static gboolean
is_lived_in (const HcListing *self, const char *pen, guint32 day)
{
  for (guint i = 0; i < self->timeline->stays->len; i++)
    {
      const HcStay *stay = &g_array_index (self->timeline->stays, HcStay, i);

      if (g_strcmp0 (stay->pen, pen) == 0 && stay->from <= day && day < stay->until)
        return TRUE;
    }
  return FALSE;
}

/* Days of a routine do not hang on the day the list is made from. */
static void
add_routine (HcListing *self, const HcPen *pen, HcTaskWhat what)
{
  const char *id = hc_pen_get_id (pen);
  guint32 every
      = (guint32) MAX (hc_book_get_care (self->book, hc_task_get_word (what))->every_days, 1);

  for (guint32 turn = (self->from + every - 1) / every; turn * every < self->until; turn++)
    if (is_lived_in (self, id, turn * every))
      hc_listing_add (self, (HcTask) { what, id, turn, turn * every, .pen = id });
}

void
hc_listing_add_routines (HcListing *self)
{
  static const Routine routines[] = { { HC_TASK_SCRAPE_BARS, has_roost },
                                      { HC_TASK_RELINE_NESTS, has_nests },
                                      { HC_TASK_CLEAN_OUT, is_bedded } };
  HcParts *pens = hc_layout_get (hc_plan_get_layout (self->plan))->pens;

  for (guint i = 0; i < pens->len; i++)
    for (guint j = 0; j < G_N_ELEMENTS (routines); j++)
      if (routines[j].is_for (hc_pen_get (pens->pdata[i])))
        add_routine (self, pens->pdata[i], routines[j].what);
}
