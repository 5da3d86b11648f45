/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lines and columns, for errors about text. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcTextPlace: (skip)
 * @line: the line, from 1
 * @column: the character in the line, from 1
 *
 * Where something stands in a text, as editors count it.
 */
typedef struct
{
  guint line;
  guint column;
} HcTextPlace;

HcTextPlace hc_text_place (const char *text,
                           gsize offset);

G_END_DECLS
