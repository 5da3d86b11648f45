/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A file of more than 200,000 values is refused before it costs anything. */
#include "config.h"

#include "bench.h"
#include "files/read.h"
#include "yardstick.h"

#include <sys/resource.h>

#define N_VALUES 200001
#define MOST_SECONDS 0.2
#define MOST_MB 64

static GString *
write_many_values (void)
{
  GString *text = g_string_new ("{\"format\":\"hencote-plan\",\"version\":1,\"things\":[0");

  for (guint i = 1; i < N_VALUES; i++)
    g_string_append (text, ",{}");
  g_string_append (text, "]}");
  return text;
}

static double
get_peak_mb (void)
{
  struct rusage usage;

  getrusage (RUSAGE_SELF, &usage);
  return usage.ru_maxrss / 1024.0;
}

int
main (void)
{
  GString *text = write_many_values ();
  double start_ms = hc_processor_ms ();
  g_autoptr (GError) error = NULL;
  HcPlanFile *file = hc_plan_file_read (text->str, text->len, &error);
  double seconds = (hc_processor_ms () - start_ms) / 1000;

  if (file != NULL)
    g_error ("A file of %d values was read", N_VALUES);
  g_print ("%s\n", error->message);
  bench_report ("refusing a file of more than 200,000 values", seconds, MOST_SECONDS, "s");
  bench_report ("most memory of the process while refusing", get_peak_mb (), MOST_MB, "MB");
  g_string_free (text, TRUE);
  return 0;
}
