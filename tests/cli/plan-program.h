/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Runs the real hencote-plan. */
#pragma once

#include <gio/gio.h>
#include <json-glib/json-glib.h>

G_BEGIN_DECLS

/**
 * TestRun:
 * @status: how it ended
 * @out: what it wrote
 * @err: what it complained of
 */
typedef struct
{
  int status;
  char *out;
  char *err;
} TestRun;

TestRun test_run (const char *input, ...) G_GNUC_NULL_TERMINATED;
void test_run_clear (TestRun *run);
char *test_plan_path (const char *name);
JsonNode *test_run_parse (const TestRun *run);

G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (TestRun, test_run_clear)

G_END_DECLS
