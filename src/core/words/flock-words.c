/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Groups of birds in words. */
#include "config.h"

#include "words/flock-words.h"

#include <glib/gi18n-lib.h>

static const char *
bird_name (HcBook *book, const HcBatchValues *batch, gulong count)
{
  const HcBreed *breed = batch->breed != NULL ? hc_book_get_breed (book, batch->breed) : NULL;
  const HcKind *kind = batch->kind != NULL ? hc_book_get_kind (book, batch->kind) : NULL;

  if (breed != NULL)
    return hc_breed_get_name (breed);
  return kind != NULL ? hc_kind_get_name (kind, count) : ngettext ("bird", "birds", count);
}

/**
 * hc_words_batch:
 * @book: the book of the trade
 * @batch: a group of birds
 *
 * Returns: (transfer full): its name if it has one, else "9 + 1 Orpington":
 *   females, males if any, breed or kind
 */
char *
hc_words_batch (HcBook *book, const HcBatch *batch)
{
  const HcBatchValues *values = hc_batch_get (batch);
  const char *bird = bird_name (book, values, (gulong) (values->females + values->males));

  if (values->name != NULL && *values->name != '\0')
    return g_strdup (values->name);
  if (values->males == 0)
    /* Translators: number of females, breed or kind of bird */
    return g_strdup_printf (_("%d %s"), values->females, bird);
  /* Translators: females, males, breed or kind of bird: "9 + 1 Orpington" */
  return g_strdup_printf (_("%d + %d %s"), values->females, values->males, bird);
}
