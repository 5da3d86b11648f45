/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A sound plan as text, one part on a line, for tests that spoil it. */
#pragma once

#include <glib.h>
#include <string.h>

static const char sound_plan[]
    = "{\n"
      "  \"format\": \"hencote-plan\", \"version\": 1, \"uid\": \"croft\",\n"
      "  \"title\": \"Skerry Croft\", \"as_of\": \"2026-04-30\",\n"
      "  \"site\": {\"units\": \"metric\", \"birds_go_out\": true, \"predators\": [\"fox\"]},\n"
      "  \"rules\": {\"own_figures\": [{\"id\": \"g1\", \"figure\": \"roost\", \"value\": 1}]},\n"
      "  \"buildings\": [{\"id\": \"byre\", \"kind\": \"house\"}],\n"
      "  \"variants\": [{\"id\": \"main\",\n"
      "    \"corners\": [\n"
      "      {\"id\": \"c1\", \"x_mm\": 0, \"y_mm\": 0},\n"
      "      {\"id\": \"c2\", \"x_mm\": 4000, \"y_mm\": 0},\n"
      "      {\"id\": \"c3\", \"x_mm\": 4000, \"y_mm\": 3000},\n"
      "      {\"id\": \"c4\", \"x_mm\": 0, \"y_mm\": 3000}],\n"
      "    \"walls\": [\n"
      "      {\"id\": \"w1\", \"from\": \"c1\", \"to\": \"c2\", \"thickness_mm\": 100},\n"
      "      {\"id\": \"w2\", \"from\": \"c2\", \"to\": \"c3\"},\n"
      "      {\"id\": \"w3\", \"from\": \"c3\", \"to\": \"c4\"},\n"
      "      {\"id\": \"w4\", \"from\": \"c4\", \"to\": \"c1\"}],\n"
      "    \"openings\": [\n"
      "      {\"id\": \"o1\", \"kind\": \"pop_hole\", \"wall\": \"w1\", \"along_mm\": 500,\n"
      "       \"width_mm\": 300, \"height_mm\": 350},\n"
      "      {\"id\": \"o2\", \"kind\": \"vent\", \"wall\": \"w1\", \"along_mm\": 1500,\n"
      "       \"width_mm\": 400, \"height_mm\": 200, \"open_winter\": 0.5}],\n"
      "    \"pens\": [\n"
      "      {\"id\": \"p1\", \"building\": \"byre\", \"kind\": \"indoor\",\n"
      "       \"walls\": [\"w1\", \"w2\", \"w3\", \"w4\"], \"height_mm\": 2200,\n"
      "       \"fittings\": [\n"
      "         {\"id\": \"f1\", \"kind\": \"roost\", \"x_mm\": 1000, \"y_mm\": 500,\n"
      "          \"width_mm\": 1800, \"depth_mm\": 60, \"bars\": 2}]}]}],\n"
      "  \"variant\": \"main\",\n"
      "  \"batches\": [{\"id\": \"b1\", \"females\": 9, \"hatched\": \"2026-03-01\",\n"
      "    \"pen\": \"p1\", \"moves\": [{\"id\": \"m1\", \"on\": \"2026-06-01\"}],\n"
      "    \"leavings\": [{\"id\": \"l1\", \"on\": \"2026-07-01\", \"females\": 4},\n"
      "      {\"id\": \"l2\", \"on\": \"2026-05-02\", \"females\": 5}]}],\n"
      "  \"clutches\": [{\"id\": \"e1\", \"set_on\": \"2026-03-02\", \"eggs\": 12,\n"
      "    \"hatch_high_percent\": 90, \"steps\": [{\"id\": \"s1\", \"week\": 7}]}],\n"
      "  \"results\": [{\"id\": \"r1\", \"on\": \"2026-03-23\", \"what\": \"hatched\",\n"
      "    \"of\": \"e1\", \"count\": 8}]\n"
      "}\n";

/* The sound plan with @what, which stands in it once, made @instead. */
static inline char *
sound_plan_with (const char *what,
                 const char *instead)
{
  g_auto (GStrv) around = g_strsplit (sound_plan, what, -1);

  g_assert_cmpuint (g_strv_length (around), ==, 2);
  return g_strconcat (around[0], instead, around[1], NULL);
}
