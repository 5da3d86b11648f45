/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Members as text, and which of them go without saying. */
#pragma once

#include "base/part.h"

G_BEGIN_DECLS

void hc_number_write (double number,
                      GString *into);
void hc_scalar_write (const HcMember *member,
                      gconstpointer at,
                      GString *into);
gboolean hc_member_is_left_out (const HcPart *part,
                                guint index);

G_END_DECLS
