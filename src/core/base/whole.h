/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The one place where measures become whole birds, and lengths become equal. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HC_WHOLE_TOLERANCE:
 *
 * How much of one bird may be missing and still count as a whole bird.
 *
 * A thousandth of a hen's seat is 0.2 mm: less than a saw cut, more than what
 * rounding coordinates to 0.001 mm can take from a floor.
 */
#define HC_WHOLE_TOLERANCE 0.001

/**
 * HC_WHOLE_MANY:
 *
 * The most birds any answer gives: what is offered has no end, or a bird asks
 * nothing of it. Small enough that a plan's places can be added up safely.
 */
#define HC_WHOLE_MANY G_GINT64_CONSTANT (1000000000)

gint64 hc_whole_fit (double offered,
                     double each);
gint64 hc_whole_asked (double asked);
double hc_mm (double length_mm);
double hc_fine (double figure);

G_END_DECLS
