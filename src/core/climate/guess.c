/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is uncertain about a house's air, and what is reckoned with. */
#include "config.h"

#include "climate/guess.h"

static const char *const figures[HC_N_GUESSES] = {
  [HC_GUESS_NIGHT_HEAT] = "night_share",
  [HC_GUESS_LITTER] = "litter_g_h",
  [HC_GUESS_DISCHARGE] = "discharge",
  [HC_GUESS_CRACKS] = "crack_share",
  [HC_GUESS_FLOOR_EDGE] = "floor_edge",
  [HC_GUESS_CLEAR_SKY] = "clear_sky_k",
  [HC_GUESS_SPLASHED] = "splashed_share",
};

/**
 * hc_guess_get_figure: (skip)
 * @book: the book
 * @guess: what is uncertain
 *
 * Returns: (transfer none): the figure, with its range and source
 */
const HcAirFigure *
hc_guess_get_figure (const HcBook *book, HcGuess guess)
{
  return hc_book_get_air_figure (book, figures[guess]);
}

/**
 * hc_guesses_init: (skip)
 * @self: (out caller-allocates): what is reckoned with
 * @book: the book
 */
void
hc_guesses_init (HcGuesses *self, const HcBook *book)
{
  for (guint i = 0; i < HC_N_GUESSES; i++)
    self->at[i] = hc_guess_get_figure (book, i)->value;
}
