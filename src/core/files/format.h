/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What plan files say of themselves. */
#pragma once

#define HC_PLAN_FORMAT "hencote-plan"
