/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every state a house can come to rest in. */
#pragma once

#include "air/trial.h"

G_BEGIN_DECLS

/**
 * HC_AIR_MOST_STATES:
 *
 * The most states of one house that are told.
 */
#define HC_AIR_MOST_STATES 6

/**
 * HcAirStates:
 * @faults: what was drawn in, or not found: a set of #HcAirFault
 * @n_states: how many were found, those the house does not stay in among them
 * @states: (array length=n_states): them
 * @worst: which of those it stays in is the dampest
 *
 * All the states a house can come to rest in.
 */
typedef struct
{
  guint faults;
  guint n_states;
  HcAirState states[HC_AIR_MOST_STATES];
  guint worst;
} HcAirStates;

void hc_air_settle (const HcAirHouse *house, HcAirStates *states);
void hc_air_settle_near (const HcAirHouse *house, const HcAirState *near, HcAirStates *states);
double hc_air_state_get_surface_c (const HcAirState *state, const HcAirHouse *house,
                                   const HcAirSurface *surface);
HcAirFlow hc_air_state_get_flow (const HcAirState *state, const HcAirHouse *house,
                                 const HcAirPath *path);

/* Shared by the two ways of looking. */
void hc_air_states_add (HcAirStates *states, const HcAirTrial *trial, gboolean stable);
void hc_air_find_in_one_space (HcAirTrial *trial, HcAirStates *states);
void hc_air_find_in_spaces (HcAirTrial *trial, const HcAirState *near, HcAirStates *states);
double hc_air_find_hottest_c (HcAirTrial *trial);

G_END_DECLS
