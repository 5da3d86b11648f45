/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Builds plans for the tests of needs. */
#include "config.h"

#include "house.h"

typedef struct
{
  char *pen;
  HcFittingValues values;
  char *id;
} Thing;

static void
free_thing (gpointer data)
{
  Thing *thing = data;

  g_free (thing->pen);
  g_free (thing->id);
  g_free (thing);
}

/* Read once: books do not change. */
static HcBook *
get_book (void)
{
  static HcBook *book;
  g_autoptr (GError) error = NULL;

  if (book == NULL)
    book = hc_book_load_default (&error);
  g_assert_no_error (error);
  return hc_book_ref (book);
}

void
house_init (House *house)
{
  *house = (House) { 0 };
  house->book = get_book ();
  hc_site_values_init (&house->site);
  hc_rules_values_init (&house->rules);
  house->site.coldest_night_c = -5;
  house->site.birds_go_out = FALSE;
  house->rules.standard = (char *) "home-cold";
  house->corners = hc_parts_new ();
  house->walls = hc_parts_new ();
  house->openings = hc_parts_new ();
  house->pens = hc_parts_new ();
  house->loose = hc_parts_new ();
  house->batches = hc_parts_new ();
  house->fittings = g_ptr_array_new_with_free_func (free_thing);
}

void
house_clear (House *house)
{
  g_ptr_array_unref (house->corners);
  g_ptr_array_unref (house->walls);
  g_ptr_array_unref (house->openings);
  g_ptr_array_unref (house->pens);
  g_ptr_array_unref (house->loose);
  g_ptr_array_unref (house->batches);
  g_ptr_array_unref (house->fittings);
  hc_book_unref (house->book);
}

static void
add_corner (House *house, const char *id, double x_mm, double y_mm)
{
  HcCornerValues values = { x_mm, y_mm };

  g_ptr_array_add (house->corners, hc_corner_new (id, &values));
}

static void
add_wall (House *house, const char *id, const char *from, const char *to)
{
  HcWallValues values;

  hc_wall_values_init (&values);
  values.from = (char *) from;
  values.to = (char *) to;
  values.thickness_mm = 1;
  g_ptr_array_add (house->walls, hc_wall_new (id, &values));
}

/* Pens are built with walls 'ID-n', 'ID-e', 'ID-s' and 'ID-w'. A pen beside
 * another one shares its east wall, which keeps its name. */
void
house_add_pen (House *house, const char *id, HcPenKind kind, double width_mm, double depth_mm)
{
  g_autofree char *north = g_strconcat (id, "-n", NULL);
  g_autofree char *east = g_strconcat (id, "-e", NULL);
  g_autofree char *south = g_strconcat (id, "-s", NULL);
  g_autofree char *west = g_strconcat (id, "-w", NULL);
  g_autofree char *ne = g_strconcat (id, "-ne", NULL);
  g_autofree char *se = g_strconcat (id, "-se", NULL);
  g_autofree char *sw = g_strconcat (id, "-sw", NULL);
  g_autofree char *nw = g_strconcat (id, "-nw", NULL);
  g_autoptr (HcParts) fittings = hc_parts_new ();
  HcPenValues values;

  if (house->pens->len > 0)
    {
      const char *before = hc_pen_get_id (house->pens->pdata[house->pens->len - 1]);

      g_free (west);
      west = g_strconcat (before, "-e", NULL);
      g_free (nw);
      nw = g_strconcat (before, "-ne", NULL);
      g_free (sw);
      sw = g_strconcat (before, "-se", NULL);
    }
  else
    {
      add_corner (house, nw, 0, 0);
      add_corner (house, sw, 0, depth_mm);
      add_wall (house, west, sw, nw);
    }
  add_corner (house, ne, house->next_x_mm + width_mm, 0);
  add_corner (house, se, house->next_x_mm + width_mm, depth_mm);
  add_wall (house, north, nw, ne);
  add_wall (house, east, ne, se);
  add_wall (house, south, se, sw);
  hc_pen_values_init (&values);
  values.kind = kind;
  values.roof = kind == HC_PEN_RUN ? HC_ROOF_NET : HC_ROOF_SOLID;
  values.height_mm = 2200;
  values.walls = (char *[]) { north, east, south, west, NULL };
  values.fittings = fittings;
  g_ptr_array_add (house->pens, hc_pen_new (id, &values));
  house->next_x_mm += width_mm;
}

/* Returns the values to be changed further; ids are f0, f1… */
HcFittingValues *
house_add (House *house, const char *pen, HcFittingKind kind, double x_mm, double y_mm,
           double width_mm, double depth_mm)
{
  Thing *thing = g_new0 (Thing, 1);

  thing->pen = g_strdup (pen);
  thing->id = g_strdup_printf ("f%u", house->fittings->len);
  hc_fitting_values_init (&thing->values);
  thing->values.kind = kind;
  thing->values.x_mm = x_mm;
  thing->values.y_mm = y_mm;
  thing->values.width_mm = width_mm;
  thing->values.depth_mm = depth_mm;
  thing->values.height_mm = 200;
  g_ptr_array_add (house->fittings, thing);
  return &thing->values;
}

HcFittingValues *
house_add_roost (House *house, const char *pen, double x_mm, double y_mm, double length_mm,
                 double depth_mm, int bars)
{
  HcFittingValues *roost
      = house_add (house, pen, HC_FITTING_ROOST, x_mm, y_mm, length_mm, depth_mm);

  roost->bars = bars;
  roost->base_mm = 500;
  roost->bar_width_mm = 90;
  return roost;
}

