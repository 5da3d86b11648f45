/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The keeper's language for what the data says in English. */
#include "config.h"

#include "book/translate.h"

#include <glib/gi18n-lib.h>

/* The empty text stands for the header of a catalogue: never look it up. */
const char *
hc_translate (const char *english)
{
  if (english == NULL || *english == '\0')
    return english;
  return g_dgettext (GETTEXT_PACKAGE, english);
}

const char *
hc_translate_count (const char *one, const char *many, gulong count)
{
  return g_dngettext (GETTEXT_PACKAGE, one, many, count);
}
