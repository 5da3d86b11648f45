/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Costs and income at the keeper's prices. What has no price counts nothing. */
#include "config.h"

#include "season/forecast/forecast-private.h"

#include "base/day.h"

#define LITRES_PER_M3 1000.0

static const HcPriceValues *
find_price (const HcForecast *self, const char *of, HcPricePer per)
{
  HcParts *prices = hc_plan_get (self->plan)->prices;

  for (guint i = 0; i < prices->len; i++)
    {
      const HcPriceValues *price = hc_price_get (prices->pdata[i]);

      if (g_strcmp0 (price->of, of) == 0 && price->per == (int) per)
        return price;
    }
  return NULL;
}

static double
get_price (const HcForecast *self, const char *of, HcPricePer per)
{
  const HcPriceValues *price = find_price (self, of, per);

  return price != NULL ? price->amount : 0;
}

/* A kilogram of what is also sold by the bag or the bale. */
static double
get_price_of_kg (const HcForecast *self, const char *of, double piece_kg)
{
  if (find_price (self, of, HC_PRICE_KG) != NULL || piece_kg <= 0)
    return get_price (self, of, HC_PRICE_KG);
  return get_price (self, of, HC_PRICE_PIECE) / piece_kg;
}

static double
price_feed (const HcForecast *self, guint week)
{
  double bag_kg = hc_plan_get_keeping (self->plan)->feed_bag_kg;
  double cost = 0;

  for (guint i = 0; i < hc_book_get_n_feeds (self->book); i++)
    cost += hc_forecast_get_feed_kg (self, week, i)
            * get_price_of_kg (self, hc_book_get_feed_at (self->book, i)->id, bag_kg);
  return cost;
}

/* Where pens are bedded with different things, the price is that of the first
 * that has one. */
static double
price_bedding_kg (const HcForecast *self)
{
  for (guint i = 0; i < hc_book_get_n_beddings (self->book); i++)
    {
      const HcBedding *bedding = hc_book_get_bedding_at (self->book, i);
      double price = get_price_of_kg (self, bedding->id,
                                      bedding->bale_litres / LITRES_PER_M3 * bedding->bale_kg_m3);

      if (price > 0)
        return price;
    }
  return 0;
}

static HcForecastWeek *
find_week (HcForecast *self, guint32 day)
{
  guint32 from = hc_forecast_week_at (self, 0)->from;

  if (day < from || day >= from + self->weeks->len * HC_DAYS_IN_WEEK)
    return NULL;
  return hc_forecast_week_at (self, (day - from) / HC_DAYS_IN_WEEK);
}

static void
add_birds_sold (HcForecast *self)
{
  for (guint i = 0; i < self->timeline->departures->len; i++)
    {
      const HcDeparture *gone = &g_array_index (self->timeline->departures, HcDeparture, i);
      HcForecastWeek *week = find_week (self, gone->on);

      if (week != NULL && gone->why == HC_LEAVING_SOLD)
        week->income += gone->count * get_price (self, "bird", HC_PRICE_PIECE);
    }
}

static void
add_birds_bought (HcForecast *self)
{
  HcParts *batches = hc_plan_get (self->plan)->batches;

  for (guint i = 0; i < batches->len; i++)
    {
      const HcBatchValues *batch = hc_batch_get (batches->pdata[i]);
      HcForecastWeek *week = find_week (self, batch->came);

      if (week != NULL && batch->came != 0)
        week->cost
            += (batch->females + batch->males) * get_price (self, "chick", HC_PRICE_PIECE);
    }
}

void
hc_forecast_add_money (HcForecast *self)
{
  double bedding_kg = price_bedding_kg (self);

  for (guint i = 0; i < self->weeks->len; i++)
    {
      HcForecastWeek *week = hc_forecast_week_at (self, i);

      week->cost += price_feed (self, i) + week->bedding_kg * bedding_kg
                    + week->water_l * get_price (self, "water", HC_PRICE_LITRE)
                    + week->heat_kwh * get_price (self, "power", HC_PRICE_KWH);
      week->income += week->eggs * get_price (self, "egg", HC_PRICE_PIECE)
                      + week->meat_kg * get_price (self, "meat", HC_PRICE_KG);
    }
  add_birds_sold (self);
  add_birds_bought (self);
}
