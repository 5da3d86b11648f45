/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The line of one need: who is served, how well, and what is wrong. */
#include "config.h"

#include "app/needs/need-row.h"

#include "app/fields/mark.h"
#include "app/needs/finding-card.h"
#include "app/needs/set-text.h"

#include "words/words.h"

#include <glib/gi18n.h>

struct _HcNeedRow
{
  GtkListBoxRow parent_instance;

  GtkToggleButton *header;
  HcMark *mark;
  GtkLabel *title;
  GtkLabel *word;
  GtkProgressBar *bar;
  GtkLabel *count;
  GtkImage *arrow;
  GtkLabel *question;
  GtkBox *findings;

  HcNeedId need;
  HcLevel level;
};

G_DEFINE_FINAL_TYPE (HcNeedRow, hc_need_row, GTK_TYPE_LIST_BOX_ROW)

HcNeedId
hc_need_row_get_need (HcNeedRow *self)
{
  return self->need;
}

HcLevel
hc_need_row_get_level (HcNeedRow *self)
{
  return self->level;
}

static gboolean
counts_birds (HcNeedRow *self)
{
  return hc_need_get (self->need)->sort == HC_NEED_COUNTING;
}

/* What is judged over the whole plan is no more than right. */
static HcLevel
level_of (HcNeedRow *self, const HcCheck *check)
{
  HcLevel level = hc_check_get_need_level (check, self->need);

  return hc_need_get (self->need)->scope == HC_SCOPE_LAYOUT ? MIN (level, HC_LEVEL_GOOD) : level;
}

static void
show_level (HcNeedRow *self, HcLevel level)
{
  static const char *const classes[] = { "hc-short", "hc-tight", "hc-good", "hc-plenty" };

  hc_set_text (self->word, hc_words_need_level (self->need, level));
  hc_mark_set_level (self->mark, level);
  if (self->level == level && gtk_widget_has_css_class (GTK_WIDGET (self), classes[level]))
    return;
  gtk_widget_remove_css_class (GTK_WIDGET (self), classes[self->level]);
  gtk_widget_add_css_class (GTK_WIDGET (self), classes[level]);
  self->level = level;
}

static char *
say_served (HcLevel level, gint64 served, gint64 birds)
{
  if (served >= birds)
    return g_strdup_printf (ngettext ("the only bird", "all %d birds", (gulong) birds),
                            (int) birds);
  if (level == HC_LEVEL_SHORT)
    return g_strdup_printf (ngettext ("%d of %d bird", "%d of %d birds", (gulong) birds),
                            (int) served, (int) birds);
  return g_strdup_printf (ngettext ("%d of %d bird in comfort", "%d of %d birds in comfort",
                                    (gulong) birds),
                          (int) served, (int) birds);
}

/* Where birds are not what falls short, the first thing that does. */
static char *
say_first (HcNeedRow *self, const HcCheck *check, HcUnits units)
{
  if (self->level >= HC_LEVEL_GOOD || hc_check_get_n_findings (check, self->need) == 0)
    return NULL;
  return hc_words_finding (check, hc_check_get_finding (check, self->need, 0), units);
}

static void
show_count (HcNeedRow *self, const HcCheck *check, HcUnits units)
{
  gint64 birds = hc_check_get_birds (check, self->need);
  gboolean counted = counts_birds (self) && birds > 0;
  HcLevel aim = self->level == HC_LEVEL_SHORT ? HC_LEVEL_TIGHT : HC_LEVEL_GOOD;
  gint64 served = counted ? hc_check_get_served (check, self->need, aim) : 0;
  gboolean all_served = self->level == HC_LEVEL_SHORT && served >= birds;
  g_autofree char *count = NULL;
  double part = counted ? CLAMP ((double) served / (double) birds, 0, 1) : 0;

  counted = counted && !all_served;
  count = counted ? say_served (self->level, served, birds) : say_first (self, check, units);
  hc_set_text (self->count, count);
  gtk_widget_set_visible (GTK_WIDGET (self->bar), counted);
  if (gtk_progress_bar_get_fraction (self->bar) != part)
    gtk_progress_bar_set_fraction (self->bar, part);
}

