/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The level of a counting need is the highest at which nobody is left over. */
#include "config.h"

#include "needs/count.h"

static gint64
count_served (const HcNeedContext *context, HcLevel level, gint64 *there)
{
  HcServing serving = { 0 };

  context->need->serve (context, level, FALSE, &serving);
  *there = serving.there;
  hc_serving_clear (&serving);
  return serving.served;
}

/* Whether every bird of the space is served at @aim and all lower levels. */
gboolean
hc_count_reaches (const HcNeedContext *context, HcLevel aim)
{
  for (HcLevel level = HC_LEVEL_TIGHT; level <= aim; level++)
    {
      gint64 there;

      if (count_served (context, level, &there) < there)
        return FALSE;
    }
  return TRUE;
}

static HcFinding *
write_finding (const HcNeedContext *context, const HcServing *serving, HcLevel missed,
               const char *code)
{
  HcFinding *finding = hc_finding_new (code, missed - 1);

  finding->birds = serving->there - serving->served;
  finding->kinds = hc_serving_get_left_over (serving);
  hc_finding_set_measure (finding, serving->offered, serving->required, serving->unit);
  hc_finding_set_figure (finding, hc_case_get_standard (context->about, missed),
                         serving->figure);
  return finding;
}

/* Where birds are served at the least level, there is something: just nothing
 * good. */
static const char *
code_of (const HcNeed *need, const HcServing *serving, HcLevel missed)
{
  if (serving->nothing && missed == HC_LEVEL_TIGHT)
    return need->none;
  return serving->kept && need->kept != NULL ? need->kept : need->few;
}

static void
tell_missed (const HcNeedContext *context, const HcServing *serving, HcLevel missed,
             HcAnswer *answer)
{
  const HcNeed *need = context->need;
  HcFinding *finding
      = write_finding (context, serving, missed, code_of (need, serving, missed));

  hc_need_context_name_pens (context, finding);
  hc_answer_take (answer, finding);
  if (serving->only == NULL || need->confined == NULL)
    return;
  finding = write_finding (context, serving, missed, need->confined);
  finding->kinds = serving->confined;
  for (guint i = 0; i < serving->only->len; i++)
    hc_finding_add_id (finding, serving->only->pdata[i]);
  hc_answer_take (answer, finding);
}

static void
tell_level (const HcNeedContext *context, HcLevel level, gboolean missed, gboolean shown,
            HcAnswer *answer)
{
  HcServing serving = { 0 };

  if (!missed && !shown)
    return;
  context->need->serve (context, level, TRUE, &serving);
  if (missed)
    tell_missed (context, &serving, level, answer);
  if (shown && serving.allotment != NULL)
    g_ptr_array_add (answer->allotments, hc_allotment_ref (serving.allotment));
  hc_serving_clear (&serving);
}

/* The birds drawn on their places are those of the level reached, or of the
 * least where even that is missed. */
void
hc_count_judge (const HcNeedContext *context, HcAnswer *answer)
{
  HcLevel reached = HC_LEVEL_SHORT;
  gint64 least = G_MAXINT64;

  for (HcLevel level = HC_LEVEL_TIGHT; level <= HC_LEVEL_PLENTY; level++)
    {
      gint64 there;

      least = MIN (least, count_served (context, level, &there));
      answer->birds = MAX (answer->birds, there);
      answer->served[level - HC_LEVEL_TIGHT] = least;
      if (reached == level - 1 && least == there)
        reached = level;
    }
  if (answer->birds == 0)
    return;
  hc_answer_lower (answer, reached);
  for (HcLevel level = HC_LEVEL_TIGHT; level <= HC_LEVEL_PLENTY; level++)
    tell_level (context, level, level == reached + 1 && level <= HC_LEVEL_GOOD,
                level == MAX (reached, HC_LEVEL_TIGHT), answer);
}

static HcFinding *
find_of (HcAnswer *answer, const char *code, const HcPlace *place)
{
  for (guint i = 0; i < answer->findings->len; i++)
    {
      HcFinding *finding = answer->findings->pdata[i];

      if (finding->code == code && g_strcmp0 (finding->ids[0], place->id) == 0
          && g_strcmp0 (finding->figure, place->why_not) == 0)
        return finding;
    }
  return NULL;
}

static void
tell_lost (const HcNeedContext *context, const HcPlace *place, const char *code,
           HcAnswer *answer)
{
  HcStandard *standard = hc_case_get_standard (context->about, HC_LEVEL_TIGHT);
  HcFinding *finding = find_of (answer, code, place);

  if (finding == NULL)
    {
      finding = hc_finding_new (code, HC_LEVEL_TIGHT);
      hc_finding_add_id (finding, place->id);
      if (place->why_not != NULL)
        hc_finding_set_figure (finding, standard,
                               hc_standard_find_figure (standard, place->why_not));
      hc_answer_remark (answer, finding);
    }
  hc_finding_add_id (finding, place->blocker);
}

/* Places that serve nobody: worth knowing, whatever the level. */
void
hc_count_tell_lost_places (const HcNeedContext *context, HcOfferKind kind, const char *code,
                           HcAnswer *answer)
{
  if (!answer->applies)
    return;
  for (guint i = 0; i < hc_need_context_get_n_rooms (context); i++)
    {
      HcRoom *room = hc_need_context_get_room (context, i);
      HcOffer *offer = hc_need_context_get_offer (context, room, kind, HC_LEVEL_TIGHT);

      for (guint j = 0; j < hc_offer_get_n_places (offer); j++)
        {
          const HcPlace *place = hc_offer_get_place (offer, j);

          if ((place->amounts[0] <= 0 || place->suits[0] == 0)
              && (place->why_not != NULL || place->blocker != NULL))
            tell_lost (context, place, code, answer);
        }
    }
}
