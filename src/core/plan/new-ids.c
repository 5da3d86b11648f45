/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The next id of those handed in. */
#include "config.h"

#include "plan/new-ids.h"

#include <glib/gi18n-lib.h>

/**
 * hc_new_ids_take: (skip)
 * @self: the ids handed into an edit
 * @plan: the plan before the edit
 * @error: set when they are used up or taken
 *
 * Returns: (nullable): an id for something new
 */
const char *
hc_new_ids_take (HcNewIds *self, const HcPlan *plan, GError **error)
{
  const char *id = self->ids[self->next];

  if (id == NULL)
    return hc_edit_refuse (error, _("Too many walls meet there. Draw it in smaller parts."));
  if (!hc_edit_id_is_free (plan, id, error))
    return NULL;
  self->next++;
  return id;
}
