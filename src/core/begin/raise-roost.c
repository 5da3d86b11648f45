/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * More bars to sleep on, along the north wall, over a droppings board. */
#include "config.h"

#include "begin/bare-house.h"
#include "begin/house-figure.h"
#include "begin/raise.h"

#include "base/box.h"
#include "book/make-fitting.h"
#include "plan/edit-fitting.h"

#define ROOST "roost"
#define BOARD "board"

typedef struct
{
  double bar_to_bar_mm;
  double bar_to_wall_mm;
  double bar_height_mm;
  double board_below_mm;
  double past_bar_end_mm;
  double board_past_bars_mm;
} Spacing;

static Spacing
spacing_for (const HcPlan *plan, HcBook *book)
{
  return (Spacing){
    hc_house_figure (plan, book, "roost.bar-to-bar", 0),
    hc_house_figure (plan, book, "roost.bar-to-wall", 0),
    hc_house_figure (plan, book, "roost.bar-height", 0),
    hc_house_figure (plan, book, "roost.board-below", 0),
    hc_house_measure (book, "past_bar_end_mm"),
    hc_house_measure (book, "board_past_bars_mm"),
  };
}

/* Bars share the depth evenly, so the first is half a share from the back. */
static HcFittingValues
roost_with (HcFittingValues values, int bars, HcBox inside, const Spacing *spacing)
{
  values.bars = bars;
  values.width_mm = inside.width_mm - 2 * spacing->past_bar_end_mm;
  values.depth_mm = bars * spacing->bar_to_bar_mm;
  values.base_mm = spacing->bar_height_mm;
  values.rise_mm = 0;
  values.x_mm = inside.x_mm + inside.width_mm / 2;
  values.y_mm = inside.y_mm + spacing->bar_to_wall_mm - spacing->bar_to_bar_mm / 2
                + values.depth_mm / 2;
  return values;
}

static HcFittingValues
board_under (HcFittingValues values, const HcFittingValues *roost, HcBox inside,
             const Spacing *spacing)
{
  values.width_mm = roost->width_mm;
  values.depth_mm = roost->y_mm + roost->depth_mm / 2 - inside.y_mm
                    + spacing->board_past_bars_mm;
  values.x_mm = roost->x_mm;
  values.y_mm = inside.y_mm + values.depth_mm / 2;
  values.base_mm = MAX (roost->base_mm - spacing->board_below_mm - values.height_mm, 0);
  return values;
}

/* Where the board leaves no way past it, the keeper steps over it. */
static void
let_step_over (HcPlan *plan, HcBook *book, HcBox inside, HcFittingValues *roost,
               HcFittingValues *board)
{
  double way_mm = hc_house_figure (plan, book, "reach.keeper-way", 0);
  double over_mm = board->base_mm + board->height_mm
                   - hc_house_figure (plan, book, "reach.step-over", G_MAXDOUBLE);

  if (inside.depth_mm - board->depth_mm >= way_mm || over_mm <= 0)
    return;
  roost->base_mm -= over_mm;
  board->base_mm -= over_mm;
}

static HcPlan *
put (HcPlan *plan, const char *id, const HcFittingValues *values)
{
  g_autoptr (HcFitting) fitting = NULL;

  if (hc_layout_get_fitting (hc_plan_get_layout (plan), id, NULL) != NULL)
    return hc_plan_set_fitting (plan, id, values, NULL);
  fitting = hc_fitting_new (id, values);
  return hc_plan_add_fitting (plan, fitting, NULL);
}

static HcFittingValues
start_of (HcPlan *plan, HcBook *book, const char *kind, const char *id)
{
  HcFitting *there = hc_layout_get_fitting (hc_plan_get_layout (plan), id, NULL);
  g_autoptr (HcFitting) made = NULL;

  if (there != NULL)
    return *hc_fitting_get (there);
  made = hc_fitting_type_make (hc_book_get_fitting_type (book, kind, "long"), NULL, id,
                               (HcPoint){ 0, 0 });
  return *hc_fitting_get (made);
}

HcPlan *
hc_raise_roost (HcPlan *plan, HcBook *book)
{
  HcLayout *layout = hc_plan_get_layout (plan);
  HcPen *pen = hc_layout_get_pen (layout, HC_BARE_HOUSE_PEN);
  g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, pen);
  HcBox inside = hc_box_around ((const HcPoint *) ring->data, ring->len);
  HcFitting *there = hc_layout_get_fitting (layout, ROOST, NULL);
  int bars = there != NULL ? hc_fitting_get (there)->bars + 1 : 1;
  Spacing spacing = spacing_for (plan, book);
  HcFittingValues roost
      = roost_with (start_of (plan, book, "roost", ROOST), bars, inside, &spacing);
  HcFittingValues board
      = board_under (start_of (plan, book, "droppings_board", BOARD), &roost, inside, &spacing);
  g_autoptr (HcPlan) with_board = NULL;

  let_step_over (plan, book, inside, &roost, &board);
  if (spacing.bar_to_bar_mm <= 0 || spacing.bar_height_mm <= 0)
    return NULL;
  if (bars > 1
      && board.depth_mm > inside.depth_mm * hc_house_measure (book, "roost_most_share"))
    return NULL;
  with_board = put (plan, BOARD, &board);
  return with_board != NULL ? put (with_board, ROOST, &roost) : NULL;
}