/* Boxes of 35 by 35 by 40 cm, 20 cm above the floor, in one row. */
HcFittingValues *
house_add_nests (House *house, const char *pen, double x_mm, double y_mm, int columns)
{
  HcFittingValues *nests
      = house_add (house, pen, HC_FITTING_NEST_BOXES, x_mm, y_mm, 350.0 * columns, 350);

  nests->columns = columns;
  nests->rows = 1;
  nests->base_mm = 200;
  nests->height_mm = 400;
  return nests;
}

void
house_add_opening (House *house, HcOpeningKind kind, const char *wall, double along_mm,
                   double width_mm, double height_mm)
{
  g_autofree char *id = g_strdup_printf ("o%u", house->openings->len);
  HcOpeningValues values;

  hc_opening_values_init (&values);
  values.kind = kind;
  values.wall = (char *) wall;
  values.along_mm = along_mm;
  values.width_mm = width_mm;
  values.height_mm = height_mm;
  values.sill_mm = kind == HC_OPENING_WINDOW || kind == HC_OPENING_VENT ? 1500 : 0;
  values.shut_at_dusk = TRUE;
  values.open_by_day = kind == HC_OPENING_POP_HOLE;
  values.open_winter = kind == HC_OPENING_VENT ? 1 : 0;
  values.open_summer = 1;
  values.swing = HC_SWING_IN;
  g_ptr_array_add (house->openings, hc_opening_new (id, &values));
}

/* @weeks of age, or grown birds for -1. */
void
house_add_birds (House *house, const char *kind, const char *pen, int females, int males,
                 int weeks)
{
  g_autofree char *id = g_strdup_printf ("b%u", house->batches->len);
  HcBatchValues values;

  hc_batch_values_init (&values);
  values.kind = (char *) kind;
  values.pen = (char *) pen;
  values.females = females;
  values.males = males;
  values.hatched = weeks < 0 ? 0 : HOUSE_TODAY - 7 * (guint32) weeks;
  g_ptr_array_add (house->batches, hc_batch_new (id, &values));
}

static HcParts *
make_pens (const House *house)
{
  HcParts *pens = hc_parts_new ();

  for (guint i = 0; i < house->pens->len; i++)
    {
      HcPenValues values = *hc_pen_get (house->pens->pdata[i]);
      const char *id = hc_pen_get_id (house->pens->pdata[i]);
      g_autoptr (HcParts) fittings = hc_parts_new ();

      for (guint j = 0; j < house->fittings->len; j++)
        {
          const Thing *thing = house->fittings->pdata[j];

          if (g_str_equal (thing->pen, id))
            g_ptr_array_add (fittings, hc_fitting_new (thing->id, &thing->values));
        }
      values.fittings = fittings;
      g_ptr_array_add (pens, hc_pen_new (id, &values));
    }
  return pens;
}

HcPlan *
house_make_plan (const House *house)
{
  g_autoptr (HcPlan) empty = hc_plan_new_empty ("test", "Test");
  g_autoptr (HcParts) pens = make_pens (house);
  g_autoptr (HcSite) site = hc_site_new (NULL, &house->site);
  g_autoptr (HcRules) rules = hc_rules_new (NULL, &house->rules);
  HcPlanValues values = *hc_plan_get (empty);
  HcLayoutValues layout = *hc_layout_get (hc_plan_get_layout (empty));
  g_autoptr (HcPlan) plan = NULL;
  g_autoptr (HcLayout) built = NULL;

  layout.corners = house->corners;
  layout.walls = house->walls;
  layout.openings = house->openings;
  layout.pens = pens;
  layout.loose = house->loose;
  values.site = site;
  values.rules = rules;
  values.batches = house->batches;
  values.as_of = HOUSE_TODAY;
  plan = hc_plan_with (empty, &values);
  built = hc_layout_with (hc_plan_get_layout (plan), &layout);
  return hc_plan_with_layout (plan, built);
}

HcCheck *
house_check (const House *house, HcCondition condition)
{
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcPlan) plan = house_make_plan (house);
  g_autoptr (HcFlock) flock = hc_flock_on (plan, house->book, HOUSE_TODAY);

  return hc_check_plan (cache, plan, house->book, condition, flock);
}

HcLadder *
house_climb (const House *house, HcLadderQuestion question, const char *kind,
             HcCondition condition, HcLevel aim)
{
  g_autoptr (HcCheckCache) cache = hc_check_cache_new ();
  g_autoptr (HcPlan) plan = house_make_plan (house);
  g_autoptr (HcFlock) flock = hc_flock_on (plan, house->book, HOUSE_TODAY);

  return hc_ladder_climb (cache, plan, house->book, flock, question, kind, condition, aim);
}

/* The first finding of that code, of any need. */
const HcFinding *
house_find (const HcCheck *check, const char *code)
{
  for (guint need = 0; need < HC_N_NEEDS; need++)
    for (guint i = 0; i < hc_check_get_n_findings (check, need); i++)
      if (g_str_equal (hc_check_get_finding (check, need, i)->code, code))
        return hc_check_get_finding (check, need, i);
  return NULL;
}

gint64
house_rung (const HcLadder *ladder, HcNeedId need)
{
  for (guint i = 0; i < hc_ladder_get_n_rungs (ladder); i++)
    if (hc_ladder_get_rung (ladder, i)->need == need)
      return hc_ladder_get_rung (ladder, i)->most;
  return G_MAXINT64;
}
