/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Prints the JSON Schema of plan files, to publish it anew. */
#include "config.h"

#include "plan-schema.h"

int
main (void)
{
  g_autofree char *schema = plan_schema_make ();

  g_print ("%s", schema);
  return 0;
}
