/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Starts the program. */
#include "config.h"

#include "app/application.h"

#include <glib/gi18n.h>
#include <locale.h>

static const char *
locale_dir (void)
{
  const char *build_tree = g_getenv ("HENCOTE_LOCALE_DIR");

  return build_tree != NULL ? build_tree : HC_LOCALE_DIR;
}

int
main (int argc, char *argv[])
{
  g_autoptr (HcApplication) application = NULL;

  setlocale (LC_ALL, "");
  bindtextdomain (GETTEXT_PACKAGE, locale_dir ());
  bind_textdomain_codeset (GETTEXT_PACKAGE, "UTF-8");
  textdomain (GETTEXT_PACKAGE);
  g_set_application_name ("Hencote");

  application = hc_application_new ();
  return g_application_run (G_APPLICATION (application), argc, argv);
}
