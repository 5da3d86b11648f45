/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reads a plan file: whole and sound, or not at all. */
#include "config.h"

#include "files/read.h"

#include "base/error.h"
#include "files/format.h"
#include "files/reader.h"
#include "plan/soundness.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

/* Parts of a newer file that lean on parts left out are left out one by one,
 * reading again each time: this many values in all before giving up. */
#define MOST_VALUES_AGAIN 4000000

G_DEFINE_BOXED_TYPE (HcPlanFile, hc_plan_file, hc_plan_file_copy, hc_plan_file_free)

static const char *const header[] = { "format", "version", "uid", NULL };

static gboolean
check_format (HcReader *reader)
{
  guint format = hc_json_text_member (reader->json, 0, "format");

  return (format != 0 && hc_json_text_is (reader->json, format, HC_PLAN_FORMAT))
         || hc_reader_fail (reader, format, _("this is not a Hencote plan."));
}

static gboolean
read_version (HcReader *reader,
              guint *version)
{
  guint value = hc_json_text_member (reader->json, 0, "version");
  double number;

  if (value == 0 || reader->json->values[value].kind != HC_JSON_NUMBER)
    return hc_reader_fail (reader, value, _("a plan has its version here, a whole number."));
  number = hc_json_text_number (reader->json, value);
  if (number < 1 || number != floor (number))
    return hc_reader_fail (reader, value, _("a version is a whole number from 1 up."));
  *version = (guint) MIN (number, G_MAXUINT);
  return TRUE;
}

static gboolean
read_uid (HcReader *reader,
          const char **uid)
{
  guint value = hc_json_text_member (reader->json, 0, "uid");

  if (value == 0 || reader->json->values[value].kind != HC_JSON_TEXT)
    return hc_reader_fail (reader, value, _("a plan has its “uid” here, a text in quotes."));
  *uid = hc_reader_text (reader, value);
  return TRUE;
}

static gboolean
read_header (HcReader *reader,
             guint *version,
             const char **uid)
{
  if (reader->json->values[0].kind != HC_JSON_OBJECT)
    return hc_reader_fail (reader, 0, _("this is not a Hencote plan."));
  return check_format (reader) && read_version (reader, version) && read_uid (reader, uid);
}

static gboolean
fail_fault (HcReader *reader,
            const HcFault *fault)
{
  g_autofree char *sentence = hc_fault_describe (fault);
  guint value;

  hc_json_text_find (reader->json, fault->path, &value);
  return fault->member != NULL ? hc_reader_fail_allowed (reader, value, sentence)
                               : hc_reader_fail (reader, value, sentence);
}

/* The innermost part of a list that @path leads through, or what it leads to. */
static guint
find_part (const HcJsonText *json,
           const char *path)
{
  g_autofree char *trimmed = g_strdup (path);
  guint value;

  for (char *end = strrchr (trimmed, ']'); end != NULL; end = strrchr (trimmed, ']'))
    {
      end[1] = '\0';
      if (hc_json_text_find (json, trimmed, &value) && json->values[value].kind == HC_JSON_OBJECT)
        return value;
      *end = '\0';
    }
  hc_json_text_find (json, path, &value);
  return value;
}

static gboolean
fail_newer (HcReader *reader)
{
  g_clear_error (&reader->error);
  reader->error = g_error_new_literal (
      HC_ERROR, HC_ERROR_NEWER,
      _("This plan was made by a newer version of Hencote, and too much of it is new. "
        "Open it with that version."));
  return FALSE;
}

static gboolean
leave_out_part (HcReader *reader,
                const HcFault *fault,
                guint n_before)
{
  guint value = find_part (reader->json, fault->path);

  if ((guint64) n_before * reader->json->n_values > MOST_VALUES_AGAIN || value == 0
      || reader->json->values[value].left_out)
    return fail_newer (reader);
  return hc_reader_forgives (reader, value);
}

static gboolean
accept_or_leave_out (HcReader *reader,
                     HcPlan **plan,
                     guint n_before)
{
  g_auto (HcFault) fault = { HC_FAULT_NONE };

  if (!hc_plan_find_fault (*plan, &fault))
    return TRUE;
  g_clear_pointer (plan, hc_plan_unref);
  return reader->newer ? leave_out_part (reader, &fault, n_before) : fail_fault (reader, &fault);
}

static HcPlan *
read_sound_plan (HcReader *reader,
                 const char *uid)
{
  for (guint n_left_out = 0;; n_left_out++)
    {
      HcPlan *plan;

      reader->n_unknown = 0;
      plan = hc_reader_read_part (reader, 0, &hc_plan_class, uid, header);
      if (plan == NULL || !accept_or_leave_out (reader, &plan, n_left_out) || plan != NULL)
        return plan;
    }
}

static HcPlanFile *
read_file (HcReader *reader)
{
  HcPlanFile file = { NULL, 0, FALSE, 0 };
  const char *uid = NULL;

  if (!read_header (reader, &file.version, &uid))
    return NULL;
  file.read_only = reader->newer = file.version > HC_PLAN_VERSION;
  file.plan = read_sound_plan (reader, uid);
  file.n_unknown = reader->n_unknown;
  return file.plan != NULL ? g_memdup2 (&file, sizeof file) : NULL;
}

/**
 * hc_plan_file_read:
 * @text: (array length=length) (element-type guint8): the content of a plan file, from anywhere
 * @length: its length in bytes
 * @error: where to put %HC_ERROR_FILE, naming line, column and member, or
 *   %HC_ERROR_NEWER when too little of a newer file is known here
 *
 * Returns: (transfer full) (nullable): the plan, sound as [method@Plan.is_sound] tells
 */
HcPlanFile *
hc_plan_file_read (const char *text,
                   gsize length,
                   GError **error)
{
  g_autoptr (HcJsonText) json = hc_json_text_scan (text, length, NULL, error);
  HcPlanFile *file;
  HcReader reader;

  if (json == NULL)
    return NULL;
  hc_reader_init (&reader, json, FALSE);
  file = read_file (&reader);
  if (file == NULL)
    g_propagate_error (error, g_steal_pointer (&reader.error));
  hc_reader_clear (&reader);
  return file;
}

/**
 * hc_plan_file_copy:
 * @self: a plan file
 *
 * Returns: (transfer full): a copy that shares the plan
 */
HcPlanFile *
hc_plan_file_copy (const HcPlanFile *self)
{
  hc_plan_ref (self->plan);
  return g_memdup2 (self, sizeof *self);
}

/**
 * hc_plan_file_free:
 * @self: (transfer full): a plan file
 *
 * Frees it and lets go of its plan.
 */
void
hc_plan_file_free (HcPlanFile *self)
{
  hc_plan_unref (self->plan);
  g_free (self);
}
