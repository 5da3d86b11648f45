/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The keeper's way round. Widths of the way: garden paths (Landscaping
 * Network; The Garden Scene), from the book; reach of an arm: guidelines for
 * buildings, from memory. */
#include "config.h"

#include "house.h"

#include "base/shape-relate.h"
#include "supply/way-through.h"

#include <math.h>

#define ROOM_W 4000
#define ROOM_D 3000

static void
start (House *house)
{
  house_init (house);
  house_add_pen (house, "p", HC_PEN_INDOOR, ROOM_W, ROOM_D);
}

static void
add_door (House *house)
{
  house_add_opening (house, HC_OPENING_KEEPER_DOOR, "p-n", 2000, 900, 1900);
}

static void
add_bin (House *house, double x_mm, double y_mm, double width_mm, double depth_mm)
{
  house_add (house, "p", HC_FITTING_STORE_BIN, x_mm, y_mm, width_mm, depth_mm)->height_mm = 900;
}

/* A row of bins across the room but for a gap, and nests beyond it. */
static void
leave_a_gap (House *house, double gap_mm)
{
  add_door (house);
  add_bin (house, (ROOM_W - gap_mm) / 2, 1500, ROOM_W - gap_mm, 300);
  house_add_nests (house, "p", 600, 2750, 3)->turn_deg = 180;
}

static void
leave_499 (House *house)
{
  leave_a_gap (house, 499 - 2);
}

static void
leave_500 (House *house)
{
  leave_a_gap (house, 500);
}

static void
leave_599 (House *house)
{
  leave_a_gap (house, 599 - 2);
}

static void
leave_600 (House *house)
{
  leave_a_gap (house, 600);
}

static void
have_no_door (House *house)
{
  house_add_nests (house, "p", 600, 2750, 3);
}

static void
have_a_narrow_door (House *house)
{
  house_add_opening (house, HC_OPENING_KEEPER_DOOR, "p-n", 2000, 490, 1900);
  house_add_nests (house, "p", 600, 2750, 3);
}

static void
have_a_low_door (House *house)
{
  house_add_opening (house, HC_OPENING_KEEPER_DOOR, "p-n", 2000, 900, 1849);
}

static void
have_a_door_of_1850 (House *house)
{
  house_add_opening (house, HC_OPENING_KEEPER_DOOR, "p-n", 2000, 900, 1850);
}

static void
bury_nests (House *house)
{
  add_door (house);
  house_add_nests (house, "p", 600, 2750, 3)->turn_deg = 180;
  add_bin (house, 600, 2000, 1200, 900);
}

static void
empty_buried_nests_from_behind (House *house)
{
  bury_nests (house);
  house_add_opening (house, HC_OPENING_EGG_DOOR, "p-s", ROOM_W - 600, 800, 400);
}

static void
stand_a_drinker_in_the_gap (House *house)
{
  leave_600 (house);
  house_add (house, "p", HC_FITTING_DRINKER, ROOM_W - 300, 1500, 400, 400)->height_mm = 500;
}

static void
come_with_a_barrow (House *house, double door_mm)
{
  house_add_pen (house, "q", HC_PEN_INDOOR, ROOM_W, ROOM_D);
  add_door (house);
  house_add_opening (house, HC_OPENING_KEEPER_DOOR, "q-s", 2000, 700, 1900);
  house_add_opening (house, HC_OPENING_KEEPER_DOOR, "p-e", 1500, door_mm, 1900);
  house_add_pen (house, "r", HC_PEN_INDOOR, ROOM_W, ROOM_D);
  house_add_opening (house, HC_OPENING_KEEPER_DOOR, "q-e", 1500, 700, 1900);
}

static void
wheel_through_749 (House *house)
{
  come_with_a_barrow (house, 749);
}

static void
wheel_through_750 (House *house)
{
  come_with_a_barrow (house, 750);
}

/* A lean-to that rises from the south wall to the north wall. */
static void
lean_to (House *house, double eaves_mm, double ridge_mm)
{
  HcPenValues values = *hc_pen_get (house->pens->pdata[0]);
  g_autoptr (HcPen) before = house->pens->pdata[0];

  values.height_mm = eaves_mm;
  values.ridge_mm = ridge_mm;
  values.roof_shape = HC_ROOF_LEAN_TO;
  values.roof_turn_deg = 270;
  house->pens->pdata[0] = hc_pen_new (hc_pen_get_id (before), &values);
}

/* High enough to stand in for 1 m beside the door and no farther. */
static void
stand_by_the_high_wall_only (House *house)
{
  lean_to (house, 700, 2050);
  add_door (house);
  house_add (house, "p", HC_FITTING_FEEDER, 2000, 1400, 400, 200);
}

