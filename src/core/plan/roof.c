/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Which roof lies over each pen: one over all that touch and say the same. */
#include "config.h"

#include "plan/roof.h"

/* Pens under one roof know each other by the lowest index among them. */
typedef struct
{
  HcParts *pens;
  guint *under;
} Houses;

static guint
find_first (const Houses *houses, guint pen)
{
  while (houses->under[pen] != pen)
    pen = houses->under[pen];
  return pen;
}

static void
put_under_one (Houses *houses, guint one, guint other)
{
  guint a = find_first (houses, one);
  guint b = find_first (houses, other);

  houses->under[MAX (a, b)] = MIN (a, b);
}

static gboolean
is_sloped (const HcPenValues *pen)
{
  return pen->roof_shape != HC_ROOF_FLAT && pen->ridge_mm > pen->height_mm;
}

static gboolean
say_the_same (const HcPenValues *one, const HcPenValues *other)
{
  return one->kind == other->kind && one->roof == other->roof
         && one->roof_shape == other->roof_shape && one->height_mm == other->height_mm
         && one->ridge_mm == other->ridge_mm && one->roof_turn_deg == other->roof_turn_deg
         && one->ridge_at == other->ridge_at && g_strcmp0 (one->building, other->building) == 0;
}

/* @beside keeps for each wall the pen that had it first, counted from 1. */
static void
meet_neighbours (Houses *houses, GHashTable *beside, guint pen)
{
  const HcPenValues *values = hc_pen_get (houses->pens->pdata[pen]);

  for (guint i = 0; values->walls[i] != NULL; i++)
    {
      guint other = GPOINTER_TO_UINT (g_hash_table_lookup (beside, values->walls[i]));

      if (other == 0)
        g_hash_table_insert (beside, values->walls[i], GUINT_TO_POINTER (pen + 1));
      else if (say_the_same (values, hc_pen_get (houses->pens->pdata[other - 1])))
        put_under_one (houses, pen, other - 1);
    }
}

static void
find_pens_under_one_roof (Houses *houses)
{
  g_autoptr (GHashTable) beside = g_hash_table_new (g_str_hash, g_str_equal);

  for (guint i = 0; i < houses->pens->len; i++)
    {
      houses->under[i] = i;
      if (is_sloped (hc_pen_get (houses->pens->pdata[i])))
        meet_neighbours (houses, beside, i);
    }
}

static HcRoof
begin_roof (const HcPenValues *pen)
{
  HcRoof roof = { .eaves_mm = pen->height_mm, .ridge_mm = pen->height_mm };

  if (!is_sloped (pen))
    return roof;
  roof.ridge_mm = pen->ridge_mm;
  roof.across = hc_point_turn (hc_point (1, 0), pen->roof_turn_deg);
  roof.from_mm = G_MAXDOUBLE;
  roof.to_mm = -G_MAXDOUBLE;
  return roof;
}

static void
reach_over (HcRoof *roof, const HcLayout *layout, const HcPen *pen)
{
  g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, pen);

  for (guint i = 0; i < ring->len; i++)
    {
      double at_mm = hc_point_dot (g_array_index (ring, HcPoint, i), roof->across);

      roof->from_mm = MIN (roof->from_mm, at_mm);
      roof->to_mm = MAX (roof->to_mm, at_mm);
    }
}

/* Walls that make no ring leave nothing to slope over. */
static void
end_roof (HcRoof *roof, const HcPenValues *pen)
{
  double share = pen->roof_shape == HC_ROOF_LEAN_TO ? 1 : pen->ridge_at;

  if (roof->from_mm > roof->to_mm)
    *roof = (HcRoof){ .eaves_mm = pen->height_mm, .ridge_mm = pen->height_mm };
  roof->ridge_at_mm = roof->from_mm + share * (roof->to_mm - roof->from_mm);
}

/**
 * hc_layout_get_roofs: (skip)
 * @layout: a layout
 *
 * Returns: (transfer full) (element-type HcRoof): the roof over each of its
 *   pens, in their order
 */
GArray *
hc_layout_get_roofs (const HcLayout *layout)
{
  HcParts *pens = hc_layout_get (layout)->pens;
  GArray *roofs = g_array_sized_new (FALSE, TRUE, sizeof (HcRoof), pens->len);
  g_autofree guint *under = g_new (guint, pens->len + 1);
  Houses houses = { pens, under };

  find_pens_under_one_roof (&houses);
  for (guint i = 0; i < pens->len; i++)
    {
      HcRoof roof = begin_roof (hc_pen_get (pens->pdata[i]));

      g_array_append_val (roofs, roof);
      if (hc_roof_is_sloped (&roof))
        reach_over (&g_array_index (roofs, HcRoof, find_first (&houses, i)), layout,
                    pens->pdata[i]);
    }
  for (guint i = 0; i < pens->len; i++)
    if (find_first (&houses, i) == i)
      end_roof (&g_array_index (roofs, HcRoof, i), hc_pen_get (pens->pdata[i]));
    else
      g_array_index (roofs, HcRoof, i) = g_array_index (roofs, HcRoof, find_first (&houses, i));
  return roofs;
}

/**
 * hc_layout_get_roof: (skip)
 * @layout: a layout
 * @pen: id of a pen of it
 *
 * Returns: the roof over it
 */
HcRoof
hc_layout_get_roof (const HcLayout *layout, const char *pen)
{
  g_autoptr (GArray) roofs = hc_layout_get_roofs (layout);
  guint index;

  if (!hc_parts_find_index (hc_layout_get (layout)->pens, pen, &index))
    g_return_val_if_reached ((HcRoof){ 0 });
  return g_array_index (roofs, HcRoof, index);
}

gboolean
hc_roof_equal (const HcRoof *one, const HcRoof *other)
{
  return one->eaves_mm == other->eaves_mm && one->ridge_mm == other->ridge_mm
         && hc_point_equal (one->across, other->across) && one->from_mm == other->from_mm
         && one->ridge_at_mm == other->ridge_at_mm && one->to_mm == other->to_mm;
}
