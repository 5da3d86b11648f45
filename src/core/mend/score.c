/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Weighs findings: each counts, and more where more is lacking, for more birds,
 * or along more of the walls. */
#include "config.h"

#include "mend/score.h"

#include <math.h>

#define LACK_WEIGHS 0.5
#define BIRDS_WEIGH 0.25
#define LENGTH_WEIGHS 0.2
#define HALF_LENGTH_MM 10000.0

/* Changes smaller than this are rounding. */
#define NOISE 1e-6

static double
weigh_lack (const HcFinding *finding)
{
  double larger = MAX (ABS (finding->measured), ABS (finding->required));

  return larger > 0 ? ABS (finding->required - finding->measured) / larger : 0;
}

static double
weigh_length (const HcFinding *finding)
{
  double sum_mm = 0;

  for (guint i = 0; i < finding->n_lines; i++)
    sum_mm += hc_point_distance (finding->lines[i].from, finding->lines[i].to);
  return sum_mm / (sum_mm + HALF_LENGTH_MM);
}

double
hc_score_weigh (const HcCheck *check, const HcFinding *finding)
{
  double birds = (double) MAX (1, hc_flock_get_total (hc_check_get_flock (check)));

  return 1 + finding->more + LACK_WEIGHS * weigh_lack (finding)
         + BIRDS_WEIGH * MIN (1, (double) finding->birds / birds)
         + LENGTH_WEIGHS * weigh_length (finding);
}

HcScore
hc_score_of (const HcCheck *check)
{
  HcScore score = { 0, 0 };

  for (guint need = 0; need < HC_N_NEEDS; need++)
    for (guint i = 0; i < hc_check_get_n_findings (check, need); i++)
      {
        const HcFinding *finding = hc_check_get_finding (check, need, i);

        if (finding->level == HC_LEVEL_SHORT)
          score.now += hc_score_weigh (check, finding);
        else if (finding->level == HC_LEVEL_TIGHT)
          score.soon += hc_score_weigh (check, finding);
      }
  return score;
}

gboolean
hc_score_is_less (HcScore one, HcScore other)
{
  if (fabs (one.now - other.now) > NOISE)
    return one.now < other.now;
  return one.soon < other.soon - NOISE;
}

/* The same thing said of the same part. */
const HcFinding *
hc_score_find_same (const HcCheck *check, HcNeedId need, const HcFinding *finding)
{
  for (guint i = 0; i < hc_check_get_n_findings (check, need); i++)
    {
      const HcFinding *other = hc_check_get_finding (check, need, i);

      if (g_str_equal (other->code, finding->code)
          && g_strcmp0 (other->ids[0], finding->ids[0]) == 0)
        return other;
    }
  return NULL;
}
