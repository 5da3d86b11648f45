/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The word beside the line that caught what is dragged. */
#include "config.h"

#include "words/caught.h"

#include <glib/gi18n-lib.h>

/* Translators: each stands beside a line on the floor that caught what is dragged. */
static const char *const words[] = {
  [HC_SNAP_WALL] = N_("against the wall"),
  [HC_SNAP_EDGE] = N_("edge in line"),
  [HC_SNAP_MIDDLE] = N_("middle in line"),
  [HC_SNAP_CORNER] = N_("corner in line"),
  [HC_SNAP_SPACING] = N_("even gaps"),
  [HC_SNAP_BAR_TO_WALL] = N_("bar to wall as the rules ask"),
  [HC_SNAP_BAR_TO_BAR] = N_("bar to bar as the rules ask"),
  [HC_SNAP_FEED_TO_WATER] = N_("feed to water as the rules ask"),
};

/**
 * hc_words_caught: (skip)
 * @kind: what sort of line caught a thing
 *
 * Returns: what the keeper reads beside it
 */
const char *
hc_words_caught (HcSnapKind kind)
{
  g_return_val_if_fail ((guint) kind < G_N_ELEMENTS (words), "");
  return _(words[kind]);
}

/* Translators: each stands beside a line in the side view, at the height where
 * what is raised or lowered was caught. */
static const char *const heights[] = {
  [HC_HEIGHT_AS_BEFORE] = N_("as high as before"),
  [HC_HEIGHT_FLOOR] = N_("on the floor"),
  [HC_HEIGHT_BEDDING] = N_("level with the bedding"),
  [HC_HEIGHT_UNDERSIDE] = N_("undersides level"),
  [HC_HEIGHT_TOP] = N_("tops level"),
  [HC_HEIGHT_OVER_NESTS] = N_("above the nests as the rules ask"),
  [HC_HEIGHT_UNDER_BARS] = N_("below the bars as the rules ask"),
};

/**
 * hc_words_height_caught: (skip)
 * @kind: what sort of height caught a thing
 *
 * Returns: what the keeper reads beside it
 */
const char *
hc_words_height_caught (HcHeightKind kind)
{
  g_return_val_if_fail ((guint) kind < G_N_ELEMENTS (heights), "");
  return _(heights[kind]);
}
