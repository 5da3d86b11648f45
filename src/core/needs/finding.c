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
  GPtrArray *animals;
  GArray *lines;
} Shared;

/* Few findings have any. */
static const char *const no_animals[] = { NULL };

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
  self->finding.animals = no_animals;
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
  g_clear_pointer (&finding->area, hc_shape_unref);
  g_ptr_array_unref (self->ids);
  g_clear_pointer (&self->animals, g_ptr_array_unref);
  g_clear_pointer (&self->lines, g_array_unref);
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

/* @animal is an interned id. */
void
hc_finding_add_animal (HcFinding *finding, const char *animal)
{
  Shared *self = (Shared *) finding;

  if (g_strv_contains (finding->animals, animal))
    return;
  if (self->animals == NULL)
    {
      self->animals = g_ptr_array_new ();
      g_ptr_array_add (self->animals, NULL);
    }
  g_ptr_array_insert (self->animals, (gint) self->animals->len - 1, (gpointer) animal);
  finding->animals = (const char *const *) self->animals->pdata;
}

static gboolean
has_line (const HcFinding *finding, const HcFindingLine *line)
{
  for (guint i = 0; i < finding->n_lines; i++)
    if (hc_point_equal (finding->lines[i].from, line->from)
        && hc_point_equal (finding->lines[i].to, line->to))
      return TRUE;
  return FALSE;
}

void
hc_finding_add_line (HcFinding *finding, HcPoint from, HcPoint to)
{
  Shared *self = (Shared *) finding;
  HcFindingLine line = { from, to };

  if (hc_point_equal (from, to) || has_line (finding, &line))
    return;
  if (self->lines == NULL)
    self->lines = g_array_new (FALSE, FALSE, sizeof (HcFindingLine));
  g_array_append_val (self->lines, line);
  finding->lines = (const HcFindingLine *) self->lines->data;
  finding->n_lines = self->lines->len;
}

/* What @other tells of animals and places, @finding tells too. */
static void
take_in (HcFinding *finding, const HcFinding *other)
{
  for (guint i = 0; other->animals[i] != NULL; i++)
    hc_finding_add_animal (finding, other->animals[i]);
  for (guint i = 0; i < other->n_lines; i++)
    hc_finding_add_line (finding, other->lines[i].from, other->lines[i].to);
}

void
hc_finding_set_measure (HcFinding *finding, double measured, double required, const char *unit)
{
  finding->measured = measured;
  finding->required = required;
  finding->unit = unit;
}

/* Takes over @area. */
void
hc_finding_set_area (HcFinding *finding, HcShape *area)
{
  g_clear_pointer (&finding->area, hc_shape_unref);
  finding->area = area;
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
  take_in (copy, finding);
  for (guint i = 0; i < n_others; i++)
    take_in (copy, others[i]);
  copy->birds = finding->birds;
  copy->kinds = finding->kinds;
  copy->more = n_others;
  hc_finding_set_measure (copy, finding->measured, finding->required, finding->unit);
  if (finding->area != NULL)
    copy->area = hc_shape_ref (finding->area);
  copy->figure = finding->figure;
  if (finding->standard != NULL)
    copy->standard = hc_standard_ref (finding->standard);
  return copy;
}
