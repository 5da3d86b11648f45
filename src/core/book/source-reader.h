/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading what was published. */
#pragma once

#include "book/record.h"
#include "book/source.h"

G_BEGIN_DECLS

/* Private to book/. The sources listed in a file. */
typedef struct
{
  const HcSource *entries;
  guint n;
} HcSources;

void hc_sources_read (HcSources *self, HcRecord *root);
HcEvidence hc_sources_read_grounds (const HcSources *self, HcRecord *record,
                                    const HcSource **source);

G_END_DECLS
