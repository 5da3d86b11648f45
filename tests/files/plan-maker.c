/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Makes sound plans from a seed. */
#include "config.h"

#include "plan-maker.h"

#include "base/ids.h"
#include "base/whole.h"

#include <math.h>

#define SQUARE_MM 1500.0

typedef struct
{
  GRand *chance;
  HcIdSource *ids;
  guint n_pens;
  guint n_fittings;
  guint squares; /* along each side of a pen */
  HcLayoutValues layout;
  GPtrArray *kept;
} Maker;

static double
between (Maker *maker,
         double least,
         double most)
{
  return hc_mm (g_rand_double_range (maker->chance, least, most));
}

static guint
below (Maker *maker,
       guint n)
{
  return (guint) g_rand_int_range (maker->chance, 0, (gint32) n);
}

/* Text that lives as long as the maker. */
static char *
keep (Maker *maker,
      char *text)
{
  g_ptr_array_add (maker->kept, text);
  return text;
}

static char *
numbered (Maker *maker,
          const char *what,
          guint number)
{
  return keep (maker, g_strdup_printf ("%s%u", what, number));
}

static double
pen_side_mm (const Maker *maker)
{
  return maker->squares * SQUARE_MM;
}

static void
add_corner (Maker *maker,
            const char *what,
            guint column,
            double y_mm)
{
  HcCornerValues values = { column * pen_side_mm (maker), y_mm };

  g_ptr_array_add (maker->layout.corners, hc_corner_new (numbered (maker, what, column), &values));
}

static void
add_wall (Maker *maker,
          const char *what,
          guint column,
          char *from,
          char *to)
{
  HcWallValues values;

  hc_wall_values_init (&values);
  values.from = from;
  values.to = to;
  values.kind = (int) below (maker, 3);
  values.thickness_mm = between (maker, 20, 200);
  g_ptr_array_add (maker->layout.walls, hc_wall_new (numbered (maker, what, column), &values));
}

static void
add_walls_of_column (Maker *maker,
                     guint column)
{
  add_corner (maker, "front-", column, 0);
  add_corner (maker, "back-", column, pen_side_mm (maker));
  add_wall (maker, "side-", column, numbered (maker, "front-", column),
            numbered (maker, "back-", column));
  if (column == 0)
    return;
  add_wall (maker, "face-", column - 1, numbered (maker, "front-", column - 1),
            numbered (maker, "front-", column));
  add_wall (maker, "rear-", column - 1, numbered (maker, "back-", column),
            numbered (maker, "back-", column - 1));
}

static void
add_opening (Maker *maker,
             HcOpeningKind kind,
             char *wall,
             double along_mm,
             double sill_mm)
{
  HcOpeningValues values;
  g_autofree char *id = hc_id_source_next (maker->ids);

  hc_opening_values_init (&values);
  values.kind = kind;
  values.wall = wall;
  values.along_mm = along_mm;
  values.sill_mm = sill_mm;
  values.width_mm = between (maker, 200, 700);
  values.height_mm = kind == HC_OPENING_KEEPER_DOOR ? between (maker, 1500, 1700)
                                                    : between (maker, 200, 280);
  g_ptr_array_add (maker->layout.openings, hc_opening_new (id, &values));
}

static void
add_openings_of_pen (Maker *maker,
                     guint pen)
{
  char *face = numbered (maker, "face-", pen);

  add_opening (maker, HC_OPENING_KEEPER_DOOR, face, 400, 0);
  add_opening (maker, HC_OPENING_VENT, face, 400, 1800);
  add_opening (maker, HC_OPENING_WINDOW, numbered (maker, "rear-", pen), 700, 900);
  add_opening (maker, HC_OPENING_VENT, numbered (maker, "rear-", pen), 700, 1800);
  add_opening (maker, HC_OPENING_POP_HOLE, numbered (maker, "side-", pen), 1000, 50);
}

static void
choose_size (Maker *maker,
             HcFittingValues *values)
{
  values->width_mm = between (maker, 200, 1200);
  values->depth_mm = between (maker, 200, 1200);
  values->height_mm = between (maker, 50, 600);
  values->base_mm = between (maker, 0, 600);
  values->bars = 1 + (int) below (maker, 3);
  values->columns = 1 + (int) below (maker, 4);
  values->rows = 1 + (int) below (maker, 2);
  values->places = (int) below (maker, 8);
  values->water_mm = between (maker, 0, 100);
  values->lined = below (maker, 2) == 0;
}

static void
add_fitting (Maker *maker,
             HcParts *fittings,
             guint pen,
             guint square)
{
  HcFittingValues values;
  g_autofree char *id = hc_id_source_next (maker->ids);

  hc_fitting_values_init (&values);
  values.kind = (int) below (maker, HC_N_FITTING_KINDS);
  values.x_mm = pen * pen_side_mm (maker) + (square / maker->squares + 0.5) * SQUARE_MM;
  values.y_mm = (square % maker->squares + 0.5) * SQUARE_MM;
  values.turn_deg = 90.0 * below (maker, 4);
  choose_size (maker, &values);
  g_ptr_array_add (fittings, hc_fitting_new (id, &values));
}

