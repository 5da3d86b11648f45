/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The things to add, by what birds do with them. */
#include "config.h"

#include "app/shelf/shelf.h"

struct _HcShelf
{
  HcPanel parent_instance;
};

G_DEFINE_FINAL_TYPE (HcShelf, hc_shelf, HC_TYPE_PANEL)

static void
hc_shelf_class_init (HcShelfClass *klass)
{
}

static void
hc_shelf_init (HcShelf *self)
{
}
