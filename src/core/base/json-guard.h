/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Turns away text that no JSON reader should be handed. */
#pragma once

#include "base/json-place.h"

G_BEGIN_DECLS

/**
 * HcJsonGuardLimits: (skip)
 * @most_bytes: the longest text
 * @most_depth: the most lists and objects inside one another
 * @most_values: the most values, names not counted
 *
 * How much is read at all.
 */
typedef struct
{
  gsize most_bytes;
  guint most_depth;
  guint most_values;
} HcJsonGuardLimits;

extern const HcJsonGuardLimits hc_json_usual_limits;

gboolean hc_json_guard (const char *text,
                        gsize length,
                        const HcJsonGuardLimits *limits,
                        GError **error);
gboolean hc_json_locate (const char *text,
                         gsize length,
                         const char *path,
                         HcTextPlace *place);

G_END_DECLS
