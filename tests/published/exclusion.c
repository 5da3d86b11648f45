/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What keeps animals out, as three guides say it, on a coop with one hole:
 * rodent exclusion methods (Internet Center for Wildlife Damage Management),
 * best practices for nuisance wildlife control operators, chapter 5 (NYS DEC
 * and Cornell), and fencing for fox control (PestSmart Australia). */
#include "config.h"

#include "coop.h"

#define INCH_MM 25.4

static HcLevel
judge_gap (const char *animal, double gap_mm)
{
  House coop;
  g_autoptr (HcCheck) check = NULL;
  HcLevel level;

  coop_init (&coop, animal);
  coop_opening (&coop, COOP_WINDOW)->open_summer = 0;
  coop_opening (&coop, COOP_VENT)->open_winter = coop_opening (&coop, COOP_VENT)->open_summer = 0;
  coop_opening (&coop, COOP_DOOR)->gap_mm = gap_mm;
  check = house_check (&coop, HC_CONDITION_NIGHT);
  level = hc_check_get_need_level (check, HC_NEED_PREDATORS);
  house_clear (&coop);
  return level;
}

static void
test_gaps_that_rodents_pass (void)
{
  g_test_summary ("Rodent exclusion methods: a rat enters any gap wider than 1/2 inch, a mouse "
                  "any wider than 1/4 inch");
  g_assert_cmpint (judge_gap ("rat", INCH_MM / 2), ==, HC_LEVEL_PLENTY);
  g_assert_cmpint (judge_gap ("rat", INCH_MM / 2 + 1), <, HC_LEVEL_GOOD);
  g_assert_cmpint (judge_gap ("mouse", 6), ==, HC_LEVEL_PLENTY);
  g_assert_cmpint (judge_gap ("mouse", INCH_MM / 4 + 1), <, HC_LEVEL_GOOD);
}

static gboolean
comes_through (const char *animal, const char *mesh)
{
  House coop;
  g_autoptr (HcCheck) check = NULL;
  gboolean comes;

  coop_init (&coop, animal);
  g_free (coop_opening (&coop, COOP_WINDOW)->mesh);
  coop_opening (&coop, COOP_WINDOW)->mesh = g_strdup (mesh);
  coop_opening (&coop, COOP_VENT)->open_winter = coop_opening (&coop, COOP_VENT)->open_summer = 0;
  check = house_check (&coop, HC_CONDITION_NIGHT);
  comes = hc_check_get_need_level (check, HC_NEED_PREDATORS) < HC_LEVEL_GOOD;
  house_clear (&coop);
  return comes;
}

static void
test_mesh_by_size_of_animal (void)
{
  static const char *const smaller[] = { "rat", "weasel", "snake" };
  static const char *const larger[]
      = { "opossum", "skunk", "marten", "raccoon", "fox", "dog", "coyote", "badger" };

  g_test_summary ("Best practices for wildlife control operators, chapter 5: mesh of 1/4 inch "
                  "for mice, 1/2 inch for most smaller animals, 1 inch for larger ones");
  g_assert_false (comes_through ("mouse", "cloth_6"));
  g_assert_true (comes_through ("mouse", "cloth_12"));
  for (guint i = 0; i < G_N_ELEMENTS (smaller); i++)
    {
      g_assert_false (comes_through (smaller[i], "cloth_12"));
      g_assert_true (comes_through (smaller[i], "welded_25"));
    }
  for (guint i = 0; i < G_N_ELEMENTS (larger); i++)
    g_assert_false (comes_through (larger[i], "welded_25"));
}

static gboolean
fox_finds (void (*change) (House *coop), const char *code)
{
  House coop;
  g_autoptr (HcCheck) check = NULL;
  gboolean found;

  coop_init (&coop, "fox");
  change (&coop);
  check = house_check (&coop, HC_CONDITION_DAY);
  found = house_find (check, code) != NULL;
  house_clear (&coop);
  return found;
}

static void
net_of_50_mm (House *coop)
{
  g_free (coop_wall (coop, "q-e")->mesh);
  coop_wall (coop, "q-e")->mesh = g_strdup ("welded_50");
}

static void
gap_of_101_mm (House *coop)
{
  coop_opening (coop, COOP_DOOR)->gap_mm = 101;
}

static void
gap_of_99_mm (House *coop)
{
  coop_opening (coop, COOP_DOOR)->gap_mm = 99;
}

/* The height stands on web pages beside the leaflet, which all say six feet. */
static void
fence_of_6_feet (House *coop)
{
  coop_pen (coop, "q")->roof = HC_ROOF_NONE;
  coop_wall (coop, "q-e")->height_mm = 6 * 304.8;
}

static void
fence_of_5_feet (House *coop)
{
  fence_of_6_feet (coop);
  coop_wall (coop, "q-e")->height_mm = 5 * 304.8;
}

static void
test_foxes (void)
{
  g_test_summary ("Fencing for fox control: netting of 40 to 50 mm stops a fox, a hole of 10 cm "
                  "lets one in, and a fence is six feet high");
  g_assert_false (fox_finds (net_of_50_mm, "predators.day-holes"));
  g_assert_false (fox_finds (net_of_50_mm, "predators.day-torn"));
  g_assert_true (fox_finds (gap_of_101_mm, "predators.gap"));
  g_assert_false (fox_finds (gap_of_99_mm, "predators.gap"));
  g_assert_false (fox_finds (fence_of_6_feet, "predators.day-over"));
  g_assert_true (fox_finds (fence_of_5_feet, "predators.day-over"));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/published/exclusion/rodent-gaps", test_gaps_that_rodents_pass);
  g_test_add_func ("/published/exclusion/mesh-by-animal", test_mesh_by_size_of_animal);
  g_test_add_func ("/published/exclusion/foxes", test_foxes);
  return g_test_run ();
}
