/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How high things are, and how much room is over them. */
#include "config.h"

#include "words/height-words.h"

#include "words/house-words.h"

#include <glib/gi18n-lib.h>

/**
 * hc_words_upright: (skip)
 * @upright: the room over and under a thing
 * @units: the keeper's units
 *
 * Returns: (transfer full): "60 cm above the floor, 1.4 m free over it"
 */
char *
hc_words_upright (const HcUpright *upright, HcUnits units)
{
  g_autofree char *height = hc_length_format (upright->bottom_mm, units);
  g_autofree char *over = NULL;

  if (upright->over_mm == G_MAXDOUBLE)
    /* Translators: %s is a height */
    return g_strdup_printf (_("%s above the floor, open sky over it"), height);
  over = hc_length_format (upright->over_mm - upright->top_mm, units);
  /* Translators: a height, then the headroom */
  return g_strdup_printf (_("%s above the floor, %s free over it"), height, over);
}

/**
 * hc_words_opening_height: (skip)
 * @opening: an opening
 * @units: the keeper's units
 *
 * Returns: (transfer full): "lower edge 30 cm above the floor"
 */
char *
hc_words_opening_height (const HcOpening *opening, HcUnits units)
{
  g_autofree char *sill = hc_length_format (hc_opening_get (opening)->sill_mm, units);

  return g_strdup_printf (_("lower edge %s above the floor"), sill);
}

/**
 * hc_words_bedding: (skip)
 * @pen: a pen
 * @units: the keeper's units
 *
 * Returns: (transfer full): "Bedding of Byre end, 15 cm deep"
 */
char *
hc_words_bedding (const HcPen *pen, HcUnits units)
{
  g_autofree char *name = hc_words_pen_name (pen);
  g_autofree char *depth = hc_length_format (hc_pen_get (pen)->bedding_mm, units);

  /* Translators: the name of a pen, then a depth */
  return g_strdup_printf (_("Bedding of %s, %s deep"), name, depth);
}

/**
 * hc_words_bedding_limit: (skip)
 * @limit: what bedding comes up to
 * @units: the keeper's units
 *
 * Returns: (transfer full): what happens above it
 */
char *
hc_words_bedding_limit (const HcBeddingLimit *limit, HcUnits units)
{
  static const char *const words[] = {
    /* Translators: three lines that bedding should stay below; %s is a height */
    [HC_BEDDING_SPILLS] = N_("above %s it spills out"),
    [HC_BEDDING_STOPS_DOOR] = N_("above %s it holds the door shut"),
    [HC_BEDDING_INTO_NESTS] = N_("above %s it is level with the nests"),
  };
  g_autofree char *height = hc_length_format (limit->height_mm, units);

  return g_strdup_printf (_(words[limit->kind]), height);
}
