/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What stands about a place and slows its wind. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcTerrain:
 * @HC_TERRAIN_WATER: by the sea or a lake
 * @HC_TERRAIN_OPEN: open fields
 * @HC_TERRAIN_SHELTERED: woods, hedges, suburbs
 * @HC_TERRAIN_TOWN: a town
 */
typedef enum
{
  HC_TERRAIN_WATER,
  HC_TERRAIN_OPEN,
  HC_TERRAIN_SHELTERED,
  HC_TERRAIN_TOWN,
} HcTerrain;

G_END_DECLS
