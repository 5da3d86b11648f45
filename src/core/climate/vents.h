/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How far to open which vent. */
#pragma once

#include "climate/house-night.h"

G_BEGIN_DECLS

/**
 * HcVentStep:
 * @id: (transfer none): id of a vent or window
 * @was: how far it stands open now, 0 to 1
 * @open: how far it should
 *
 * One vent to open or shut.
 */
typedef struct
{
  const char *id;
  double was;
  double open;
} HcVentStep;

GArray *hc_vents_solve (const HcHouseNight *asked, HcNight *after) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
