/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Builds the plans nobody would build. */
#include "config.h"

#include "absurd-plans.h"

#include "plan/bounds.h"

#define HATCHES_NEXT_YEAR 739365

static void
add_usual_birds (House *house)
{
  house_add_birds (house, "medium_layer", "p", 9, 1, -1);
  house_add_birds (house, "bantam", "p", 5, 0, 20);
  house_add_birds (house, "duck", "p", 2, 1, -1);
}

static void
furnish (House *house, double x_mm, double y_mm)
{
  house_add_roost (house, "p", x_mm, y_mm, 2000, 800, 2);
  house_add_nests (house, "p", x_mm, y_mm, 3);
  house_add (house, "p", HC_FITTING_FEEDER, x_mm, y_mm, 1000, 150);
  house_add (house, "p", HC_FITTING_DRINKER, x_mm, y_mm, 300, 300)->form = HC_FORM_ROUND;
  house_add (house, "p", HC_FITTING_HEAT_PLATE, x_mm, y_mm, 400, 400);
}

static void
build_nothing (House *house)
{
  (void) house;
}

static void
build_no_birds (House *house)
{
  house_add_pen (house, "p", HC_PEN_INDOOR, 4000, 3000);
  furnish (house, 2000, 1500);
}

static void
build_birds_without_a_pen (House *house)
{
  house_add_birds (house, "medium_layer", NULL, 9, 1, -1);
  house_add_birds (house, "goose", "", 9, 1, 3);
}

static void
build_a_bare_pen (House *house)
{
  house_add_pen (house, "p", HC_PEN_INDOOR, 4000, 3000);
  add_usual_birds (house);
}

static void
build_a_run_alone (House *house)
{
  house->site.birds_go_out = TRUE;
  house_add_pen (house, "p", HC_PEN_RUN, 4000, 3000);
  furnish (house, 2000, 1500);
  add_usual_birds (house);
}

static void
build_many_birds_in_a_box (House *house)
{
  house_add_pen (house, "p", HC_PEN_INDOOR, 1000, 1000);
  furnish (house, 500, 500);
  house_add_birds (house, "meat_fast", "p", 100000, 100000, 4);
  house_add_birds (house, "medium_layer", "p", 100000, 100000, -1);
}

static void
build_things_far_outside (House *house)
{
  HcFittingValues values;

  house_add_pen (house, "p", HC_PEN_INDOOR, 4000, 3000);
  furnish (house, HC_FARTHEST_MM, -HC_FARTHEST_MM);
  furnish (house, -HC_FARTHEST_MM, HC_FARTHEST_MM);
  hc_fitting_values_init (&values);
  values.kind = HC_FITTING_ROOST;
  values.x_mm = HC_FARTHEST_MM;
  values.width_mm = HC_LONGEST_FITTING_MM;
  values.depth_mm = HC_LONGEST_FITTING_MM;
  g_ptr_array_add (house->loose, hc_fitting_new ("loose", &values));
  add_usual_birds (house);
}

static void
build_a_room_one_bar_wide (House *house)
{
  house_add_pen (house, "p", HC_PEN_INDOOR, 50, 4000);
  house_add_roost (house, "p", 25, 2000, 4000, 50, 1)->turn_deg = 90;
  house_add_opening (house, HC_OPENING_POP_HOLE, "p-n", 25, 50, 50);
  add_usual_birds (house);
}

static void
build_the_smallest_room (House *house)
{
  house_add_pen (house, "p", HC_PEN_INDOOR, 1, 1);
  furnish (house, 0, 0);
  add_usual_birds (house);
}

static void
build_the_largest_room (House *house)
{
  house_add_pen (house, "p", HC_PEN_INDOOR, HC_FARTHEST_MM, HC_FARTHEST_MM);
  furnish (house, HC_FARTHEST_MM / 2, HC_FARTHEST_MM / 2);
  house_add (house, "p", HC_FITTING_ROOST, 50000, 50000, HC_LONGEST_FITTING_MM,
             HC_LONGEST_FITTING_MM)
      ->bars
      = 200;
  add_usual_birds (house);
}

