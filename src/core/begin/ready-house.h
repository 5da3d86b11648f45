/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Houses to begin from, and the demo. */
#pragma once

#include "plan/plan.h"

G_BEGIN_DECLS

/**
 * HcReadyHouse:
 * @id: names it
 * @title: what it is, marked for translation
 * @about: whom it is for, marked for translation
 *
 * A house that can be opened and already works.
 */
typedef struct
{
  const char *id;
  const char *title;
  const char *about;
} HcReadyHouse;

guint hc_ready_house_get_n (void);
const HcReadyHouse *hc_ready_house_get (guint house);
HcPlan *hc_ready_house_open (const char *id, const char *uid,
                             GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcPlan *hc_demo_open (const char *uid, GError **error) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
