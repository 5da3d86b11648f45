/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * New lines in plan files. */
#pragma once

#include <glib.h>

/* Starts a line, two spaces in for each step of @depth; files are 64 deep. */
static inline void
hc_indent (GString *into,
           guint depth)
{
  static const char spaces[] = "\n                                                                "
                               "                                                                ";

  g_string_append_len (into, spaces, 1 + (gssize) MIN (depth, 64) * 2);
}
