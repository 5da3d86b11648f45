/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How a standard is put together, for its reader. */
#pragma once

#include "book/keep.h"
#include "book/source-reader.h"
#include "book/standard.h"

G_BEGIN_DECLS

/* Private to book/. Limits and demands are kept in the order of their names,
 * those of one name in the order of the file. */
struct _HcStandard
{
  gatomicrefcount refs;
  HcKeep *keep;
  HcStandard *base;
  HcStandard *fallback;
  const char *id;
  const char *name;
  const char *about;
  gboolean minimum_only;
  gboolean platforms_count;
  HcSources sources;
  HcLimit *limits;
  guint n_limits;
  HcDemand *demands;
  guint n_demands;
};

HcStandard *hc_standard_new (HcKeep *keep) G_GNUC_WARN_UNUSED_RESULT;
void hc_standard_sort (HcStandard *self);
void hc_standard_work_out_shares (HcStandard *self);
HcDemand *hc_standard_find_demand_by_id (const HcStandard *self, const char *id);
HcLimit *hc_standard_find_limit_by_id (const HcStandard *self, const char *id);

G_END_DECLS
