/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What can be wrong with what a keeper typed, opened or asked. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcError:
 * @HC_ERROR_TYPED: a typed value is not understood or out of range
 * @HC_ERROR_FILE: a file is not a plan or a rules file this version reads
 * @HC_ERROR_NEWER: a file comes from a newer version
 * @HC_ERROR_EDIT: an edit would leave the plan unsound
 * @HC_ERROR_SAVE: a file could not be written
 * @HC_ERROR_CHANGED: the file was changed by somebody else since it was read
 *
 * The message always says what is wrong, where, and what to do.
 */
typedef enum
{
  HC_ERROR_TYPED,
  HC_ERROR_FILE,
  HC_ERROR_NEWER,
  HC_ERROR_EDIT,
  HC_ERROR_SAVE,
  HC_ERROR_CHANGED,
} HcError;

#define HC_ERROR (hc_error_quark ())
GQuark hc_error_quark (void);

G_END_DECLS
