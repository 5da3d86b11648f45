/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What every part of the window does with the open plan: follow and edit it. */
#include "config.h"

#include "app/window/panel.h"

#include "app/window/window.h"

#include <glib/gi18n.h>

typedef struct
{
  HcChecker *checker;
} HcPanelPrivate;

G_DEFINE_TYPE_WITH_PRIVATE (HcPanel, hc_panel, ADW_TYPE_BIN)

enum
{
  PROP_CHECKER = 1,
  N_PROPS
};

static GParamSpec *props[N_PROPS];

static HcPanelPrivate *
private_of (HcPanel *self)
{
  return hc_panel_get_instance_private (self);
}

static void
tell_plan (HcPanel *self)
{
  HC_PANEL_GET_CLASS (self)->plan_changed (self);
}

static void
tell_checked (HcPanel *self)
{
  HC_PANEL_GET_CLASS (self)->checked (self);
}

static void
tell_counted (HcPanel *self)
{
  HC_PANEL_GET_CLASS (self)->counted (self);
}

static void
tell_selection (HcPanel *self)
{
  HC_PANEL_GET_CLASS (self)->selection_changed (self);
}

static void
nothing (HcPanel *self)
{
}

static void
let_go (HcPanel *self)
{
  HcPanelPrivate *priv = private_of (self);

  if (priv->checker == NULL)
    return;
  g_signal_handlers_disconnect_by_data (hc_checker_get_document (priv->checker), self);
  g_signal_handlers_disconnect_by_data (priv->checker, self);
  g_clear_object (&priv->checker);
}

/**
 * hc_panel_set_checker:
 * @self: a part of the window
 * @checker: (nullable): the checker of the plan it is to show
 */
void
hc_panel_set_checker (HcPanel *self, HcChecker *checker)
{
  HcPanelPrivate *priv = private_of (self);

  if (priv->checker == checker)
    return;
  let_go (self);
  if (checker != NULL)
    {
      HcDocument *document = hc_checker_get_document (checker);

      priv->checker = g_object_ref (checker);
      g_signal_connect_swapped (document, "notify::plan", G_CALLBACK (tell_plan), self);
      g_signal_connect_swapped (document, "notify::selection", G_CALLBACK (tell_selection), self);
      g_signal_connect_swapped (checker, "checked", G_CALLBACK (tell_checked), self);
      g_signal_connect_swapped (checker, "counted", G_CALLBACK (tell_counted), self);
      tell_plan (self);
      tell_checked (self);
      tell_counted (self);
      tell_selection (self);
    }
  g_object_notify_by_pspec (G_OBJECT (self), props[PROP_CHECKER]);
}

HcChecker *
hc_panel_get_checker (HcPanel *self)
{
  g_return_val_if_fail (HC_IS_PANEL (self), NULL);
  return private_of (self)->checker;
}

HcDocument *
hc_panel_get_document (HcPanel *self)
{
  HcChecker *checker = hc_panel_get_checker (self);

  return checker != NULL ? hc_checker_get_document (checker) : NULL;
}

HcBook *
hc_panel_get_book (HcPanel *self)
{
  return hc_checker_get_book (hc_panel_get_checker (self));
}

HcPlan *
hc_panel_get_plan (HcPanel *self)
{
  return hc_document_get_plan (hc_panel_get_document (self));
}

HcUnits
hc_panel_get_units (HcPanel *self)
{
  return (HcUnits) hc_plan_get_site (hc_panel_get_plan (self))->units;
}

/**
 * hc_panel_get_check:
 * @self: a part of the window
 *
 * Returns: (nullable) (transfer none): the newest answer for the condition shown
 */
HcCheck *
hc_panel_get_check (HcPanel *self)
{
  HcChecker *checker = hc_panel_get_checker (self);

  return checker != NULL ? hc_checker_get_check (checker, hc_checker_get_condition (checker))
                         : NULL;
}

/**
 * hc_say_read_only: (skip)
 *
 * Returns: (transfer none): why a plan cannot be changed, and what to do
 */
const char *
hc_say_read_only (void)
{
  return _("This plan is from a newer version of Hencote, to look at only. "
           "Save it under another name to change it.");
}

/**
 * hc_panel_apply:
 * @self: a part of the window
 * @plan: (nullable) (transfer full): what an edit returned
 * @error: (nullable) (transfer full): why it returned nothing
 * @label: the step's name, translated
 * @merge: (nullable): key of steps that are one when they follow each other
 *
 * Makes an edit's plan the document's, or says why there is none.
 *
 * Returns: whether there was one
 */
gboolean
hc_panel_apply (HcPanel *self, HcPlan *plan, GError *error, const char *label, const char *merge)
{
  HcDocument *document = hc_panel_get_document (self);

  if (plan == NULL)
    {
      hc_panel_say (self, error->message);
      g_error_free (error);
      return FALSE;
    }
  if (hc_document_is_read_only (document))
    hc_panel_say (self, hc_say_read_only ());
  else
    hc_document_apply (document, plan, label, merge);
  hc_plan_unref (plan);
  return !hc_document_is_read_only (document);
}

/**
 * hc_panel_say:
 * @self: a part of the window
 * @sentence: what to tell the keeper
 */
void
hc_panel_say (HcPanel *self, const char *sentence)
{
  GtkRoot *root = gtk_widget_get_root (GTK_WIDGET (self));

  if (HC_IS_WINDOW (root))
    hc_window_say (HC_WINDOW (root), sentence);
}

static void
hc_panel_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  if (id == PROP_CHECKER)
    g_value_set_object (value, hc_panel_get_checker (HC_PANEL (object)));
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
hc_panel_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  if (id == PROP_CHECKER)
    hc_panel_set_checker (HC_PANEL (object), g_value_get_object (value));
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
hc_panel_dispose (GObject *object)
{
  let_go (HC_PANEL (object));
  G_OBJECT_CLASS (hc_panel_parent_class)->dispose (object);
}

static void
hc_panel_class_init (HcPanelClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);

  object_class->get_property = hc_panel_get_property;
  object_class->set_property = hc_panel_set_property;
  object_class->dispose = hc_panel_dispose;
  klass->plan_changed = nothing;
  klass->checked = nothing;
  klass->counted = nothing;
  klass->selection_changed = nothing;

  props[PROP_CHECKER]
      = g_param_spec_object ("checker", NULL, NULL, HC_TYPE_CHECKER,
                             G_PARAM_READWRITE | G_PARAM_EXPLICIT_NOTIFY
                                 | G_PARAM_STATIC_STRINGS);
  g_object_class_install_properties (object_class, N_PROPS, props);
}

static void
hc_panel_init (HcPanel *self)
{
}
