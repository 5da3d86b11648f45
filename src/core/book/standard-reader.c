/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading a standard from its file, and what all its figures must agree on. */
#include "config.h"

#include "book/standard-reader.h"

#include "book/figure-reader.h"

#include <glib/gi18n-lib.h>

#define FORMAT "hencote-standard"
#define VERSION 1

static void
read_format (HcRecord *root)
{
  if (!g_str_equal (hc_record_text (root, "format"), FORMAT))
    hc_record_fault (root, "format", _("this should be “%s”."), FORMAT);
  if (hc_record_whole (root, "version", 1, G_MAXINT) > VERSION)
    hc_record_fault (root, "version", _("this was written for a newer version of the program."));
}

static HcStandard *
find_standard (GPtrArray *standards, const char *id)
{
  for (guint i = 0; i < standards->len; i++)
    if (g_str_equal (hc_standard_get_id (standards->pdata[i]), id))
      return standards->pdata[i];
  return NULL;
}

/* Only standards read before can be fallen back to, so there is no circle. */
static void
read_fallback (HcRecord *root, HcStandard *self, GPtrArray *standards)
{
  const char *id = hc_record_maybe_text (root, "falls_back_to");
  HcStandard *fallback;

  if (id == NULL)
    return;
  fallback = find_standard (standards, id);
  if (fallback != NULL)
    self->fallback = hc_standard_ref (fallback);
  else
    hc_record_fault (root, "falls_back_to", _("there is no standard “%s”."), id);
}

static void
read_head (HcRecord *root, HcStandard *self, GPtrArray *standards)
{
  read_format (root);
  self->id = hc_record_id (root, "id");
  self->name = hc_record_text (root, "name");
  self->about = hc_record_text (root, "about");
  self->minimum_only = hc_record_flag (root, "minimum_only");
  self->platforms_count = hc_record_flag (root, "platforms_count");
  if (find_standard (standards, self->id) != NULL)
    hc_record_fault (root, "id", _("another standard is called “%s” already."), self->id);
  read_fallback (root, self, standards);
  hc_sources_read (&self->sources, root);
}

static const char **
words_of_kinds (const HcStandardContext *context)
{
  const char **words = g_new0 (const char *, context->n_kinds + 1);

  for (guint i = 0; i < context->n_kinds; i++)
    words[i] = context->kinds[i].id;
  return words;
}

static void
read_figures (HcRecord *root, HcStandard *self, const HcStandardContext *context)
{
  g_autofree const char **words = words_of_kinds (context);
  HcFigureContext figures = { self->id, &self->sources, words };
  gconstpointer limits, demands;

  limits = hc_record_table (root, "limits", sizeof (HcLimit), hc_limit_read, &figures,
                            &self->n_limits);
  demands = hc_record_table (root, "demands", sizeof (HcDemand), hc_demand_read, &figures,
                             &self->n_demands);
  self->limits = g_memdup2 (limits, self->n_limits * sizeof (HcLimit));
  self->demands = g_memdup2 (demands, self->n_demands * sizeof (HcDemand));
}

/* Places are those of the file: figures are put in order only later. */
static void
fault_at (HcRecord *root, const char *list, guint index, const char *what)
{
  g_autofree char *place = g_strdup_printf ("%s[%u]", list, index);

  hc_record_fault (root, place, "%s", what);
}

static void
check_ids (HcRecord *root, const HcStandard *self)
{
  g_autoptr (GHashTable) ids = g_hash_table_new (g_str_hash, g_str_equal);

  for (guint i = 0; i < self->n_demands; i++)
    if (!g_hash_table_add (ids, (gpointer) self->demands[i].figure.id))
      fault_at (root, "demands", i, _("another figure has the same id."));
  for (guint i = 0; i < self->n_limits; i++)
    if (!g_hash_table_add (ids, (gpointer) self->limits[i].figure.id))
      fault_at (root, "limits", i, _("another figure has the same id."));
}

