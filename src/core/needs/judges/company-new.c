/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Birds that came from elsewhere, and are not kept apart yet. */
#include "config.h"

#include "needs/judges/company.h"

#include "book/figure-names.h"

static gboolean
holds_both (const HcSpace *space, guint one, guint other)
{
  gboolean has_one = FALSE;
  gboolean has_other = FALSE;

  for (guint i = 0; i < space->rooms->len; i++)
    {
      has_one = has_one || g_array_index (space->rooms, guint, i) == one;
      has_other = has_other || g_array_index (space->rooms, guint, i) == other;
    }
  return has_one && has_other;
}

static gboolean
share_air (const HcHouse *house, guint one, guint other)
{
  for (guint i = 0; i < hc_house_get_n_air_spaces (house); i++)
    if (holds_both (hc_house_get_air_space (house, i), one, other))
      return TRUE;
  return FALSE;
}

static gboolean
meet (const HcNeedContext *context, guint one, guint other)
{
  const HcHouse *house = context->about->house;
  HcCondition condition = hc_case_get_condition (context->about, HC_SCOPE_DAY_SPACE);

  for (guint i = 0; i < hc_house_get_n_spaces (house, condition); i++)
    if (holds_both (hc_house_get_space (house, condition, i), one, other))
      return TRUE;
  return one == other || share_air (house, one, other);
}

/* Whether birds that are not of @batch meet those in @room, or breathe their air. */
static gboolean
meets_others (const HcNeedContext *context, guint room, const char *batch)
{
  const HcFlock *flock = context->about->flock;
  guint other;

  for (guint i = 0; i < hc_flock_get_n_rows (flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (flock, i);

      if (row->count > 0 && g_strcmp0 (row->batch, batch) != 0
          && hc_house_find_room (context->about->house, row->pen, &other)
          && meet (context, room, other))
        return TRUE;
    }
  return FALSE;
}

static gboolean
has_fitting (const HcRoom *room, HcFittingKind kind)
{
  HcParts *fittings = hc_room_get (room)->fittings;

  for (guint i = 0; i < fittings->len; i++)
    if (hc_fitting_get (fittings->pdata[i])->kind == (int) kind)
      return TRUE;
  return FALSE;
}

/* A pen with feed, water and air that no bird shares. */
static const char *
find_free_pen (const HcNeedContext *context)
{
  const HcHouse *house = context->about->house;

  for (guint i = 0; i < hc_house_get_n_rooms (house); i++)
    {
      HcRoom *room = hc_house_get_room (house, i);

      if (hc_room_is_roofed (room) && has_fitting (room, HC_FITTING_FEEDER)
          && has_fitting (room, HC_FITTING_DRINKER) && !meets_others (context, i, NULL))
        return hc_pen_get_id (hc_room_get_pen (room));
    }
  return NULL;
}

static void
tell (const HcNeedContext *context, const HcFlockRow *row, const HcLimit *limit, double days,
      HcAnswer *answer)
{
  const char *pen = find_free_pen (context);
  HcFinding *finding
      = hc_finding_new (pen != NULL ? "company.new-birds-beside-a-free-pen" : "company.new-birds",
                        HC_LEVEL_TIGHT);

  finding->birds = row->count;
  finding->kinds = (HcBodies) 1 << row->body;
  hc_finding_add_id (finding, row->batch);
  hc_finding_add_id (finding, pen);
  hc_finding_set_measure (finding, row->days_here, days, "days");
  hc_finding_set_figure (finding, hc_case_get_standard (context->about, HC_LEVEL_GOOD),
                         &limit->figure);
  hc_answer_take (answer, finding);
}

/* Chicks under heat are alone with it. */
static gboolean
is_new (const HcNeedContext *context, const HcFlockRow *row, double days)
{
  return row->count > 0 && row->is_from_elsewhere && row->days_here < days
         && !hc_need_context_get_body (context, row->body)->under_heat;
}

void
hc_company_tell_new_birds (const HcNeedContext *context, HcAnswer *answer)
{
  const HcFlock *flock = context->about->flock;
  const HcLimit *limit = hc_need_context_find_plain_limit (context, HC_FIGURE_COMPANY_QUARANTINE,
                                                           HC_LEVEL_GOOD);
  double days;
  guint room;

  if (limit == NULL || !hc_limit_get (limit, HC_LEVEL_TIGHT, &days))
    return;
  for (guint i = 0; i < hc_flock_get_n_rows (flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (flock, i);

      if (is_new (context, row, days)
          && hc_house_find_room (context->about->house, row->pen, &room)
          && meets_others (context, room, row->batch))
        tell (context, row, limit, days, answer);
    }
}
