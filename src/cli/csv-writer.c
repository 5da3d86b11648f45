/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Commas and quotation marks. */
#include "config.h"

#include "cli/csv-writer.h"

#include "files/write-scalar.h"

#include <math.h>
#include <string.h>

static void
start_field (HcCsvWriter *self)
{
  if (self->filled)
    g_string_append_c (self->out, ',');
  self->filled = TRUE;
}

void
hc_csv_text (HcCsvWriter *self, const char *text)
{
  start_field (self);
  if (text == NULL || strpbrk (text, "\",\r\n") == NULL)
    {
      g_string_append (self->out, text != NULL ? text : "");
      return;
    }
  g_string_append_c (self->out, '"');
  for (const char *at = text; *at != '\0'; at++)
    {
      if (*at == '"')
        g_string_append_c (self->out, '"');
      g_string_append_c (self->out, *at);
    }
  g_string_append_c (self->out, '"');
}

/* What has no end is left empty. */
void
hc_csv_number (HcCsvWriter *self, double number)
{
  start_field (self);
  if (isfinite (number))
    hc_number_write (number, self->out);
}

void
hc_csv_count (HcCsvWriter *self, gint64 count)
{
  start_field (self);
  g_string_append_printf (self->out, "%" G_GINT64_FORMAT, count);
}

void
hc_csv_end_row (HcCsvWriter *self)
{
  g_string_append (self->out, "\r\n");
  self->filled = FALSE;
}
