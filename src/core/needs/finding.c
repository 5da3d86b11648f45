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
