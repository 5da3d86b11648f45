/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Filling a book from the data inside the library and the keeper's own rules. */
#include "config.h"

#include "book/air-reader.h"
#include "book/bird-reader.h"
#include "book/book-private.h"
#include "book/care-reader.h"
#include "book/fitting-reader.h"
#include "book/house-measure-reader.h"
#include "book/life-reader.h"
#include "book/material-reader.h"
#include "book/opening-reader.h"
#include "book/predator-reader.h"
#include "book/record.h"
#include "book/standard-reader.h"

#include "base/error.h"

#include <gio/gio.h>
#include <glib/gi18n-lib.h>

#define DATA "/org/hencote/data/"
#define STANDARDS DATA "standards/"

/* One list in one file, and the table of the book it fills. */
typedef struct
{
  const char *file;
  const char *list;
  gsize table;
  gsize size;
  HcReadItem read;
} DataList;

#define LIST(file, list, Type, read) \
  { file, #list, G_STRUCT_OFFSET (HcBook, list), sizeof (Type), read }

static const DataList data_lists[] = {
  LIST ("birds/kinds.json", kinds, HcKind, hc_kind_read),
  LIST ("birds/breeds.json", breeds, HcBreed, hc_breed_read),
  LIST ("birds/lives.json", lives, HcLife, hc_life_read),
  LIST ("materials/compost.json", composts, HcCompost, hc_compost_read),
  LIST ("birds/eggs.json", egg_classes, HcEggClass, hc_egg_class_read),
  LIST ("birds/feeds.json", feeds, HcFeed, hc_feed_read),
  LIST ("birds/care.json", cares, HcCare, hc_care_read),
  LIST ("birds/heat.json", heat_laws, HcHeatLaw, hc_heat_law_read),
  LIST ("birds/air.json", air_figures, HcAirFigure, hc_air_figure_read),
  LIST ("fittings/fittings.json", fitting_types, HcFittingType, hc_fitting_type_read),
  LIST ("fittings/openings.json", opening_types, HcOpeningType, hc_opening_type_read),
  LIST ("materials/floors.json", floor_layers, HcFloorLayer, hc_floor_layer_read),
  LIST ("materials/bedding.json", beddings, HcBedding, hc_bedding_read),
  LIST ("materials/mesh.json", meshes, HcMesh, hc_mesh_read),
  LIST ("materials/latches.json", latches, HcLatch, hc_latch_read),
  LIST ("materials/constructions.json", constructions, HcConstruction, hc_construction_read),
  LIST ("predators.json", predators, HcPredator, hc_predator_read),
  LIST ("houses/measures.json", house_measures, HcHouseMeasure, hc_house_measure_read),
};

static GBytes *
look_up (const char *path, GError **error)
{
  return g_resources_lookup_data (path, G_RESOURCE_LOOKUP_FLAGS_NONE, error);
}

static gboolean
load_list (HcBook *self, const DataList *data, GError **error)
{
  g_autofree char *path = g_strconcat (DATA, data->file, NULL);
  g_autoptr (GBytes) bytes = look_up (path, error);
  HcTable *table = G_STRUCT_MEMBER_P (self, data->table);
  HcDataContext context = { &self->kinds };
  HcReading *reading;
  HcRecord *root;

  if (bytes == NULL)
    return FALSE;
  reading = hc_reading_new (data->file, g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes),
                            self->keep);
  root = hc_reading_get_root (reading);
  hc_sources_read (&context.sources, root);
  table->size = data->size;
  table->entries = hc_record_table (root, data->list, data->size, data->read, &context,
                                    &table->n);
  return hc_reading_finish (reading, error);
}

/* Figures name kinds by a bit, in the order of the file. */
static void
number_kinds (HcBook *self)
{
  HcKind *kinds = (HcKind *) self->kinds.entries;

  for (guint i = 0; i < self->kinds.n; i++)
    kinds[i].order = i;
}

static gboolean
add_standard (HcBook *self, const char *file, GBytes *bytes, gboolean keepers, GError **error)
{
  HcStandardContext context = { self->kinds.entries, self->kinds.n, self->standards, keepers };
  HcStandard *standard;

  standard = hc_standard_read (file, g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes),
                               self->keep, &context, error);
  if (standard != NULL)
    g_ptr_array_add (self->standards, standard);
  return standard != NULL;
}

