/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reads a plan; the name ‘-’ is standard input. */
#include "config.h"

#include "cli/read-plan.h"

#include "base/error.h"
#include "base/json-guard.h"
#include "files/store.h"

#include <errno.h>
#include <glib/gi18n.h>
#include <unistd.h>

/* Reads one byte more than a plan may have and no more: the guard refuses it. */
static char *
read_standard_input (gsize *length, GError **error)
{
  gsize most = hc_json_usual_limits.most_bytes + 1;
  g_autofree char *text = g_malloc (most);
  gssize more = 1;

  *length = 0;
  while (more > 0 && *length < most)
    {
      more = read (STDIN_FILENO, text + *length, most - *length);
      if (more < 0 && errno == EINTR)
        more = 1;
      else if (more > 0)
        *length += (gsize) more;
    }
  if (more < 0)
    {
      g_set_error (error, HC_ERROR, HC_ERROR_FILE, _("Standard input could not be read: %s."),
                   g_strerror (errno));
      return NULL;
    }
  return g_steal_pointer (&text);
}

static HcPlanFile *
load_standard_input (GError **error)
{
  gsize length;
  g_autofree char *text = read_standard_input (&length, error);
  HcPlanFile *file = text ? hc_plan_file_read (text, length, error) : NULL;

  if (text != NULL && file == NULL)
    g_prefix_error_literal (error, _("Standard input: "));
  return file;
}

/**
 * hc_read_plan:
 * @name: a file's name, or "-"
 * @error: return location for an error naming file, line and column
 *
 * Returns: (transfer full) (nullable): the plan
 */
HcPlan *
hc_read_plan (const char *name, GError **error)
{
  g_autoptr (HcPlanFile) file = NULL;

  if (g_str_equal (name, "-"))
    file = load_standard_input (error);
  else
    {
      g_autoptr (GFile) place = g_file_new_for_commandline_arg (name);

      file = hc_plan_store_load (place, NULL, error);
    }
  return file ? hc_plan_ref (file->plan) : NULL;
}
