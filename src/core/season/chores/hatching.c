/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * From setting eggs to the hatch. */
#include "config.h"

#include "season/chores/listing.h"

static HcTask
about (const HcSetting *setting, HcTaskWhat what, guint number, guint32 on)
{
  const HcClutchValues *clutch = hc_clutch_get (setting->clutch);

  return (HcTask) { what, hc_clutch_get_id (setting->clutch), number, on,
                    .count = clutch->eggs, .name = clutch->name, .pen = clutch->pen };
}

/* Under a hen nobody turns eggs. */
static void
add_setting (HcListing *self, const HcSetting *setting)
{
  const HcHatching *hatching = &setting->life->hatching;
  guint n_candlings = G_N_ELEMENTS (hatching->candle_days);

  hc_listing_add (self, about (setting, HC_TASK_SET, setting->number, setting->set_on));
  for (guint i = 0; i < n_candlings; i++)
    if (hatching->candle_days[i] > 0)
      hc_listing_add (self, about (setting, HC_TASK_CANDLE, setting->number * n_candlings + i,
                                   setting->set_on + (guint32) hatching->candle_days[i]));
  if (hc_clutch_get (setting->clutch)->place == HC_CLUTCH_INCUBATOR)
    hc_listing_add (self, about (setting, HC_TASK_STOP_TURNING, setting->number,
                                 setting->set_on + (guint32) hatching->stop_turning_day));
  hc_listing_add (self, about (setting, HC_TASK_HATCH, setting->number, setting->hatch_on));
}

void
hc_listing_add_hatching (HcListing *self)
{
  for (guint i = 0; i < self->timeline->settings->len; i++)
    add_setting (self, &g_array_index (self->timeline->settings, HcSetting, i));
}
