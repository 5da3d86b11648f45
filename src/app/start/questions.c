/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The three questions: how large, which birds, how cold. */
#include "config.h"

#include "app/start/questions.h"

#include "app/application.h"
#include "app/fields/length-field.h"
#include "app/properties/choices.h"
#include "app/start/home-units.h"

#include "base/ids.h"
#include "begin/three-questions.h"

#include <glib/gi18n.h>

#define FIRST_WIDTH_MM 2400
#define FIRST_LENGTH_MM 3600
#define FIRST_BIRDS 12
#define MOST_BREEDS 8

struct _HcQuestions
{
  GtkBox parent_instance;

  HcLengthField *width;
  HcLengthField *length;
  GtkBox *birds;
  GtkSpinButton *coldest;
  GtkSwitch *go_out;
  GtkLabel *fault;
};

G_DEFINE_FINAL_TYPE (HcQuestions, hc_questions, GTK_TYPE_BOX)

enum
{
  BEGIN,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

static HcBook *
book_of_program (void)
{
  return hc_application_get_book (HC_APPLICATION (g_application_get_default ()));
}

static GtkWidget *
new_breed_picker (HcBook *book)
{
  GtkWidget *picker = hc_picker_new (_("Breed"));

  hc_choices_offer_book (HC_PICKER (picker), book, HC_CHOICES_BREED);
  gtk_widget_set_hexpand (picker, TRUE);
  return picker;
}

static void
add_breed (HcQuestions *self, int count)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *number = gtk_spin_button_new_with_range (0, 1000, 1);

  gtk_spin_button_set_value (GTK_SPIN_BUTTON (number), count);
  gtk_accessible_update_property (GTK_ACCESSIBLE (number), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _("How many"), -1);
  gtk_box_append (GTK_BOX (row), new_breed_picker (book_of_program ()));
  gtk_box_append (GTK_BOX (row), number);
  gtk_box_append (self->birds, row);
}

static void
another (GtkWidget *widget, const char *name, GVariant *parameter)
{
  add_breed (HC_QUESTIONS (widget), 0);
}

/* Breeds with a number; a breed chosen with none is not an answer. */
static guint
read_birds (HcQuestions *self, HcWantedBirds birds[MOST_BREEDS])
{
  GtkWidget *row = gtk_widget_get_first_child (GTK_WIDGET (self->birds));
  guint n = 0;

  for (; row != NULL && n < MOST_BREEDS; row = gtk_widget_get_next_sibling (row))
    {
      GtkWidget *picker = gtk_widget_get_first_child (row);
      int count = gtk_spin_button_get_value_as_int (
          GTK_SPIN_BUTTON (gtk_widget_get_next_sibling (picker)));

      if (count > 0)
        birds[n++] = (HcWantedBirds){ hc_picker_get_id (HC_PICKER (picker)), count };
    }
  return n;
}

static void
begin (GtkWidget *widget, const char *name, GVariant *parameter)
{
  HcQuestions *self = HC_QUESTIONS (widget);
  g_autofree char *uid = hc_id_new ();
  g_autoptr (GError) error = NULL;
  g_autoptr (HcPlan) plan = NULL;
  HcWantedBirds birds[MOST_BREEDS];
  HcAnswers answers = {
    .width_mm = hc_length_field_get_length (self->width),
    .length_mm = hc_length_field_get_length (self->length),
    .birds = birds,
    .n_birds = read_birds (self, birds),
    .coldest_night_c = gtk_spin_button_get_value (self->coldest),
    .birds_go_out = gtk_switch_get_active (self->go_out),
    .units = hc_home_units (),
  };

  plan = hc_plan_from_answers (book_of_program (), &answers, uid, &error);
  gtk_widget_set_visible (GTK_WIDGET (self->fault), plan == NULL);
  if (plan != NULL)
    g_signal_emit (self, signals[BEGIN], 0, plan);
  else
    gtk_label_set_text (self->fault, error->message);
}

static void
hc_questions_class_init (HcQuestionsClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  g_type_ensure (HC_TYPE_LENGTH_FIELD);
  signals[BEGIN] = g_signal_new ("begin", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL,
                                 NULL, NULL, G_TYPE_NONE, 1, hc_plan_get_type ());
  gtk_widget_class_install_action (widget_class, "questions.another", NULL, another);
  gtk_widget_class_install_action (widget_class, "questions.begin", NULL, begin);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/questions.ui");
  gtk_widget_class_bind_template_child (widget_class, HcQuestions, width);
  gtk_widget_class_bind_template_child (widget_class, HcQuestions, length);
  gtk_widget_class_bind_template_child (widget_class, HcQuestions, birds);
  gtk_widget_class_bind_template_child (widget_class, HcQuestions, coldest);
  gtk_widget_class_bind_template_child (widget_class, HcQuestions, go_out);
  gtk_widget_class_bind_template_child (widget_class, HcQuestions, fault);
}

static void
hc_questions_init (HcQuestions *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  hc_length_field_set_units (self->width, hc_home_units ());
  hc_length_field_set_units (self->length, hc_home_units ());
  hc_length_field_set_length (self->width, FIRST_WIDTH_MM);
  hc_length_field_set_length (self->length, FIRST_LENGTH_MM);
  add_breed (self, FIRST_BIRDS);
}
