/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window of one plan: its parts, and the plan it shows. */
#include "config.h"

#include "app/window/window-private.h"

#include <glib/gi18n.h>

G_DEFINE_FINAL_TYPE (HcWindow, hc_window, ADW_TYPE_APPLICATION_WINDOW)

enum
{
  PROP_HAS_PLAN = 1,
  N_PROPS
};

static GParamSpec *props[N_PROPS];

HcDocument *
hc_window_get_document (HcWindow *self)
{
  g_return_val_if_fail (HC_IS_WINDOW (self), NULL);
  return self->document;
}

HcChecker *
hc_window_get_checker (HcWindow *self)
{
  g_return_val_if_fail (HC_IS_WINDOW (self), NULL);
  return self->checker;
}

/**
 * hc_window_say:
 * @self: a window
 * @sentence: what to tell the keeper
 *
 * Shows a sentence that needs no answer and goes by itself.
 */
void
hc_window_say (HcWindow *self, const char *sentence)
{
  g_autofree char *escaped = g_markup_escape_text (sentence, -1);
  AdwToast *toast = adw_toast_new (escaped);

  adw_toast_set_timeout (toast, 8);
  adw_toast_overlay_add_toast (self->toasts, toast);
}

static gboolean
check_on_tick (GtkWidget *widget, GdkFrameClock *clock, gpointer data)
{
  HcWindow *self = HC_WINDOW (widget);

  self->check_tick = 0;
  hc_checker_update (self->checker);
  return G_SOURCE_REMOVE;
}

static void
check_next_frame (HcWindow *self)
{
  if (self->check_tick == 0)
    self->check_tick
        = gtk_widget_add_tick_callback (GTK_WIDGET (self), check_on_tick, NULL, NULL);
}

/**
 * hc_window_get_plan_title: (skip)
 * @self: a window with a plan
 *
 * Returns: (transfer full): the plan's title, or a name for one without
 */
char *
hc_window_get_plan_title (HcWindow *self)
{
  g_autofree char *title = NULL;

  g_object_get (self->document, "title", &title, NULL);
  return title != NULL && *title != '\0' ? g_steal_pointer (&title)
                                         : g_strdup (_("Unnamed plan"));
}

static void
update_title (HcWindow *self)
{
  g_autofree char *title = hc_window_get_plan_title (self);
  GFile *file = hc_document_get_file (self->document);
  g_autofree char *name = file != NULL ? g_file_get_basename (file) : NULL;
  const char *state = name != NULL ? name : _("not saved yet");

  adw_window_title_set_title (self->title, title);
  if (hc_document_is_read_only (self->document))
    state = _("from a newer version, to look at only");
  else if (name != NULL && hc_document_is_modified (self->document))
    state = _("changed since it was saved");
  adw_window_title_set_subtitle (self->title, state);
  gtk_window_set_title (GTK_WINDOW (self), title);
}

static void
plan_changed (HcWindow *self)
{
  check_next_frame (self);
  hc_window_keep_draft (self);
}

static void
state_changed (HcWindow *self)
{
  update_title (self);
  hc_window_update_actions (self);
}

/* A page nobody looks at does not follow the plan; it is filled when it is
 * looked at. */
static void
fill_page_in_sight (HcWindow *self)
{
  HcPanel *const pages[] = { self->shelf, self->flock_page, self->site_page };
  HcChecker *checker = self->has_painted ? self->checker : NULL;
  GtkWidget *in_sight = gtk_stack_get_visible_child (self->tools);

  for (guint i = 0; i < G_N_ELEMENTS (pages); i++)
    hc_panel_set_checker (pages[i], GTK_WIDGET (pages[i]) == in_sight ? checker : NULL);
}

static void
fill_sides (HcWindow *self)
{
  hc_panel_set_checker (self->needs_panel, self->has_painted ? self->checker : NULL);
  fill_page_in_sight (self);
}

/* The first frame shows the floor; what stands beside it comes with the second. */
static gboolean
fill_sides_on_second_tick (GtkWidget *widget, GdkFrameClock *clock, gpointer data)
{
  HcWindow *self = HC_WINDOW (widget);

  if (!self->has_ticked)
    {
      self->has_ticked = TRUE;
      return G_SOURCE_CONTINUE;
    }
  self->has_painted = TRUE;
  fill_sides (self);
  return G_SOURCE_REMOVE;
}

static void
hand_out_checker (HcWindow *self)
{
  HcPanel *const parts[]
      = { HC_PANEL (self->views), HC_PANEL (self->strip), HC_PANEL (self->properties) };

  for (guint i = 0; i < G_N_ELEMENTS (parts); i++)
    hc_panel_set_checker (parts[i], self->checker);
  fill_sides (self);
}

static void
let_go_of_document (HcWindow *self)
{
  if (self->document == NULL)
    return;
  g_signal_handlers_disconnect_by_data (self->document, self);
  g_clear_object (&self->checker);
  g_clear_object (&self->document);
}

/**
 * hc_window_take_document:
 * @self: a window
 * @document: the plan it is to show
 */
void
hc_window_take_document (HcWindow *self, HcDocument *document)
{
  HcApplication *application = HC_APPLICATION (gtk_window_get_application (GTK_WINDOW (self)));
  static const char *const states[] = { "notify::title",    "notify::modified", "notify::file",
                                        "notify::can-undo", "notify::can-redo", "notify::undo-label",
                                        "notify::redo-label", "notify::read-only" };

  let_go_of_document (self);
  self->document = g_object_ref (document);
  self->checker = hc_checker_new (document, hc_application_get_book (application));
  g_signal_connect_swapped (document, "notify::plan", G_CALLBACK (plan_changed), self);
  for (guint i = 0; i < G_N_ELEMENTS (states); i++)
    g_signal_connect_swapped (document, states[i], G_CALLBACK (state_changed), self);
  hc_checker_update (self->checker);
  hand_out_checker (self);
  gtk_stack_set_visible_child_name (self->pages, "plan");
  state_changed (self);
  hc_window_watch_drafts (self);
  gtk_widget_grab_focus (GTK_WIDGET (self->views));
  g_object_notify_by_pspec (G_OBJECT (self), props[PROP_HAS_PLAN]);
}

