/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The error domain of the library. */
#include "config.h"

#include "base/error.h"

G_DEFINE_QUARK (hc-error-quark, hc_error)
