/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One thing that is wrong: what, why it matters, and where. */
#include "config.h"

#include "app/needs/finding-card.h"

#include "app/fields/plain-names.h"
#include "app/needs/fix-list.h"
#include "app/needs/set-text.h"

#include "words/words.h"

struct _HcFindingCard
{
  GtkBox parent_instance;

  GtkLabel *sentence;
  GtkLabel *measure;
  GtkLabel *todo;
  GtkWidget *show_me;
  GtkLabel *why;
  GtkLabel *source;
  GtkWidget *see_figure;
  GtkToggleButton *ask_how;
  GtkBox *how;
  HcNeedId need;
  HcCheck *check;
  const HcFinding *finding;
  GtkWidget *remedies;
};

G_DEFINE_FINAL_TYPE (HcFindingCard, hc_finding_card, GTK_TYPE_BOX)

static void
aim_at_parts (GtkWidget *button, char **ids)
{
  gboolean any = ids != NULL && ids[0] != NULL;

  gtk_widget_set_visible (button, any);
  if (any)
    gtk_actionable_set_action_target (GTK_ACTIONABLE (button), "^as", ids);
}

static void
aim_at_figure (GtkWidget *button, const char *figure)
{
  gtk_widget_set_visible (button, figure != NULL);
  if (figure != NULL)
    gtk_actionable_set_action_target (GTK_ACTIONABLE (button), "s", figure);
}

/* Remedies are looked for once they are asked for, and for the plan as it is. */
static void
look_for_remedies (HcFindingCard *self)
{
  if (!gtk_toggle_button_get_active (self->ask_how) || self->finding == NULL)
    return;
  if (self->remedies == NULL)
    {
      self->remedies = hc_fix_list_new ();
      gtk_box_append (self->how, self->remedies);
    }
  hc_fix_list_ask (HC_FIX_LIST (self->remedies), self->check, self->need, self->finding);
}

/**
 * hc_finding_card_show: (skip)
 * @self: a card
 * @check: the plan judged
 * @finding: what it is to show
 * @units: what the keeper measures in
 */
void
hc_finding_card_show (HcFindingCard *self, const HcCheck *check, const HcFinding *finding,
                      HcUnits units)
{
  g_autofree char *sentence = hc_words_finding (check, finding, units);
  g_autofree char *measure = hc_words_finding_detail (finding, units);
  g_autofree char *todo = hc_words_finding_todo (check, finding, units);
  g_autofree char *source = hc_words_finding_source (finding);

  hc_set_text (self->sentence, sentence);
  hc_set_text (self->measure, measure);
  hc_set_text (self->todo, todo);
  hc_set_text (self->source, source);
  aim_at_parts (self->show_me, finding->ids);
  aim_at_figure (self->see_figure, finding->figure);
  hc_check_ref ((HcCheck *) check);
  g_clear_pointer (&self->check, hc_check_unref);
  self->check = (HcCheck *) check;
  self->finding = finding;
  gtk_widget_set_visible (GTK_WIDGET (self->ask_how), finding->level < HC_LEVEL_GOOD);
  look_for_remedies (self);
}

static void
hc_finding_card_dispose (GObject *object)
{
  HcFindingCard *self = HC_FINDING_CARD (object);

  self->finding = NULL;
  g_clear_pointer (&self->check, hc_check_unref);
  G_OBJECT_CLASS (hc_finding_card_parent_class)->dispose (object);
}

static void
hc_finding_card_class_init (HcFindingCardClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = hc_finding_card_dispose;
  gtk_widget_class_set_template_from_resource (widget_class,
                                               "/org/hencote/Hencote/finding-card.ui");
  gtk_widget_class_bind_template_child (widget_class, HcFindingCard, sentence);
  gtk_widget_class_bind_template_child (widget_class, HcFindingCard, measure);
  gtk_widget_class_bind_template_child (widget_class, HcFindingCard, todo);
  gtk_widget_class_bind_template_child (widget_class, HcFindingCard, show_me);
  gtk_widget_class_bind_template_child (widget_class, HcFindingCard, why);
  gtk_widget_class_bind_template_child (widget_class, HcFindingCard, source);
  gtk_widget_class_bind_template_child (widget_class, HcFindingCard, see_figure);
  gtk_widget_class_bind_template_child (widget_class, HcFindingCard, ask_how);
  gtk_widget_class_bind_template_child (widget_class, HcFindingCard, how);
  gtk_widget_class_bind_template_callback (widget_class, look_for_remedies);
}

static void
hc_finding_card_init (HcFindingCard *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  hc_name_plainly (GTK_WIDGET (self));
}

/**
 * hc_finding_card_new: (skip)
 * @need: the need it is about
 *
 * Returns: a card with nothing on it yet
 */
GtkWidget *
hc_finding_card_new (HcNeedId need)
{
  HcFindingCard *self = g_object_new (HC_TYPE_FINDING_CARD, NULL);

  self->need = need;
  gtk_label_set_text (self->why, hc_words_need_why (need));
  return GTK_WIDGET (self);
}
