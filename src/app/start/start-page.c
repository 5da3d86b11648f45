/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Beginning a plan: from a ready house, three questions, a draft, a file, or empty. */
#include "config.h"

#include "app/start/start-page.h"

#include "app/fields/plain-names.h"
#include "app/start/home-units.h"
#include "app/start/house-card.h"
#include "app/start/questions.h"

#include "base/ids.h"
#include "files/drafts.h"
#include "plan/edit-site.h"

#include <glib/gi18n.h>

#define MOST_RECENT 8

struct _HcStartPage
{
  AdwBin parent_instance;

  GtkWidget *drafts;
  GtkListBox *draft_list;
  AdwBin *questions;
  GtkFlowBox *houses;
  GtkWidget *recent;
  GtkListBox *recent_list;
};

G_DEFINE_FINAL_TYPE (HcStartPage, hc_start_page, ADW_TYPE_BIN)

enum
{
  BEGIN,
  OPEN,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

static void
begin_with (HcStartPage *self, HcPlan *plan)
{
  g_autoptr (HcDocument) document = hc_document_new (plan);

  g_signal_emit (self, signals[BEGIN], 0, document);
}

static void
begin_empty (GtkWidget *widget, const char *name, GVariant *parameter)
{
  g_autofree char *uid = hc_id_new ();
  g_autoptr (HcPlan) empty = hc_plan_new_empty (uid, "");
  g_autoptr (HcPlan) plan = NULL;
  HcSiteValues site = *hc_plan_get_site (empty);

  site.units = hc_home_units ();
  plan = hc_plan_set_site (empty, &site, NULL);
  begin_with (HC_START_PAGE (widget), plan);
}

static void
begin_example (GtkWidget *widget, const char *name, GVariant *parameter)
{
  g_autofree char *uid = hc_id_new ();
  g_autoptr (HcPlan) plan = hc_demo_open (uid, NULL);

  begin_with (HC_START_PAGE (widget), plan);
}

static GtkWidget *
new_row (const char *title, const char *subtitle)
{
  GtkWidget *row = adw_action_row_new ();

  adw_preferences_row_set_use_markup (ADW_PREFERENCES_ROW (row), FALSE);
  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (row), title);
  adw_action_row_set_subtitle (ADW_ACTION_ROW (row), subtitle);
  gtk_list_box_row_set_activatable (GTK_LIST_BOX_ROW (row), TRUE);
  return row;
}

static void
draft_chosen (HcStartPage *self, GtkListBoxRow *row)
{
  const HcDraft *draft = g_object_get_data (G_OBJECT (row), "draft");
  g_autoptr (HcDocument) document = hc_document_new_from_draft (draft);

  g_signal_emit (self, signals[BEGIN], 0, document);
}

static void
add_draft (HcStartPage *self, const HcDraft *draft)
{
  const char *title = hc_plan_get (draft->plan)->title;
  g_autoptr (GDateTime) written = g_date_time_new_from_unix_local (draft->written);
  g_autofree char *when = g_date_time_format (written, "%c");
  GtkWidget *row = new_row (title != NULL && *title != '\0' ? title : _("Unnamed plan"), when);

  g_object_set_data_full (G_OBJECT (row), "draft", hc_draft_copy (draft),
                          (GDestroyNotify) hc_draft_free);
  gtk_list_box_append (self->draft_list, row);
}

static void
list_drafts (HcStartPage *self)
{
  g_autofree char *folder = hc_drafts_get_folder ();
  g_autoptr (GPtrArray) drafts = hc_drafts_list (folder, NULL);

  for (guint i = 0; i < drafts->len; i++)
    add_draft (self, drafts->pdata[i]);
  gtk_widget_set_visible (self->drafts, drafts->len > 0);
}

static void
recent_chosen (HcStartPage *self, GtkListBoxRow *row)
{
  g_autoptr (GFile) file = g_file_new_for_uri (g_object_get_data (G_OBJECT (row), "uri"));

  g_signal_emit (self, signals[OPEN], 0, file);
}

static void
list_recent (HcStartPage *self)
{
  GList *items = gtk_recent_manager_get_items (gtk_recent_manager_get_default ());
  guint n = 0;

  for (GList *at = items; at != NULL && n < MOST_RECENT; at = at->next)
    {
      const char *uri = gtk_recent_info_get_uri (at->data);
      g_autofree char *place = NULL;
      GtkWidget *row;

      if (!g_str_has_suffix (uri, ".hencote") || !gtk_recent_info_exists (at->data))
        continue;
      place = gtk_recent_info_get_uri_display (at->data);
      row = new_row (gtk_recent_info_get_display_name (at->data), place);
      g_object_set_data_full (G_OBJECT (row), "uri", g_strdup (uri), g_free);
      gtk_list_box_append (self->recent_list, row);
      n++;
    }
  gtk_widget_set_visible (self->recent, n > 0);
  g_list_free_full (items, (GDestroyNotify) gtk_recent_info_unref);
}

static void
list_houses (HcStartPage *self)
{
  for (guint i = 0; i < hc_ready_house_get_n (); i++)
    {
      GtkWidget *card = hc_house_card_new (hc_ready_house_get (i));

      g_signal_connect_swapped (card, "begin", G_CALLBACK (begin_with), self);
      gtk_flow_box_append (self->houses, card);
    }
}

static void
ask_questions (HcStartPage *self)
{
  GtkWidget *questions = g_object_new (HC_TYPE_QUESTIONS, NULL);

  g_signal_connect_swapped (questions, "begin", G_CALLBACK (begin_with), self);
  adw_bin_set_child (self->questions, questions);
}

/* A window that opens a file never shows this page, and need not fill it. */
static void
hc_start_page_map (GtkWidget *widget)
{
  HcStartPage *self = HC_START_PAGE (widget);

  if (gtk_flow_box_get_child_at_index (self->houses, 0) == NULL)
    {
      ask_questions (self);
      list_houses (self);
      list_drafts (self);
      list_recent (self);
    }
  GTK_WIDGET_CLASS (hc_start_page_parent_class)->map (widget);
}

static void
hc_start_page_class_init (HcStartPageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  widget_class->map = hc_start_page_map;
  signals[BEGIN] = g_signal_new ("begin", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL,
                                 NULL, NULL, G_TYPE_NONE, 1, HC_TYPE_DOCUMENT);
  signals[OPEN] = g_signal_new ("open", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0, NULL,
                                NULL, NULL, G_TYPE_NONE, 1, G_TYPE_FILE);
  gtk_widget_class_install_action (widget_class, "start.empty", NULL, begin_empty);
  gtk_widget_class_install_action (widget_class, "start.example", NULL, begin_example);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/start-page.ui");
  gtk_widget_class_bind_template_child (widget_class, HcStartPage, drafts);
  gtk_widget_class_bind_template_child (widget_class, HcStartPage, draft_list);
  gtk_widget_class_bind_template_child (widget_class, HcStartPage, questions);
  gtk_widget_class_bind_template_child (widget_class, HcStartPage, houses);
  gtk_widget_class_bind_template_child (widget_class, HcStartPage, recent);
  gtk_widget_class_bind_template_child (widget_class, HcStartPage, recent_list);
  gtk_widget_class_bind_template_callback (widget_class, draft_chosen);
  gtk_widget_class_bind_template_callback (widget_class, recent_chosen);
}

static void
hc_start_page_init (HcStartPage *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  hc_name_plainly (GTK_WIDGET (self));
}