static void
leave_the_feeder_by_the_low_wall (House *house)
{
  lean_to (house, 700, 2050);
  add_door (house);
  house_add (house, "p", HC_FITTING_FEEDER, 2000, 2800, 400, 200);
}

static void
stoop_all_over (House *house)
{
  lean_to (house, 700, 1500);
  add_door (house);
  house_add (house, "p", HC_FITTING_FEEDER, 2000, 2800, 400, 200);
}

typedef struct
{
  const char *name;
  void (*set_up) (House *house);
  const char *code;
  gboolean found;
} Way;

static const Way ways[] = {
  { "a-gap-under-50-cm-blocks", leave_499, "reach.blocked", TRUE },
  { "a-gap-of-50-cm-is-a-squeeze", leave_500, "reach.squeeze-past", TRUE },
  { "a-gap-of-50-cm-does-not-block", leave_500, "reach.blocked", FALSE },
  { "a-gap-under-60-cm-is-a-squeeze", leave_599, "reach.squeeze-past", TRUE },
  { "a-gap-of-60-cm-is-a-way", leave_600, NULL, FALSE },
  { "a-drinker-is-lifted-aside", stand_a_drinker_in_the_gap, NULL, FALSE },
  { "a-room-without-a-door", have_no_door, "reach.no-door", TRUE },
  { "a-door-too-narrow", have_a_narrow_door, "reach.shut-off", TRUE },
  { "a-door-under-185-cm", have_a_low_door, "reach.low-door", TRUE },
  { "a-door-of-185-cm", have_a_door_of_1850, "reach.low-door", FALSE },
  { "nests-behind-a-bin", bury_nests, "reach.blocked", TRUE },
  { "nests-behind-a-bin-with-an-egg-door", empty_buried_nests_from_behind, "reach.blocked",
    FALSE },
  { "a-feeder-by-the-high-wall-of-a-lean-to", stand_by_the_high_wall_only, NULL, FALSE },
  { "a-feeder-by-its-low-wall", leave_the_feeder_by_the_low_wall, "reach.too-far", TRUE },
  { "a-lean-to-too-low-anywhere", stoop_all_over, "reach.too-far", TRUE },
  { "no-barrow-past-a-door-under-75-cm", wheel_through_749, "reach.no-barrow", TRUE },
  { "a-barrow-passes-75-cm", wheel_through_750, "reach.no-barrow", FALSE },
};

static void
test_way (gconstpointer data)
{
  const Way *way = data;
  House house;
  g_autoptr (HcCheck) check = NULL;

  start (&house);
  way->set_up (&house);
  check = house_check (&house, HC_CONDITION_DAY);
  if (way->code == NULL)
    g_assert_cmpuint (hc_check_get_n_findings (check, HC_NEED_REACH), ==, 0);
  else if (way->found)
    g_assert_nonnull (house_find (check, way->code));
  else
    g_assert_null (house_find (check, way->code));
  house_clear (&house);
}

static void
test_what_blocks_is_named (void)
{
  House house;
  g_autoptr (HcCheck) check = NULL;
  const HcFinding *finding;

  start (&house);
  bury_nests (&house);
  check = house_check (&house, HC_CONDITION_DAY);
  finding = house_find (check, "reach.blocked");
  g_assert_nonnull (finding);
  g_assert_cmpuint (g_strv_length (finding->ids), ==, 2);
  house_clear (&house);
}

/* The independent way: small squares, each free or not, filled from the door. */
#define CELL 100
/* From middle to middle of two squares one passes a corner this much nearer than
 * from either, and the engine straightens dents by 3 mm. */
#define STEP_ASIDE 12
#define WALKER_MM 600.0
#define N_X (ROOM_W / CELL)
#define N_Y (ROOM_D / CELL)

typedef struct
{
  HcFittingValues *things[8];
  guint n_things;
  gboolean reached[N_Y][N_X];
} Grid;

static HcPoint
middle_of (int x, int y)
{
  return hc_point ((x + 0.5) * CELL, (y + 0.5) * CELL);
}

static gboolean
is_free (const Grid *grid, HcPoint p, double half_mm)
{
  if (p.x_mm < half_mm || p.x_mm > ROOM_W - half_mm || p.y_mm < half_mm
      || p.y_mm > ROOM_D - half_mm)
    return FALSE;
  for (guint i = 0; i < grid->n_things; i++)
    {
      const HcFittingValues *thing = grid->things[i];
      double angle = thing->turn_deg * G_PI / 180;
      double dx = p.x_mm - thing->x_mm;
      double dy = p.y_mm - thing->y_mm;
      double along = fabs (dx * cos (angle) + dy * sin (angle)) - thing->width_mm / 2;
      double across = fabs (dy * cos (angle) - dx * sin (angle)) - thing->depth_mm / 2;

      if (hypot (MAX (0, along), MAX (0, across)) < half_mm)
        return FALSE;
    }
  return TRUE;
}

