/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is uncertain about a house's air, and what is reckoned with. */
#pragma once

#include "book/book.h"

G_BEGIN_DECLS

/**
 * HcGuess:
 * @HC_GUESS_NIGHT_HEAT: heat of a sleeping flock against the mean of the day
 * @HC_GUESS_LITTER: water from droppings and litter, g/h for a bird of 2 kg
 * @HC_GUESS_DISCHARGE: share of the ideal flow that passes a vent
 * @HC_GUESS_CRACKS: cracks against those of the construction
 * @HC_GUESS_FLOOR_EDGE: heat a floor loses for each metre of edge, W/(m·K)
 * @HC_GUESS_CLEAR_SKY: how much colder than the air a roof seems by night, K
 * @HC_GUESS_SPLASHED: share of their water that waterfowl splash about
 * @HC_N_GUESSES: how many there are
 *
 * What is uncertain about a house's air.
 */
typedef enum
{
  HC_GUESS_NIGHT_HEAT,
  HC_GUESS_LITTER,
  HC_GUESS_DISCHARGE,
  HC_GUESS_CRACKS,
  HC_GUESS_FLOOR_EDGE,
  HC_GUESS_CLEAR_SKY,
  HC_GUESS_SPLASHED,
  HC_N_GUESSES
} HcGuess;

/**
 * HcGuesses:
 * @at: (array fixed-size=7): what is reckoned with, by #HcGuess
 *
 * One choice of all that is uncertain.
 */
typedef struct
{
  double at[HC_N_GUESSES];
} HcGuesses;

const HcAirFigure *hc_guess_get_figure (const HcBook *book, HcGuess guess);
void hc_guesses_init (HcGuesses *self, const HcBook *book);

G_END_DECLS
