/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Everything about birds, houses and rules that is looked up. */
#pragma once

#include "book/air-figure.h"
#include "book/breed.h"
#include "book/care.h"
#include "book/fitting-type.h"
#include "book/heat-law.h"
#include "book/house-measure.h"
#include "book/kind.h"
#include "book/life.h"
#include "book/material.h"
#include "book/opening-type.h"
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

/**
 * hc_book_get_n_kinds:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_kinds (const HcBook *self);

/**
 * hc_book_get_kind_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the kind of bird at that place in the data
 */
const HcKind *hc_book_get_kind_at (const HcBook *self, guint index);

/**
 * hc_book_get_kind:
 * @self: a book
 * @id: (nullable): the id of a kind of bird
 *
 * Returns: (nullable) (transfer none): the kind of bird of that id
 */
const HcKind *hc_book_get_kind (const HcBook *self, const char *id);

/**
 * hc_book_get_n_breeds:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_breeds (const HcBook *self);

/**
 * hc_book_get_breed_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the breed at that place in the data
 */
const HcBreed *hc_book_get_breed_at (const HcBook *self, guint index);

/**
 * hc_book_get_breed:
 * @self: a book
 * @id: (nullable): the id of a breed
 *
 * Returns: (nullable) (transfer none): the breed of that id
 */
const HcBreed *hc_book_get_breed (const HcBook *self, const char *id);

/**
 * hc_book_get_n_lives:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_lives (const HcBook *self);

/**
 * hc_book_get_life_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the life of a kind of bird at that place in the data
 */
const HcLife *hc_book_get_life_at (const HcBook *self, guint index);

/**
 * hc_book_get_life:
 * @self: a book
 * @id: (nullable): the id of a kind of bird
 *
 * Returns: (nullable) (transfer none): the life of a kind of bird of that id
 */
const HcLife *hc_book_get_life (const HcBook *self, const char *id);

/**
 * hc_book_get_n_composts:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_composts (const HcBook *self);

/**
 * hc_book_get_compost_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the thing that goes on a compost heap at that place in the data
 */
const HcCompost *hc_book_get_compost_at (const HcBook *self, guint index);

/**
 * hc_book_get_compost:
 * @self: a book
 * @id: (nullable): the id of a thing that goes on a compost heap
 *
 * Returns: (nullable) (transfer none): the thing that goes on a compost heap of that id
 */
const HcCompost *hc_book_get_compost (const HcBook *self, const char *id);

/**
 * hc_book_get_n_egg_classes:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_egg_classes (const HcBook *self);

/**
 * hc_book_get_egg_class_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the size of egg at that place in the data
 */
const HcEggClass *hc_book_get_egg_class_at (const HcBook *self, guint index);

/**
 * hc_book_get_egg_class:
 * @self: a book
 * @id: (nullable): the id of a size of egg
 *
 * Returns: (nullable) (transfer none): the size of egg of that id
 */
const HcEggClass *hc_book_get_egg_class (const HcBook *self, const char *id);

/**
 * hc_book_get_n_feeds:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_feeds (const HcBook *self);

/**
 * hc_book_get_feed_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the feed at that place in the data
 */
const HcFeed *hc_book_get_feed_at (const HcBook *self, guint index);

/**
 * hc_book_get_feed:
 * @self: a book
 * @id: (nullable): the id of a feed
 *
 * Returns: (nullable) (transfer none): the feed of that id
 */
const HcFeed *hc_book_get_feed (const HcBook *self, const char *id);

/**
 * hc_book_get_n_cares:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_cares (const HcBook *self);

/**
 * hc_book_get_care_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the figure of care at that place in the data
 */
const HcCare *hc_book_get_care_at (const HcBook *self, guint index);

/**
 * hc_book_get_care:
 * @self: a book
 * @id: (nullable): the id of a figure of care
 *
 * Returns: (nullable) (transfer none): the figure of care of that id
 */
const HcCare *hc_book_get_care (const HcBook *self, const char *id);

/**
 * hc_book_get_n_standards:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_standards (const HcBook *self);

/**
 * hc_book_get_standard_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the standard at that place in the data
 */
HcStandard *hc_book_get_standard_at (const HcBook *self, guint index);

/**
 * hc_book_get_standard:
 * @self: a book
 * @id: (nullable): the id of a standard
 *
 * Returns: (nullable) (transfer none): the standard of that id
 */
HcStandard *hc_book_get_standard (const HcBook *self, const char *id);

guint hc_book_get_n_fitting_types (const HcBook *self);
const HcFittingType *hc_book_get_fitting_type_at (const HcBook *self, guint index);
const HcFittingType *hc_book_get_fitting_type (const HcBook *self, const char *kind,
                                               const char *form);

/**
 * hc_book_get_n_opening_types:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_opening_types (const HcBook *self);

/**
 * hc_book_get_opening_type_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the opening at that place in the data
 */
const HcOpeningType *hc_book_get_opening_type_at (const HcBook *self, guint index);

/**
 * hc_book_get_opening_type:
 * @self: a book
 * @id: (nullable): what the plan calls it, "pop_hole"
 *
 * Returns: (nullable) (transfer none): the opening of that kind
 */