static void
check_shares (HcRecord *root, const HcStandard *self)
{
  for (guint i = 0; i < self->n_demands; i++)
    {
      const HcDemand *part = &self->demands[i];
      const HcDemand *whole;

      if (part->share_of == NULL)
        continue;
      whole = hc_standard_find_demand_by_id (self, part->share_of);
      if (whole == NULL || whole->share_of != NULL || whole->figure.unit != part->figure.unit)
        fault_at (root, "demands", i,
                  _("share_of should name another demand of this file, in the same unit."));
    }
}

static gboolean
units_compare (HcFigureUnit a, HcFigureUnit b)
{
  HcDimension dimension = hc_figure_unit_get_dimension (a);

  return dimension == HC_DIMENSION_OTHER ? a == b
                                         : dimension == hc_figure_unit_get_dimension (b);
}

static const HcLimit *
known_limit (GPtrArray *standards, const char *name)
{
  for (guint i = 0; i < standards->len; i++)
    {
      const HcStandard *standard = standards->pdata[i];

      for (guint j = 0; j < standard->n_limits; j++)
        if (standard->limits[j].figure.name == name)
          return &standard->limits[j];
    }
  return NULL;
}

static const HcDemand *
known_demand (GPtrArray *standards, const char *name)
{
  for (guint i = 0; i < standards->len; i++)
    {
      const HcStandard *standard = standards->pdata[i];

      for (guint j = 0; j < standard->n_demands; j++)
        if (standard->demands[j].figure.name == name)
          return &standard->demands[j];
    }
  return NULL;
}

static char *
find_fault_with_measure (const HcFigure *figure, const HcFigure *known)
{
  if (known == NULL)
    return g_strdup_printf (_("nothing is measured as “%s”; check need and measure."),
                            figure->name);
  if (units_compare (figure->unit, known->unit))
    return NULL;
  return g_strdup_printf (_("%s is not measured in %s but in %s."), figure->name,
                          hc_figure_unit_to_string (figure->unit),
                          hc_figure_unit_to_string (known->unit));
}

static void
check_limit (HcRecord *root, const HcLimit *limit, guint index, const HcLimit *known)
{
  g_autofree char *fault
      = find_fault_with_measure (&limit->figure, known != NULL ? &known->figure : NULL);

  if (fault != NULL)
    fault_at (root, "limits", index, fault);
  else if (known->direction != limit->direction)
    fault_at (root, "limits", index, _("the direction should be the other one."));
}

static void
check_demand (HcRecord *root, const HcDemand *demand, guint index, const HcDemand *known)
{
  g_autofree char *fault
      = find_fault_with_measure (&demand->figure, known != NULL ? &known->figure : NULL);

  if (fault != NULL)
    fault_at (root, "demands", index, fault);
}

/* The program's own standards say what is measured, and how. */
static void
check_vocabulary (HcRecord *root, const HcStandard *self, GPtrArray *standards)
{
  for (guint i = 0; i < self->n_limits; i++)
    check_limit (root, &self->limits[i], i, known_limit (standards, self->limits[i].figure.name));
  for (guint i = 0; i < self->n_demands; i++)
    check_demand (root, &self->demands[i], i,
                  known_demand (standards, self->demands[i].figure.name));
}

static void
check (HcRecord *root, const HcStandard *self, const HcStandardContext *context)
{
  check_ids (root, self);
  check_shares (root, self);
  if (context->keepers)
    check_vocabulary (root, self, context->standards);
}

/* Texts are kept in @keep. */
HcStandard *
hc_standard_read (const char *file, const char *text, gsize length, HcKeep *keep,
                  const HcStandardContext *context, GError **error)
{
  HcReading *reading = hc_reading_new (file, text, length, keep);
  HcRecord *root = hc_reading_get_root (reading);
  g_autoptr (HcStandard) self = hc_standard_new (keep);

  read_head (root, self, context->standards);
  read_figures (root, self, context);
  if (!hc_reading_is_faulty (reading))
    check (root, self, context);
  if (!hc_reading_finish (reading, error))
    return NULL;
  hc_standard_sort (self);
  hc_standard_work_out_shares (self);
  return g_steal_pointer (&self);
}
