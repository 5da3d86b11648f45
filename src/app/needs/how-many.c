/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How many birds the plan carries, and what runs out next. */
#include "config.h"

#include "app/needs/how-many.h"

#include "app/fields/picker.h"
#include "app/needs/ladder-task.h"
#include "app/needs/set-text.h"

#include "words/words.h"

#include <glib/gi18n.h>

struct _HcHowMany
{
  HcPanel parent_instance;

  HcPicker *question;
  HcPicker *kind;
  HcPicker *aim;
  HcPicker *condition;
  GtkLabel *most;
  GtkLabel *more;
  GtkLabel *fix_now;
  GtkBox *rungs;

  HcLadderTask *task;
};

static const char *const questions[]
    = { N_("This mix of birds"), N_("More of one kind"), N_("One kind alone"), NULL };
static const char *const aims[] = { N_("In comfort"), N_("At most"), NULL };
static const char *const conditions[] = { N_("On an ordinary day"), N_("Shut in"), NULL };

G_DEFINE_FINAL_TYPE (HcHowMany, hc_how_many, HC_TYPE_PANEL)

static HcLadderQuestion
question_of (HcHowMany *self)
{
  return (HcLadderQuestion) hc_picker_get_picked (self->question);
}

/* Asked only while somebody looks, and not for every move of a drag. */
static void
ask (HcHowMany *self)
{
  HcPanel *panel = HC_PANEL (self);
  HcLadderAsked asked;

  gtk_widget_set_visible (GTK_WIDGET (self->kind), question_of (self) != HC_LADDER_THIS_MIX);
  if (hc_panel_get_checker (panel) == NULL || hc_picker_get_n_offered (self->kind) == 0
      || !gtk_widget_get_mapped (GTK_WIDGET (self))
      || hc_document_is_previewing (hc_panel_get_document (panel)))
    return;
  asked.plan = hc_panel_get_plan (panel);
  asked.book = hc_panel_get_book (panel);
  asked.question = question_of (self);
  asked.kind = hc_picker_get_id (self->kind);
  asked.condition = hc_picker_get_picked (self->condition) == 0 ? HC_CONDITION_DAY
                                                                 : HC_CONDITION_SHUT_IN;
  asked.aim = hc_picker_get_picked (self->aim) == 0 ? HC_LEVEL_GOOD : HC_LEVEL_TIGHT;
  hc_ladder_task_ask (self->task, &asked);
}

static char *
say_most (const HcLadder *ladder)
{
  gint64 most = hc_ladder_get_most (ladder);

  if (most == G_MAXINT64)
    return g_strdup (_("Any number"));
  return g_strdup_printf (ngettext ("%d bird", "%d birds", (gulong) MAX (most, 0)),
                          (int) MAX (most, 0));
}

static GtkWidget *
rung_at (HcHowMany *self, guint index)
{
  GtkWidget *at = gtk_widget_get_first_child (GTK_WIDGET (self->rungs));

  while (at != NULL && index-- > 0)
    at = gtk_widget_get_next_sibling (at);
  if (at == NULL)
    {
      at = gtk_label_new (NULL);
      gtk_label_set_xalign (GTK_LABEL (at), 0);
      gtk_label_set_wrap (GTK_LABEL (at), TRUE);
      gtk_widget_add_css_class (at, "hc-rung");
      gtk_box_append (self->rungs, at);
    }
  return at;
}

static void
show_rungs (HcHowMany *self, const HcLadder *ladder)
{
  HcUnits units = hc_panel_get_units (HC_PANEL (self));
  guint n = hc_ladder_get_n_rungs (ladder);

  for (guint i = 0; i < n; i++)
    {
      g_autofree char *text = hc_words_rung (hc_ladder_get_rung (ladder, i), units);

      hc_set_text (GTK_LABEL (rung_at (self, i)), text);
    }
  for (GtkWidget *at = n > 0 ? gtk_widget_get_next_sibling (rung_at (self, n - 1))
                             : gtk_widget_get_first_child (GTK_WIDGET (self->rungs));
       at != NULL; at = gtk_widget_get_next_sibling (at))
    gtk_widget_set_visible (at, FALSE);
}

