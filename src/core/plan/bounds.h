/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The largest measures a plan may hold: past them a number is a slip. */
#pragma once

#define HC_FARTHEST_MM 1e6
#define HC_TALLEST_MM 20000.0
#define HC_LONGEST_FITTING_MM 100000.0