static gboolean
load_standard (HcBook *self, const char *name, GError **error)
{
  g_autofree char *path = g_strconcat (STANDARDS, name, NULL);
  g_autoptr (GBytes) bytes = look_up (path, error);

  return bytes != NULL && add_standard (self, name, bytes, FALSE, error);
}

/* The default comes first: the others fall back to it and use its words. */
static gboolean
load_standards (HcBook *self, GError **error)
{
  static const char first[] = HC_BOOK_DEFAULT_STANDARD ".json";
  g_auto (GStrv) names
      = g_resources_enumerate_children (STANDARDS, G_RESOURCE_LOOKUP_FLAGS_NONE, error);

  if (names == NULL || !load_standard (self, first, error))
    return FALSE;
  for (char **name = names; *name != NULL; name++)
    if (!g_str_equal (*name, first) && !load_standard (self, *name, error))
      return FALSE;
  return TRUE;
}

/**
 * hc_book_load_default:
 * @error: return location for an error
 *
 * Loads the book that comes with the program.
 *
 * Returns: (transfer full): the book, or %NULL with an error if the program's
 *   own data is damaged
 */
HcBook *
hc_book_load_default (GError **error)
{
  return hc_book_load (NULL, NULL, error);
}

/* Of longer files one byte too many is enough to refuse them by. */
static GBytes *
read_user_file (const char *path, GError **error)
{
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (GFileInputStream) stream = g_file_read (file, NULL, error);
  g_autofree char *text = g_malloc (HC_READING_MOST_BYTES + 1);
  gsize length;

  if (stream == NULL
      || !g_input_stream_read_all (G_INPUT_STREAM (stream), text, HC_READING_MOST_BYTES + 1,
                                   &length, NULL, error))
    return NULL;
  return g_bytes_new_take (g_steal_pointer (&text), length);
}

static gboolean
load_user_standard (HcBook *self, const char *path, GError **error)
{
  g_autofree char *name = g_path_get_basename (path);
  g_autoptr (GBytes) bytes = read_user_file (path, error);

  if (bytes != NULL)
    return add_standard (self, name, bytes, TRUE, error);
  g_prefix_error (error, "%s: ", name);
  return FALSE;
}

static int
compare_names (gconstpointer a, gconstpointer b)
{
  return g_strcmp0 (*(const char *const *) a, *(const char *const *) b);
}

static GPtrArray *
list_user_files (const char *user_dir)
{
  GPtrArray *paths = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (GDir) dir = g_dir_open (user_dir, 0, NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    if (g_str_has_suffix (name, ".json"))
      g_ptr_array_add (paths, g_build_filename (user_dir, name, NULL));
  g_ptr_array_sort (paths, compare_names);
  return paths;
}

static void
load_user_standards (HcBook *self, const char *user_dir, GPtrArray **faults)
{
  g_autoptr (GPtrArray) paths = list_user_files (user_dir);

  for (guint i = 0; i < paths->len; i++)
    {
      g_autoptr (GError) error = NULL;

      if (!load_user_standard (self, paths->pdata[i], &error) && faults != NULL)
        g_ptr_array_add (*faults, g_strdup (error->message));
    }
}

/**
 * hc_book_load:
 * @user_dir: (nullable): folder of the keeper's own standards, `*.json`; it
 *   need not exist
 * @faults: (out) (optional) (transfer full) (element-type utf8): a sentence
 *   for each of the keeper's files that was left out, saying what is wrong
 *   where
 * @error: return location for an error
 *
 * Loads the book that comes with the program and the keeper's own standards.
 *
 * Returns: (transfer full): the book, or %NULL with an error if the program's
 *   own data is damaged
 */
HcBook *
hc_book_load (const char *user_dir, GPtrArray **faults, GError **error)
{
  g_autoptr (HcBook) self = hc_book_new ();

  if (faults != NULL)
    *faults = g_ptr_array_new_with_free_func (g_free);
  for (guint i = 0; i < G_N_ELEMENTS (data_lists); i++)
    {
      if (!load_list (self, &data_lists[i], error))
        return NULL;
      if (i == 0)
        number_kinds (self);
    }
  if (!load_standards (self, error))
    return NULL;
  if (user_dir != NULL)
    load_user_standards (self, user_dir, faults);
  return g_steal_pointer (&self);
}
