/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Looks for openings that do not fit in their walls. */
#include "config.h"

#include "plan/fault-private.h"

#include <math.h>
#include <string.h>

/* Slips of the tape up to this are no fault. */
#define SLACK_MM 1.0
/* Openings of one wall are compared with every other. */
#define MOST_IN_WALL 200

typedef struct
{
  const HcOpeningValues *values;
  guint index;
} Hole;

static gboolean
find_fault_of_place (const HcOpening *opening,
                     GHashTable *parts,
                     HcFault *fault)
{
  const HcOpeningValues *values = hc_opening_get (opening);
  HcWall *wall = hc_named_part (parts, values->wall, &hc_wall_class);
  double half_mm = values->width_mm / 2;
  HcPoint from, to;

  if (wall == NULL)
    return hc_fault_set (fault, HC_FAULT_NO_SUCH, "wall", values->wall, NULL);
  if (!hc_wall_get_ends (wall, parts, &from, &to))
    return FALSE;
  return (values->along_mm - half_mm < -SLACK_MM
          || values->along_mm + half_mm > hc_point_distance (from, to) + SLACK_MM)
         && hc_fault_set (fault, HC_FAULT_PAST_END, "along_mm", hc_opening_get_id (opening),
                          values->wall);
}

static int
compare_holes (gconstpointer a,
               gconstpointer b)
{
  const Hole *one = a, *other = b;

  int order = strcmp (one->values->wall, other->values->wall);

  return order != 0 ? order : (one->index > other->index) - (one->index < other->index);
}

static GArray *
holes_by_wall (const HcLayoutValues *layout)
{
  GArray *holes = g_array_new (FALSE, FALSE, sizeof (Hole));

  for (guint i = 0; i < layout->openings->len; i++)
    {
      Hole hole = { hc_opening_get (layout->openings->pdata[i]), i };

      g_array_append_val (holes, hole);
    }
  g_array_sort (holes, compare_holes);
  return holes;
}

static gboolean
are_in_one_wall (const Hole *a,
                 const Hole *b)
{
  return g_str_equal (a->values->wall, b->values->wall);
}

static gboolean
lie_over_each_other (const HcOpeningValues *a,
                     const HcOpeningValues *b)
{
  double apart_mm = fabs (a->along_mm - b->along_mm) - (a->width_mm + b->width_mm) / 2;
  double above_mm = MAX (a->sill_mm, b->sill_mm)
                    - MIN (a->sill_mm + a->height_mm, b->sill_mm + b->height_mm);

  return apart_mm < -SLACK_MM && above_mm < -SLACK_MM;
}

static gboolean
set_fault (const HcLayoutValues *layout,
           HcFaultKind kind,
           guint index,
           guint other,
           HcFault *fault)
{
  hc_fault_set (fault, kind, NULL, hc_part_get_id (layout->openings->pdata[index]),
                hc_part_get_id (layout->openings->pdata[other]));
  return hc_fault_inside_item (fault, "openings", index);
}

static gboolean
find_overlap (const HcLayoutValues *layout,
              HcFault *fault)
{
  g_autoptr (GArray) sorted = holes_by_wall (layout);
  const Hole *holes = (const Hole *) sorted->data;

  for (guint i = 0; i < sorted->len; i++)
    for (guint j = i; j-- > 0 && are_in_one_wall (&holes[i], &holes[j]);)
      {
        if (i - j >= MOST_IN_WALL)
          return set_fault (layout, HC_FAULT_TOO_MANY, holes[i].index, holes[j].index, fault);
        if (lie_over_each_other (holes[i].values, holes[j].values))
          return set_fault (layout, HC_FAULT_OVERLAP, holes[i].index, holes[j].index, fault);
      }
  return FALSE;
}

/**
 * hc_openings_find_fault: (skip)
 * @layout: a layout whose walls are sound
 * @parts: (element-type utf8 HcPart): its parts by id
 * @fault: (out caller-allocates): filled when something is wrong
 *
 * Openings one above the other are sound: a vent over a door.
 *
 * Returns: whether an opening is in no wall, past its end or over another
 */
gboolean
hc_openings_find_fault (const HcLayoutValues *layout,
                        GHashTable *parts,
                        HcFault *fault)
{
  for (guint i = 0; i < layout->openings->len; i++)
    if (find_fault_of_place (layout->openings->pdata[i], parts, fault))
      return hc_fault_inside_item (fault, "openings", i);
  return find_overlap (layout, fault);
}
