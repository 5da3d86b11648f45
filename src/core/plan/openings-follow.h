/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Private to core: openings stay where they are while walls change. */
#pragma once

#include "plan/edit.h"

G_BEGIN_DECLS

HcLayout *hc_openings_follow (const HcLayout *before, HcLayout *after, const char *const *walls,
                              const char *const *into,
                              GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcLayout *hc_openings_follow_wall (const HcLayout *before, HcLayout *after, const char *wall,
                                   GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
