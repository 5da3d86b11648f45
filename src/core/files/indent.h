/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * New lines in plan files. */
#pragma once

#include <glib.h>

/* Starts a line, two spaces in for each step of @depth. */
static inline void
hc_indent (GString *into,
           guint depth)
{
  g_string_append_printf (into, "\n%*s", (int) depth * 2, "");
}
