/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * To whom and when a figure applies. */
#include "config.h"

#include "book/figure.h"

#include "book/translate.h"

/**
 * hc_figure_get_note:
 * @self: a figure
 *
 * Returns: (nullable): its remark in the keeper's language
 */
const char *
hc_figure_get_note (const HcFigure *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  return hc_translate (self->note);
}

/**
 * hc_figure_applies:
 * @self: a figure
 * @kind: (nullable): a kind of bird, or %NULL for none in particular
 * @week: the birds' week of life, 1 for the week they hatch in
 * @condition: when
 *
 * Returns: whether the figure is meant for these birds then
 */
gboolean
hc_figure_applies (const HcFigure *self, const HcKind *kind, int week, HcCondition condition)
{
  g_return_val_if_fail (self != NULL, FALSE);
  if (self->kinds != 0 && (kind == NULL || (self->kinds & (1u << kind->order)) == 0))
    return FALSE;
  if (self->conditions != 0 && (self->conditions & (1u << condition)) == 0)
    return FALSE;
  return self->weeks_from <= week && week <= self->weeks_to;
}
