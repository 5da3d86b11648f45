/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Short random names for the parts of a plan. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HC_ID_LENGTH:
 *
 * How many characters a new id has.
 */
#define HC_ID_LENGTH 10

/**
 * HcIdSource: (skip)
 *
 * Where new ids come from: chance, or a seed that always gives the same ones.
 */
typedef struct _HcIdSource HcIdSource;

HcIdSource *hc_id_source_new (void) G_GNUC_WARN_UNUSED_RESULT;
HcIdSource *hc_id_source_new_seeded (guint32 seed) G_GNUC_WARN_UNUSED_RESULT;
void hc_id_source_free (HcIdSource *self);
char *hc_id_source_next (HcIdSource *self) G_GNUC_WARN_UNUSED_RESULT;

char *hc_id_new (void) G_GNUC_WARN_UNUSED_RESULT;
gboolean hc_id_is_valid (const char *id);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcIdSource, hc_id_source_free)

G_END_DECLS
