/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The memory a program takes. */
#include "memory.h"

#include <stdlib.h>
#include <string.h>

long
bench_proportional_kb (void)
{
  g_autofree char *told = NULL;
  const char *line;

  if (!g_file_get_contents ("/proc/self/smaps_rollup", &told, NULL, NULL))
    return 0;
  line = strstr (told, "\nPss:");
  return line != NULL ? strtol (line + strlen ("\nPss:"), NULL, 10) : 0;
}
