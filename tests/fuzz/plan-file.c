/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fuzz target: any bytes as a plan file. What is read is sound, can be written
 * and is the same when read again. */
#include "config.h"

#include "files/read.h"
#include "files/write.h"
#include "fuzz.h"
#include "plan/soundness.h"

static void
check_newer (const HcPlanFile *file)
{
  g_autoptr (GError) error = NULL;

  g_assert_true (file->version > HC_PLAN_VERSION);
  g_assert_true (hc_plan_is_sound (file->plan, &error));
  g_assert_no_error (error);
}

static void
check_round_trip (const HcPlanFile *file)
{
  g_autoptr (GError) error = NULL;
  gsize length = 0;
  g_autofree char *text = hc_plan_write (file->plan, &length, &error);
  g_autoptr (HcPlanFile) again = NULL;

  g_assert_no_error (error);
  again = hc_plan_file_read (text, length, &error);
  g_assert_no_error (error);
  g_assert_true (hc_plan_equal (again->plan, file->plan));
}

int
LLVMFuzzerTestOneInput (const unsigned char *data,
                        size_t size)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (HcPlanFile) file = hc_plan_file_read ((const char *) data, size, &error);

  g_assert_true ((file == NULL) == (error != NULL));
  if (file == NULL)
    return 0;
  if (file->read_only)
    check_newer (file);
  else
    check_round_trip (file);
  return 0;
}
