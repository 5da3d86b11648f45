/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What there is to pick from: entries of the book, pens and buildings of the plan. */
#include "config.h"

#include "app/properties/choices.h"

#include "base/ids.h"
#include "words/house-words.h"

#include <glib/gi18n.h>

static void
offer_beddings (HcPicker *picker, HcBook *book)
{
  for (guint i = 0; i < hc_book_get_n_beddings (book); i++)
    {
      const HcBedding *bedding = hc_book_get_bedding_at (book, i);

      hc_picker_offer (picker, bedding->id, hc_material_get_name (bedding->name),
                       bedding->for_chicks ? _("Day-old chicks can stand on it") : NULL);
    }
}

static void
offer_meshes (HcPicker *picker, HcBook *book)
{
  for (guint i = 0; i < hc_book_get_n_meshes (book); i++)
    {
      const HcMesh *mesh = hc_book_get_mesh_at (book, i);

      hc_picker_offer (picker, mesh->id, hc_material_get_name (mesh->name),
                       mesh->stops_diggers ? _("Holds against digging and biting") : NULL);
    }
}

static void
offer_latches (HcPicker *picker, HcBook *book)
{
  for (guint i = 0; i < hc_book_get_n_latches (book); i++)
    {
      const HcLatch *latch = hc_book_get_latch_at (book, i);

      hc_picker_offer (picker, latch->id, hc_material_get_name (latch->name),
                       *latch->opened_by == NULL ? _("Holds against paws and noses") : NULL);
    }
}

static void
offer_floor_layers (HcPicker *picker, HcBook *book)
{
  for (guint i = 0; i < hc_book_get_n_floor_layers (book); i++)
    {
      const HcFloorLayer *layer = hc_book_get_floor_layer_at (book, i);

      hc_picker_offer (picker, layer->id, hc_material_get_name (layer->name),
                       layer->raised ? _("Clear of the ground") : NULL);
    }
}

static void
offer_breeds (HcPicker *picker, HcBook *book)
{
  for (guint i = 0; i < hc_book_get_n_breeds (book); i++)
    {
      const HcBreed *breed = hc_book_get_breed_at (book, i);

      hc_picker_offer (picker, breed->id, hc_breed_get_name (breed),
                       hc_kind_get_name (breed->kind, 1));
    }
}

static void
offer_kinds (HcPicker *picker, HcBook *book)
{
  for (guint i = 0; i < hc_book_get_n_kinds (book); i++)
    {
      const HcKind *kind = hc_book_get_kind_at (book, i);

      hc_picker_offer (picker, kind->id, hc_kind_get_name (kind, 1), NULL);
    }
}

/**
 * hc_choices_offer_book: (skip)
 * @picker: a picker
 * @book: the book
 * @choices: which of its entries to offer
 */
void
hc_choices_offer_book (HcPicker *picker, HcBook *book, HcChoices choices)
{
  static void (*const offers[]) (HcPicker *, HcBook *) = {
    [HC_CHOICES_BEDDING] = offer_beddings,   [HC_CHOICES_MESH] = offer_meshes,
    [HC_CHOICES_FLOOR] = offer_floor_layers, [HC_CHOICES_BREED] = offer_breeds,
    [HC_CHOICES_KIND] = offer_kinds,         [HC_CHOICES_LATCH] = offer_latches,
  };

  if (choices < G_N_ELEMENTS (offers) && offers[choices] != NULL)
    offers[choices](picker, book);
}

static void
offer_pens (HcPicker *picker, HcPlan *plan)
{
  HcParts *pens = hc_layout_get (hc_plan_get_layout (plan))->pens;

  for (guint i = 0; i < pens->len; i++)
    {
      HcPen *pen = pens->pdata[i];
      g_autofree char *name = hc_words_pen_name (pen);

      hc_picker_offer (picker, hc_part_get_id (pen), name,
                       hc_pen_get (pen)->kind == HC_PEN_RUN ? _("Run") : _("Indoor pen"));
    }
}

static void
offer_buildings (HcPicker *picker, HcPlan *plan)
{
  HcParts *buildings = hc_plan_get (plan)->buildings;
  g_autofree char *id = hc_id_new ();

  for (guint i = 0; i < buildings->len; i++)
    {
      g_autofree char *name = hc_words_building_name (buildings->pdata[i]);

      hc_picker_offer (picker, hc_part_get_id (buildings->pdata[i]), name, NULL);
    }
  hc_picker_offer (picker, id, _("New building"), NULL);
}

/**
 * hc_choices_offer_plan: (skip)
 * @picker: a picker
 * @plan: the plan
 * @choices: pens or buildings of it; of buildings, also a new one
 */
void
hc_choices_offer_plan (HcPicker *picker, HcPlan *plan, HcChoices choices)
{
  hc_picker_clear (picker);
  hc_picker_offer (picker, "", _("None"), NULL);
  if (choices == HC_CHOICES_PEN)
    offer_pens (picker, plan);
  else
    offer_buildings (picker, plan);
}