/* Whoever comes in stands half a body's depth inside the door first. */
static void
fill (Grid *grid, double half_mm)
{
  GQueue ahead = G_QUEUE_INIT;

  memset (grid->reached, 0, sizeof grid->reached);
  for (int x = 0; x < N_X; x++)
    for (int y = 0; y < N_Y; y++)
      if (fabs (middle_of (x, y).x_mm - ROOM_W / 2) <= 450 - half_mm
          && middle_of (x, y).y_mm < half_mm + CELL && is_free (grid, middle_of (x, y), half_mm)
          && is_free (grid, hc_point (middle_of (x, y).x_mm, MAX (half_mm, WALKER_MM / 2)),
                      half_mm))
        {
          grid->reached[y][x] = TRUE;
          g_queue_push_tail (&ahead, GINT_TO_POINTER (y * N_X + x));
        }
  while (!g_queue_is_empty (&ahead))
    {
      int at = GPOINTER_TO_INT (g_queue_pop_head (&ahead));
      const int steps[][2] = { { 1, 0 }, { -1, 0 }, { 0, 1 }, { 0, -1 } };

      for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
        {
          int x = at % N_X + steps[i][0];
          int y = at / N_X + steps[i][1];

          if (x < 0 || y < 0 || x >= N_X || y >= N_Y || grid->reached[y][x]
              || !is_free (grid, middle_of (x, y), half_mm))
            continue;
          grid->reached[y][x] = TRUE;
          g_queue_push_tail (&ahead, GINT_TO_POINTER (y * N_X + x));
        }
    }
}

static HcShape *
find_way (HcRoom *room, const HcWalker *walker, gpointer data)
{
  HcShape *way = hc_way_new (room, walker);

  g_ptr_array_add (data, way);
  return way;
}

static gboolean
is_reached (const HcWayThrough *through, HcPoint p)
{
  GPtrArray *reached = hc_way_through_get_reached (through, 0);

  for (guint i = 0; i < reached->len; i++)
    if (hc_shape_contains_point (reached->pdata[i], p))
      return TRUE;
  return FALSE;
}

static void
fill_at_random (House *house, Grid *grid)
{
  grid->n_things = (guint) g_test_rand_int_range (1, G_N_ELEMENTS (grid->things) + 1);
  for (guint i = 0; i < grid->n_things; i++)
    {
      grid->things[i] = house_add (house, "p", HC_FITTING_STORE_BIN,
                                   g_test_rand_int_range (0, ROOM_W),
                                   g_test_rand_int_range (0, ROOM_D),
                                   g_test_rand_int_range (100, 2000),
                                   g_test_rand_int_range (100, 600));
      grid->things[i]->height_mm = 900;
      grid->things[i]->turn_deg = g_test_rand_int_range (0, 4) * 30;
    }
}

/* What a wider walker fills is reached, and what is reached a slimmer one fills:
 * the squares see no better than their size. */
static void
compare_once (void)
{
  const HcWalker walker = { WALKER_MM, 1600, 400 };
  House house;
  Grid grid;
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (HcHouse) rooms = NULL;
  g_autoptr (HcWayThrough) through = NULL;
  g_autoptr (GPtrArray) kept = g_ptr_array_new_with_free_func ((GDestroyNotify) hc_shape_unref);
  Grid wide;

  start (&house);
  add_door (&house);
  fill_at_random (&house, &grid);
  plan = house_make_plan (&house);
  rooms = hc_house_new (hc_plan_get_layout (plan), NULL);
  through = hc_way_through_new (rooms, &walker, find_way, kept);
  wide = grid;
  fill (&wide, walker.width_mm / 2 + STEP_ASIDE);
  fill (&grid, walker.width_mm / 2 - CELL);
  for (int y = 0; y < N_Y; y++)
    for (int x = 0; x < N_X; x++)
      {
        gboolean reached = is_reached (through, middle_of (x, y));

        g_assert_true (!wide.reached[y][x] || reached);
        g_assert_true (!reached || grid.reached[y][x]);
      }
  house_clear (&house);
}

static void
test_the_way_is_what_squares_fill (void)
{
  for (int i = 0; i < 1000; i++)
    compare_once ();
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
    {
      g_autofree char *path = g_strconcat ("/needs/reach/", ways[i].name, NULL);

      g_test_add_data_func (path, &ways[i], test_way);
    }
  g_test_add_func ("/needs/reach/what-blocks-is-named", test_what_blocks_is_named);
  g_test_add_func ("/needs/reach/the-way-is-what-squares-fill",
                   test_the_way_is_what_squares_fill);
  return g_test_run ();
}
