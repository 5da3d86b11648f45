/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Boxes sorted into square cells about as many as there are boxes. */
#include "config.h"

#include "base/nearby.h"

#include <math.h>

#define SMALLEST_CELL_MM 250.0

typedef struct
{
  guint left, right, top, bottom;
} CellRange;

struct _HcNearby
{
  HcBox *boxes;
  CellRange *ranges;
  guint n_boxes;
  HcBox bounds;
  double cell_mm;
  guint columns, rows;
  GArray **cells;
};

static guint
cell_at (double from_mm, double cell_mm, guint n_cells)
{
  double cell = floor (from_mm / cell_mm);

  return cell <= 0 ? 0 : (guint) MIN (cell, n_cells - 1);
}

static CellRange
find_cells (const HcNearby *nearby, HcBox box)
{
  double x_mm = box.x_mm - nearby->bounds.x_mm;
  double y_mm = box.y_mm - nearby->bounds.y_mm;

  return (CellRange){
    cell_at (x_mm, nearby->cell_mm, nearby->columns),
    cell_at (x_mm + box.width_mm, nearby->cell_mm, nearby->columns),
    cell_at (y_mm, nearby->cell_mm, nearby->rows),
    cell_at (y_mm + box.depth_mm, nearby->cell_mm, nearby->rows),
  };
}

static void
choose_cells (HcNearby *nearby)
{
  double area_mm2;

  nearby->bounds = hc_box_empty ();
  for (guint i = 0; i < nearby->n_boxes; i++)
    nearby->bounds = hc_box_join (nearby->bounds, nearby->boxes[i]);
  if (hc_box_is_empty (nearby->bounds))
    nearby->bounds = (HcBox){ 0, 0, 0, 0 };
  area_mm2 = (nearby->bounds.width_mm + 1) * (nearby->bounds.depth_mm + 1);
  nearby->cell_mm = MAX (SMALLEST_CELL_MM, sqrt (area_mm2 / MAX (nearby->n_boxes, 1)));
  nearby->cell_mm = MAX (nearby->cell_mm, MAX (nearby->bounds.width_mm, nearby->bounds.depth_mm)
                                              / MAX (nearby->n_boxes, 1));
  nearby->columns = (guint) (nearby->bounds.width_mm / nearby->cell_mm) + 1;
  nearby->rows = (guint) (nearby->bounds.depth_mm / nearby->cell_mm) + 1;
}

static void
put_in_cells (HcNearby *nearby, guint box)
{
  CellRange range = find_cells (nearby, nearby->boxes[box]);

  nearby->ranges[box] = range;
  for (guint row = range.top; row <= range.bottom; row++)
    for (guint column = range.left; column <= range.right; column++)
      {
        GArray **cell = &nearby->cells[row * nearby->columns + column];

        if (*cell == NULL)
          *cell = g_array_new (FALSE, FALSE, sizeof (guint));
        g_array_append_val (*cell, box);
      }
}

HcNearby *
hc_nearby_new (const HcBox *boxes, guint n_boxes)
{
  HcNearby *nearby = g_new0 (HcNearby, 1);

  nearby->boxes = g_memdup2 (boxes, n_boxes * sizeof (HcBox));
  nearby->n_boxes = n_boxes;
  choose_cells (nearby);
  nearby->ranges = g_new0 (CellRange, n_boxes);
  nearby->cells = g_new0 (GArray *, (gsize) nearby->columns * nearby->rows);
  for (guint i = 0; i < n_boxes; i++)
    if (!hc_box_is_empty (boxes[i]))
      put_in_cells (nearby, i);
  return nearby;
}

void
hc_nearby_free (HcNearby *nearby)
{
  for (gsize i = 0; i < (gsize) nearby->columns * nearby->rows; i++)
    if (nearby->cells[i] != NULL)
      g_array_unref (nearby->cells[i]);
  g_free (nearby->cells);
  g_free (nearby->ranges);
  g_free (nearby->boxes);
  g_free (nearby);
}

static int
compare_indices (gconstpointer a, gconstpointer b)
{
  guint one = *(const guint *) a, other = *(const guint *) b;

  return (one > other) - (one < other);
}

/* A box lies in many cells and is met in the first of them that is looked at. */
static gboolean
is_first_met (const HcNearby *nearby, guint box, const CellRange *range, guint row, guint column)
{
  const CellRange *own = &nearby->ranges[box];

  return row == MAX (own->top, range->top) && column == MAX (own->left, range->left);
}

static void
gather (const HcNearby *nearby, HcBox box, const CellRange *range, guint row, guint column,
        GArray *found)
{
  const GArray *cell = nearby->cells[row * nearby->columns + column];

  for (guint i = 0; cell != NULL && i < cell->len; i++)
    {
      guint at = g_array_index (cell, guint, i);

      if (is_first_met (nearby, at, range, row, column)
          && hc_box_touches (nearby->boxes[at], box))
        g_array_append_val (found, at);
    }
}

/**
 * hc_nearby_find: (skip)
 * @nearby: what was laid out
 * @box: a part of the plan
 *
 * Returns: (transfer full) (element-type guint): which of the boxes touch
 *   @box, in order
 */
GArray *
hc_nearby_find (const HcNearby *nearby, HcBox box)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (guint));
  CellRange range = find_cells (nearby, box);

  for (guint row = range.top; row <= range.bottom; row++)
    for (guint column = range.left; column <= range.right; column++)
      gather (nearby, box, &range, row, column, found);
  g_array_sort (found, compare_indices);
  return found;
}
