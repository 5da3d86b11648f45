/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The book on the shelf of a test, and short ways to look into it. */
#pragma once

#include "book/book.h"

#include <stdlib.h>

static HcBook *on_shelf = NULL;

static void
shelf_clear (void)
{
  g_clear_pointer (&on_shelf, hc_book_unref);
}

G_GNUC_UNUSED static HcBook *
shelf_book (void)
{
  g_autoptr (GError) error = NULL;

  if (on_shelf != NULL)
    return on_shelf;
  on_shelf = hc_book_load_default (&error);
  g_assert_no_error (error);
  atexit (shelf_clear);
  return on_shelf;
}

G_GNUC_UNUSED static const HcKind *
shelf_kind (const char *id)
{
  const HcKind *kind = hc_book_get_kind (shelf_book (), id);

  g_assert_nonnull (kind);
  return kind;
}

G_GNUC_UNUSED static HcStandard *
shelf_standard (const char *id)
{
  HcStandard *standard = hc_book_get_standard (shelf_book (), id);

  g_assert_nonnull (standard);
  return standard;
}

G_GNUC_UNUSED static const HcDemand *
shelf_demand (const char *standard, const char *name, const char *kind, int week)
{
  const HcDemand *demand
      = hc_standard_find_demand (shelf_standard (standard), name,
                                 kind != NULL ? shelf_kind (kind) : NULL, week,
                                 HC_CONDITION_DAY);

  g_assert_nonnull (demand);
  return demand;
}

G_GNUC_UNUSED static const HcLimit *
shelf_limit (const char *standard, const char *name, const char *kind)
{
  const HcLimit *limit
      = hc_standard_find_limit (shelf_standard (standard), name,
                                kind != NULL ? shelf_kind (kind) : NULL, HC_WEEK_GROWN,
                                HC_CONDITION_DAY);

  g_assert_nonnull (limit);
  return limit;
}
