/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A house with nothing in it yet. */
#include "config.h"

#include "begin/bare-house.h"

#include "base/box.h"
#include "base/ids.h"
#include "base/ring.h"
#include "begin/house-figure.h"
#include "book/make-opening.h"
#include "plan/edit-flock.h"
#include "plan/edit-opening.h"
#include "plan/edit-pen.h"
#include "plan/edit-plan.h"
#include "plan/edit-site.h"
#include "plan/wall-places.h"

#include <glib/gi18n-lib.h>

static HcPlan *
take (HcPlan **plan, HcPlan *next)
{
  if (next != NULL)
    {
      hc_plan_unref (*plan);
      *plan = next;
    }
  return next;
}

/* Ids of a pen: its own first, the rest whatever they come to be. */
static char **
ids_for (const char *pen)
{
  char **ids = hc_pen_ids_new ();

  g_free (ids[0]);
  ids[0] = g_strdup (pen);
  return ids;
}

static gboolean
add_box (HcPlan **plan, const char *id, const HcPenValues *values, const HcWallValues *walls,
         HcBox box, GError **error)
{
  HcPoint corners[] = { { box.x_mm, box.y_mm },
                        { box.x_mm + box.width_mm, box.y_mm },
                        { box.x_mm + box.width_mm, box.y_mm + box.depth_mm },
                        { box.x_mm, box.y_mm + box.depth_mm } };
  g_auto (GStrv) ids = ids_for (id);

  return take (plan, hc_plan_add_pen_outline (*plan, values, walls, corners, 4,
                                              (const char *const *) ids, error))
         != NULL;
}

static gboolean
add_house (HcPlan **plan, HcBook *book, const HcAnswers *answers, GError **error)
{
  char *floor[] = { (char *) "earth", (char *) "boards", NULL };
  const HcBedding *bedding = hc_book_get_bedding (book, "shavings");
  HcBox box = { 0, 0, MAX (answers->width_mm, answers->length_mm),
                MIN (answers->width_mm, answers->length_mm) };
  HcPenValues pen;
  HcWallValues wall;

  hc_pen_values_init (&pen);
  pen.name = (char *) _("Indoors");
  pen.kind = HC_PEN_INDOOR;
  pen.height_mm = hc_house_measure (book, "wall_height_mm");
  pen.ridge_mm = hc_house_measure (book, "ridge_height_mm");
  pen.floor_layers = floor;
  pen.bedding = (char *) "shavings";
  pen.bedding_mm = bedding != NULL ? bedding->depth_mm : 0;
  pen.roof_construction = (char *) "steel_roof";
  hc_wall_values_init (&wall);
  wall.thickness_mm = hc_house_measure (book, "wall_thickness_mm");
  wall.height_mm = pen.height_mm;
  wall.construction = (char *) "board_wall";
  return add_box (plan, HC_BARE_HOUSE_PEN, &pen, &wall, box, error);
}

/* The run is as wide as the house and as deep as its birds ask. */
static double
run_depth_mm (HcBook *book, const HcAnswers *answers, HcStandard *standard)
{
  double area_mm2 = 0;

  for (guint i = 0; i < answers->n_birds; i++)
    {
      const HcKind *kind = hc_book_get_breed (book, answers->birds[i].breed)->kind;
      const HcDemand *demand = hc_standard_find_demand (standard, "run.area", kind, HC_WEEK_GROWN,
                                                        HC_CONDITION_DAY);
      double birds = MAX (answers->birds[i].count, 0);

      if (demand != NULL)
        area_mm2 += hc_demand_required (demand, HC_LEVEL_GOOD, birds, birds * kind->hen_kg, NULL);
    }
  return area_mm2 / MAX (answers->width_mm, answers->length_mm);
}

static gboolean
add_run (HcPlan **plan, HcBook *book, const HcAnswers *answers, GError **error)
{
  HcStandard *standard = hc_book_get_standard (book, HC_BOOK_DEFAULT_STANDARD);
  double depth_mm = run_depth_mm (book, answers, standard);
  double house_mm = MIN (answers->width_mm, answers->length_mm);
  double fence_mm = hc_house_figure (*plan, book, "predators.fence-height",
                                     hc_house_measure (book, "wall_height_mm"));
  double thickness_mm = hc_house_measure (book, "fence_thickness_mm");
  char *floor[] = { (char *) "earth", NULL };
  HcBox box = { 0, house_mm, MAX (answers->width_mm, answers->length_mm),
                MAX (depth_mm + 4 * thickness_mm, house_mm) };
  HcPenValues pen;
  HcWallValues wall;

  hc_pen_values_init (&pen);
  pen.name = (char *) _("Run");
  pen.kind = HC_PEN_RUN;
  pen.height_mm = fence_mm;
  pen.floor_layers = floor;
  pen.roof = HC_ROOF_NET;
  pen.roof_mesh = (char *) "hex_50";
  pen.apron_mm = hc_house_figure (*plan, book, "predators.apron", 0);
  hc_wall_values_init (&wall);
  wall.kind = HC_WALL_FENCE;
  wall.thickness_mm = thickness_mm;
  wall.height_mm = fence_mm;
  wall.mesh = (char *) "welded_25";
  return add_box (plan, HC_BARE_HOUSE_RUN, &pen, &wall, box, error);
}

