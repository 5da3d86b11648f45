/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Writes JSON a member at a time, in a fixed order, with at most three
 * decimals. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcJsonWriter:
 * @out: what is written to
 * @depth: objects and lists that are open
 * @filled: whether the innermost open one has anything in it
 */
typedef struct
{
  GString *out;
  guint depth;
  gboolean filled;
} HcJsonWriter;

/* @name is %NULL within a list and for the outermost object. */
void hc_json_open (HcJsonWriter *self, const char *name, char bracket);
void hc_json_close (HcJsonWriter *self, char bracket);
void hc_json_text (HcJsonWriter *self, const char *name, const char *text);
void hc_json_number (HcJsonWriter *self, const char *name, double number);
void hc_json_count (HcJsonWriter *self, const char *name, gint64 count);
void hc_json_flag (HcJsonWriter *self, const char *name, gboolean flag);
void hc_json_nothing (HcJsonWriter *self, const char *name);

G_END_DECLS
