/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Commas, indents and escapes. */
#include "config.h"

#include "cli/json-writer.h"

#include "base/json-escape.h"
#include "files/write-scalar.h"

#include <math.h>

/* Larger numbers stand for ‘no end’ and are written as null. */
#define LARGEST 1e12

static void
start_line (HcJsonWriter *self)
{
  g_string_append_printf (self->out, "\n%*s", (int) self->depth * 2, "");
}

static void
start_value (HcJsonWriter *self, const char *name)
{
  if (self->filled)
    g_string_append_c (self->out, ',');
  if (self->depth > 0)
    start_line (self);
  self->filled = TRUE;
  if (name != NULL)
    g_string_append_printf (self->out, "\"%s\": ", name);
}

void
hc_json_open (HcJsonWriter *self, const char *name, char bracket)
{
  start_value (self, name);
  g_string_append_c (self->out, bracket);
  self->depth++;
  self->filled = FALSE;
}

void
hc_json_close (HcJsonWriter *self, char bracket)
{
  self->depth--;
  if (self->filled)
    start_line (self);
  g_string_append_c (self->out, bracket);
  self->filled = TRUE;
  if (self->depth == 0)
    g_string_append_c (self->out, '\n');
}

void
hc_json_text (HcJsonWriter *self, const char *name, const char *text)
{
  if (text == NULL)
    {
      hc_json_nothing (self, name);
      return;
    }
  start_value (self, name);
  hc_json_escape (text, self->out);
}

void
hc_json_number (HcJsonWriter *self, const char *name, double number)
{
  if (!isfinite (number) || fabs (number) >= LARGEST)
    {
      hc_json_nothing (self, name);
      return;
    }
  start_value (self, name);
  hc_number_write (number, self->out);
}

void
hc_json_count (HcJsonWriter *self, const char *name, gint64 count)
{
  if (count == G_MAXINT64)
    {
      hc_json_nothing (self, name);
      return;
    }
  start_value (self, name);
  g_string_append_printf (self->out, "%" G_GINT64_FORMAT, count);
}

void
hc_json_flag (HcJsonWriter *self, const char *name, gboolean flag)
{
  start_value (self, name);
  g_string_append (self->out, flag ? "true" : "false");
}

void
hc_json_nothing (HcJsonWriter *self, const char *name)
{
  start_value (self, name);
  g_string_append (self->out, "null");
}
