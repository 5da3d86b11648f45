/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Runs a fuzz target over a folder of inputs, and over each of them cut short
 * and with bytes changed, as an ordinary test. */
#include "config.h"

#include "fuzz.h"

#include <glib.h>
#include <string.h>

#define LONGEST_TO_SPOIL 8192
#define N_SPOILT 40

/* A copy of its own for each run, so that reading past its end is found. */
static void
run (const char *bytes,
     gsize length)
{
  g_autofree unsigned char *copy = g_malloc (MAX (length, 1));

  memcpy (copy, bytes, length);
  LLVMFuzzerTestOneInput (copy, length);
}

static void
run_spoilt (const char *bytes,
            gsize length)
{
  static const char marks[] = "{}[]\",:0-9.eEnt\\u\x80\xff";
  g_autofree char *spoilt = g_memdup2 (bytes, length);

  for (guint i = 0; i < N_SPOILT; i++)
    {
      gsize at = (gsize) g_test_rand_int_range (0, (gint32) length);

      spoilt[at] = marks[g_test_rand_int_range (0, sizeof marks - 1)];
      run (spoilt, length);
      spoilt[at] = bytes[at];
      run (bytes, at);
    }
}

static void
survives (gconstpointer data)
{
  const char *path = data;
  g_autofree char *bytes = NULL;
  g_autoptr (GError) error = NULL;
  gsize length;

  g_file_get_contents (path, &bytes, &length, &error);
  g_assert_no_error (error);
  run (bytes, length);
  if (length > 0 && length <= LONGEST_TO_SPOIL)
    run_spoilt (bytes, length);
}

static void
add_inputs (const char *folder)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GDir) dir = g_dir_open (folder, 0, &error);
  const char *name;

  g_assert_no_error (error);
  while ((name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *test = g_strconcat ("/fuzz/", name, NULL);

      g_test_add_data_func_full (test, g_build_filename (folder, name, NULL), survives, g_free);
    }
}

int
main (int argc,
      char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_assert_cmpint (argc, ==, 2);
  add_inputs (argv[1]);
  return g_test_run ();
}
