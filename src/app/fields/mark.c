/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The mark of a level, as it stands on the floor. */
#include "config.h"

#include "app/fields/mark.h"

#include "drawing/level-mark.h"

struct _HcMark
{
  HcPicture parent_instance;

  HcLevel level;
};

G_DEFINE_FINAL_TYPE (HcMark, hc_mark, HC_TYPE_PICTURE)

void
hc_mark_set_level (HcMark *self, HcLevel level)
{
  if (self->level == level)
    return;
  self->level = level;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
hc_mark_draw (HcPicture *picture, HcInk *ink, double width, double height)
{
  hc_draw_level_mark (ink, 0, 0, MIN (width, height), HC_MARK (picture)->level);
}

static void
hc_mark_class_init (HcMarkClass *klass)
{
  HC_PICTURE_CLASS (klass)->draw = hc_mark_draw;
}

static void
hc_mark_init (HcMark *self)
{
}
