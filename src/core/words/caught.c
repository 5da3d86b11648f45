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
