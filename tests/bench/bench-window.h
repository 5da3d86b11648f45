/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A window in which something is dragged, to be measured. */
#pragma once

#include "app/window/window.h"

HcWindow *bench_open_window (GApplication *application, HcDocument *document);
char *bench_first_fitting (HcPlan *plan);
