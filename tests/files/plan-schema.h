/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The JSON Schema of plan files, made from the tables of members. */
#pragma once

#include <glib.h>

char *plan_schema_make (void) G_GNUC_WARN_UNUSED_RESULT;
