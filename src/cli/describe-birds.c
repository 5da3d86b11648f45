/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The birds of a pen in a sentence. */
#include "config.h"

#include "cli/describe.h"

#include <glib/gi18n.h>

static char *
ages (const HcBody *body)
{
  if (body->age_weeks >= body->kind->grown_week)
    return g_strdup ("");
  if (body->age_weeks == 0)
    /* Translators: comes after birds: "15 medium layers, under a week old". */
    return g_strdup (_(", under a week old"));
  return g_strdup_printf (
      /* Translators: comes after birds: "15 medium layers, 3 weeks old". */
      ngettext (", %d week old", ", %d weeks old", (gulong) body->age_weeks), body->age_weeks);
}

static char *
group (const HcFlock *flock, const HcFlockRow *row)
{
  const HcBody *body = hc_flock_get_body (flock, row->body);
  g_autofree char *age = ages (body);

  if (!body->female)
    return g_strdup_printf (
        /* Translators: a number, a kind of bird in the plural, then its age or nothing. */
        ngettext ("%d male (%s)%s", "%d males (%s)%s", (gulong) row->count), (int) row->count,
        hc_kind_get_name (body->kind, 2), age);
  return g_strdup_printf (
      /* Translators: a number, a kind of bird, then its age or nothing. */
      _("%d %s%s"), (int) row->count, hc_kind_get_name (body->kind, (gulong) row->count), age);
}

/**
 * hc_describe_birds:
 * @call: a call with its plan open
 * @pen: id of a pen
 *
 * Returns: (transfer full): a sentence on the birds that live there
 */
char *
hc_describe_birds (const HcCall *call, const char *pen)
{
  g_autoptr (GPtrArray) groups = g_ptr_array_new_with_free_func (g_free);
  g_autofree char *joined = NULL;

  for (guint i = 0; i < hc_flock_get_n_rows (call->flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (call->flock, i);

      if (row->count > 0 && g_strcmp0 (row->pen, pen) == 0)
        g_ptr_array_add (groups, group (call->flock, row));
    }
  if (groups->len == 0)
    return g_strdup (_("No birds live here."));
  g_ptr_array_add (groups, NULL);
  joined = g_strjoinv ("; ", (char **) groups->pdata);
  return g_strdup_printf (_("Birds that live here: %s."), joined);
}
