/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Plan files on disk: loaded whole, saved so that no fault loses them. */
#pragma once

#include "files/read.h"

#include <gio/gio.h>

G_BEGIN_DECLS

HcPlanFile *hc_plan_store_load (GFile *file,
                                char **etag,
                                GError **error) G_GNUC_WARN_UNUSED_RESULT;
gboolean hc_plan_store_save (GFile *file,
                             const HcPlan *plan,
                             const char *etag,
                             char **new_etag,
                             GError **error);
gboolean hc_plan_store_has_changed (GFile *file,
                                    const char *etag);

G_END_DECLS
