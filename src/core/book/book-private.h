/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a book holds, for its loader. */
#pragma once

#include "book/book.h"
#include "book/keep.h"
#include "book/source-reader.h"

G_BEGIN_DECLS

/* Private to book/. A kept table whose entries begin with their id. */
typedef struct
{
  gconstpointer entries;
  gsize size;
  guint n;
} HcTable;

/* What the entries of a data file refer to. */
typedef struct
{
  const HcTable *kinds;
  HcSources sources;
} HcDataContext;

struct _HcBook
{
  gatomicrefcount refs;
  HcKeep *keep;
  HcTable kinds;
  HcTable breeds;
  HcTable lives;
  HcTable composts;
  HcTable egg_classes;
  HcTable feeds;
  HcTable cares;
  HcTable heat_laws;
  HcTable air_figures;
  HcTable fitting_types;
  HcTable opening_types;
  HcTable floor_layers;
  HcTable beddings;
  HcTable meshes;
  HcTable latches;
  HcTable constructions;
  HcTable predators;
  HcTable house_measures;
  GPtrArray *standards;
};

HcBook *hc_book_new (void) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
