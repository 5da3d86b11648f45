/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Joins rooms into the spaces birds or air can move through. */
#pragma once

#include "supply/house.h"

G_BEGIN_DECLS

typedef struct _HcJoining HcJoining;

HcJoining *hc_joining_new (guint n_rooms) G_GNUC_WARN_UNUSED_RESULT;
void hc_joining_free (HcJoining *joining);
void hc_joining_leave_out (HcJoining *joining, guint room);
void hc_joining_join (HcJoining *joining, guint a, guint b);
GPtrArray *hc_joining_get_spaces (const HcJoining *joining) G_GNUC_WARN_UNUSED_RESULT;

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcJoining, hc_joining_free)

G_END_DECLS
