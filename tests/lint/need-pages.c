/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Prints the manual page of every need, a line each. */
#include "config.h"

#include "needs/need.h"

int
main (void)
{
  for (HcNeedId id = 0; id < HC_N_NEEDS; id++)
    g_print ("%s\n", hc_need_get (id)->help);
  return 0;
}
