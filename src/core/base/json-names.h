/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The names of the members of objects being scanned. */
#pragma once

#include "base/json-text.h"

G_BEGIN_DECLS

/* Names of all open objects on one stack, the innermost object's last. */
typedef struct
{
  GArray *stack;
  GString *decoded;
} HcJsonNames;

void hc_json_names_init (HcJsonNames *self);
void hc_json_names_clear (HcJsonNames *self);
guint hc_json_names_open (const HcJsonNames *self);
void hc_json_names_add (HcJsonNames *self,
                        const char *text,
                        const HcJsonValue *name);
gboolean hc_json_names_close (HcJsonNames *self,
                              guint opened,
                              gsize *twice);

G_END_DECLS
