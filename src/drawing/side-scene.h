/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a cut shows of a house, and what is hidden behind its walls. */
#pragma once

#include "drawing/side-cut.h"

#include "base/box.h"
#include "book/book.h"

G_BEGIN_DECLS

/**
 * HcSideScene: (skip)
 * @house: the house
 * @book: (nullable): what its roofs and floors are made of
 * @cut: where it is cut
 * @items: (element-type HcSectionItem): what there is beyond, farthest first
 * @hidden: (element-type gboolean): whether a wall hides it
 * @faces: the solid walls that are looked at, which hide what is beyond them
 */
typedef struct
{
  HcHouse *house;
  const HcBook *book;
  HcSideCut cut;
  GArray *items;
  GArray *hidden;
  GArray *faces;
} HcSideScene;

HcSideScene *hc_side_scene_new (HcHouse *house, const HcBook *book,
                                const HcSideCut *cut) G_GNUC_WARN_UNUSED_RESULT;
void hc_side_scene_free (HcSideScene *self);
HcBox hc_side_get_bounds (const HcSideCut *cut, const GArray *items);
HcBox hc_side_scene_get_bounds (const HcSideScene *self);
const HcSectionItem *hc_side_scene_get_item (const HcSideScene *self, guint item);
gboolean hc_side_scene_shows (const HcSideScene *self, guint item);
gboolean hc_side_scene_hides (const HcSideScene *self, HcPoint at, double depth_mm);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcSideScene, hc_side_scene_free)

G_END_DECLS
