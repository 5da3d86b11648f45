/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The table of ready houses; their plans travel inside the library. */
#include "config.h"

#include "begin/ready-house.h"

#include "files/read.h"
#include "plan/edit-plan.h"

#include <gio/gio.h>
#include <glib/gi18n-lib.h>

static const HcReadyHouse houses[] = {
  { "garden-shed", N_("Garden shed"), N_("A boarded shed with a run, for six hens") },
  { "lean-to", N_("Lean-to"), N_("Boards against a wall with a run, for nine hens") },
  { "stone-byre-end", N_("End of a stone byre"),
    N_("Stone under slates with a run, for eighteen hens and two cocks") },
  { "barn-bay", N_("Bay of a gable barn"),
    N_("A framed bay under a high roof, for twenty-four hens and three cocks") },
  { "small-ark", N_("Small ark"), N_("To be moved over grass, for five bantams") },
};

/**
 * hc_ready_house_get_n:
 *
 * Returns: how many ready houses there are
 */
guint
hc_ready_house_get_n (void)
{
  return G_N_ELEMENTS (houses);
}

/**
 * hc_ready_house_get:
 * @house: which one
 *
 * Returns: (transfer none): its id, and what it is
 */
const HcReadyHouse *
hc_ready_house_get (guint house)
{
  g_return_val_if_fail (house < G_N_ELEMENTS (houses), NULL);
  return &houses[house];
}

static HcPlan *
open_resource (const char *path, const char *uid, GError **error)
{
  g_autoptr (GBytes) bytes = g_resources_lookup_data (path, 0, error);
  g_autoptr (HcPlanFile) file = NULL;
  gsize length;
  const char *text;

  if (bytes == NULL)
    return NULL;
  text = g_bytes_get_data (bytes, &length);
  file = hc_plan_file_read (text, length, error);
  return file != NULL ? hc_plan_copy_as (file->plan, uid, NULL) : NULL;
}

/**
 * hc_ready_house_open:
 * @id: id of a ready house
 * @uid: an id for the plan that no other has
 * @error: return location for an error
 *
 * Returns: (transfer full): a plan of its own to begin from
 */
HcPlan *
hc_ready_house_open (const char *id, const char *uid, GError **error)
{
  g_autofree char *path = g_strdup_printf ("/org/hencote/houses/%s.hencote", id);

  return open_resource (path, uid, error);
}

/**
 * hc_demo_open:
 * @uid: an id for the plan that no other has
 * @error: return location for an error
 *
 * Returns: (transfer full): Skerry Croft, an invented holding with several
 *   kinds of birds
 */
HcPlan *
hc_demo_open (const char *uid, GError **error)
{
  return open_resource ("/org/hencote/demo/skerry-croft.hencote", uid, error);
}
