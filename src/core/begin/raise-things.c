/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * More nest boxes, feeders and drinkers, where there is a free spot for them. */
#include "config.h"

#include "begin/bare-house.h"
#include "begin/house-figure.h"
#include "begin/raise.h"
#include "begin/spot.h"

#include "base/box.h"
#include "base/ids.h"
#include "book/make-fitting.h"
#include "plan/edit-fitting.h"

static HcPlan *
add_where_free (HcPlan *plan, HcBook *book, const char *pen, const HcSpotWish *wish,
                HcFittingValues *thing)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcPen *found = hc_layout_get_pen (layout, pen);
  g_autofree char *id = hc_id_new ();
  g_autoptr (HcFitting) fitting = NULL;

  if (found == NULL || !hc_find_spot (book, layout, found, wish, thing))
    return NULL;
  fitting = hc_fitting_new (id, thing);
  return hc_plan_add_fitting (plan, fitting, NULL);
}

static gboolean
make (HcBook *book, const char *kind, const char *form, const char *device,
      HcFittingValues *values, HcFitting **keeps)
{
  const HcFittingType *type = hc_book_get_fitting_type (book, kind, form);

  if (type == NULL)
    return FALSE;
  *keeps = hc_fitting_type_make (
      type, device != NULL ? hc_fitting_type_find_device (type, device) : NULL, "new",
      (HcPoint){ 0, 0 });
  *values = *hc_fitting_get (*keeps);
  return TRUE;
}

static gboolean
nests_on_floor (const HcKind *kind)
{
  return kind->nests_on_floor && kind->at_lay_week > 0;
}

static gboolean
nests_above (const HcKind *kind)
{
  return !kind->nests_on_floor && kind->at_lay_week > 0;
}

static gboolean
dips_its_head (const HcKind *kind)
{
  return kind->head_deep_water;
}

static int
count_birds (HcPlan *plan)
{
  HcParts *batches = hc_plan_get (plan)->batches;
  int birds = 0;

  for (guint i = 0; i < batches->len; i++)
    birds += hc_batch_get (batches->pdata[i])->females;
  return birds;
}

static int
longest_row (HcPlan *plan, HcBook *book)
{
  return CLAMP (count_birds (plan) / (int) hc_house_measure (book, "birds_a_box_in_row"), 1,
                (int) hc_house_measure (book, "most_boxes_in_row"));
}

/* A row of boxes of the size the largest birds ask for: longer rows for more
 * birds, as long as one fits. */
static HcPlan *
add_boxes (HcPlan *plan, HcBook *book, gboolean on_floor)
{
  HcSpotWish wish = { TRUE, TRUE, -1, 0, 0 };
  g_autoptr (HcFitting) keeps = NULL;
  HcFittingValues box;
  double box_mm;
  double highest_mm = hc_house_figure (plan, book, "roost.bar-height", G_MAXDOUBLE)
                      - hc_house_figure (plan, book, "roost.nest-below", 0);

  if (!make (book, "nest_boxes", "long", NULL, &box, &keeps))
    return NULL;
  box.lined = TRUE;
  box_mm = hc_house_figure (plan, book, "nests.box-width", box.width_mm / box.columns);
  box.rows = 1;
  box.depth_mm = hc_house_figure (plan, book, "nests.box-depth", box.depth_mm);
  box.height_mm = hc_house_figure (plan, book, "nests.box-height", box.height_mm);
  box.base_mm = on_floor ? 0
                         : MAX (MIN (hc_house_figure (plan, book, "nests.height", box.base_mm),
                                     highest_mm),
                                0);
  for (box.columns = longest_row (plan, book); box.columns > 0; box.columns--)
    {
      HcPlan *more;

      box.width_mm = box.columns * box_mm;
      more = add_where_free (plan, book, HC_BARE_HOUSE_PEN, &wish, &box);
      if (more != NULL)
        return more;
    }
  return NULL;
}

HcPlan *
hc_raise_nests (HcPlan *plan, HcBook *book)
{
  g_autoptr (HcPlan) above = NULL;
  HcPlan *more = NULL;

  if (hc_house_has (plan, book, nests_above))
    above = add_boxes (plan, book, FALSE);
  if (hc_house_has (plan, book, nests_on_floor))
    more = add_boxes (above != NULL ? above : plan, book, TRUE);
  return more != NULL ? more : g_steal_pointer (&above);
}

/* One thing to try: a form, a bought device of it, its width where it is
 * another than the book's, and whether it hangs on a wall. */
typedef struct
{
  const char *form;
  const char *device;
  double width_mm;
  gboolean on_wall;
} Wanted;

