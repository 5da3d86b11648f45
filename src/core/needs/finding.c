/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Findings as values that checks share. */
#include "config.h"

#include "needs/finding.h"

#include "needs/finding-private.h"

typedef struct
{
  HcFinding finding;
  gatomicrefcount refs;
  GPtrArray *ids;
} Shared;

HcFinding *
hc_finding_new (const char *code, HcLevel level)
{
  Shared *self = g_new0 (Shared, 1);

  g_atomic_ref_count_init (&self->refs);
  self->ids = g_ptr_array_new_with_free_func (g_free);
  g_ptr_array_add (self->ids, NULL);
  self->finding.ids = (char **) self->ids->pdata;
  self->finding.code = code;
  self->finding.level = level;
  self->finding.unit = "";
  return &self->finding;
}

HcFinding *
hc_finding_ref (HcFinding *finding)
{
  g_atomic_ref_count_inc (&((Shared *) finding)->refs);
  return finding;
}

void
hc_finding_unref (HcFinding *finding)
{
  Shared *self = (Shared *) finding;

  if (!g_atomic_ref_count_dec (&self->refs))
    return;
  g_clear_pointer (&finding->standard, hc_standard_unref);
  g_ptr_array_unref (self->ids);
  g_free (self);
}

void
hc_finding_add_id (HcFinding *finding, const char *id)
{
  Shared *self = (Shared *) finding;

  if (id == NULL || *id == '\0'
      || g_strv_contains ((const char *const *) self->ids->pdata, id))
    return;
  g_ptr_array_insert (self->ids, (gint) self->ids->len - 1, g_strdup (id));
  finding->ids = (char **) self->ids->pdata;
}

void
hc_finding_set_measure (HcFinding *finding, double measured, double required, const char *unit)
{
  finding->measured = measured;
  finding->required = required;
  finding->unit = unit;
}

void
hc_finding_set_figure (HcFinding *finding, HcStandard *standard, const HcFigure *figure)
{
  if (figure == NULL)
    return;
  g_clear_pointer (&finding->standard, hc_standard_unref);
  finding->standard = hc_standard_ref (standard);
  finding->figure = figure->id;
}

/* A copy of @finding that stands for @others too, which it names after what it
 * names itself. */
HcFinding *
hc_finding_with_others (const HcFinding *finding, HcFinding *const *others, guint n_others)
{
  g_autoptr (GHashTable) named = g_hash_table_new (g_str_hash, g_str_equal);
  HcFinding *copy = hc_finding_new (finding->code, finding->level);
  GPtrArray *ids = ((Shared *) copy)->ids;

  g_ptr_array_set_size (ids, 0);
  for (guint i = 0; i <= n_others; i++)
    for (char **id = i == 0 ? finding->ids : others[i - 1]->ids; *id != NULL; id++)
      if (g_hash_table_add (named, *id))
        g_ptr_array_add (ids, g_strdup (*id));
  g_ptr_array_add (ids, NULL);
  copy->ids = (char **) ids->pdata;
  copy->birds = finding->birds;
  copy->kinds = finding->kinds;
  copy->more = n_others;
  hc_finding_set_measure (copy, finding->measured, finding->required, finding->unit);
  copy->figure = finding->figure;
  if (finding->standard != NULL)
    copy->standard = hc_standard_ref (finding->standard);
  return copy;
}
