/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The document as an object: its plan, its history and its selection. */
#include "config.h"

#include "document/document-private.h"

G_DEFINE_FINAL_TYPE (HcDocument, hc_document, G_TYPE_OBJECT)

enum
{
  PROP_PLAN = 1,
  PROP_TITLE,
  PROP_FILE,
  PROP_MODIFIED,
  PROP_READ_ONLY,
  PROP_CAN_UNDO,
  PROP_CAN_REDO,
  PROP_UNDO_LABEL,
  PROP_REDO_LABEL,
  PROP_SELECTION,
  N_PROPS
};

static GParamSpec *props[N_PROPS];

static const char *
title (HcDocument *self)
{
  return hc_plan_get (hc_document_get_plan (self))->title;
}

static const char *
undo_label (HcDocument *self)
{
  return hc_history_get_undo_label (self->history);
}

static const char *
redo_label (HcDocument *self)
{
  return hc_history_get_redo_label (self->history);
}

static void
hc_document_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  HcDocument *self = HC_DOCUMENT (object);

  switch (id)
    {
    case PROP_PLAN:
      g_value_set_boxed (value, hc_document_get_plan (self));
      break;
    case PROP_TITLE:
      g_value_set_string (value, title (self));
      break;
    case PROP_FILE:
      g_value_set_object (value, self->file);
      break;
    case PROP_MODIFIED:
      g_value_set_boolean (value, hc_document_is_modified (self));
      break;
    case PROP_READ_ONLY:
      g_value_set_boolean (value, self->read_only);
      break;
    case PROP_CAN_UNDO:
      g_value_set_boolean (value, undo_label (self) != NULL);
      break;
    case PROP_CAN_REDO:
      g_value_set_boolean (value, redo_label (self) != NULL);
      break;
    case PROP_UNDO_LABEL:
      g_value_set_string (value, undo_label (self));
      break;
    case PROP_REDO_LABEL:
      g_value_set_string (value, redo_label (self));
      break;
    case PROP_SELECTION:
      g_value_set_boxed (value, hc_document_get_selection (self));
      break;
    default:
      G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
    }
}

static void
hc_document_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  HcDocument *self = HC_DOCUMENT (object);

  switch (id)
    {
    case PROP_SELECTION:
      hc_document_select (self, g_value_get_boxed (value));
      break;
    default:
      G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
    }
}

static void
hc_document_finalize (GObject *object)
{
  HcDocument *self = HC_DOCUMENT (object);

  g_clear_pointer (&self->history, hc_history_free);
  g_clear_pointer (&self->preview, hc_plan_unref);
  g_clear_pointer (&self->told.plan, hc_plan_unref);
  g_free (self->told.title);
  g_free (self->told.undo_label);
  g_free (self->told.redo_label);
  g_strfreev (self->told.selection);
  g_clear_object (&self->file);
  g_free (self->etag);
  g_free (self->draft_key);
  G_OBJECT_CLASS (hc_document_parent_class)->finalize (object);
}

static void
hc_document_class_init (HcDocumentClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GParamFlags read = G_PARAM_READABLE | G_PARAM_STATIC_STRINGS | G_PARAM_EXPLICIT_NOTIFY;

  object_class->get_property = hc_document_get_property;
  object_class->set_property = hc_document_set_property;
  object_class->finalize = hc_document_finalize;

  props[PROP_PLAN] = g_param_spec_boxed ("plan", NULL, NULL, hc_plan_get_type (), read);
  props[PROP_TITLE] = g_param_spec_string ("title", NULL, NULL, NULL, read);
  props[PROP_FILE] = g_param_spec_object ("file", NULL, NULL, G_TYPE_FILE, read);
  props[PROP_MODIFIED] = g_param_spec_boolean ("modified", NULL, NULL, FALSE, read);
  props[PROP_READ_ONLY] = g_param_spec_boolean ("read-only", NULL, NULL, FALSE, read);
  props[PROP_CAN_UNDO] = g_param_spec_boolean ("can-undo", NULL, NULL, FALSE, read);
  props[PROP_CAN_REDO] = g_param_spec_boolean ("can-redo", NULL, NULL, FALSE, read);
  props[PROP_UNDO_LABEL] = g_param_spec_string ("undo-label", NULL, NULL, NULL, read);
  props[PROP_REDO_LABEL] = g_param_spec_string ("redo-label", NULL, NULL, NULL, read);
  props[PROP_SELECTION] = g_param_spec_boxed ("selection", NULL, NULL, G_TYPE_STRV,
                                              read | G_PARAM_WRITABLE);
  g_object_class_install_properties (object_class, N_PROPS, props);
}

