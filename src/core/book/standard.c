/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A standard and the figures in it. */
#include "config.h"

#include "book/standard.h"

#include "book/standard-private.h"
#include "book/translate.h"

#include <string.h>

G_DEFINE_BOXED_TYPE (HcStandard, hc_standard, hc_standard_ref, hc_standard_unref)

HcStandard *
hc_standard_new (HcKeep *keep)
{
  HcStandard *self = g_new0 (HcStandard, 1);

  g_atomic_ref_count_init (&self->refs);
  self->keep = hc_keep_ref (keep);
  return self;
}

/**
 * hc_standard_ref:
 * @self: a standard
 *
 * Returns: (transfer full): @self
 */
HcStandard *
hc_standard_ref (HcStandard *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  g_atomic_ref_count_inc (&self->refs);
  return self;
}

/**
 * hc_standard_unref:
 * @self: (transfer full): a standard
 */
void
hc_standard_unref (HcStandard *self)
{
  g_return_if_fail (self != NULL);
  if (!g_atomic_ref_count_dec (&self->refs))
    return;
  g_clear_pointer (&self->base, hc_standard_unref);
  g_clear_pointer (&self->fallback, hc_standard_unref);
  hc_keep_unref (self->keep);
  g_free (self->limits);
  g_free (self->demands);
  g_free (self);
}

/**
 * hc_standard_get_id:
 * @self: a standard
 *
 * Returns: its id, interned
 */
const char *
hc_standard_get_id (const HcStandard *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  return self->id;
}

/**
 * hc_standard_get_name:
 * @self: a standard
 *
 * Returns: its name in the keeper's language
 */
const char *
hc_standard_get_name (const HcStandard *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  return hc_translate (self->name);
}

/**
 * hc_standard_get_about:
 * @self: a standard
 *
 * Returns: what it is and whom it binds, in the keeper's language
 */
const char *
hc_standard_get_about (const HcStandard *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  return hc_translate (self->about);
}

/**
 * hc_standard_is_minimum_only:
 * @self: a standard
 *
 * Returns: whether it states only what must not be undercut, as laws do: then
 *   the level shown is the lower of this and of the fallback's
 */
gboolean
hc_standard_is_minimum_only (const HcStandard *self)
{
  g_return_val_if_fail (self != NULL, FALSE);
  return self->minimum_only;
}

/**
 * hc_standard_counts_platforms:
 * @self: a standard
 *
 * Returns: whether raised platforms count as floor, else the ground only
 */
gboolean
hc_standard_counts_platforms (const HcStandard *self)
{
  g_return_val_if_fail (self != NULL, FALSE);
  return self->platforms_count;
}

/**
 * hc_standard_get_fallback:
 * @self: a standard
 *
 * Returns: (nullable) (transfer none): the standard that speaks where this one
 *   is silent
 */
HcStandard *
hc_standard_get_fallback (const HcStandard *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  return self->fallback;
}

/**
 * hc_standard_get_n_limits:
 * @self: a standard
 *
 * Returns: how many limits it states itself
 */
guint
hc_standard_get_n_limits (const HcStandard *self)
{
  g_return_val_if_fail (self != NULL, 0);
  return self->n_limits;
}

/**
 * hc_standard_get_limit:
 * @self: a standard
 * @index: which of its limits, in the order of their names
 *
 * Returns: (transfer none): the limit
 */
const HcLimit *
hc_standard_get_limit (const HcStandard *self, guint index)
{
  g_return_val_if_fail (self != NULL && index < self->n_limits, NULL);
  return &self->limits[index];
}

/**
 * hc_standard_get_n_demands:
 * @self: a standard
 *
 * Returns: how many demands it states itself
 */
guint
hc_standard_get_n_demands (const HcStandard *self)
{
  g_return_val_if_fail (self != NULL, 0);
  return self->n_demands;
}

/**
 * hc_standard_get_demand:
 * @self: a standard
 * @index: which of its demands, in the order of their names
 *
 * Returns: (transfer none): the demand
 */
const HcDemand *
hc_standard_get_demand (const HcStandard *self, guint index)
{
  g_return_val_if_fail (self != NULL && index < self->n_demands, NULL);
  return &self->demands[index];
}

/**
 * hc_standard_get_n_sources:
 * @self: a standard
 *
 * Returns: how many publications its figures come from
 */
guint
hc_standard_get_n_sources (const HcStandard *self)
{
  g_return_val_if_fail (self != NULL, 0);
  return self->sources.n;
}

/**
 * hc_standard_get_source:
 * @self: a standard
 * @index: which of its sources
 *
 * Returns: (transfer none): the source
 */
const HcSource *
hc_standard_get_source (const HcStandard *self, guint index)
{
  g_return_val_if_fail (self != NULL && index < self->sources.n, NULL);
  return &self->sources.entries[index];
}
