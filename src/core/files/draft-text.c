/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Writes and reads drafts. */
#include "config.h"

#include "files/draft-text.h"

#include "base/error.h"
#include "base/json-escape.h"
#include "base/json-text.h"
#include "files/read.h"
#include "files/write.h"

#include <glib/gi18n-lib.h>

#define DRAFT_FORMAT "hencote-draft"
#define DRAFT_VERSION 1

static void
write_text_member (GString *text,
                   const char *name,
                   const char *value)
{
  if (value == NULL)
    return;
  g_string_append_printf (text, ",\n  \"%s\": ", name);
  hc_json_escape (value, text);
}

/**
 * hc_draft_write: (skip)
 * @draft: a draft
 * @error: where to put %HC_ERROR_SAVE
 *
 * Returns: (transfer full) (nullable): its text
 */
char *
hc_draft_write (const HcDraft *draft,
                GError **error)
{
  g_autofree char *plan = hc_plan_write (draft->plan, NULL, error);
  GString *text;

  if (plan == NULL)
    return NULL;
  text = g_string_new (NULL);
  g_string_append_printf (text, "{\n  \"format\": \"%s\",\n  \"version\": %d", DRAFT_FORMAT,
                          DRAFT_VERSION);
  write_text_member (text, "uri", draft->uri);
  write_text_member (text, "etag", draft->etag);
  g_string_append_printf (text, ",\n  \"plan\": %s}\n", plan);
  return g_string_free (text, FALSE);
}

/* A draft holds a plan of any size and depth, and a little more. */
static HcJsonText *
scan (const char *text,
      gsize length,
      GError **error)
{
  HcJsonGuardLimits limits = hc_json_usual_limits;

  limits.most_bytes += 65536;
  limits.most_depth += 1;
  limits.most_values += 16;
  return hc_json_text_scan (text, length, &limits, error);
}

static char *
read_text_member (const HcJsonText *json,
                  const char *name)
{
  guint value = hc_json_text_member (json, 0, name);
  g_autoptr (GString) text = g_string_new (NULL);

  if (value == 0 || json->values[value].kind != HC_JSON_TEXT)
    return NULL;
  hc_json_text_decode (json, value, text);
  return g_strdup (text->str);
}

static gboolean
check_header (const HcJsonText *json,
              GError **error)
{
  guint format, version;

  format = json->values[0].kind == HC_JSON_OBJECT ? hc_json_text_member (json, 0, "format") : 0;
  version = format != 0 ? hc_json_text_member (json, 0, "version") : 0;
  if (version == 0 || !hc_json_text_is (json, format, DRAFT_FORMAT)
      || json->values[version].kind != HC_JSON_NUMBER)
    g_set_error_literal (error, HC_ERROR, HC_ERROR_FILE, _("This is not a draft."));
  else if (hc_json_text_number (json, version) > DRAFT_VERSION)
    g_set_error_literal (error, HC_ERROR, HC_ERROR_NEWER,
                         _("This draft was made by a newer version of Hencote."));
  else
    return TRUE;
  return FALSE;
}

static HcPlanFile *
read_plan (const HcJsonText *json,
           GError **error)
{
  guint plan = hc_json_text_member (json, 0, "plan");
  const HcJsonValue *value = &json->values[plan];
  g_autoptr (HcPlanFile) file = NULL;

  file = hc_plan_file_read (json->text + value->start, value->end - value->start, error);
  if (file == NULL || !file->read_only)
    return g_steal_pointer (&file);
  g_set_error_literal (error, HC_ERROR, HC_ERROR_NEWER,
                       _("This draft was made by a newer version of Hencote."));
  return NULL;
}

/**
 * hc_draft_read: (skip)
 * @key: its name
 * @text: (array length=length): the content of a draft file
 * @length: its length in bytes
 * @error: where to put %HC_ERROR_FILE or %HC_ERROR_NEWER
 *
 * Returns: (transfer full) (nullable): the draft
 */
HcDraft *
hc_draft_read (const char *key,
               const char *text,
               gsize length,
               GError **error)
{
  g_autoptr (HcJsonText) json = scan (text, length, error);
  g_autoptr (HcPlanFile) file = NULL;
  g_autofree char *uri = NULL;
  g_autofree char *etag = NULL;

  if (json == NULL || !check_header (json, error))
    return NULL;
  file = read_plan (json, error);
  if (file == NULL)
    return NULL;
  uri = read_text_member (json, "uri");
  etag = read_text_member (json, "etag");
  return hc_draft_new (key, file->plan, uri, etag);
}
