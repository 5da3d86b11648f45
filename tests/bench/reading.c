/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading a plan of 5,000 fittings, against json-glib parsing the same bytes,
 * by turns. */
#include "config.h"

#include "bench.h"
#include "files/read.h"
#include "files/write.h"
#include "yardstick.h"

#include <json-glib/json-glib.h>

#define N_FITTINGS 5000
#define N_RUNS 21
#define MOST_TIMES 1.6

static double
parse_ms (const char *text, gsize length)
{
  double start_ms = hc_processor_ms ();
  g_autoptr (JsonParser) parser = json_parser_new ();
  g_autoptr (GError) error = NULL;

  if (!json_parser_load_from_data (parser, text, (gssize) length, &error))
    g_error ("%s", error->message);
  return hc_processor_ms () - start_ms;
}

static double
read_ms (const char *text, gsize length)
{
  double start_ms = hc_processor_ms ();
  g_autoptr (GError) error = NULL;
  g_autoptr (HcPlanFile) file = hc_plan_file_read (text, length, &error);

  if (file == NULL)
    g_error ("%s", error->message);
  return hc_processor_ms () - start_ms;
}

int
main (void)
{
  g_autoptr (HcPlan) plan = bench_plan (10, N_FITTINGS);
  g_autoptr (GError) error = NULL;
  gsize length;
  g_autofree char *text = hc_plan_write (plan, &length, &error);
  double parsed_ms[N_RUNS], read_in_ms[N_RUNS];

  if (text == NULL)
    g_error ("%s", error->message);
  for (guint i = 0; i < N_RUNS; i++)
    {
      parsed_ms[i] = parse_ms (text, length);
      read_in_ms[i] = read_ms (text, length);
    }
  bench_report ("reading 5,000 fittings, median",
                bench_percentile (read_in_ms, N_RUNS, 0.5)
                    / bench_percentile (parsed_ms, N_RUNS, 0.5),
                MOST_TIMES, "times json-glib");
  return 0;
}