static void
hc_document_init (HcDocument *self)
{
}

static void
tell (HcDocument *self, guint id)
{
  g_object_notify_by_pspec (G_OBJECT (self), props[id]);
}

static void
tell_text (HcDocument *self, guint id, char **told, const char *text)
{
  if (g_strcmp0 (*told, text) == 0)
    return;
  g_free (*told);
  *told = g_strdup (text);
  tell (self, id);
}

static void
tell_label (HcDocument *self, guint label_id, guint can_id, char **told, const char *label)
{
  gboolean could = *told != NULL;

  tell_text (self, label_id, told, label);
  if (could != (label != NULL))
    tell (self, can_id);
}

static void
tell_plan (HcDocument *self)
{
  HcPlan *plan = hc_document_get_plan (self);

  if (self->told.plan == plan)
    return;
  g_clear_pointer (&self->told.plan, hc_plan_unref);
  self->told.plan = hc_plan_ref (plan);
  tell (self, PROP_PLAN);
}

static void
tell_modified (HcDocument *self)
{
  if (self->told.modified == hc_document_is_modified (self))
    return;
  self->told.modified = !self->told.modified;
  tell (self, PROP_MODIFIED);
}

static void
tell_selection (HcDocument *self)
{
  const char *const *selection = hc_document_get_selection (self);

  if (self->told.selection != NULL
      && g_strv_equal ((const char *const *) self->told.selection, selection))
    return;
  g_strfreev (self->told.selection);
  self->told.selection = g_strdupv ((char **) selection);
  tell (self, PROP_SELECTION);
}

/**
 * hc_document_tell_news: (skip)
 * @self: a document
 *
 * Notifies of whatever differs from what was told last, each property once.
 */
void
hc_document_tell_news (HcDocument *self)
{
  g_object_freeze_notify (G_OBJECT (self));
  tell_plan (self);
  tell_text (self, PROP_TITLE, &self->told.title, title (self));
  tell_modified (self);
  tell_label (self, PROP_UNDO_LABEL, PROP_CAN_UNDO, &self->told.undo_label, undo_label (self));
  tell_label (self, PROP_REDO_LABEL, PROP_CAN_REDO, &self->told.redo_label, redo_label (self));
  tell_selection (self);
  g_object_thaw_notify (G_OBJECT (self));
}

/* Private to core: the file the document is kept in from now on. */
void
hc_document_set_file (HcDocument *self, GFile *file)
{
  if (g_set_object (&self->file, file))
    tell (self, PROP_FILE);
}

void
hc_document_set_read_only (HcDocument *self, gboolean read_only)
{
  if (self->read_only == read_only)
    return;
  self->read_only = read_only;
  tell (self, PROP_READ_ONLY);
}

/**
 * hc_document_new:
 * @plan: the plan to work on
 *
 * Returns: (transfer full): a document that no file holds yet; it is not
 *   modified until the first step
 */
HcDocument *
hc_document_new (HcPlan *plan)
{
  HcDocument *self = g_object_new (HC_TYPE_DOCUMENT, NULL);

  g_return_val_if_fail (plan != NULL, self);
  self->history = hc_history_new (plan);
  hc_document_tell_news (self);
  return self;
}

/**
 * hc_document_get_plan:
 * @self: a document
 *
 * Returns: (transfer none): the plan to show: while something is dragged, the
 *   plan as it would be
 */
HcPlan *
hc_document_get_plan (HcDocument *self)
{
  g_return_val_if_fail (HC_IS_DOCUMENT (self), NULL);
  return self->preview != NULL ? self->preview : hc_document_get_settled_plan (self);
}

/**
 * hc_document_get_settled_plan:
 * @self: a document
 *
 * Returns: (transfer none): the plan without what is only previewed: what
 *   edits during a drag start from, and what is saved
 */
HcPlan *
hc_document_get_settled_plan (HcDocument *self)
{
  g_return_val_if_fail (HC_IS_DOCUMENT (self), NULL);
  return hc_history_get_plan (self->history);
}

/**
 * hc_document_is_modified:
 * @self: a document
 *
 * Returns: whether the plan is another than the one last saved; undoing back
 *   to that one makes it unmodified again
 */
gboolean
hc_document_is_modified (HcDocument *self)
{
  g_return_val_if_fail (HC_IS_DOCUMENT (self), FALSE);
  return !hc_history_is_saved (self->history);
}

