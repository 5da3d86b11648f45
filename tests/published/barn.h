/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Barns that figures of outside sources are held against: one rectangular room
 * of exact area, 'p', and what a source counts in it. */
#pragma once

#include "house.h"

#define BARN_GROWN (-1)
#define BARN_FOOT_MM 304.8
#define BARN_INCH_MM 25.4

/* @rules: id of a standard, of the program or of tests/data/rules. Birds stay in. */
void barn_init (House *barn, const char *rules, double width_mm, double depth_mm);
void barn_clear (House *barn);
void barn_set_own_figure (House *barn, const char *figure, double value, const char *reason);
void barn_add_nests (House *barn, int boxes, double width_mm, double depth_mm);
void barn_add_group_nest (House *barn, double area_m2);
void barn_add_roost (House *barn, double length_mm, int bars, double apart_mm,
                     double to_wall_mm);
void barn_add_edges (House *barn, HcFittingKind kind, HcFittingForm form, int n,
                     double width_mm);
void barn_add_nipples (House *barn, int nipples);
void barn_add_pop_holes (House *barn, int n, double width_mm, double height_mm);
void barn_add_run (House *barn, double width_mm, double depth_mm);

/* Whether @birds of a kind, @weeks old, have what @need asks. */
gboolean barn_holds (House *barn, HcNeedId need, const char *kind, int weeks, int birds);

/* @most are carried, one more is not; of grown birds the ladder says so too. */
void barn_assert_carries (House *barn, HcNeedId need, const char *kind, int weeks, int most);
