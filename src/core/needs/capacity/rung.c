/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One need, asked for larger and larger flocks. */
#include "config.h"

#include "needs/capacity/rung.h"

#include "needs/capacity/search.h"

#include <string.h>

void
hc_rung_search_init (HcRungSearch *self, HcCase *about, const HcQuestion *question,
                     const HcNeed *need, HcLevel aim)
{
  self->question = question;
  self->need = need;
  self->aim = aim;
  self->n_places = hc_case_get_n_spaces (about, need);
  self->places = g_new (HcNeedContext, self->n_places + 1);
  for (guint i = 0; i < self->n_places; i++)
    {
      hc_need_context_init (&self->places[i], about, need, i);
      self->places[i].only_whether_all = TRUE;
    }
}

void
hc_rung_search_clear (HcRungSearch *self)
{
  g_free (self->places);
}

gboolean
hc_rung_search_reaches (const HcRungSearch *self, gint64 birds)
{
  g_autoptr (HcFlock) flock = hc_question_get_flock (self->question, birds);

  for (guint i = 0; i < self->n_places; i++)
    {
      hc_need_context_count (&self->places[i], flock);
      if (!hc_count_reaches (&self->places[i], self->aim))
        return FALSE;
    }
  return TRUE;
}

static gboolean
test_all (gint64 birds, gpointer data)
{
  return hc_rung_search_reaches (data, birds);
}

/* -1 where even without any of the birds asked for it is too little. */
gint64
hc_rung_search_find_most (const HcRungSearch *self)
{
  if (!hc_rung_search_reaches (self, 0))
    return -1;
  return hc_search_most (test_all, (gpointer) self, 0, HC_RUNG_NEVER);
}

/* Nobody but @birds of the one kind asked about. */
void
hc_rung_search_put_in (const HcRungSearch *self, guint place, gint64 birds)
{
  guint body = hc_flock_get_row (self->question->base, 0)->body;

  memset (self->places[place].counts, 0, sizeof self->places[place].counts);
  self->places[place].counts[body] = birds;
}

typedef struct
{
  const HcRungSearch *search;
  guint place;
} Alone;

static gboolean
test_one (gint64 birds, gpointer data)
{
  Alone *alone = data;

  hc_rung_search_put_in (alone->search, alone->place, birds);
  return hc_count_reaches (&alone->search->places[alone->place], alone->search->aim);
}

/* How many birds of one kind alone one of the spaces carries. */
gint64
hc_rung_search_find_most_in (const HcRungSearch *self, guint place)
{
  Alone alone = { self, place };

  return hc_search_most (test_one, &alone, 0, HC_RUNG_NEVER);
}