static void
answered (HcHowMany *self)
{
  HcLadder *ladder = hc_ladder_task_get_ladder (self->task);
  g_autofree char *most = NULL;
  g_autofree char *more = NULL;

  if (ladder == NULL || hc_panel_get_checker (HC_PANEL (self)) == NULL)
    return;
  most = say_most (ladder);
  more = question_of (self) == HC_LADDER_MORE_OF ? hc_words_more (ladder) : NULL;
  hc_set_text (self->most, most);
  hc_set_text (self->more, more);
  show_rungs (self, ladder);
}

static void
hc_how_many_counted (HcPanel *panel)
{
  HcHowMany *self = HC_HOW_MANY (panel);
  const HcHeadline *headline = hc_checker_get_headline (hc_panel_get_checker (panel));
  g_autofree char *fix_now = headline != NULL ? hc_words_fix_now (headline) : NULL;

  hc_set_text (self->fix_now, fix_now);
}

static void
list_kinds (HcHowMany *self)
{
  HcBook *book = hc_panel_get_book (HC_PANEL (self));

  for (guint i = 0; i < hc_book_get_n_kinds (book); i++)
    {
      const HcKind *kind = hc_book_get_kind_at (book, i);

      hc_picker_offer (self->kind, kind->id, hc_kind_get_name (kind, 2), NULL);
    }
}

static void
hc_how_many_plan_changed (HcPanel *panel)
{
  HcHowMany *self = HC_HOW_MANY (panel);

  if (hc_picker_get_n_offered (self->kind) == 0)
    list_kinds (self);
  ask (self);
}

static void
hc_how_many_map (GtkWidget *widget)
{
  GTK_WIDGET_CLASS (hc_how_many_parent_class)->map (widget);
  ask (HC_HOW_MANY (widget));
}

static void
hc_how_many_finalize (GObject *object)
{
  g_clear_object (&HC_HOW_MANY (object)->task);
  G_OBJECT_CLASS (hc_how_many_parent_class)->finalize (object);
}

static void
hc_how_many_class_init (HcHowManyClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  g_type_ensure (HC_TYPE_PICKER);
  G_OBJECT_CLASS (klass)->finalize = hc_how_many_finalize;
  widget_class->map = hc_how_many_map;
  HC_PANEL_CLASS (klass)->plan_changed = hc_how_many_plan_changed;
  HC_PANEL_CLASS (klass)->counted = hc_how_many_counted;
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/how-many.ui");
  gtk_widget_class_bind_template_child (widget_class, HcHowMany, question);
  gtk_widget_class_bind_template_child (widget_class, HcHowMany, kind);
  gtk_widget_class_bind_template_child (widget_class, HcHowMany, aim);
  gtk_widget_class_bind_template_child (widget_class, HcHowMany, condition);
  gtk_widget_class_bind_template_child (widget_class, HcHowMany, most);
  gtk_widget_class_bind_template_child (widget_class, HcHowMany, more);
  gtk_widget_class_bind_template_child (widget_class, HcHowMany, fix_now);
  gtk_widget_class_bind_template_child (widget_class, HcHowMany, rungs);
  gtk_widget_class_bind_template_callback (widget_class, ask);
}

static void
hc_how_many_init (HcHowMany *self)
{
  self->task = hc_ladder_task_new ();
  gtk_widget_init_template (GTK_WIDGET (self));
  hc_picker_offer_words (self->question, questions);
  hc_picker_offer_words (self->aim, aims);
  hc_picker_offer_words (self->condition, conditions);
  g_signal_connect_object (self->task, "answered", G_CALLBACK (answered), self,
                           G_CONNECT_SWAPPED);
}
