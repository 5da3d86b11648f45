/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A tight coop is spoilt in one place, and just the animals that use it are
 * told of. What each animal can is common practice, no source, where nothing
 * else is said; see predators.json. */
#include "config.h"

#include "coop.h"

static const char *const all[]
    = { "mouse", "rat",    "weasel", "snake", "opossum", "skunk", "marten", "raccoon",
        "fox",   "dog",    "coyote", "badger", "hawk",   "owl" };

static HcCheck *
check_of (House *coop)
{
  return house_check (coop, HC_CONDITION_DAY);
}

/* Findings worth doing or worse. */
static guint
count (const HcCheck *check)
{
  guint n = 0;

  for (guint i = 0; i < hc_check_get_n_findings (check, HC_NEED_PREDATORS); i++)
    if (hc_check_get_finding (check, HC_NEED_PREDATORS, i)->level < HC_LEVEL_GOOD)
      n++;
  return n;
}

static void
swap (char **at, const char *text)
{
  g_free (*at);
  *at = g_strdup (text);
}

static void
test_nothing_is_found_in_a_tight_coop (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (all); i++)
    {
      House coop;
      g_autoptr (HcCheck) check = NULL;

      coop_init (&coop, all[i]);
      if (g_str_equal (all[i], "mouse"))
        coop_opening (&coop, COOP_WINDOW)->open_summer = coop_opening (&coop, COOP_VENT)->open_summer
            = coop_opening (&coop, COOP_VENT)->open_winter = 0;
      check = check_of (&coop);
      g_test_message ("%s", all[i]);
      g_assert_true (hc_check_applies (check, HC_NEED_PREDATORS));
      g_assert_cmpint (hc_check_get_need_level (check, HC_NEED_PREDATORS), ==, HC_LEVEL_PLENTY);
      g_assert_cmpuint (count (check), ==, 0);
      house_clear (&coop);
    }
}

static void
test_nobody_about_is_nothing_to_say (void)
{
  House coop;
  g_autoptr (HcCheck) check = NULL;

  coop_init (&coop, NULL);
  coop_opening (&coop, COOP_DOOR)->shut_at_dusk = FALSE;
  check = check_of (&coop);
  g_assert_false (hc_check_applies (check, HC_NEED_PREDATORS));
  house_clear (&coop);
}

static void
leave_door_open (House *coop)
{
  coop_opening (coop, COOP_DOOR)->shut_at_dusk = FALSE;
}

static void
leave_pop_hole_open (House *coop)
{
  coop_opening (coop, COOP_POP_HOLE)->shut_at_dusk = FALSE;
}

static void
leave_pop_hole_open_to_a_low_fence (House *coop)
{
  leave_pop_hole_open (coop);
  coop_wall (coop, "q-e")->height_mm = 1799;
  coop_pen (coop, "q")->roof = HC_ROOF_NONE;
}

static void
leave_pop_hole_open_to_a_fence_of_height (House *coop)
{
  leave_pop_hole_open_to_a_low_fence (coop);
  coop_wall (coop, "q-e")->height_mm = 1800;
}

static void
button_the_door (House *coop)
{
  swap (&coop_opening (coop, COOP_DOOR)->latch, "turn_button");
}

static void
pull_the_door_to (House *coop)
{
  swap (&coop_opening (coop, COOP_DOOR)->latch, "none");
}

static void
forget_the_latch (House *coop)
{
  swap (&coop_opening (coop, COOP_EGG_DOOR)->latch, "");
}

static void
warp_the_door (House *coop)
{
  coop_opening (coop, COOP_DOOR)->gap_mm = 13;
}

static void
warp_the_door_little (House *coop)
{
  coop_opening (coop, COOP_DOOR)->gap_mm = 12;
}

static void
bare_the_window (House *coop)
{
  swap (&coop_opening (coop, COOP_WINDOW)->mesh, "");
}

static void
widen_the_vent (House *coop)
{
  swap (&coop_opening (coop, COOP_VENT)->mesh, "welded_25");
}

static void
hex_the_vent (House *coop)
{
  swap (&coop_opening (coop, COOP_VENT)->mesh, "hex_25");
}

static void
screen_the_window (House *coop)
{
  swap (&coop_opening (coop, COOP_WINDOW)->mesh, "fly_screen");
}

