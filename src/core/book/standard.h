/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whose rules: a named set of figures and their sources. */
#pragma once

#include "book/demand.h"
#include "book/limit.h"

#include <glib-object.h>

G_BEGIN_DECLS

/**
 * HcStandard:
 *
 * A set of figures, immutable and shared by reference. Its figures live as
 * long as it does.
 */
typedef struct _HcStandard HcStandard;

#define HC_TYPE_STANDARD (hc_standard_get_type ())

/**
 * HcOverride:
 * @figure: id of the figure
 * @value: the keeper's own value, in the unit the figure is stated in
 * @reason: (nullable): why
 *
 * The keeper's own figure, which stands for all levels: least, good and plenty.
 */
typedef struct
{
  const char *figure;
  double value;
  const char *reason;
} HcOverride;

GType hc_standard_get_type (void);
HcStandard *hc_standard_ref (HcStandard *self);
void hc_standard_unref (HcStandard *self);

const char *hc_standard_get_id (const HcStandard *self);
const char *hc_standard_get_name (const HcStandard *self);
const char *hc_standard_get_about (const HcStandard *self);
gboolean hc_standard_is_minimum_only (const HcStandard *self);
gboolean hc_standard_counts_platforms (const HcStandard *self);
HcStandard *hc_standard_get_fallback (const HcStandard *self);

guint hc_standard_get_n_limits (const HcStandard *self);
const HcLimit *hc_standard_get_limit (const HcStandard *self, guint index);
guint hc_standard_get_n_demands (const HcStandard *self);
const HcDemand *hc_standard_get_demand (const HcStandard *self, guint index);
guint hc_standard_get_n_sources (const HcStandard *self);
const HcSource *hc_standard_get_source (const HcStandard *self, guint index);

const HcLimit *hc_standard_find_limit (const HcStandard *self, const char *name,
                                       const HcKind *kind, int week,
                                       HcCondition condition);
const HcDemand *hc_standard_find_demand (const HcStandard *self, const char *name,
                                         const HcKind *kind, int week,
                                         HcCondition condition);
const HcFigure *hc_standard_find_figure (const HcStandard *self, const char *id);

HcStandard *hc_standard_with_overrides (HcStandard *self, const HcOverride *overrides,
                                        gsize n_overrides) G_GNUC_WARN_UNUSED_RESULT;

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcStandard, hc_standard_unref)

G_END_DECLS
