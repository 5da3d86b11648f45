/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The strip: the main question answered in a sentence, and the condition. */
#include "config.h"

#include "app/window/strip.h"

struct _HcStrip
{
  HcPanel parent_instance;
};

G_DEFINE_FINAL_TYPE (HcStrip, hc_strip, HC_TYPE_PANEL)

static void
hc_strip_class_init (HcStripClass *klass)
{
}

static void
hc_strip_init (HcStrip *self)
{
}
