/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The measures of a fitting by name. */
#include "config.h"

#include "plan/fitting-measure.h"

static const HcMember *
find_member (const char *measure)
{
  for (guint i = 0; i < hc_fitting_class.n_members; i++)
    if (hc_fitting_class.members[i].kind <= HC_MEMBER_COUNT
        && g_str_equal (hc_fitting_class.members[i].name, measure))
      return &hc_fitting_class.members[i];
  return NULL;
}

/**
 * hc_fitting_get_measure:
 * @values: a fitting's values
 * @measure: "width_mm", "bars", "base_mm"…
 * @amount: (out): the measure, mm or a count
 *
 * Returns: whether there is a measure of that name
 */
gboolean
hc_fitting_get_measure (const HcFittingValues *values, const char *measure, double *amount)
{
  const HcMember *member = find_member (measure);

  if (member == NULL)
    return FALSE;
  if (member->kind == HC_MEMBER_COUNT)
    *amount = G_STRUCT_MEMBER (int, values, member->offset);
  else
    *amount = G_STRUCT_MEMBER (double, values, member->offset);
  return TRUE;
}

/**
 * hc_fitting_set_measure:
 * @values: a fitting's values
 * @measure: "width_mm", "bars", "base_mm"…
 * @amount: the measure, mm or a count
 *
 * Returns: whether there is a measure of that name
 */
gboolean
hc_fitting_set_measure (HcFittingValues *values, const char *measure, double amount)
{
  const HcMember *member = find_member (measure);

  if (member == NULL)
    return FALSE;
  if (member->kind == HC_MEMBER_COUNT)
    G_STRUCT_MEMBER (int, values, member->offset) = (int) amount;
  else
    G_STRUCT_MEMBER (double, values, member->offset) = amount;
  return TRUE;
}

/**
 * hc_fitting_measure_is_length:
 * @measure: a name
 *
 * Returns: whether it is in millimetres, not a count
 */
gboolean
hc_fitting_measure_is_length (const char *measure)
{
  const HcMember *member = find_member (measure);

  return member != NULL && member->kind == HC_MEMBER_LENGTH;
}