static HcPlan *
add_one (HcPlan *plan, HcBook *book, const char *pen, const char *kind, const Wanted *wanted,
         const HcSpotWish *wish)
{
  HcSpotWish here = *wish;
  g_autoptr (HcFitting) keeps = NULL;
  HcFittingValues thing;

  if (!make (book, kind, wanted->form, wanted->device, &thing, &keeps))
    return NULL;
  if (wanted->width_mm > 0)
    thing.width_mm = wanted->width_mm;
  here.along_walls = wanted->on_wall;
  return add_where_free (plan, book, pen, &here, &thing);
}

static HcPlan *
add_one_of (HcPlan *plan, HcBook *book, const char *pen, const char *kind,
            const Wanted *wanted, const HcSpotWish *wish)
{
  HcPlan *more = NULL;

  for (; more == NULL && wanted->form != NULL; wanted++)
    more = add_one (plan, book, pen, kind, wanted, wish);
  return more;
}

/* The first of these that there is a spot for: far from the other kind, then
 * nearer to it, and out in the run only where the house has no spot at all. */
static HcPlan *
add_first_that_fits (HcPlan *plan, HcBook *book, const char *kind, const Wanted *wanted,
                     int away_from, double walk_mm)
{
  static const char *const pens[] = { HC_BARE_HOUSE_PEN, HC_BARE_HOUSE_RUN };
  double away_mm = hc_house_figure (plan, book, "feed.from-water", 0);
  HcPlan *more = NULL;

  for (guint i = 0; more == NULL && i < G_N_ELEMENTS (pens); i++)
    for (guint nearer = 1; more == NULL && nearer <= 2; nearer++)
      {
        HcSpotWish wish = { FALSE, FALSE, away_from, away_mm / nearer, walk_mm };

        more = add_one_of (plan, book, pens[i], kind, wanted, &wish);
      }
  return more;
}

static gboolean
is_small (HcPlan *plan, HcBook *book)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcPen *pen = hc_layout_get_pen (layout, HC_BARE_HOUSE_PEN);
  g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, pen);

  return hc_house_is_small (book, hc_box_around ((const HcPoint *) ring->data, ring->len));
}

static const Wanted *
wanted_feeders (HcPlan *plan, HcBook *book)
{
  static const Wanted large[] = { { "round", "round-feeder-20" }, { NULL } };
  static const Wanted usual[] = { { "round", "round-feeder-12" },
                                  { "round", "round-feeder-5" },
                                  { "long", "trough-500" },
                                  { "long", "trough-500", .on_wall = TRUE },
                                  { NULL } };
  static const Wanted small[] = { { "long", "trough-500", .on_wall = TRUE },
                                  { "long", NULL, 400, TRUE },
                                  { "long", NULL, 300, TRUE },
                                  { "round", "round-feeder-5" },
                                  { NULL } };

  if (is_small (plan, book))
    return small;
  return count_birds (plan) > hc_house_measure (book, "birds_for_large_feeder") ? large : usual;
}

HcPlan *
hc_raise_feed (HcPlan *plan, HcBook *book)
{
  return add_first_that_fits (plan, book, "feeder", wanted_feeders (plan, book),
                              HC_FITTING_DRINKER, hc_house_figure (plan, book, "feed.walk", 0));
}

static const Wanted *
wanted_drinkers (HcPlan *plan, HcBook *book)
{
  static const Wanted deep[] = { { "long", "tub-waterfowl" },
                                 { "long", "trough-water-600" },
                                 { "long", "trough-water-600", .on_wall = TRUE },
                                 { NULL } };
  static const Wanted warm[] = { { "round", "fount-10-heated" },
                                 { "round", "fount-5" },
                                 { "nipples", "bucket-nipples-4-heated", .on_wall = TRUE },
                                 { NULL } };
  static const Wanted plain[] = { { "round", "fount-10" },
                                  { "round", "fount-5" },
                                  { "nipples", "bucket-nipples-4", .on_wall = TRUE },
                                  { NULL } };
  /* In a small house nothing but what hangs on a wall, the last of each. */
  guint first = is_small (plan, book) ? 2 : 0;

  if (hc_house_has (plan, book, dips_its_head))
    return &deep[first];
  return hc_plan_get_site (plan)->coldest_night_c < 0 ? &warm[first] : &plain[first];
}

HcPlan *
hc_raise_water (HcPlan *plan, HcBook *book)
{
  return add_first_that_fits (plan, book, "drinker", wanted_drinkers (plan, book),
                              HC_FITTING_FEEDER, hc_house_figure (plan, book, "water.walk", 0));
}
