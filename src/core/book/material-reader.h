/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading what floors, walls, bedding and mesh are made of. */
#pragma once

#include "book/record.h"

G_BEGIN_DECLS

/* Private to book/. HcReadItem for each sort of material, with an
 * HcDataContext. */
void hc_floor_layer_read (HcRecord *record, gpointer item, gpointer user_data);
void hc_bedding_read (HcRecord *record, gpointer item, gpointer user_data);
void hc_mesh_read (HcRecord *record, gpointer item, gpointer user_data);
void hc_latch_read (HcRecord *record, gpointer item, gpointer user_data);
void hc_construction_read (HcRecord *record, gpointer item, gpointer user_data);

G_END_DECLS
