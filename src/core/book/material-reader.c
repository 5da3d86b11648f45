/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading what floors, walls, bedding and mesh are made of. */
#include "config.h"

#include "book/material-reader.h"

#include "book/book-private.h"

void
hc_floor_layer_read (HcRecord *record, gpointer item, gpointer user_data)
{
  const HcDataContext *context = user_data;
  HcFloorLayer *layer = item;

  layer->id = hc_record_id (record, "id");
  layer->name = hc_record_text (record, "name");
  layer->hard = hc_record_flag (record, "hard");
  layer->dug_through = hc_record_flag (record, "dug_through");
  layer->gnawed_through = hc_record_flag (record, "gnawed_through");
  layer->raised = hc_record_flag (record, "raised");
  layer->holes_mm = hc_record_maybe_number (record, "holes_mm", 0, 500, 0);
  layer->thickness_mm = hc_record_number (record, "thickness_mm", 0.1, 1000);
  layer->conductivity_w_mk = hc_record_number (record, "conductivity_w_mk", 0.01, 500);
  layer->evidence = hc_sources_read_grounds (&context->sources, record, &layer->source);
}

void
hc_bedding_read (HcRecord *record, gpointer item, gpointer user_data)
{
  const HcDataContext *context = user_data;
  HcBedding *bedding = item;

  bedding->id = hc_record_id (record, "id");
  bedding->name = hc_record_text (record, "name");
  bedding->for_nests = hc_record_flag (record, "for_nests");
  bedding->for_chicks = hc_record_flag (record, "for_chicks");
  bedding->loose_kg_m3 = hc_record_number (record, "loose_kg_m3", 10, 3000);
  bedding->bale_kg_m3 = hc_record_number (record, "bale_kg_m3", 10, 3000);
  bedding->bale_litres = hc_record_number (record, "bale_litres", 1, 5000);
  bedding->depth_mm = hc_record_number (record, "depth_mm", 10, 1000);
  bedding->conductivity_w_mk = hc_record_number (record, "conductivity_w_mk", 0.01, 10);
  bedding->evidence = hc_sources_read_grounds (&context->sources, record, &bedding->source);
}

void
hc_mesh_read (HcRecord *record, gpointer item, gpointer user_data)
{
  const HcDataContext *context = user_data;
  HcMesh *mesh = item;

  mesh->id = hc_record_id (record, "id");
  mesh->name = hc_record_text (record, "name");
  mesh->hole_mm = hc_record_number (record, "hole_mm", 0.1, 500);
  mesh->wire_mm = hc_record_number (record, "wire_mm", 0.1, 20);
  mesh->stops_diggers = hc_record_flag (record, "stops_diggers");
  mesh->stops_gnawers = hc_record_flag (record, "stops_gnawers");
  mesh->sags_under_snow = hc_record_flag (record, "sags_under_snow");
  mesh->free_area = hc_record_number (record, "free_area", 0, 1);
  mesh->clogged = hc_record_number (record, "clogged", 0, 1);
  mesh->evidence = hc_sources_read_grounds (&context->sources, record, &mesh->source);
}

/* An interned list of what a member of texts says, kept with the book. */
static const char *const *
read_ids (HcRecord *record, const char *member, HcKeep *keep)
{
  guint n = hc_record_count (record, member);
  GArray *ids = g_array_new (TRUE, TRUE, sizeof (char *));

  for (guint i = 0; i < n; i++)
    {
      const char *id = g_intern_string (hc_record_text_at (record, member, i));

      g_array_append_val (ids, id);
    }
  return hc_keep_table (keep, ids);
}

void
hc_latch_read (HcRecord *record, gpointer item, gpointer user_data)
{
  const HcDataContext *context = user_data;
  HcLatch *latch = item;

  latch->id = hc_record_id (record, "id");
  latch->name = hc_record_text (record, "name");
  latch->opened_by
      = read_ids (record, "opened_by", hc_reading_get_keep (hc_record_get_reading (record)));
  latch->evidence = hc_sources_read_grounds (&context->sources, record, &latch->source);
}

void
hc_construction_read (HcRecord *record, gpointer item, gpointer user_data)
{
  const HcDataContext *context = user_data;
  HcConstruction *construction = item;

  construction->id = hc_record_id (record, "id");
  construction->name = hc_record_text (record, "name");
  construction->roof = hc_record_flag (record, "roof");
  construction->u_w_m2k = hc_record_number (record, "u_w_m2k", 0.05, 10);
  construction->thickness_mm = hc_record_number (record, "thickness_mm", 0.1, 2000);
  construction->leak_cm2_m2 = hc_record_number (record, "leak_cm2_m2", 0, 200);
  construction->gnawed_through = hc_record_flag (record, "gnawed_through");
  construction->bears_snow = hc_record_flag (record, "bears_snow");
  construction->glass = hc_record_flag (record, "glass");
  construction->evidence = hc_sources_read_grounds (&context->sources, record, &construction->source);
}
