/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The words that stand for choices in data files, in the order of their types. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* Private to book/. Each list ends with NULL. */
extern const char *const hc_condition_words[];
extern const char *const hc_evidence_words[];
extern const char *const hc_figure_unit_words[];
extern const char *const hc_basis_of_words[];
extern const char *const hc_direction_words[];
extern const char *const hc_species_words[];
extern const char *const hc_comb_words[];
extern const char *const hc_perching_words[];
extern const char *const hc_purpose_words[];
extern const char *const hc_hardiness_words[];
extern const char *const hc_temper_words[];
extern const char *const hc_fitting_group_words[];
extern const char *const hc_units_words[];

gboolean hc_words_find (const char *const *words, const char *word, int *index);

G_END_DECLS
