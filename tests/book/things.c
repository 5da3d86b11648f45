/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Things to add, materials and predators. */
#include "config.h"

#include "shelf.h"

#include "plan/fitting.h"

static void
test_every_fitting_of_a_plan_is_described (void)
{
  for (HcFittingKind kind = 0; kind < HC_N_FITTING_KINDS; kind++)
    g_assert_nonnull (
        hc_book_get_fitting_type (shelf_book (), hc_fitting_kind_get_word (kind), NULL));
}

static void
test_kinds_and_forms_are_those_of_plans (void)
{
  for (guint i = 0; i < hc_book_get_n_fitting_types (shelf_book ()); i++)
    {
      const HcFittingType *type = hc_book_get_fitting_type_at (shelf_book (), i);
      HcFittingKind kind;
      HcFittingForm form;

      g_assert_true (hc_fitting_kind_from_word (type->kind, &kind));
      g_assert_true (hc_fitting_form_from_word (type->form, &form));
      g_assert_true (hc_book_get_fitting_type (shelf_book (), type->kind, type->form) == type);
    }
}

static void
test_every_fitting_has_a_size (void)
{
  for (guint i = 0; i < hc_book_get_n_fitting_types (shelf_book ()); i++)
    {
      const HcFittingType *type = hc_book_get_fitting_type_at (shelf_book (), i);

      g_assert_nonnull (hc_fitting_type_find_range (type, "width_mm"));
      g_assert_nonnull (hc_fitting_type_find_range (type, "depth_mm"));
      g_assert_nonnull (hc_fitting_type_find_range (type, "height_mm"));
      g_assert_true (type->stretches || type->n_devices > 0);
    }
}

static void
test_bought_things_fit_the_range_of_their_type (void)
{
  g_autoptr (GHashTable) ids = g_hash_table_new (g_str_hash, g_str_equal);

  for (guint i = 0; i < hc_book_get_n_fitting_types (shelf_book ()); i++)
    {
      const HcFittingType *type = hc_book_get_fitting_type_at (shelf_book (), i);
      const HcMeasureRange *width = hc_fitting_type_find_range (type, "width_mm");

      for (guint j = 0; j < type->n_devices; j++)
        {
          const HcDevice *device = &type->devices[j];

          g_assert_true (g_hash_table_add (ids, (gpointer) device->id));
          g_assert_true (hc_fitting_type_find_device (type, device->id) == device);
          g_assert_cmpfloat (device->width_mm, >=, width->least);
          g_assert_cmpfloat (device->width_mm, <=, width->most);
        }
    }
}

static void
test_heaters_say_what_they_draw_and_need (void)
{
  static const char *const heaters[] = { "floor_heat_pad", "heat_plate", "heat_lamp" };

  for (guint i = 0; i < G_N_ELEMENTS (heaters); i++)
    {
      const HcFittingType *type = hc_book_get_fitting_type (shelf_book (), heaters[i], NULL);

      g_assert_cmpint (type->group, ==, HC_FITTING_GROUP_KEEP_WARM);
      g_assert_false (type->stretches);
      g_assert_cmpuint (type->n_devices, >=, 3);
      g_assert_cmpuint (type->n_cautions, >=, 2);
      for (guint j = 0; j < type->n_devices; j++)
        {
          g_assert_cmpfloat (type->devices[j].watts, >, 0);
          g_assert_cmpfloat (type->devices[j].lowest_room_c, >, -273);
        }
    }
}

/* University of Wisconsin, Poultry your way, figure 24: 45 cm² a chick. */
static void
test_heat_plates_are_no_smaller_than_their_chicks_ask (void)
{
  const HcFittingType *type = hc_book_get_fitting_type (shelf_book (), "heat_plate", NULL);
  const HcDemand *cover = shelf_demand ("home-cold", "warmth.cover", "light_layer", 1);

  for (guint i = 0; i < type->n_devices; i++)
    {
      const HcDevice *device = &type->devices[i];

      g_assert_cmpfloat (
          hc_demand_required (cover, HC_LEVEL_TIGHT, device->chicks, device->chicks * 0.04, NULL),
          <=, device->width_mm * device->depth_mm * 1.1);
    }
}

static void
test_every_group_has_a_name (void)
{
  for (HcFittingGroup group = 0; group <= HC_FITTING_GROUP_STAY_SAFE; group++)
    g_assert_cmpstr (hc_fitting_group_get_name (group), !=, "");
}

static void
test_materials_are_found_by_id (void)
{
  HcBook *book = shelf_book ();

  g_assert_true (hc_book_get_floor_layer (book, "concrete")->hard);
  g_assert_false (hc_book_get_floor_layer (book, "concrete")->dug_through);
  g_assert_true (hc_book_get_floor_layer (book, "earth")->dug_through);
  g_assert_true (hc_book_get_floor_layer (book, "pallets")->raised);
  g_assert_true (hc_book_get_bedding (book, "shavings")->for_chicks);
  g_assert_false (hc_book_get_bedding (book, "sawdust")->for_chicks);
  g_assert_true (hc_book_get_construction (book, "steel_roof")->roof);
  g_assert_null (hc_book_get_mesh (book, "paper"));
}