/**
 * hc_bare_house_find_wall: (skip)
 * @layout: a layout
 * @pen: id of a pen whose walls run along x and y
 * @outward: the way out through the wall, of length 1
 *
 * Returns: (nullable) (transfer none): id of the wall on that side
 */
const char *
hc_bare_house_find_wall (const HcLayout *layout, const char *pen, HcPoint outward)
{
  HcPen *found = hc_layout_get_pen (layout, pen);
  g_autoptr (GArray) corners = found != NULL ? hc_layout_get_pen_corners (layout, found) : NULL;
  char **walls = found != NULL ? hc_pen_get (found)->walls : NULL;

  for (guint i = 0; corners != NULL && i < corners->len; i++)
    {
      HcPoint inward = hc_ring_edge_normal ((const HcPoint *) corners->data, corners->len, i);

      if (ABS (hc_point_dot (inward, outward)) > 0.99
          && hc_point_dot (hc_point_subtract (g_array_index (corners, HcPoint, i),
                                              hc_box_centre (hc_box_around (
                                                  (const HcPoint *) corners->data, corners->len))),
                           outward)
                 > 0)
        return walls[i];
    }
  return NULL;
}

static gboolean
add_door (HcPlan **plan, HcBook *book, const char *pen, HcPoint outward, GError **error)
{
  HcLayout *layout = hc_plan_get_layout (*plan);
  const char *wall = hc_bare_house_find_wall (layout, pen, outward);
  const HcOpeningType *type = hc_book_get_opening_type (book, "keeper_door");
  g_autofree char *id = hc_id_new ();
  g_autoptr (HcOpening) pattern = NULL;
  g_autoptr (HcOpening) door = NULL;
  HcOpeningValues values;
  double length_mm;

  if (wall == NULL || type == NULL)
    return TRUE;
  length_mm = hc_layout_get_wall_length (layout, wall);
  pattern = hc_opening_type_make (type, id);
  values = *hc_opening_get (pattern);
  values.wall = (char *) wall;
  values.along_mm = length_mm * hc_house_measure (book, "door_along_share");
  values.width_mm
      = MIN (values.width_mm, length_mm - 2 * hc_house_measure (book, "beside_door_mm"));
  values.height_mm
      = MIN (values.height_mm,
             hc_pen_get (hc_layout_get_pen (layout, pen))->height_mm
                 - hc_house_measure (book, "door_below_top_mm"));
  values.open_by_day = FALSE;
  values.swing = g_str_equal (pen, HC_BARE_HOUSE_PEN) ? HC_SWING_OUT : HC_SWING_IN;
  door = hc_opening_with (pattern, &values);
  return take (plan, hc_plan_add_opening (*plan, door, error)) != NULL;
}

static gboolean
add_birds (HcPlan **plan, const HcAnswers *answers, GError **error)
{
  for (guint i = 0; i < answers->n_birds; i++)
    {
      g_autofree char *id = hc_id_new ();
      g_autoptr (HcBatch) batch = NULL;
      HcBatchValues values;

      if (answers->birds[i].count <= 0)
        continue;
      hc_batch_values_init (&values);
      values.breed = (char *) answers->birds[i].breed;
      values.females = answers->birds[i].count;
      values.pen = (char *) HC_BARE_HOUSE_PEN;
      batch = hc_batch_new (id, &values);
      if (take (plan, hc_plan_add_batch (*plan, batch, error)) == NULL)
        return FALSE;
    }
  return TRUE;
}

static gboolean
set_place (HcPlan **plan, const HcAnswers *answers, GError **error)
{
  HcSiteValues site = *hc_plan_get_site (*plan);

  site.coldest_night_c = answers->coldest_night_c;
  site.birds_go_out = answers->birds_go_out;
  site.units = answers->units;
  return take (plan, hc_plan_set_site (*plan, &site, error)) != NULL;
}

/**
 * hc_bare_house: (skip)
 * @book: the book of the trade
 * @answers: the answers
 * @uid: an id no other plan has
 * @error: says what cannot be
 *
 * The house lies along x, its run to the south when birds go out.
 *
 * Returns: (transfer full): a plan of it, or %NULL and an error
 */
HcPlan *
hc_bare_house (HcBook *book, const HcAnswers *answers, const char *uid, GError **error)
{
  g_autoptr (HcPlan) plan = hc_plan_new_empty (uid, _("New house"));
  const HcPoint east = { 1, 0 };

  if (!set_place (&plan, answers, error) || !add_house (&plan, book, answers, error)
      || !add_door (&plan, book, HC_BARE_HOUSE_PEN, east, error)
      || !add_birds (&plan, answers, error))
    return NULL;
  if (answers->birds_go_out
      && (!add_run (&plan, book, answers, error)
          || !add_door (&plan, book, HC_BARE_HOUSE_RUN, east, error)))
    return NULL;
  return g_steal_pointer (&plan);
}
