/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The yardstick Y that other figures are given in, whatever the machine.
 *
 * Y is the time plain GEOS takes for one room with 30 footprints and one
 * headroom: union, difference, opening, two erosions. It goes round the
 * project's own geometry, so that it stays the same when that gets faster. */
#include "config.h"

#include "yardstick.h"

#include <geos_c.h>
#include <math.h>
#include <stdlib.h>
#include <time.h>

#define N_FOOTPRINTS 30
#define N_RUNS 21
#define HALF_WIDTH_MM 149.5

/**
 * hc_processor_ms: (skip)
 *
 * What else the machine does does not count.
 *
 * Returns: processor time this thread has used, in ms
 */
double
hc_processor_ms (void)
{
  struct timespec used;

  clock_gettime (CLOCK_THREAD_CPUTIME_ID, &used);
  return (double) used.tv_sec * 1000 + (double) used.tv_nsec / 1e6;
}

static GEOSGeometry *
rectangle (double x_mm,
           double y_mm,
           double width_mm,
           double depth_mm,
           double turn_deg)
{
  static const int corners[5][2] = { { -1, -1 }, { 1, -1 }, { 1, 1 }, { -1, 1 }, { -1, -1 } };
  double sine = sin (turn_deg * G_PI / 180), cosine = cos (turn_deg * G_PI / 180);
  double buffer[10];

  for (guint i = 0; i < 5; i++)
    {
      double x = corners[i][0] * width_mm / 2, y = corners[i][1] * depth_mm / 2;

      buffer[2 * i] = round (x_mm + x * cosine - y * sine);
      buffer[2 * i + 1] = round (y_mm + x * sine + y * cosine);
    }
  return GEOSGeom_createPolygon (
      GEOSGeom_createLinearRing (GEOSCoordSeq_copyFromBuffer (buffer, 5, 0, 0)), NULL, 0);
}

static GEOSGeometry *
footprints (void)
{
  GEOSGeometry *all[N_FOOTPRINTS];

  for (guint i = 0; i < N_FOOTPRINTS; i++)
    all[i] = rectangle (600 + i % 6 * 1300, 500 + i / 6 * 900, 400, 300, i * 7);
  return GEOSGeom_createCollection (GEOS_MULTIPOLYGON, all, N_FOOTPRINTS);
}

static GEOSGeometry *
offset (const GEOSGeometry *geometry,
        double by_mm)
{
  return GEOSBufferWithStyle (geometry, by_mm, 8, GEOSBUF_CAP_FLAT, GEOSBUF_JOIN_MITRE, 5);
}

static double
measure_once_ms (const GEOSGeometry *room,
                 const GEOSGeometry *taken)
{
  double start_ms = hc_processor_ms ();
  GEOSGeometry *joined = GEOSUnaryUnion (taken);
  GEOSGeometry *floor = GEOSDifference (room, joined);
  GEOSGeometry *eroded = offset (floor, -HALF_WIDTH_MM);
  GEOSGeometry *opened = offset (eroded, HALF_WIDTH_MM);
  GEOSGeometry *for_body = offset (opened, -150);
  GEOSGeometry *for_barrow = offset (opened, -300);
  double elapsed_ms = hc_processor_ms () - start_ms;

  GEOSGeom_destroy (joined);
  GEOSGeom_destroy (floor);
  GEOSGeom_destroy (eroded);
  GEOSGeom_destroy (opened);
  GEOSGeom_destroy (for_body);
  GEOSGeom_destroy (for_barrow);
  return elapsed_ms;
}

static int
compare_times (const void *a,
               const void *b)
{
  double first = *(const double *) a, second = *(const double *) b;

  return (first > second) - (first < second);
}

/**
 * hc_yardstick_ms: (skip)
 *
 * Measures Y on this machine, now.
 *
 * Returns: the median of 21 runs, in ms
 */
double
hc_yardstick_ms (void)
{
  double times_ms[N_RUNS];
  GEOSGeometry *room;
  GEOSGeometry *taken;

  initGEOS (NULL, NULL);
  room = rectangle (4000, 2500, 8000, 5000, 0);
  taken = footprints ();
  for (guint i = 0; i < N_RUNS; i++)
    times_ms[i] = measure_once_ms (room, taken);
  GEOSGeom_destroy (room);
  GEOSGeom_destroy (taken);
  finishGEOS ();
  qsort (times_ms, N_RUNS, sizeof *times_ms, compare_times);
  return times_ms[N_RUNS / 2];
}