static void
build_all_over_all (House *house)
{
  absurd_build_heap (house, 60);
}

static void
build_many_bars (House *house)
{
  absurd_build_bars (house, 1000);
}

static void
build_openings_everywhere (House *house)
{
  absurd_build_openings (house, 120);
}

/* Two pens round the same floor, one turned round the other way. */
static void
build_a_house_on_another (House *house)
{
  const char *const corners[] = { "q-nw", "q-ne", "q-se", "q-sw" };
  const char *const walls[] = { "q-n", "q-e", "q-s", "q-w", NULL };
  g_autoptr (HcParts) fittings = hc_parts_new ();
  HcPenValues pen;

  house_add_pen (house, "p", HC_PEN_INDOOR, 4000, 3000);
  for (guint i = 0; i < 4; i++)
    {
      HcCornerValues corner = { i == 1 || i == 2 ? 4000 : 0, i >= 2 ? 3000 : 0 };
      HcWallValues wall;

      hc_wall_values_init (&wall);
      wall.from = (char *) corners[(i + 1) % 4];
      wall.to = (char *) corners[i];
      g_ptr_array_add (house->corners, hc_corner_new (corners[i], &corner));
      g_ptr_array_add (house->walls, hc_wall_new (walls[i], &wall));
    }
  hc_pen_values_init (&pen);
  pen.walls = (char **) walls;
  pen.fittings = fittings;
  g_ptr_array_add (house->pens, hc_pen_new ("q", &pen));
  furnish (house, 2000, 1500);
  house_add_opening (house, HC_OPENING_POP_HOLE, "q-n", 2000, 300, 300);
  house_add_birds (house, "heavy_breed", "q", 4, 1, -1);
  add_usual_birds (house);
}

static void
build_what_the_book_does_not_know (House *house)
{
  HcFittingValues *drinker;

  house_add_pen (house, "p", HC_PEN_INDOOR, 4000, 3000);
  house->rules.standard = (char *) "rules of the moon";
  house_add (house, "p", HC_FITTING_HEAT_PLATE, 1000, 1000, 400, 400)->device
      = (char *) "warm stone";
  drinker = house_add (house, "p", HC_FITTING_DRINKER, 2000, 2000, 300, 300);
  drinker->device = (char *) "well";
  drinker->form = HC_FORM_GRID;
  house_add_birds (house, "dodo", "p", 7, 7, -1);
  house_add_birds (house, NULL, "p", 7, 7, 3);
  add_usual_birds (house);
}

static void
build_things_of_no_size (House *house)
{
  house_add_pen (house, "p", HC_PEN_INDOOR, 4000, 3000);
  for (int kind = 0; kind < HC_N_FITTING_KINDS; kind++)
    {
      HcFittingValues *thing = house_add (house, "p", kind, 200 * kind + 100, 1500, 1, 1);

      thing->height_mm = 0;
      thing->bars = 200;
      thing->columns = 500;
      thing->rows = 20;
      thing->bar_width_mm = 1;
    }
  add_usual_birds (house);
}

static void
build_things_of_any_size (House *house)
{
  house_add_pen (house, "p", HC_PEN_INDOOR, 4000, 3000);
  for (int kind = 0; kind < HC_N_FITTING_KINDS; kind++)
    {
      HcFittingValues *thing = house_add (house, "p", kind, 2000, 1500, HC_LONGEST_FITTING_MM,
                                          HC_LONGEST_FITTING_MM);

      thing->height_mm = HC_TALLEST_MM;
      thing->base_mm = HC_TALLEST_MM;
      thing->bars = 200;
      thing->rise_mm = 2000;
      thing->columns = 500;
      thing->rows = 20;
      thing->places = 2000;
      thing->turn_deg = 45;
    }
  add_usual_birds (house);
}

static void
add_birds_to_come (House *house, const char *kind)
{
  g_autofree char *id = g_strconcat ("to-come-", kind, NULL);
  HcBatchValues values;

  hc_batch_values_init (&values);
  values.kind = (char *) kind;
  values.pen = (char *) "p";
  values.females = 3;
  values.hatched = HATCHES_NEXT_YEAR;
  g_ptr_array_add (house->batches, hc_batch_new (id, &values));
}

