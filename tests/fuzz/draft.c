/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fuzz target: any bytes as a draft. */
#include "config.h"

#include "files/draft-text.h"
#include "fuzz.h"

int
LLVMFuzzerTestOneInput (const unsigned char *data,
                        size_t size)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HcDraft) draft = hc_draft_read ("draft", (const char *) data, size, &error);

  g_assert_true ((draft == NULL) == (error != NULL));
  return 0;
}
