/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Builds barns, and puts them to the needs. */
#include "config.h"

#include "barn.h"

#define ROW_MM 1600
#define WALL_THICKNESS_MM 1

void
barn_init (House *barn, const char *rules, double width_mm, double depth_mm)
{
  g_autofree char *folder = g_test_build_filename (G_TEST_DIST, "data", "rules", NULL);
  g_autoptr (GPtrArray) faults = NULL;
  g_autoptr (GError) error = NULL;

  house_init (barn);
  hc_book_unref (barn->book);
  barn->book = hc_book_load (folder, &faults, &error);
  g_assert_no_error (error);
  g_assert_cmpuint (faults->len, ==, 0);
  g_assert_nonnull (hc_book_get_standard (barn->book, rules));
  barn->rules.standard = (char *) rules;
  house_add_pen (barn, "p", HC_PEN_INDOOR, width_mm, depth_mm);
}

void
barn_clear (House *barn)
{
  g_clear_pointer (&barn->rules.own_figures, g_ptr_array_unref);
  house_clear (barn);
}

void
barn_set_own_figure (House *barn, const char *figure, double value, const char *reason)
{
  HcOwnFigureValues own = { (char *) figure, value, (char *) reason };

  if (barn->rules.own_figures == NULL)
    barn->rules.own_figures = hc_parts_new ();
  g_ptr_array_add (barn->rules.own_figures, hc_own_figure_new (NULL, &own));
}

/* Against the wall at the back. */
void
barn_add_nests (House *barn, int boxes, double width_mm, double depth_mm)
{
  HcFittingValues *nests = house_add_nests (barn, "p", 2000, depth_mm / 2, boxes);

  nests->width_mm = width_mm * boxes;
  nests->depth_mm = depth_mm;
}

void
barn_add_group_nest (House *barn, double area_m2)
{
  HcFittingValues *nest
      = house_add (barn, "p", HC_FITTING_NEST_BOXES, 2000, 250, area_m2 * 2000, 500);

  nest->form = HC_FORM_GROUP;
  nest->columns = nest->rows = 1;
  nest->base_mm = 300;
  nest->height_mm = 500;
}

/* The first axis stands @to_wall_mm off the wall at the back. */
void
barn_add_roost (House *barn, double length_mm, int bars, double apart_mm, double to_wall_mm)
{
  double depth_mm = bars * apart_mm;

  house_add_roost (barn, "p", length_mm / 2, to_wall_mm + (depth_mm - apart_mm) / 2, length_mm,
                   depth_mm, bars);
}

/* Two beside each other in each row, every side free to stand at. */
void
barn_add_edges (House *barn, HcFittingKind kind, HcFittingForm form, int n, double width_mm)
{
  for (int i = 0; i < n; i++)
    {
      HcFittingValues *values
          = house_add (barn, "p", kind, i % 2 == 0 ? 2000 : 6000, 900 + i / 2 * ROW_MM, width_mm,
                       form == HC_FORM_ROUND ? width_mm : 150);

      values->form = form;
      values->water_mm = 60;
    }
}

void
barn_add_nipples (House *barn, int nipples)
{
  HcFittingValues *line = house_add (barn, "p", HC_FITTING_DRINKER, 2000, 2000, 3000, 60);

  line->form = HC_FORM_NIPPLES;
  line->places = nipples;
}

/* Side by side in the wall at the back; birds go out. */
void
barn_add_pop_holes (House *barn, int n, double width_mm, double height_mm)
{
  barn->site.birds_go_out = TRUE;
  for (int i = 0; i < n; i++)
    house_add_opening (barn, HC_OPENING_POP_HOLE, "p-n", (i + 0.5) * (width_mm + 100) + 200,
                       width_mm, height_mm);
}

/* Beside the barn, of that size inside: the wall between stands on its ground. */
void
barn_add_run (House *barn, double width_mm, double depth_mm)
{
  barn->site.birds_go_out = TRUE;
  house_add_pen (barn, "r", HC_PEN_RUN, width_mm + WALL_THICKNESS_MM, depth_mm);
  house_add_opening (barn, HC_OPENING_POP_HOLE, "p-e", 1000, 500, 500);
}

gboolean
barn_holds (House *barn, HcNeedId need, const char *kind, int weeks, int birds)
{
  g_autoptr (HcCheck) check = NULL;

  house_add_birds (barn, kind, "p", birds, 0, weeks);
  check = house_check (barn, HC_CONDITION_DAY);
  g_assert_true (hc_check_applies (check, need));
  g_ptr_array_set_size (barn->batches, 0);
  return hc_check_get_need_level (check, need) > HC_LEVEL_SHORT;
}

void
barn_assert_carries (House *barn, HcNeedId need, const char *kind, int weeks, int most)
{
  g_autoptr (HcLadder) ladder = NULL;

  g_assert_true (barn_holds (barn, need, kind, weeks, most));
  g_assert_false (barn_holds (barn, need, kind, weeks, most + 1));
  if (weeks != BARN_GROWN)
    return;
  ladder = house_climb (barn, HC_LADDER_ONE_KIND, kind, HC_CONDITION_DAY, HC_LEVEL_TIGHT);
  g_assert_cmpint (house_rung (ladder, need), ==, most);
}
