/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Stands in front of JSON readers that keep no places and check little. */
#include "config.h"

#include "base/json-guard.h"

#include "base/json-text.h"

/**
 * hc_json_guard: (skip)
 * @text: (array length=length): text from anywhere
 * @length: its length in bytes
 * @limits: (nullable): how much is read; %NULL for the usual 16 MiB, 64 deep,
 *   200,000 values
 * @error: where to put %HC_ERROR_FILE, naming line and column
 *
 * Lets only strict JSON (RFC 8259) through: UTF-8 without a byte order mark,
 * no comments, no member twice in one object, every number finite, no half
 * surrogate pairs and no character 0.
 *
 * Returns: whether the text is safe to parse
 */
gboolean
hc_json_guard (const char *text,
               gsize length,
               const HcJsonGuardLimits *limits,
               GError **error)
{
  g_autoptr (HcJsonText) scanned = hc_json_text_scan (text, length, limits, error);

  return scanned != NULL;
}

/**
 * hc_json_locate: (skip)
 * @text: (array length=length): text that passed the guard
 * @length: its length in bytes
 * @path: what to look for, such as "variants[0].pens[2].height_mm"
 * @place: (out): where its value starts; where the last part of the path that
 *   exists starts when it does not
 *
 * Returns: whether the whole path exists
 */
gboolean
hc_json_locate (const char *text,
                gsize length,
                const char *path,
                HcTextPlace *place)
{
  g_autoptr (HcJsonText) scanned = hc_json_text_scan (text, length, NULL, NULL);
  guint value = 0;
  gboolean whole;

  *place = (HcTextPlace){ 1, 1 };
  if (scanned == NULL)
    return FALSE;
  whole = hc_json_text_find (scanned, path, &value);
  *place = hc_text_place (text, scanned->values[value].start);
  return whole;
}