static void
build_all_ages (House *house)
{
  house_add_pen (house, "p", HC_PEN_INDOOR, 4000, 3000);
  furnish (house, 2000, 1500);
  for (guint i = 0; i < hc_book_get_n_kinds (house->book); i++)
    {
      const char *kind = hc_book_get_kind_at (house->book, i)->id;

      house_add_birds (house, kind, "p", 3, 1, 0);
      house_add_birds (house, kind, "p", 3, 1, ABSURD_WEEKS_OF_30_YEARS);
      add_birds_to_come (house, kind);
    }
}

static void
build_males_alone (House *house)
{
  house_add_pen (house, "p", HC_PEN_INDOOR, 4000, 3000);
  furnish (house, 2000, 1500);
  house_add_birds (house, "duck", "p", 0, 1, -1);
  house_add_birds (house, "medium_layer", "p", 0, 100, -1);
}

static void
build_a_group_of_nobody (House *house)
{
  house_add_pen (house, "p", HC_PEN_INDOOR, 4000, 3000);
  house_add_birds (house, "medium_layer", "p", 0, 0, -1);
}

const AbsurdPlan absurd_plans[] = {
  { "nothing", build_nothing },
  { "no-birds", build_no_birds },
  { "birds-without-a-pen", build_birds_without_a_pen },
  { "a-bare-pen", build_a_bare_pen },
  { "a-run-alone", build_a_run_alone },
  { "many-birds-in-a-box", build_many_birds_in_a_box },
  { "things-far-outside", build_things_far_outside },
  { "a-room-one-bar-wide", build_a_room_one_bar_wide },
  { "the-smallest-room", build_the_smallest_room },
  { "the-largest-room", build_the_largest_room },
  { "all-over-all", build_all_over_all },
  { "many-bars", build_many_bars },
  { "openings-everywhere", build_openings_everywhere },
  { "a-house-on-another", build_a_house_on_another },
  { "what-the-book-does-not-know", build_what_the_book_does_not_know },
  { "things-of-no-size", build_things_of_no_size },
  { "things-of-any-size", build_things_of_any_size },
  { "all-ages", build_all_ages },
  { "males-alone", build_males_alone },
  { "a-group-of-nobody", build_a_group_of_nobody },
};
const guint n_absurd_plans = G_N_ELEMENTS (absurd_plans);

void
absurd_build_heap (House *house, guint n_things)
{
  house_add_pen (house, "p", HC_PEN_INDOOR, 4000, 3000);
  for (guint i = 0; i < n_things; i++)
    {
      HcFittingValues *thing
          = house_add (house, "p", (HcFittingKind) (i % HC_N_FITTING_KINDS), 2000 + i % 7,
                       1500 + i % 5, 1500, 700);

      thing->height_mm = 400;
      thing->turn_deg = i % 90;
      thing->bars = 2;
      thing->bar_width_mm = 90;
    }
  add_usual_birds (house);
}

void
absurd_build_bars (House *house, guint n_bars)
{
  house_add_pen (house, "p", HC_PEN_INDOOR, 4000, 3000);
  for (guint i = 0; i < n_bars; i++)
    house_add_roost (house, "p", 2000, 1500, 3000, 90, 1)->base_mm = 500 + i % 3;
  add_usual_birds (house);
}

/* Openings of one wall may not lie over each other, so they stand in rows. */
void
absurd_build_openings (House *house, guint n_openings)
{
  house_add_pen (house, "p", HC_PEN_INDOOR, 10000, 3000);
  house_add_pen (house, "r", HC_PEN_RUN, 10000, 3000);
  for (guint i = 0; i < n_openings; i++)
    house_add_opening (house, (HcOpeningKind) (i % HC_N_OPENING_KINDS), i % 2 == 0 ? "p-n" : "p-s",
                       80 * (1 + i / 2), 70, 600);
  for (guint i = 0; i < n_openings / 5; i++)
    house_add_opening (house, HC_OPENING_POP_HOLE, "p-e", 80 * (1 + i), 70, 300);
  furnish (house, 2000, 1500);
  add_usual_birds (house);
}
