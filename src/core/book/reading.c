/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One data file being read. */
#include "config.h"

#include "book/reading.h"

#include "base/error.h"
#include "base/json-guard.h"
#include "book/record.h"

#include <glib/gi18n-lib.h>

struct _HcReading
{
  const char *file;
  const char *text;
  gsize length;
  HcKeep *keep;
  JsonParser *parser;
  HcRecord *root;
  GError *fault;
};

/* A list of rules is short and flat. */
static const HcJsonGuardLimits limits = { HC_READING_MOST_BYTES, 16, 50000 };

static gboolean
parse (HcReading *self, GError **error)
{
  return hc_json_guard (self->text, self->length, &limits, error)
         && json_parser_load_from_data (self->parser, self->text, (gssize) self->length, error);
}

static void
open_root (HcReading *self)
{
  g_autoptr (GError) error = NULL;
  JsonNode *root = NULL;

  if (parse (self, &error))
    root = json_parser_get_root (self->parser);
  else
    self->fault = g_error_new (HC_ERROR, HC_ERROR_FILE, "%s: %s", self->file, error->message);
  if (root != NULL && !JSON_NODE_HOLDS_OBJECT (root))
    {
      hc_reading_fault (self, NULL, _("the file should hold one object in { }."));
      root = NULL;
    }
  self->root = hc_record_new (self, root != NULL ? json_node_get_object (root) : NULL, NULL);
}

/* @file and @text must outlive the reading. */
HcReading *
hc_reading_new (const char *file, const char *text, gsize length, HcKeep *keep)
{
  HcReading *self = g_new0 (HcReading, 1);

  self->file = file;
  self->text = text;
  self->length = length;
  self->keep = keep;
  self->parser = json_parser_new ();
  open_root (self);
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

static char *
describe_place (HcReading *self, const char *path)
{
  HcTextPlace place;

  if (path == NULL)
    return g_strdup (self->file);
  hc_json_locate (self->text, self->length, path, &place);
  return g_strdup_printf (_("%s: Line %u, column %u: %s"), self->file, place.line, place.column,
                          path);
}

/* @path names the member at fault, NULL the whole file. The first fault is the
 * one told: later ones often follow from it. */
void
hc_reading_fault (HcReading *self, const char *path, const char *format, ...)
{
  g_autofree char *what = NULL;
  g_autofree char *where = NULL;
  va_list arguments;

  if (self->fault != NULL)
    return;
  va_start (arguments, format);
  what = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  where = describe_place (self, path);
  self->fault = g_error_new (HC_ERROR, HC_ERROR_FILE, "%s: %s", where, what);
}