static void
staple_the_window (House *coop)
{
  coop_opening (coop, COOP_WINDOW)->fixing = HC_FIXING_STAPLES;
}

static void
lay_the_window_low (House *coop)
{
  coop_opening (coop, COOP_WINDOW)->sill_mm = 500;
  bare_the_window (coop);
}

static void
lay_earth (House *coop)
{
  coop_floor (coop, "p", "earth");
}

static void
lay_boards (House *coop)
{
  coop_floor (coop, "p", "boards");
}

static void
dig_earth_in (House *coop)
{
  lay_earth (coop);
  coop_pen (coop, "p")->dug_mm = 300;
}

static void
lay_pallets (House *coop)
{
  coop_floor (coop, "p", "pallets");
}

static void
move_the_bar_to_wide_mesh (House *coop)
{
  widen_the_vent (coop);
  swap (&coop_opening (coop, COOP_VENT)->mesh, "welded_50");
  coop_opening (coop, COOP_VENT)->sill_mm = 600;
  ((HcFittingValues *) house_add_roost (coop, "p", 2500, 590, 1000, 100, 1))->base_mm = 600;
}

static void
keep_the_bar_from_wide_mesh (House *coop)
{
  move_the_bar_to_wide_mesh (coop);
  ((HcFittingValues *) house_add_roost (coop, "p", 2500, 900, 1000, 100, 1))->base_mm = 600;
  g_ptr_array_remove_index (coop->fittings, coop->fittings->len - 2);
}

static void
sleep_in_the_run (House *coop)
{
  HcBatchValues *birds = (HcBatchValues *) hc_part_get_values (coop->batches->pdata[0]);

  swap (&birds->pen, "q");
}

static void
sleep_under_the_sky (House *coop)
{
  sleep_in_the_run (coop);
  coop_pen (coop, "q")->roof = HC_ROOF_NONE;
}

static void
open_the_sky (House *coop)
{
  coop_pen (coop, "q")->roof = HC_ROOF_NONE;
}

static void
net_the_run_widely (House *coop)
{
  swap (&coop_pen (coop, "q")->roof_mesh, "stock_fence");
}

static void
net_the_run_lightly (House *coop)
{
  swap (&coop_pen (coop, "q")->roof_mesh, "hex_13");
}

static void
take_the_guard_up (House *coop)
{
  coop_pen (coop, "q")->apron_mm = 449;
}

static void
fence_widely (House *coop)
{
  swap (&coop_wall (coop, "q-e")->mesh, "stock_fence");
}

static void
fence_without_mesh (House *coop)
{
  swap (&coop_wall (coop, "q-e")->mesh, "");
}

static void
staple_the_fence (House *coop)
{
  coop_wall (coop, "q-e")->fixing = HC_FIXING_STAPLES;
}

static void
pull_the_gate_to (House *coop)
{
  swap (&coop_opening (coop, COOP_GATE)->latch, "none");
}

static void
warp_the_gate (House *coop)
{
  coop_opening (coop, COOP_GATE)->gap_mm = 101;
}

static void
lower_the_wall (House *coop)
{
  coop_wall (coop, "p-n")->height_mm = 2000;
}

/* One fault, the animals it lets in to grown hens, and those that come for eggs
 * and feed, or by day. */
typedef struct
{
  const char *name;
  void (*spoil) (House *coop);
  const char *code;
  const char *killers;
  const char *others;
} Fault;

