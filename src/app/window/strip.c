/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The strip: the main question answered in a sentence, and the condition. */
#include "config.h"

#include "app/window/strip.h"

#include "app/needs/set-text.h"

#include "words/words.h"

#include <glib/gi18n.h>

struct _HcStrip
{
  HcPanel parent_instance;

  GtkLabel *headline;
  GtkLabel *rules_name;
};

G_DEFINE_FINAL_TYPE (HcStrip, hc_strip, HC_TYPE_PANEL)

static void
hc_strip_counted (HcPanel *panel)
{
  HcStrip *self = HC_STRIP (panel);
  const HcHeadline *headline = hc_checker_get_headline (hc_panel_get_checker (panel));
  g_autofree char *sentence = headline != NULL
                                  ? hc_words_headline (headline, hc_panel_get_units (panel))
                                  : g_strdup (_("Counting…"));

  hc_set_text (self->headline, sentence);
  gtk_widget_set_tooltip_text (GTK_WIDGET (self->headline), sentence);
}

static void
hc_strip_plan_changed (HcPanel *panel)
{
  HcStrip *self = HC_STRIP (panel);
  const HcRulesValues *rules = hc_plan_get_rules (hc_panel_get_plan (panel));
  HcBook *book = hc_panel_get_book (panel);
  HcStandard *standard = hc_book_get_standard (book, rules->standard);

  if (standard == NULL)
    standard = hc_book_get_standard (book, HC_BOOK_DEFAULT_STANDARD);
  hc_set_text (self->rules_name, hc_standard_get_name (standard));
}

static void
hc_strip_class_init (HcStripClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  HC_PANEL_CLASS (klass)->counted = hc_strip_counted;
  HC_PANEL_CLASS (klass)->plan_changed = hc_strip_plan_changed;
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/strip.ui");
  gtk_widget_class_bind_template_child (widget_class, HcStrip, headline);
  gtk_widget_class_bind_template_child (widget_class, HcStrip, rules_name);
}

static void
hc_strip_init (HcStrip *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}
