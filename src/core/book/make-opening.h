/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An opening, as the catalogue describes it, made one of a plan. */
#pragma once

#include "book/opening-type.h"
#include "plan/opening.h"

G_BEGIN_DECLS

HcOpening *hc_opening_type_make (const HcOpeningType *self,
                                 const char *id) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