/* Surface resistances of ISO 6946: 0.13 and 0.04 m²·K/W for a wall, 0.10 and
 * 0.04 for a roof, and nothing else for a metal sheet. */
static void
test_a_metal_sheet_insulates_by_its_surfaces_only (void)
{
  g_assert_cmpfloat_with_epsilon (hc_book_get_construction (shelf_book (), "steel_wall")->u_w_m2k,
                                  1 / 0.17, 0.005);
  g_assert_cmpfloat_with_epsilon (hc_book_get_construction (shelf_book (), "steel_roof")->u_w_m2k,
                                  1 / 0.14, 0.005);
}

/* Free area of a square mesh: (1 − wire / pitch)². */
static void
test_welded_mesh_has_the_free_area_of_its_wire (void)
{
  const HcMesh *cloth = hc_book_get_mesh (shelf_book (), "cloth_12");
  double pitch_mm = 12.7;
  double open = 1 - cloth->wire_mm / pitch_mm;

  g_assert_cmpfloat_with_epsilon (cloth->free_area, open * open, 0.005);
}

static void
test_who_passes_which_mesh (void)
{
  HcBook *book = shelf_book ();
  const HcMesh *fine = hc_book_get_mesh (book, "cloth_12");
  const HcMesh *wide = hc_book_get_mesh (book, "hex_25");

  g_assert_cmpfloat (fine->hole_mm, <=, hc_book_get_predator (book, "weasel")->passes_mm);
  g_assert_cmpfloat (wide->hole_mm, >, hc_book_get_predator (book, "weasel")->passes_mm);
  g_assert_cmpfloat (fine->hole_mm, >, hc_book_get_predator (book, "mouse")->passes_mm);
  g_assert_true (fine->stops_diggers);
  g_assert_false (wide->stops_diggers);
  g_assert_true (hc_book_get_mesh (book, "net_50")->sags_under_snow);
}

typedef struct
{
  const char *id;
  double passes_mm;
} Hole;

/* What passes a hole: rodent exclusion methods (mouse, rat), fox control (fox),
 * common practice for the others. */
static const Hole holes[] = {
  { "mouse", 6 },    { "rat", 12.7 },    { "weasel", 12.7 }, { "snake", 12.7 },
  { "opossum", 50 }, { "skunk", 50 },    { "marten", 50 },   { "raccoon", 75 },
  { "fox", 100 },    { "dog", 100 },     { "coyote", 100 },  { "badger", 150 },
  { "hawk", 50 },    { "owl", 50 },
};

static void
test_what_passes_a_hole (void)
{
  g_assert_cmpuint (hc_book_get_n_predators (shelf_book ()), ==, G_N_ELEMENTS (holes));
  for (guint i = 0; i < G_N_ELEMENTS (holes); i++)
    g_assert_cmpfloat (hc_book_get_predator (shelf_book (), holes[i].id)->passes_mm, ==,
                       holes[i].passes_mm);
  g_assert_true (hc_book_get_predator (shelf_book (), "hawk")->overhead);
  g_assert_cmpfloat (hc_book_get_predator (shelf_book (), "raccoon")->reach_mm, ==, 600);
  g_assert_cmpfloat (hc_book_get_predator (shelf_book (), "fox")->jumps_mm, ==, 1800);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/things/every-fitting-of-a-plan-is-described",
                   test_every_fitting_of_a_plan_is_described);
  g_test_add_func ("/things/kinds-and-forms-are-those-of-plans",
                   test_kinds_and_forms_are_those_of_plans);
  g_test_add_func ("/things/every-fitting-has-a-size", test_every_fitting_has_a_size);
  g_test_add_func ("/things/bought-things-fit-the-range-of-their-type",
                   test_bought_things_fit_the_range_of_their_type);
  g_test_add_func ("/things/heaters-say-what-they-draw-and-need",
                   test_heaters_say_what_they_draw_and_need);
  g_test_add_func ("/things/heat-plates-are-no-smaller-than-their-chicks-ask",
                   test_heat_plates_are_no_smaller_than_their_chicks_ask);
  g_test_add_func ("/things/every-group-has-a-name", test_every_group_has_a_name);
  g_test_add_func ("/things/materials-are-found-by-id", test_materials_are_found_by_id);
  g_test_add_func ("/things/a-metal-sheet-insulates-by-its-surfaces-only",
                   test_a_metal_sheet_insulates_by_its_surfaces_only);
  g_test_add_func ("/things/welded-mesh-has-the-free-area-of-its-wire",
                   test_welded_mesh_has_the_free_area_of_its_wire);
  g_test_add_func ("/things/who-passes-which-mesh", test_who_passes_which_mesh);
  g_test_add_func ("/things/what-passes-a-hole", test_what_passes_a_hole);
  return g_test_run ();
}