/* Cards are kept, so that a button in one does not lose the focus. */
static void
show_findings (HcNeedRow *self, const HcCheck *check, HcUnits units)
{
  guint n = hc_check_get_n_findings (check, self->need);
  GtkWidget *card = gtk_widget_get_first_child (GTK_WIDGET (self->findings));

  for (guint i = 0; i < n; i++)
    {
      if (card == NULL)
        {
          card = hc_finding_card_new (self->need);
          gtk_box_append (self->findings, card);
        }
      hc_finding_card_show (HC_FINDING_CARD (card), check,
                            hc_check_get_finding (check, self->need, i), units);
      card = gtk_widget_get_next_sibling (card);
    }
  while (card != NULL)
    {
      GtkWidget *surplus = card;

      card = gtk_widget_get_next_sibling (card);
      gtk_box_remove (self->findings, surplus);
    }
}

/**
 * hc_need_row_show: (skip)
 * @self: a row
 * @check: the plan judged
 * @units: what the keeper measures in
 *
 * Returns: whether its place in the list may be another one now
 */
gboolean
hc_need_row_show (HcNeedRow *self, const HcCheck *check, HcUnits units)
{
  gboolean applies = hc_check_applies (check, self->need);
  gboolean moved = applies != gtk_widget_get_visible (GTK_WIDGET (self));
  HcLevel before = self->level;

  gtk_widget_set_visible (GTK_WIDGET (self), applies);
  if (!applies)
    return moved;
  show_level (self, level_of (self, check));
  show_count (self, check, units);
  if (gtk_toggle_button_get_active (self->header))
    show_findings (self, check, units);
  return moved || before != self->level;
}

static void
header_toggled (HcNeedRow *self)
{
  gboolean open = gtk_toggle_button_get_active (self->header);

  gtk_image_set_from_icon_name (self->arrow, open ? "pan-down-symbolic" : "pan-end-symbolic");
  gtk_accessible_update_state (GTK_ACCESSIBLE (self->header), GTK_ACCESSIBLE_STATE_EXPANDED, open,
                               -1);
  gtk_widget_activate_action (GTK_WIDGET (self), "needs.refresh", NULL);
}

static void
hc_need_row_class_init (HcNeedRowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  g_type_ensure (HC_TYPE_MARK);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/need-row.ui");
  gtk_widget_class_bind_template_child (widget_class, HcNeedRow, header);
  gtk_widget_class_bind_template_child (widget_class, HcNeedRow, mark);
  gtk_widget_class_bind_template_child (widget_class, HcNeedRow, title);
  gtk_widget_class_bind_template_child (widget_class, HcNeedRow, word);
  gtk_widget_class_bind_template_child (widget_class, HcNeedRow, bar);
  gtk_widget_class_bind_template_child (widget_class, HcNeedRow, count);
  gtk_widget_class_bind_template_child (widget_class, HcNeedRow, arrow);
  gtk_widget_class_bind_template_child (widget_class, HcNeedRow, question);
  gtk_widget_class_bind_template_child (widget_class, HcNeedRow, findings);
}

static void
hc_need_row_init (HcNeedRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  g_signal_connect_swapped (self->header, "toggled", G_CALLBACK (header_toggled), self);
}

/**
 * hc_need_row_new: (skip)
 * @need: the need it is about
 *
 * Returns: a row
 */
GtkWidget *
hc_need_row_new (HcNeedId need)
{
  HcNeedRow *self = g_object_new (HC_TYPE_NEED_ROW, NULL);

  self->need = need;
  gtk_label_set_text (self->title, hc_words_need_title (need));
  gtk_label_set_text (self->question, hc_words_need_question (need));
  return GTK_WIDGET (self);
}
