/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Counts lines and columns, for errors about text. */
#include "config.h"

#include "base/json-place.h"

static gboolean
starts_a_character (char byte)
{
  return ((guchar) byte & 0xc0) != 0x80;
}

/**
 * hc_text_place: (skip)
 * @text: a text with at least @offset bytes
 * @offset: a byte in it
 *
 * Counts from the start of @text, so it is for errors only.
 *
 * Returns: the line and the column of that byte
 */
HcTextPlace
hc_text_place (const char *text,
               gsize offset)
{
  HcTextPlace place = { 1, 1 };

  for (gsize i = 0; i < offset; i++)
    if (text[i] == '\n')
      place = (HcTextPlace){ place.line + 1, 1 };
    else if (starts_a_character (text[i]))
      place.column++;
  return place;
}
