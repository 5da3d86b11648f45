/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Everything about birds, houses and rules that is looked up. */
#pragma once

#include "book/breed.h"
#include "book/fitting-type.h"
#include "book/kind.h"
#include "book/material.h"
#include "book/predator.h"
#include "book/standard.h"

#include <glib-object.h>

G_BEGIN_DECLS

/**
 * HcBook:
 *
 * The book of the trade, immutable and shared by reference. What it hands out
 * without a reference lives as long as it does.
 */
typedef struct _HcBook HcBook;

#define HC_TYPE_BOOK (hc_book_get_type ())

/**
 * HC_BOOK_DEFAULT_STANDARD:
 *
 * Id of the standard of plans that name none.
 */
#define HC_BOOK_DEFAULT_STANDARD "home-cold"

GType hc_book_get_type (void);
HcBook *hc_book_ref (HcBook *self);
void hc_book_unref (HcBook *self);

HcBook *hc_book_load_default (GError **error) G_GNUC_WARN_UNUSED_RESULT;
HcBook *hc_book_load (const char *user_dir, GPtrArray **faults,
                      GError **error) G_GNUC_WARN_UNUSED_RESULT;

guint hc_book_get_n_kinds (const HcBook *self);
const HcKind *hc_book_get_kind_at (const HcBook *self, guint index);
const HcKind *hc_book_get_kind (const HcBook *self, const char *id);

guint hc_book_get_n_breeds (const HcBook *self);
const HcBreed *hc_book_get_breed_at (const HcBook *self, guint index);
const HcBreed *hc_book_get_breed (const HcBook *self, const char *id);

guint hc_book_get_n_standards (const HcBook *self);
HcStandard *hc_book_get_standard_at (const HcBook *self, guint index);
HcStandard *hc_book_get_standard (const HcBook *self, const char *id);

guint hc_book_get_n_fitting_types (const HcBook *self);
const HcFittingType *hc_book_get_fitting_type_at (const HcBook *self, guint index);
const HcFittingType *hc_book_get_fitting_type (const HcBook *self, const char *kind,
                                               const char *form);

guint hc_book_get_n_floor_layers (const HcBook *self);
const HcFloorLayer *hc_book_get_floor_layer_at (const HcBook *self, guint index);
const HcFloorLayer *hc_book_get_floor_layer (const HcBook *self, const char *id);
guint hc_book_get_n_beddings (const HcBook *self);
const HcBedding *hc_book_get_bedding_at (const HcBook *self, guint index);
const HcBedding *hc_book_get_bedding (const HcBook *self, const char *id);
guint hc_book_get_n_meshes (const HcBook *self);
const HcMesh *hc_book_get_mesh_at (const HcBook *self, guint index);
const HcMesh *hc_book_get_mesh (const HcBook *self, const char *id);
guint hc_book_get_n_constructions (const HcBook *self);
const HcConstruction *hc_book_get_construction_at (const HcBook *self, guint index);
const HcConstruction *hc_book_get_construction (const HcBook *self, const char *id);

guint hc_book_get_n_predators (const HcBook *self);
const HcPredator *hc_book_get_predator_at (const HcBook *self, guint index);
const HcPredator *hc_book_get_predator (const HcBook *self, const char *id);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcBook, hc_book_unref)

G_END_DECLS