const HcOpeningType *hc_book_get_opening_type (const HcBook *self, const char *id);

/**
 * hc_book_get_n_floor_layers:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_floor_layers (const HcBook *self);

/**
 * hc_book_get_floor_layer_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the floor layer at that place in the data
 */
const HcFloorLayer *hc_book_get_floor_layer_at (const HcBook *self, guint index);

/**
 * hc_book_get_floor_layer:
 * @self: a book
 * @id: (nullable): the id of a floor layer
 *
 * Returns: (nullable) (transfer none): the floor layer of that id
 */
const HcFloorLayer *hc_book_get_floor_layer (const HcBook *self, const char *id);

/**
 * hc_book_get_n_beddings:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_beddings (const HcBook *self);

/**
 * hc_book_get_bedding_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the bedding at that place in the data
 */
const HcBedding *hc_book_get_bedding_at (const HcBook *self, guint index);

/**
 * hc_book_get_bedding:
 * @self: a book
 * @id: (nullable): the id of a bedding
 *
 * Returns: (nullable) (transfer none): the bedding of that id
 */
const HcBedding *hc_book_get_bedding (const HcBook *self, const char *id);

/**
 * hc_book_get_n_meshes:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_meshes (const HcBook *self);

/**
 * hc_book_get_mesh_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the mesh at that place in the data
 */
const HcMesh *hc_book_get_mesh_at (const HcBook *self, guint index);

/**
 * hc_book_get_mesh:
 * @self: a book
 * @id: (nullable): the id of a mesh
 *
 * Returns: (nullable) (transfer none): the mesh of that id
 */
const HcMesh *hc_book_get_mesh (const HcBook *self, const char *id);

/**
 * hc_book_get_n_latches:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_latches (const HcBook *self);

/**
 * hc_book_get_latch_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the latch at that place in the data
 */
const HcLatch *hc_book_get_latch_at (const HcBook *self, guint index);

/**
 * hc_book_get_latch:
 * @self: a book
 * @id: (nullable): the id of a latch
 *
 * Returns: (nullable) (transfer none): the latch of that id
 */
const HcLatch *hc_book_get_latch (const HcBook *self, const char *id);

/**
 * hc_book_get_n_constructions:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_constructions (const HcBook *self);

/**
 * hc_book_get_construction_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the wall or roof construction at that place in the data
 */
const HcConstruction *hc_book_get_construction_at (const HcBook *self, guint index);

/**
 * hc_book_get_construction:
 * @self: a book
 * @id: (nullable): the id of a wall or roof construction
 *
 * Returns: (nullable) (transfer none): the wall or roof construction of that id
 */
const HcConstruction *hc_book_get_construction (const HcBook *self, const char *id);

/**
 * hc_book_get_n_predators:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_predators (const HcBook *self);

/**
 * hc_book_get_predator_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the predator at that place in the data
 */
const HcPredator *hc_book_get_predator_at (const HcBook *self, guint index);

/**
 * hc_book_get_predator:
 * @self: a book
 * @id: (nullable): the id of a predator
 *
 * Returns: (nullable) (transfer none): the predator of that id
 */
const HcPredator *hc_book_get_predator (const HcBook *self, const char *id);

/**
 * hc_book_get_n_house_measures:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_house_measures (const HcBook *self);

/**
 * hc_book_get_house_measure_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the measure of new houses at that place in the data
 */
const HcHouseMeasure *hc_book_get_house_measure_at (const HcBook *self, guint index);

/**
 * hc_book_get_house_measure:
 * @self: a book
 * @id: (nullable): the id of a measure of new houses
 *
 * Returns: (nullable) (transfer none): the measure of new houses of that id
 */
const HcHouseMeasure *hc_book_get_house_measure (const HcBook *self, const char *id);

/**
 * hc_book_get_n_heat_laws:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_heat_laws (const HcBook *self);

/**
 * hc_book_get_heat_law_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the law of heat at that place in the data
 */
const HcHeatLaw *hc_book_get_heat_law_at (const HcBook *self, guint index);

/**
 * hc_book_get_heat_law:
 * @self: a book
 * @id: (nullable): the id of a law of heat
 *
 * Returns: (nullable) (transfer none): the law of heat of that id
 */
const HcHeatLaw *hc_book_get_heat_law (const HcBook *self, const char *id);

/**
 * hc_book_get_n_air_figures:
 * @self: a book
 *
 * Returns: how many there are
 */
guint hc_book_get_n_air_figures (const HcBook *self);

/**
 * hc_book_get_air_figure_at:
 * @self: a book
 * @index: which, from 0
 *
 * Returns: (transfer none): the figure of air at that place in the data
 */
const HcAirFigure *hc_book_get_air_figure_at (const HcBook *self, guint index);

/**
 * hc_book_get_air_figure:
 * @self: a book
 * @id: (nullable): the id of a figure of air
 *
 * Returns: (nullable) (transfer none): the figure of air of that id
 */
const HcAirFigure *hc_book_get_air_figure (const HcBook *self, const char *id);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcBook, hc_book_unref)

G_END_DECLS
