/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The views of a plan that the window has: one row for each. */
#pragma once

#include <glib-object.h>

G_BEGIN_DECLS

/**
 * HcViewKind: (skip)
 * @id: names it in the action `win.view`
 * @title: what it is called on its tab, to be translated
 * @keys: the key that shows it
 * @get_type: the panel that is built when it is first shown
 */
typedef struct
{
  const char *id;
  const char *title;
  const char *keys;
  GType (*get_type) (void);
} HcViewKind;

const HcViewKind *hc_view_kinds_list (guint *n_kinds);

G_END_DECLS
