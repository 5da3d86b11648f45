/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A tight coop with a run, to be spoilt in one place at a time. */
#pragma once

#include "house.h"

/* Pen 'p' on concrete with a bar, run 'q' behind fences of 12 mm mesh, under
 * such mesh and with a dig guard. Openings: o0 the pop hole between them, o1 a
 * keeper door, o2 a window, o3 a vent, o4 an egg door, o5 a gate of the run. */
#define COOP_POP_HOLE "o0"
#define COOP_DOOR "o1"
#define COOP_WINDOW "o2"
#define COOP_VENT "o3"
#define COOP_EGG_DOOR "o4"
#define COOP_GATE "o5"

void coop_init (House *coop, const char *animal);
HcPenValues *coop_pen (House *coop, const char *id);
HcWallValues *coop_wall (House *coop, const char *id);
HcOpeningValues *coop_opening (House *coop, const char *id);
void coop_floor (House *coop, const char *pen, const char *layer);
