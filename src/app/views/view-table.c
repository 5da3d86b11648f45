/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The views of a plan that the window has. */
#include "config.h"

#include "app/views/view-table.h"

#include "app/floor/floor-view.h"
#include "app/side/side-view.h"
#include "app/weather/weather-view.h"

#include <glib/gi18n.h>

static const HcViewKind kinds[] = {
  /* Translators: the plan seen from above, on the tab of a view */
  { "floor", N_ ("Floor"), "<Control>1", hc_floor_view_get_type },
  /* Translators: the plan seen from its side, cut open, on the tab of a view */
  { "side", N_ ("Side"), "<Control>2", hc_side_view_get_type },
  /* Translators: cold nights and hot days in the house, on the tab of a view */
  { "weather", N_ ("Weather"), "<Control>3", hc_weather_view_get_type },
};

/**
 * hc_view_kinds_list: (skip)
 * @n_kinds: (out): how many there are
 *
 * Returns: (transfer none) (array length=n_kinds): the views, as their tabs stand
 */
const HcViewKind *
hc_view_kinds_list (guint *n_kinds)
{
  *n_kinds = G_N_ELEMENTS (kinds);
  return kinds;
}
