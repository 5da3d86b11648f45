/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a reader carries along, and how it says that something is wrong. */
#include "config.h"

#include "files/reader.h"

#include "base/error.h"
#include "plan/fault.h"

#include <glib/gi18n-lib.h>

#define LONGEST_QUOTE 40

void
hc_reader_init (HcReader *self,
                HcJsonText *json,
                gboolean newer)
{
  *self = (HcReader){ .json = json, .newer = newer };
  self->texts = g_string_chunk_new (4096);
  self->decoded = g_string_new (NULL);
}

void
hc_reader_clear (HcReader *self)
{
  g_string_chunk_free (self->texts);
  g_string_free (self->decoded, TRUE);
  g_clear_error (&self->error);
}

/**
 * hc_reader_fail: (skip)
 * @self: a reader
 * @value: where it is
 * @sentence: what is wrong and what is allowed
 *
 * Sets the error, with line, column and member in front.
 *
 * Returns: %FALSE, for the caller to hand on
 */
gboolean
hc_reader_fail (HcReader *self,
                guint value,
                const char *sentence)
{
  HcTextPlace place = hc_text_place (self->json->text, self->json->values[value].start);
  g_autofree char *path = hc_json_text_path_of (self->json, value);

  g_clear_error (&self->error);
  if (*path == '\0')
    self->error = g_error_new (HC_ERROR, HC_ERROR_FILE, _("Line %u, column %u: %s"), place.line,
                               place.column, sentence);
  else
    self->error = g_error_new (HC_ERROR, HC_ERROR_FILE, _("Line %u, column %u, %s: %s"),
                               place.line, place.column, path, sentence);
  return FALSE;
}

/* The number, word or short text that stands there, to be shown. */
static char *
quote_value (const HcReader *self,
             guint value)
{
  const HcJsonValue *found = &self->json->values[value];
  gsize length = found->end - found->start;

  if (found->kind == HC_JSON_LIST || found->kind == HC_JSON_OBJECT || length == 0
      || length > LONGEST_QUOTE)
    return NULL;
  return g_strndup (self->json->text + found->start, length);
}

/**
 * hc_reader_fail_allowed: (skip)
 * @self: a reader
 * @value: where it is
 * @allowed: what is allowed there
 *
 * Fails as hc_reader_fail() does, and quotes what stands there.
 *
 * Returns: %FALSE, for the caller to hand on
 */
gboolean
hc_reader_fail_allowed (HcReader *self,
                        guint value,
                        const char *allowed)
{
  g_autofree char *found = quote_value (self, value);
  g_autofree char *sentence = NULL;

  if (found == NULL)
    return hc_reader_fail (self, value, allowed);
  /* Translators: what is allowed, then what the file says. */
  sentence = g_strdup_printf (_("%s It says %s now."), allowed, found);
  return hc_reader_fail (self, value, sentence);
}

static HcFaultKind
fault_of_kind (HcMemberKind kind)
{
  if (kind == HC_MEMBER_WORD)
    return HC_FAULT_WORD;
  return kind == HC_MEMBER_DATE ? HC_FAULT_DATE : HC_FAULT_NUMBER;
}

static char *
describe_allowed (const HcMember *member)
{
  HcFault fault = { fault_of_kind (member->kind), NULL, NULL, NULL, member };

  switch (member->kind)
    {
    case HC_MEMBER_FLAG:
      return g_strdup (_("true or false stands here."));
    case HC_MEMBER_TEXT:
      return g_strdup (_("text in quotes stands here."));
    case HC_MEMBER_IDS:
      return g_strdup (_("a list in [ ] of texts in quotes stands here."));
    case HC_MEMBER_PARTS:
      return g_strdup (_("a list in [ ] of objects in { } stands here."));
    case HC_MEMBER_PART:
      return g_strdup (_("an object in { } stands here."));
    default:
      return hc_fault_describe (&fault);
    }
}

gboolean
hc_reader_fail_member (HcReader *self,
                       guint value,
                       const HcMember *member)
{
  g_autofree char *allowed = describe_allowed (member);

  return hc_reader_fail_allowed (self, value, allowed);
}

gboolean
hc_reader_passes_over (HcReader *self,
                       guint value)
{
  if (!self->json->values[value].left_out)
    return FALSE;
  self->n_unknown++;
  return TRUE;
}

/**
 * hc_reader_forgives: (skip)
 * @self: a reader that failed
 * @value: what it could not read
 *
 * In a newer file what cannot be read is left out and counted.
 *
 * Returns: whether reading goes on
 */
gboolean
hc_reader_forgives (HcReader *self,
                    guint value)
{
  if (!self->newer)
    return FALSE;
  g_clear_error (&self->error);
  self->json->values[value].left_out = TRUE;
  self->n_unknown++;
  return TRUE;
}

/**
 * hc_reader_text: (skip)
 * @self: a reader
 * @value: a text
 *
 * Returns: (transfer none): the text, good as long as the reader
 */
const char *
hc_reader_text (HcReader *self,
                guint value)
{
  g_string_truncate (self->decoded, 0);
  hc_json_text_decode (self->json, value, self->decoded);
  return g_string_chunk_insert_len (self->texts, self->decoded->str, (gssize) self->decoded->len);
}
