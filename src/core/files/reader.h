/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading parts by their tables of members. */
#pragma once

#include "base/json-text.h"
#include "base/part.h"

G_BEGIN_DECLS

/* @newer: what is not understood is left out and counted. @texts keeps decoded
 * text until the parts have copied it. */
typedef struct
{
  HcJsonText *json;
  gboolean newer;
  guint n_unknown;
  GStringChunk *texts;
  GString *decoded;
  GError *error;
} HcReader;

void hc_reader_init (HcReader *self,
                     HcJsonText *json,
                     gboolean newer);
void hc_reader_clear (HcReader *self);

gboolean hc_reader_fail (HcReader *self,
                         guint value,
                         const char *sentence);
gboolean hc_reader_fail_allowed (HcReader *self,
                                 guint value,
                                 const char *allowed);
gboolean hc_reader_fail_member (HcReader *self,
                                guint value,
                                const HcMember *member);
gboolean hc_reader_passes_over (HcReader *self,
                                guint value);
gboolean hc_reader_forgives (HcReader *self,
                             guint value);
const char *hc_reader_text (HcReader *self,
                            guint value);

gboolean hc_reader_read_scalar (HcReader *self,
                                guint value,
                                const HcMember *member,
                                gpointer at);
gpointer hc_reader_read_part (HcReader *self,
                              guint value,
                              const HcPartClass *klass,
                              const char *id,
                              const char *const *known);

G_END_DECLS