/**
 * hc_document_get_selection:
 * @self: a document
 *
 * Returns: (array zero-terminated=1) (transfer none): ids of what is selected
 */
const char *const *
hc_document_get_selection (HcDocument *self)
{
  g_return_val_if_fail (HC_IS_DOCUMENT (self), NULL);
  return hc_history_get_selection (self->history);
}

/**
 * hc_document_select:
 * @self: a document
 * @ids: (array zero-terminated=1) (nullable): ids of what shall be selected
 *
 * Ids of nothing in the plan are left out. Undo and redo bring back what was
 * selected at the step.
 */
void
hc_document_select (HcDocument *self, const char *const *ids)
{
  g_return_if_fail (HC_IS_DOCUMENT (self));
  hc_history_select (self->history, ids);
  hc_document_tell_news (self);
}

/**
 * hc_document_is_selected:
 * @self: a document
 * @id: an id
 *
 * Returns: whether what has @id is selected
 */
gboolean
hc_document_is_selected (HcDocument *self, const char *id)
{
  return g_strv_contains (hc_document_get_selection (self), id);
}

/**
 * hc_document_apply:
 * @self: a document
 * @plan: the plan after an edit
 * @label: what the edit is called, for the undo menu
 * @merge: (nullable): a key, such as "nudge feeder-1"; steps of one key in a
 *   row are one step to undo
 *
 * Makes @plan the one worked on. Nothing happens when it is the plan it was.
 */
void
hc_document_apply (HcDocument *self, HcPlan *plan, const char *label, const char *merge)
{
  g_return_if_fail (HC_IS_DOCUMENT (self));
  g_return_if_fail (plan != NULL && label != NULL);
  g_clear_pointer (&self->preview, hc_plan_unref);
  hc_history_add (self->history, plan, label, merge);
  hc_document_tell_news (self);
}

/**
 * hc_document_undo:
 * @self: a document
 *
 * Goes back one step; a preview is given up.
 *
 * Returns: whether there was a step to go back
 */
gboolean
hc_document_undo (HcDocument *self)
{
  gboolean went;

  g_return_val_if_fail (HC_IS_DOCUMENT (self), FALSE);
  g_clear_pointer (&self->preview, hc_plan_unref);
  went = hc_history_undo (self->history);
  hc_document_tell_news (self);
  return went;
}

/**
 * hc_document_redo:
 * @self: a document
 *
 * Goes forward one step; a preview is given up.
 *
 * Returns: whether there was a step to go forward
 */
gboolean
hc_document_redo (HcDocument *self)
{
  gboolean went;

  g_return_val_if_fail (HC_IS_DOCUMENT (self), FALSE);
  g_clear_pointer (&self->preview, hc_plan_unref);
  went = hc_history_redo (self->history);
  hc_document_tell_news (self);
  return went;
}

/**
 * hc_document_preview:
 * @self: a document
 * @plan: how the plan would be
 *
 * Shows @plan without a step: for a drag, or for the look at a remedy.
 */
void
hc_document_preview (HcDocument *self, HcPlan *plan)
{
  g_return_if_fail (HC_IS_DOCUMENT (self));
  g_return_if_fail (plan != NULL);
  hc_plan_ref (plan);
  g_clear_pointer (&self->preview, hc_plan_unref);
  self->preview = plan;
  hc_document_tell_news (self);
}

/**
 * hc_document_commit_preview:
 * @self: a document
 * @label: what the step is called
 *
 * Makes the previewed plan the one worked on: the whole drag is one step.
 */
void
hc_document_commit_preview (HcDocument *self, const char *label)
{
  g_autoptr (HcPlan) preview = NULL;

  g_return_if_fail (HC_IS_DOCUMENT (self));
  preview = g_steal_pointer (&self->preview);
  if (preview != NULL)
    hc_document_apply (self, preview, label, NULL);
}

/**
 * hc_document_cancel_preview:
 * @self: a document
 *
 * Shows the plan as it was before the preview.
 */
void
hc_document_cancel_preview (HcDocument *self)
{
  g_return_if_fail (HC_IS_DOCUMENT (self));
  g_clear_pointer (&self->preview, hc_plan_unref);
  hc_document_tell_news (self);
}

/**
 * hc_document_is_previewing:
 * @self: a document
 *
 * Returns: whether the plan shown is only a preview
 */
gboolean
hc_document_is_previewing (HcDocument *self)
{
  g_return_val_if_fail (HC_IS_DOCUMENT (self), FALSE);
  return self->preview != NULL;
}
