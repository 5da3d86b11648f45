/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Names of eggs and feeds as the keeper reads them. */
#include "config.h"

#include "book/care.h"

#include <glib/gi18n-lib.h>

/**
 * hc_care_get_name:
 * @name: the English name of a feed, a size of egg or a compost
 *
 * Returns: (transfer none): the name in the keeper's language
 */
const char *
hc_care_get_name (const char *name)
{
  return g_dgettext (GETTEXT_PACKAGE, name);
}
