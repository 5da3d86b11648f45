/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One data file being read. */
#include "config.h"

#include "book/reading.h"

#include "base/error.h"
#include "book/record.h"

#include <glib/gi18n-lib.h>

struct _HcReading
{
  const char *file;
  HcKeep *keep;
  JsonParser *parser;
  HcRecord *root;
  GError *fault;
};

/* Errors of json-glib name the line themselves: "<data>:3:7: …". */
static void
parse (HcReading *self, const char *text, gsize length)
{
  g_autoptr (GError) error = NULL;
  JsonNode *root;

  if (length > HC_READING_MOST_BYTES)
    {
      hc_reading_fault (self, NULL, _("the file is larger than 1 MiB; keep it shorter"));
      return;
    }
  if (!json_parser_load_from_data (self->parser, text, (gssize) length, &error))
    {
      hc_reading_fault (self, NULL, _("this is not JSON: %s"), error->message);
      return;
    }
  root = json_parser_get_root (self->parser);
  if (root == NULL || !JSON_NODE_HOLDS_OBJECT (root))
    hc_reading_fault (self, NULL, _("the file should hold one object in { }"));
  else
    self->root = hc_record_new (self, json_node_get_object (root), NULL);
}

HcReading *
hc_reading_new (const char *file, const char *text, gsize length, HcKeep *keep)
{
  HcReading *self = g_new0 (HcReading, 1);

  self->file = file;
  self->keep = keep;
  self->parser = json_parser_new ();
  parse (self, text, length);
  if (self->root == NULL)
    self->root = hc_record_new (self, NULL, NULL);
  return self;
}

/* Frees @self; FALSE with the first fault if there was one. */
gboolean
hc_reading_finish (HcReading *self, GError **error)
{
  GError *fault;

  hc_record_close (self->root);
  fault = g_steal_pointer (&self->fault);
  g_object_unref (self->parser);
  g_free (self);
  if (fault == NULL)
    return TRUE;
  g_propagate_error (error, fault);
  return FALSE;
}

HcRecord *
hc_reading_get_root (HcReading *self)
{
  return self->root;
}

HcKeep *
hc_reading_get_keep (HcReading *self)
{
  return self->keep;
}

gboolean
hc_reading_is_faulty (HcReading *self)
{
  return self->fault != NULL;
}

/* The first fault is the one told: later ones often follow from it. */
void
hc_reading_fault (HcReading *self, const char *place, const char *format, ...)
{
  g_autofree char *what = NULL;
  va_list arguments;

  if (self->fault != NULL)
    return;
  va_start (arguments, format);
  what = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  if (place == NULL)
    self->fault = g_error_new (HC_ERROR, HC_ERROR_FILE, "%s: %s", self->file, what);
  else
    self->fault = g_error_new (HC_ERROR, HC_ERROR_FILE, "%s: %s: %s", self->file, place, what);
}