static const Fault faults[] = {
  { "door-open", leave_door_open, "predators.left-open",
    "weasel opossum marten raccoon fox dog coyote badger", "mouse rat snake skunk" },
  { "pop-hole-open-to-a-tight-run", leave_pop_hole_open, "predators.left-open", "", "mouse" },
  { "pop-hole-open-to-a-low-fence", leave_pop_hole_open_to_a_low_fence, "predators.left-open",
    "weasel opossum marten raccoon fox dog coyote", "mouse rat snake" },
  { "pop-hole-open-to-a-fence-of-1.8-m", leave_pop_hole_open_to_a_fence_of_height,
    "predators.left-open", "weasel opossum marten raccoon", "mouse rat snake" },
  { "turn-button", button_the_door, "predators.latch", "raccoon dog", "" },
  { "no-latch", pull_the_door_to, "predators.latch",
    "weasel opossum marten raccoon fox dog coyote badger", "rat skunk" },
  { "latch-not-told", forget_the_latch, "predators.latch", "raccoon", "" },
  { "gap-of-13-mm", warp_the_door, "predators.gap", "weasel", "mouse rat snake" },
  { "gap-of-12-mm", warp_the_door_little, "predators.gap", "", "mouse" },
  { "bare-window", bare_the_window, "predators.bare",
    "weasel opossum marten raccoon fox dog coyote", "mouse rat snake" },
  { "bare-low-window", lay_the_window_low, "predators.bare",
    "weasel opossum marten raccoon fox dog coyote badger", "mouse rat snake" },
  { "mesh-of-25-mm", widen_the_vent, "predators.holes", "weasel", "mouse rat snake" },
  { "hexagonal-netting", hex_the_vent, "predators.torn", "marten raccoon fox dog coyote", "" },
  { "fly-screen", screen_the_window, "predators.torn", "marten raccoon fox dog coyote",
    "mouse rat" },
  { "staples", staple_the_window, "predators.staples", "marten raccoon fox dog coyote", "" },
  { "earth-floor", lay_earth, "predators.under", "fox dog coyote badger", "rat skunk" },
  { "guard-dug-in", dig_earth_in, "predators.under", "", "" },
  { "boards-on-the-ground", lay_boards, "predators.floor", "", "rat" },
  { "pallets", lay_pallets, "predators.under", "", "rat skunk" },
  { "bar-beside-wide-mesh", move_the_bar_to_wide_mesh, "predators.reached", "raccoon", "" },
  { "bar-away-from-wide-mesh", keep_the_bar_from_wide_mesh, "predators.reached", "", "" },
  { "low-wall", lower_the_wall, "predators.over", "weasel opossum marten raccoon",
    "mouse rat snake" },
  { "asleep-in-a-tight-run", sleep_in_the_run, "predators.sky", "", "" },
  { "asleep-under-the-sky", sleep_under_the_sky, "predators.sky", "owl", "" },
  { "open-sky", open_the_sky, "predators.day-sky", "", "hawk" },
  { "climbed-over", open_the_sky, "predators.day-over", "", "weasel" },
  { "wide-netting", net_the_run_widely, "predators.day-roof-holes", "", "weasel hawk" },
  { "light-netting-out-of-reach", net_the_run_lightly, "predators.day-roof-torn", "", "" },
  { "no-guard", take_the_guard_up, "predators.day-under", "", "fox dog coyote" },
  { "stock-fence", fence_widely, "predators.day-holes", "", "weasel" },
  { "stock-fence-bitten", fence_widely, "predators.day-torn", "", "fox dog coyote" },
  { "fence-without-mesh", fence_without_mesh, "predators.day-bare", "",
    "weasel fox dog coyote" },
  { "stapled-fence", staple_the_fence, "predators.day-staples", "", "fox dog coyote" },
  { "gate-pulled-to", pull_the_gate_to, "predators.day-latch", "",
    "weasel fox dog coyote" },
  { "gap-at-the-gate", warp_the_gate, "predators.day-gap", "", "weasel fox dog coyote" },
};

static gboolean
names (const char *list, const char *animal)
{
  g_auto (GStrv) words = g_strsplit (list, " ", -1);

  return g_strv_contains ((const char *const *) words, animal);
}

static void
test_fault (gconstpointer data)
{
  const Fault *fault = data;

  for (guint i = 0; i < G_N_ELEMENTS (all); i++)
    {
      House coop;
      g_autoptr (HcCheck) check = NULL;
      const HcFinding *finding;

      coop_init (&coop, all[i]);
      fault->spoil (&coop);
      check = check_of (&coop);
      finding = house_find (check, fault->code);
      g_test_message ("%s: %s", all[i], finding != NULL ? "comes" : "stays away");
      g_assert_true ((finding != NULL)
                     == (names (fault->killers, all[i]) || names (fault->others, all[i])));
      if (finding != NULL)
        {
          g_assert_cmpint (finding->level, ==,
                           names (fault->killers, all[i]) ? HC_LEVEL_SHORT : HC_LEVEL_TIGHT);
          g_assert_cmpstr (finding->animals[0], ==, all[i]);
        }
      house_clear (&coop);
    }
}

