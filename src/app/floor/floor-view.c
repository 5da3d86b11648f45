/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The floor: the house to scale, with its fittings and birds. */
#include "config.h"

#include "app/floor/floor-view.h"

struct _HcFloorView
{
  HcPanel parent_instance;
};

G_DEFINE_FINAL_TYPE (HcFloorView, hc_floor_view, HC_TYPE_PANEL)

static void
hc_floor_view_class_init (HcFloorViewClass *klass)
{
}

static void
hc_floor_view_init (HcFloorView *self)
{
}
