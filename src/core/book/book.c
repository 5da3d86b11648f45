/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The book of the trade: what is looked up, by place and by id. */
#include "config.h"

#include "book/book.h"

#include "book/book-private.h"

G_DEFINE_BOXED_TYPE (HcBook, hc_book, hc_book_ref, hc_book_unref)

HcBook *
hc_book_new (void)
{
  HcBook *self = g_new0 (HcBook, 1);

  g_atomic_ref_count_init (&self->refs);
  self->keep = hc_keep_new ();
  self->standards = g_ptr_array_new_with_free_func ((GDestroyNotify) hc_standard_unref);
  return self;
}

/**
 * hc_book_ref:
 * @self: a book
 *
 * Returns: (transfer full): @self
 */
HcBook *
hc_book_ref (HcBook *self)
{
  g_return_val_if_fail (self != NULL, NULL);
  g_atomic_ref_count_inc (&self->refs);
  return self;
}

/**
 * hc_book_unref:
 * @self: (transfer full): a book
 */
void
hc_book_unref (HcBook *self)
{
  g_return_if_fail (self != NULL);
  if (!g_atomic_ref_count_dec (&self->refs))
    return;
  g_ptr_array_unref (self->standards);
  hc_keep_unref (self->keep);
  g_free (self);
}

static gconstpointer
entry_at (const HcTable *table, guint index)
{
  g_return_val_if_fail (index < table->n, NULL);
  return (const char *) table->entries + table->size * index;
}

/* Every entry begins with a pointer to its id. */
static gconstpointer
find_entry (const HcTable *table, const char *id)
{
  for (guint i = 0; i < table->n; i++)
    {
      gconstpointer entry = entry_at (table, i);

      if (g_strcmp0 (*(const char *const *) entry, id) == 0)
        return entry;
    }
  return NULL;
}

/* The three ways to look into one table; the header says what they return. */
#define HC_BOOK_TABLE(Type, name, names)                   \
  guint hc_book_get_n_##names (const HcBook *self)         \
  {                                                        \
    g_return_val_if_fail (self != NULL, 0);                \
    return self->names.n;                                  \
  }                                                        \
  const Type *hc_book_get_##name##_at (const HcBook *self, guint index)    \
  {                                                        \
    g_return_val_if_fail (self != NULL, NULL);             \
    return entry_at (&self->names, index);                 \
  }                                                        \
  const Type *hc_book_get_##name (const HcBook *self, const char *id)      \
  {                                                        \
    g_return_val_if_fail (self != NULL, NULL);             \
    return find_entry (&self->names, id);                  \
  }

HC_BOOK_TABLE (HcKind, kind, kinds)
HC_BOOK_TABLE (HcBreed, breed, breeds)
HC_BOOK_TABLE (HcLife, life, lives)
HC_BOOK_TABLE (HcCompost, compost, composts)
HC_BOOK_TABLE (HcEggClass, egg_class, egg_classes)
HC_BOOK_TABLE (HcFeed, feed, feeds)
HC_BOOK_TABLE (HcCare, care, cares)
HC_BOOK_TABLE (HcHeatLaw, heat_law, heat_laws)
HC_BOOK_TABLE (HcAirFigure, air_figure, air_figures)
HC_BOOK_TABLE (HcOpeningType, opening_type, opening_types)
HC_BOOK_TABLE (HcFloorLayer, floor_layer, floor_layers)
HC_BOOK_TABLE (HcBedding, bedding, beddings)
HC_BOOK_TABLE (HcMesh, mesh, meshes)
HC_BOOK_TABLE (HcLatch, latch, latches)
HC_BOOK_TABLE (HcConstruction, construction, constructions)
HC_BOOK_TABLE (HcPredator, predator, predators)
HC_BOOK_TABLE (HcHouseMeasure, house_measure, house_measures)

/**
 * hc_book_get_n_fitting_types:
 * @self: a book
 *
 * Returns: how many things there are to add
 */
guint
hc_book_get_n_fitting_types (const HcBook *self)
{
  g_return_val_if_fail (self != NULL, 0);
  return self->fitting_types.n;
}

/**
 * hc_book_get_fitting_type_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the thing to add at that place in the data
 */
const HcFittingType *
hc_book_get_fitting_type_at (const HcBook *self, guint index)
{
  g_return_val_if_fail (self != NULL, NULL);
  return entry_at (&self->fitting_types, index);
}

/**
 * hc_book_get_fitting_type:
 * @self: a book
 * @kind: (nullable): what the plan calls it, "feeder"
 * @form: (nullable): its form, "round", or %NULL for the first there is
 *
 * Returns: (nullable) (transfer none): the thing to add
 */
const HcFittingType *
hc_book_get_fitting_type (const HcBook *self, const char *kind, const char *form)
{
  g_return_val_if_fail (self != NULL, NULL);
  for (guint i = 0; i < self->fitting_types.n; i++)
    {
      const HcFittingType *type = entry_at (&self->fitting_types, i);

      if (g_strcmp0 (type->kind, kind) == 0
          && (form == NULL || g_str_equal (type->form, form)))
        return type;
    }
  return NULL;
}

guint
hc_book_get_n_standards (const HcBook *self)
{
  g_return_val_if_fail (self != NULL, 0);
  return self->standards->len;
}

HcStandard *
hc_book_get_standard_at (const HcBook *self, guint index)
{
  g_return_val_if_fail (self != NULL && index < self->standards->len, NULL);
  return self->standards->pdata[index];
}

HcStandard *
hc_book_get_standard (const HcBook *self, const char *id)
{
  g_return_val_if_fail (self != NULL, NULL);
  for (guint i = 0; i < self->standards->len; i++)
    if (g_strcmp0 (hc_standard_get_id (self->standards->pdata[i]), id) == 0)
      return self->standards->pdata[i];
  return NULL;
}