/* Of a window with each mesh there is, by what the book says of both. */
static void
test_every_animal_at_every_mesh (void)
{
  g_autoptr (HcBook) book = hc_book_load_default (NULL);

  for (guint i = 0; i < hc_book_get_n_predators (book); i++)
    for (guint j = 0; j < hc_book_get_n_meshes (book); j++)
      {
        const HcPredator *animal = hc_book_get_predator_at (book, i);
        const HcMesh *mesh = hc_book_get_mesh_at (book, j);
        gboolean comes = animal->hunts_by_night && (animal->climbs || animal->jumps_mm > 1500);
        gboolean passes = mesh->hole_mm > animal->passes_mm;
        gboolean breaks = (animal->tears && !mesh->stops_diggers)
                          || (animal->gnaws && !mesh->stops_gnawers);
        House coop;
        g_autoptr (HcCheck) check = NULL;

        coop_init (&coop, animal->id);
        swap (&coop_opening (&coop, COOP_WINDOW)->mesh, mesh->id);
        check = check_of (&coop);
        g_test_message ("%s, %s", animal->id, mesh->id);
        if (!g_str_equal (animal->id, "mouse"))
          g_assert_true ((house_find (check, "predators.holes") != NULL) == (comes && passes));
        g_assert_true ((house_find (check, "predators.torn") != NULL)
                       == (comes && !passes && breaks));
        house_clear (&coop);
      }
}

/* Chicks are taken by those that leave grown birds alone. */
static void
test_rats_kill_chicks (void)
{
  static const int weeks[] = { 2, 30 };

  for (guint i = 0; i < G_N_ELEMENTS (weeks); i++)
    {
      House coop;
      g_autoptr (HcCheck) check = NULL;

      coop_init (&coop, "rat");
      house_add_birds (&coop, "medium_layer", "p", 6, 0, weeks[i]);
      widen_the_vent (&coop);
      check = check_of (&coop);
      g_assert_cmpint (house_find (check, "predators.holes")->birds, ==, i == 0 ? 6 : 0);
      g_assert_cmpint (house_find (check, "predators.holes")->level, ==,
                       i == 0 ? HC_LEVEL_SHORT : HC_LEVEL_TIGHT);
      house_clear (&coop);
    }
}

/* By night and shut in nobody is in the run. */
static void
test_the_run_is_judged_by_day (void)
{
  House coop;
  g_autoptr (HcCheck) night = NULL;
  g_autoptr (HcCheck) shut_in = NULL;

  coop_init (&coop, "hawk");
  open_the_sky (&coop);
  night = house_check (&coop, HC_CONDITION_NIGHT);
  shut_in = house_check (&coop, HC_CONDITION_SHUT_IN);
  g_assert_null (house_find (night, "predators.day-sky"));
  g_assert_null (house_find (shut_in, "predators.day-sky"));
  house_clear (&coop);
}

static double
sum_mm (const HcFinding *finding)
{
  double sum = 0;

  for (guint i = 0; i < finding->n_lines; i++)
    sum += hc_point_distance (finding->lines[i].from, finding->lines[i].to);
  return sum;
}

/* All round but where the house stands, which the fox does not get into. */
static void
test_unguarded_metres_are_kept (void)
{
  House coop;
  g_autoptr (HcCheck) check = NULL;

  coop_init (&coop, "fox");
  take_the_guard_up (&coop);
  check = check_of (&coop);
  g_assert_cmpfloat_with_epsilon (sum_mm (house_find (check, "predators.day-under")),
                                  5000 + 3000 + 5000, 0.01);
  house_clear (&coop);
}

static void
test_an_open_door_is_as_long_as_it_is_wide (void)
{
  House coop;
  g_autoptr (HcCheck) check = NULL;

  coop_init (&coop, "fox");
  leave_door_open (&coop);
  check = check_of (&coop);
  g_assert_cmpfloat_with_epsilon (sum_mm (house_find (check, "predators.left-open")), 800, 0.01);
  house_clear (&coop);
}