static void
hc_window_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  HcWindow *self = HC_WINDOW (object);

  if (id == PROP_HAS_PLAN)
    g_value_set_boolean (value, self->document != NULL);
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static gboolean
hc_window_close_request (GtkWindow *window)
{
  HcWindow *self = HC_WINDOW (window);

  if (!self->closing && self->document != NULL && hc_document_is_modified (self->document))
    {
      hc_window_ask_before_closing (self);
      return GDK_EVENT_STOP;
    }
  return GTK_WINDOW_CLASS (hc_window_parent_class)->close_request (window);
}

static void
active_changed (HcWindow *self)
{
  if (self->document == NULL)
    return;
  if (gtk_window_is_active (GTK_WINDOW (self)))
    hc_window_look_at_disk (self);
  else
    hc_window_write_draft_now (self);
}

static void
hc_window_dispose (GObject *object)
{
  HcWindow *self = HC_WINDOW (object);

  g_clear_handle_id (&self->draft_timer, g_source_remove);
  let_go_of_document (self);
  g_clear_object (&self->settings);
  g_clear_pointer (&self->wall, g_free);
  G_OBJECT_CLASS (hc_window_parent_class)->dispose (object);
}

static void
ensure_parts (void)
{
  g_type_ensure (HC_TYPE_SHELF);
  g_type_ensure (HC_TYPE_FLOCK_PAGE);
  g_type_ensure (HC_TYPE_SITE_PAGE);
  g_type_ensure (HC_TYPE_PROPERTIES);
  g_type_ensure (HC_TYPE_NEEDS_PANEL);
  g_type_ensure (HC_TYPE_VIEWS);
  g_type_ensure (HC_TYPE_START_PAGE);
  g_type_ensure (HC_TYPE_STRIP);
  g_type_ensure (HC_TYPE_LATE_PANEL);
}

static void
hc_window_class_init (HcWindowClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  object_class->get_property = hc_window_get_property;
  object_class->dispose = hc_window_dispose;
  GTK_WINDOW_CLASS (klass)->close_request = hc_window_close_request;

  props[PROP_HAS_PLAN]
      = g_param_spec_boolean ("has-plan", NULL, NULL, FALSE,
                              G_PARAM_READABLE | G_PARAM_STATIC_STRINGS);
  g_object_class_install_properties (object_class, N_PROPS, props);

  ensure_parts ();
  gtk_widget_class_set_template_from_resource (widget_class, "/org/hencote/Hencote/window.ui");
  gtk_widget_class_bind_template_child (widget_class, HcWindow, toasts);
  gtk_widget_class_bind_template_child (widget_class, HcWindow, title);
  gtk_widget_class_bind_template_child (widget_class, HcWindow, undo);
  gtk_widget_class_bind_template_child (widget_class, HcWindow, redo);
  gtk_widget_class_bind_template_child (widget_class, HcWindow, pages);
  gtk_widget_class_bind_template_child (widget_class, HcWindow, tools);
  gtk_widget_class_bind_template_child (widget_class, HcWindow, tools_flap);
  gtk_widget_class_bind_template_child (widget_class, HcWindow, needs_flap);
  gtk_widget_class_bind_template_child (widget_class, HcWindow, start_page);
  gtk_widget_class_bind_template_child (widget_class, HcWindow, shelf);
  gtk_widget_class_bind_template_child (widget_class, HcWindow, flock_page);
  gtk_widget_class_bind_template_child (widget_class, HcWindow, site_page);
  gtk_widget_class_bind_template_child (widget_class, HcWindow, properties);
  gtk_widget_class_bind_template_child (widget_class, HcWindow, needs_panel);
  gtk_widget_class_bind_template_child (widget_class, HcWindow, views);
  gtk_widget_class_bind_template_child (widget_class, HcWindow, strip);
  hc_window_class_add_plan_actions (widget_class);
  hc_window_class_add_adding_actions (widget_class);
  hc_window_class_add_file_actions (widget_class);
  gtk_widget_class_bind_template_callback (widget_class, fill_page_in_sight);
  gtk_widget_class_bind_template_callback (widget_class, hc_window_take_document);
  gtk_widget_class_bind_template_callback (widget_class, hc_window_open_file);
}

static void
hc_window_init (HcWindow *self)
{
  self->settings = g_settings_new (HC_APPLICATION_ID);
  gtk_widget_init_template (GTK_WIDGET (self));
  hc_window_add_plan_actions (self);
  g_settings_bind (self->settings, "window-width", self, "default-width", G_SETTINGS_BIND_DEFAULT);
  g_settings_bind (self->settings, "window-height", self, "default-height",
                   G_SETTINGS_BIND_DEFAULT);
  g_settings_bind (self->settings, "window-maximized", self, "maximized",
                   G_SETTINGS_BIND_DEFAULT);
  gtk_widget_add_tick_callback (GTK_WIDGET (self), fill_sides_on_second_tick, NULL, NULL);
  g_signal_connect (self, "notify::is-active", G_CALLBACK (active_changed), NULL);
}

HcWindow *
hc_window_new (HcApplication *application)
{
  return g_object_new (HC_TYPE_WINDOW, "application", application, NULL);
}