/* Fitting n stands in pen n modulo the number of pens. */
static HcParts *
fittings_of_pen (Maker *maker,
                 guint pen)
{
  HcParts *fittings = hc_parts_new ();

  for (guint n = pen; n < maker->n_fittings; n += maker->n_pens)
    add_fitting (maker, fittings, pen, n / maker->n_pens);
  return fittings;
}

static void
add_pen (Maker *maker,
         guint pen)
{
  g_autoptr (HcParts) fittings = fittings_of_pen (maker, pen);
  char *walls[] = { numbered (maker, "face-", pen), numbered (maker, "side-", pen + 1),
                    numbered (maker, "rear-", pen), numbered (maker, "side-", pen), NULL };
  HcPenValues values;

  hc_pen_values_init (&values);
  values.name = numbered (maker, "Pen ", pen + 1);
  values.building = (char *) "byre";
  values.kind = pen % 3 == 2 ? HC_PEN_RUN : HC_PEN_INDOOR;
  values.roof = pen % 3 == 2 ? HC_ROOF_NET : HC_ROOF_SOLID;
  values.walls = walls;
  values.height_mm = between (maker, 2100, 2600);
  values.fittings = fittings;
  g_ptr_array_add (maker->layout.pens, hc_pen_new (numbered (maker, "pen-", pen), &values));
}

static HcLayout *
make_layout (Maker *maker)
{
  HcLayoutValues *layout = &maker->layout;

  for (guint column = 0; column <= maker->n_pens; column++)
    add_walls_of_column (maker, column);
  for (guint pen = 0; pen < maker->n_pens; pen++)
    {
      add_openings_of_pen (maker, pen);
      add_pen (maker, pen);
    }
  return hc_layout_new ("main", layout);
}

static void
add_batch (Maker *maker,
           HcParts *batches,
           guint number)
{
  static const char *const kinds[]
      = { "bantam", "light_layer", "medium_layer", "heavy_breed", "meat_slow", "duck", "goose" };
  HcBatchValues values;

  hc_batch_values_init (&values);
  values.name = numbered (maker, "Group ", number + 1);
  values.kind = (char *) kinds[below (maker, G_N_ELEMENTS (kinds))];
  values.females = 1 + (int) below (maker, 12);
  values.males = (int) below (maker, 2);
  values.hatched = 738000 + below (maker, 1000);
  values.pen = numbered (maker, "pen-", number);
  g_ptr_array_add (batches, hc_batch_new (numbered (maker, "batch-", number), &values));
}

static HcParts *
make_buildings (void)
{
  HcParts *buildings = hc_parts_new ();
  HcBuildingValues values = { (char *) "Byre", HC_BUILDING_HOUSE };

  g_ptr_array_add (buildings, hc_building_new ("byre", &values));
  return buildings;
}

static HcPlan *
make_plan (Maker *maker)
{
  g_autoptr (HcParts) variants = hc_parts_new ();
  g_autoptr (HcParts) batches = hc_parts_new ();
  g_autoptr (HcParts) buildings = make_buildings ();
  g_autofree char *uid = hc_id_source_next (maker->ids);
  HcPlanValues values;

  hc_plan_values_init (&values);
  g_ptr_array_add (variants, make_layout (maker));
  for (guint pen = 0; pen < maker->n_pens; pen++)
    add_batch (maker, batches, pen);
  values.title = (char *) "Made from a seed";
  values.as_of = 739000;
  values.buildings = buildings;
  values.variants = variants;
  values.variant = (char *) "main";
  values.batches = batches;
  return hc_plan_new (uid, &values);
}

static void
maker_init (Maker *maker,
            guint32 seed,
            guint n_pens,
            guint n_fittings)
{
  guint in_fullest = (n_fittings + n_pens - 1) / n_pens;

  *maker = (Maker){ .n_pens = n_pens, .n_fittings = n_fittings };
  maker->chance = g_rand_new_with_seed (seed);
  maker->ids = hc_id_source_new_seeded (seed);
  maker->squares = MAX (2, (guint) ceil (sqrt (in_fullest)));
  maker->kept = g_ptr_array_new_with_free_func (g_free);
  maker->layout.corners = hc_parts_new ();
  maker->layout.walls = hc_parts_new ();
  maker->layout.openings = hc_parts_new ();
  maker->layout.pens = hc_parts_new ();
}

static void
maker_clear (Maker *maker)
{
  g_rand_free (maker->chance);
  hc_id_source_free (maker->ids);
  g_ptr_array_unref (maker->kept);
  g_ptr_array_unref (maker->layout.corners);
  g_ptr_array_unref (maker->layout.walls);
  g_ptr_array_unref (maker->layout.openings);
  g_ptr_array_unref (maker->layout.pens);
}

HcPlan *
plan_maker_make (guint32 seed,
                 guint n_pens,
                 guint n_fittings)
{
  HcPlan *plan;
  Maker maker;

  g_return_val_if_fail (n_pens > 0, NULL);
  maker_init (&maker, seed, n_pens, n_fittings);
  plan = make_plan (&maker);
  maker_clear (&maker);
  return plan;
}
