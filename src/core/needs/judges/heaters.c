/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Heaters in rooms too cold for them, and rooms without a cool end. */
#include "config.h"

#include "needs/judges/heaters.h"

#include "book/figure-names.h"
#include "plan/fitting.h"

static const HcDevice *
find_device (const HcNeedContext *context, const HcFittingValues *values)
{
  const HcFittingType *type
      = hc_book_get_fitting_type (context->about->book, hc_fitting_kind_get_word (values->kind),
                                  hc_fitting_form_get_word (values->form));

  if (type == NULL)
    type = hc_book_get_fitting_type (context->about->book,
                                     hc_fitting_kind_get_word (values->kind), "");
  return type != NULL ? hc_fitting_type_find_device (type, values->device) : NULL;
}

/* 0 where it is made to measure, or its maker does not say. */
gint64
hc_heater_count_chicks (const HcNeedContext *context, const HcFittingValues *values)
{
  const HcDevice *device = find_device (context, values);

  return device != NULL ? device->chicks : 0;
}

static gboolean
is_too_cold_for (const HcNeedContext *context, const HcFitting *fitting, double *lowest_c)
{
  const HcDevice *device = find_device (context, hc_fitting_get (fitting));

  if (device == NULL)
    return FALSE;
  *lowest_c = device->lowest_room_c;
  return device->lowest_room_c > context->about->site->coldest_night_c;
}

static void
look_at_heaters (const HcNeedContext *context, HcRoom *room, HcFinding *finding, guint *fit)
{
  HcParts *fittings = hc_room_get (room)->fittings;
  double lowest_c;

  for (guint i = 0; i < fittings->len; i++)
    if (hc_fitting_is_heater (fittings->pdata[i]))
      {
        if (!is_too_cold_for (context, fittings->pdata[i], &lowest_c))
          {
            (*fit)++;
            continue;
          }
        hc_finding_add_id (finding, hc_fitting_get_id (fittings->pdata[i]));
        hc_finding_set_measure (finding, context->about->site->coldest_night_c, lowest_c,
                                "celsius");
      }
}

/* Where no heater of the space is made for such nights it is too little;
 * where one is, it is worth doing. */
void
hc_heaters_tell_cold_rooms (const HcNeedContext *context, HcAnswer *answer)
{
  g_autoptr (HcFinding) finding = hc_finding_new ("warmth.room-too-cold", HC_LEVEL_TIGHT);
  guint fit = 0;

  for (guint i = 0; i < hc_need_context_get_n_rooms (context); i++)
    look_at_heaters (context, hc_need_context_get_room (context, i), finding, &fit);
  if (finding->ids[0] == NULL)
    return;
  if (fit == 0)
    finding->level = HC_LEVEL_SHORT;
  finding->birds = answer->birds;
  hc_answer_take (answer, g_steal_pointer (&finding));
}

static double
sum_heated_mm2 (HcRoom *room, HcFinding *finding)
{
  HcParts *fittings = hc_room_get (room)->fittings;
  double sum = 0;

  for (guint i = 0; i < fittings->len; i++)
    {
      const HcFittingValues *values = hc_fitting_get (fittings->pdata[i]);

      if (!hc_fitting_is_heater (fittings->pdata[i]))
        continue;
      sum += values->width_mm * values->depth_mm;
      hc_finding_add_id (finding, hc_fitting_get_id (fittings->pdata[i]));
    }
  return sum;
}

void
hc_heaters_tell_no_cool_end (const HcNeedContext *context, HcAnswer *answer)
{
  const HcLimit *most = hc_need_context_find_plain_limit (
      context, HC_FIGURE_WARMTH_HEATED_SHARE, HC_LEVEL_TIGHT);
  g_autoptr (HcFinding) finding = hc_finding_new ("warmth.no-cool-end", HC_LEVEL_SHORT);
  double heated = 0;
  double floor = 0;
  double bound;

  for (guint i = 0; i < hc_need_context_get_n_rooms (context); i++)
    {
      HcRoom *room = hc_need_context_get_room (context, i);

      heated += sum_heated_mm2 (room, finding);
      floor += hc_shape_get_area_mm2 (hc_room_get_outline (room));
    }
  if (most == NULL || floor <= 0 || !hc_limit_get (most, HC_LEVEL_TIGHT, &bound)
      || hc_limit_is_met (most, HC_LEVEL_TIGHT, heated / floor))
    return;
  finding->birds = answer->birds;
  hc_finding_set_measure (finding, heated / floor, bound, "percent");
  hc_finding_set_figure (finding, hc_case_get_standard (context->about, HC_LEVEL_TIGHT),
                         &most->figure);
  hc_answer_take (answer, g_steal_pointer (&finding));
}
