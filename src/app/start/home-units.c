/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The units a new plan begins with. */
#include "config.h"

#include "app/start/home-units.h"

#include <langinfo.h>

/**
 * hc_home_units:
 *
 * Returns: what the locale measures in; the C library tells it
 */
HcUnits
hc_home_units (void)
{
  const char *measurement = nl_langinfo (_NL_MEASUREMENT_MEASUREMENT);

  return *measurement == 2 ? HC_UNITS_FEET : HC_UNITS_METRIC;
}