static void
test_all_animals_are_told_together (void)
{
  static char *about[] = { "fox", "rat", "raccoon", "fox", NULL };
  House coop;
  g_autoptr (HcCheck) check = NULL;
  const HcFinding *finding;

  coop_init (&coop, NULL);
  coop.site.predators = about;
  leave_door_open (&coop);
  check = check_of (&coop);
  finding = house_find (check, "predators.left-open");
  g_assert_cmpuint (count (check), ==, 1);
  g_assert_cmpuint (g_strv_length ((char **) finding->animals), ==, 3);
  g_assert_cmpint (finding->birds, ==, 8);
  house_clear (&coop);
}

/* Common practice, no source: a cock and geese give the alarm and no more. */
static void
test_a_cock_and_geese_are_an_alarm_only (void)
{
  static const struct
  {
    const char *kind;
    int females;
    int males;
    gboolean noted;
  } watches[] = { { "medium_layer", 0, 1, TRUE }, { "goose", 1, 0, FALSE }, { "goose", 1, 1, TRUE } };

  for (guint i = 0; i < G_N_ELEMENTS (watches); i++)
    {
      House coop;
      g_autoptr (HcCheck) check = NULL;

      coop_init (&coop, "fox");
      house_add_birds (&coop, watches[i].kind, "p", watches[i].females, watches[i].males, -1);
      leave_door_open (&coop);
      check = check_of (&coop);
      g_assert_true ((house_find (check, "predators.alarm") != NULL) == watches[i].noted);
      g_assert_cmpint (hc_check_get_need_level (check, HC_NEED_PREDATORS), ==, HC_LEVEL_SHORT);
      house_clear (&coop);
    }
}

/* Common practice, no source. */
static void
test_netting_comes_down_under_snow (void)
{
  static const double nights_c[] = { -1, 1 };

  for (guint i = 0; i < G_N_ELEMENTS (nights_c); i++)
    {
      House coop;
      g_autoptr (HcCheck) check = NULL;

      coop_init (&coop, "hawk");
      coop.site.coldest_night_c = nights_c[i];
      swap (&coop_pen (&coop, "q")->roof_mesh, "net_50");
      check = check_of (&coop);
      g_assert_true ((house_find (check, "predators.snow") != NULL) == (i == 0));
      house_clear (&coop);
    }
}

static void
test_a_guard_of_just_the_least_is_told (void)
{
  static const double widths_mm[] = { 450, 599, 600 };

  for (guint i = 0; i < G_N_ELEMENTS (widths_mm); i++)
    {
      House coop;
      g_autoptr (HcCheck) check = NULL;

      coop_init (&coop, "fox");
      coop_pen (&coop, "q")->apron_mm = widths_mm[i];
      check = check_of (&coop);
      g_assert_null (house_find (check, "predators.day-under"));
      g_assert_true ((house_find (check, "predators.narrow-guard") != NULL) == (i < 2));
      house_clear (&coop);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/need-predators/nothing-in-a-tight-coop",
                   test_nothing_is_found_in_a_tight_coop);
  g_test_add_func ("/need-predators/nobody-about", test_nobody_about_is_nothing_to_say);
  for (guint i = 0; i < G_N_ELEMENTS (faults); i++)
    {
      g_autofree char *path = g_strconcat ("/need-predators/fault/", faults[i].name, NULL);

      g_test_add_data_func (path, &faults[i], test_fault);
    }
  g_test_add_func ("/need-predators/every-animal-at-every-mesh",
                   test_every_animal_at_every_mesh);
  g_test_add_func ("/need-predators/rats-kill-chicks", test_rats_kill_chicks);
  g_test_add_func ("/need-predators/the-run-by-day", test_the_run_is_judged_by_day);
  g_test_add_func ("/need-predators/unguarded-metres", test_unguarded_metres_are_kept);
  g_test_add_func ("/need-predators/an-open-door", test_an_open_door_is_as_long_as_it_is_wide);
  g_test_add_func ("/need-predators/all-animals-together", test_all_animals_are_told_together);
  g_test_add_func ("/need-predators/alarm-only", test_a_cock_and_geese_are_an_alarm_only);
  g_test_add_func ("/need-predators/snow", test_netting_comes_down_under_snow);
  g_test_add_func ("/need-predators/narrow-guard", test_a_guard_of_just_the_least_is_told);
  return g_test_run ();
}
