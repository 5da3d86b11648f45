/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Answers gather findings; the worst finding is the level. */
#include "config.h"

#include "needs/answer.h"

#include <string.h>

/* Findings of one code that are told one by one; what comes after them is told
 * together with the last. */
#define MOST_ALIKE 6

void
hc_answer_init (HcAnswer *self)
{
  memset (self, 0, sizeof *self);
  self->level = HC_LEVEL_PLENTY;
  self->findings = g_ptr_array_new_with_free_func ((GDestroyNotify) hc_finding_unref);
  self->allotments = g_ptr_array_new_with_free_func ((GDestroyNotify) hc_allotment_unref);
}

void
hc_answer_clear (HcAnswer *self)
{
  g_clear_pointer (&self->findings, g_ptr_array_unref);
  g_clear_pointer (&self->allotments, g_ptr_array_unref);
}

void
hc_answer_lower (HcAnswer *self, HcLevel level)
{
  self->applies = TRUE;
  self->level = MIN (self->level, level);
}

/* Takes over @finding, which makes the answer no better than itself. */
void
hc_answer_take (HcAnswer *self, HcFinding *finding)
{
  hc_answer_lower (self, finding->level);
  g_ptr_array_add (self->findings, finding);
}

/* Takes over @finding as something worth knowing; the level stays. */
void
hc_answer_remark (HcAnswer *self, HcFinding *finding)
{
  g_ptr_array_add (self->findings, finding);
}

static gboolean
is_told (const HcAnswer *self, const HcFinding *finding)
{
  for (guint i = 0; i < self->findings->len; i++)
    {
      const HcFinding *other = self->findings->pdata[i];

      if (other->code == finding->code
          && g_strv_equal ((const char *const *) other->ids, (const char *const *) finding->ids))
        return TRUE;
    }
  return FALSE;
}

/* Takes over @finding unless it is there already: an opening between two pens
 * is looked at from both sides, and told once. */
void
hc_answer_take_once (HcAnswer *self, HcFinding *finding)
{
  if (is_told (self, finding))
    hc_finding_unref (finding);
  else
    hc_answer_take (self, finding);
}

void
hc_answer_merge (HcAnswer *self, const HcAnswer *other)
{
  if (!other->applies)
    return;
  hc_answer_lower (self, other->level);
  self->birds += other->birds;
  for (guint i = 0; i < HC_N_ASKED_LEVELS; i++)
    self->served[i] += other->served[i];
  for (guint i = 0; i < other->findings->len; i++)
    g_ptr_array_add (self->findings, hc_finding_ref (other->findings->pdata[i]));
  for (guint i = 0; i < other->allotments->len; i++)
    g_ptr_array_add (self->allotments, hc_allotment_ref (other->allotments->pdata[i]));
}

static int
compare_findings (gconstpointer a, gconstpointer b)
{
  const HcFinding *one = *(HcFinding *const *) a;
  const HcFinding *other = *(HcFinding *const *) b;
  int order = (int) one->level - (int) other->level;

  if (order == 0)
    order = (one->birds < other->birds) - (one->birds > other->birds);
  if (order == 0)
    order = strcmp (one->code, other->code);
  if (order == 0)
    order = g_strcmp0 (one->ids[0], other->ids[0]);
  return order;
}

/* The worst first; the order does not depend on that of parts in the plan. */
void
hc_answer_sort_findings (HcAnswer *self)
{
  g_ptr_array_sort (self->findings, compare_findings);
}

static GPtrArray *
find_alike (const GPtrArray *findings, const char *code)
{
  GPtrArray *alike = g_ptr_array_new ();

  for (guint i = 0; i < findings->len; i++)
    if (g_str_equal (((const HcFinding *) findings->pdata[i])->code, code))
      g_ptr_array_add (alike, findings->pdata[i]);
  return alike;
}

static void
tell_together (GPtrArray *findings, const char *code)
{
  g_autoptr (GPtrArray) alike = find_alike (findings, code);
  HcFinding *together;
  guint at;

  if (alike->len <= MOST_ALIKE)
    return;
  together = hc_finding_with_others (alike->pdata[MOST_ALIKE - 1],
                                     (HcFinding *const *) alike->pdata + MOST_ALIKE,
                                     alike->len - MOST_ALIKE);
  g_ptr_array_find (findings, alike->pdata[MOST_ALIKE - 1], &at);
  for (guint i = MOST_ALIKE; i < alike->len; i++)
    g_ptr_array_remove (findings, alike->pdata[i]);
  hc_finding_unref (findings->pdata[at]);
  findings->pdata[at] = together;
}

/* Nobody reads a hundred findings that say the same. To be called once they
 * are sorted, so that the worst are the ones told by themselves. */
void
hc_answer_group_findings (HcAnswer *self)
{
  for (guint i = 0; i < self->findings->len; i++)
    tell_together (self->findings, ((const HcFinding *) self->findings->pdata[i])->code);
}
