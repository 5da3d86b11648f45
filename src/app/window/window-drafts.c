/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Drafts of the open plan, and changes somebody else made to its file. */
#include "config.h"

#include "app/window/window-private.h"

#include <glib/gi18n.h>

#define DRAFT_AFTER_SECONDS 3

static gboolean
write_draft (gpointer data)
{
  HcWindow *self = data;
  g_autoptr (GError) error = NULL;

  self->draft_timer = 0;
  if (hc_document_is_previewing (self->document))
    hc_window_keep_draft (self);
  else if (hc_document_is_modified (self->document)
           && !hc_document_write_draft (self->document, &error))
    hc_window_say (self, error->message);
  return G_SOURCE_REMOVE;
}

/**
 * hc_window_keep_draft: (skip)
 * @self: a window
 *
 * Has a draft written a few seconds after the last change.
 */
void
hc_window_keep_draft (HcWindow *self)
{
  g_clear_handle_id (&self->draft_timer, g_source_remove);
  self->draft_timer = g_timeout_add_seconds (DRAFT_AFTER_SECONDS, write_draft, self);
}

/**
 * hc_window_write_draft_now:
 * @self: a window
 *
 * Keeps what is not saved as a draft at once.
 */
void
hc_window_write_draft_now (HcWindow *self)
{
  if (self->document != NULL && hc_document_is_modified (self->document))
    hc_document_write_draft (self->document, NULL);
}

/**
 * hc_window_watch_drafts: (skip)
 * @self: a window that has just been given a plan
 *
 * Forgets a draft still to be written of the plan before.
 */
void
hc_window_watch_drafts (HcWindow *self)
{
  g_clear_handle_id (&self->draft_timer, g_source_remove);
}

/**
 * hc_window_look_at_disk: (skip)
 * @self: a window that the keeper comes back to
 *
 * Says so when somebody else has changed the plan's file meanwhile.
 */
void
hc_window_look_at_disk (HcWindow *self)
{
  AdwToast *toast;

  if (!hc_document_changed_on_disk (self->document))
    return;
  toast = adw_toast_new (_("The file of this plan was changed by another program."));
  adw_toast_set_button_label (toast, _("_Read It Again"));
  adw_toast_set_action_name (toast, "win.read-again");
  adw_toast_set_timeout (toast, 0);
  adw_toast_overlay_add_toast (self->toasts, toast);
}
