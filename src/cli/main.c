/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * hencote-plan: what the window shows, for terminals and programs. */
#include "config.h"

#include "cli/verb.h"

#include <errno.h>
#include <glib/gi18n.h>
#include <locale.h>
#include <signal.h>
#include <stdio.h>
#include <string.h>
#include <unistd.h>

static const HcVerb *const verbs[]
    = { &hc_verb_check, &hc_verb_capacity, &hc_verb_draw, &hc_verb_rules, &hc_verb_describe,
        &hc_verb_night, &hc_verb_year, &hc_verb_forecast, &hc_verb_calendar };

static char *
tell_usage (void)
{
  GString *text = g_string_new (_("Usage: hencote-plan VERB FILE [OPTIONS]\n\nVerbs:\n"));

  for (guint i = 0; i < G_N_ELEMENTS (verbs); i++)
    g_string_append_printf (text, "  %-10s %s\n", verbs[i]->name, _(verbs[i]->summary));
  g_string_append (text,
                   _("\n‘hencote-plan VERB --help’ lists a verb's options. FILE may be - for "
                     "standard input.\n"
                     "It ends with 0 when nothing is too little, 1 when something is, and 2 "
                     "when the file or the call is wrong.\n"));
  return g_string_free (text, FALSE);
}

static const HcVerb *
find_verb (const char *name)
{
  for (guint i = 0; i < G_N_ELEMENTS (verbs); i++)
    if (g_str_equal (verbs[i]->name, name))
      return verbs[i];
  return NULL;
}

static HcExit
say_wrong (const char *message)
{
  g_printerr ("hencote-plan: %s\n", message);
  return HC_EXIT_WRONG;
}

/* A reader that has seen enough closes the pipe: that is no fault of the plan. */
static HcExit
write_out (const GString *out, HcExit status)
{
  gsize written = 0;

  while (written < out->len)
    {
      gssize more = write (STDOUT_FILENO, out->str + written, out->len - written);

      if (more < 0 && errno == EPIPE)
        return status;
      if (more < 0 && errno != EINTR)
        return say_wrong (g_strerror (errno));
      if (more > 0)
        written += (gsize) more;
    }
  return status;
}

static HcExit
run_verb (const HcVerb *verb, char **words)
{
  g_auto (HcCall) call = { NULL };
  g_autoptr (GString) out = g_string_new (NULL);
  g_autoptr (GError) error = NULL;
  HcExit status;

  if (!hc_call_parse (&call, verb->options, _(verb->summary), _(verb->argument), words, &error))
    return say_wrong (error->message);
  status = verb->run (&call, out, &error);
  if (error != NULL)
    return say_wrong (error->message);
  return write_out (out, status);
}

static HcExit
tell (const char *text)
{
  g_autoptr (GString) out = g_string_new (text);

  return write_out (out, HC_EXIT_ENOUGH);
}

static HcExit
run (char **words)
{
  g_autofree char *usage = tell_usage ();
  const HcVerb *verb;

  if (words[0] == NULL)
    {
      g_printerr ("%s", usage);
      return HC_EXIT_WRONG;
    }
  if (g_str_equal (words[0], "--help") || g_str_equal (words[0], "-h"))
    return tell (usage);
  if (g_str_equal (words[0], "--version"))
    return tell ("hencote-plan " HC_VERSION "\n");
  verb = find_verb (words[0]);
  if (verb == NULL)
    {
      g_printerr (_("hencote-plan: there is no verb ‘%s’.\n\n%s"), words[0], usage);
      return HC_EXIT_WRONG;
    }
  return run_verb (verb, words);
}

/* Where the texts are, when not installed yet. */
static const char *
locale_dir (void)
{
  const char *build_tree = g_getenv ("HENCOTE_LOCALE_DIR");

  return build_tree != NULL ? build_tree : HC_LOCALE_DIR;
}

int
main (int argc, char **argv)
{
  g_auto (GStrv) words = NULL;

  setlocale (LC_ALL, "");
  bindtextdomain (GETTEXT_PACKAGE, locale_dir ());
  bind_textdomain_codeset (GETTEXT_PACKAGE, "UTF-8");
  textdomain (GETTEXT_PACKAGE);
  signal (SIGPIPE, SIG_IGN);
  words = g_strdupv (argv + MIN (argc, 1));
  return (int) run (words);
}
