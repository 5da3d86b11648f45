/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Looks for a member outside what its table row allows, in a part and in all
 * parts inside it. */
#include "config.h"

#include "base/ids.h"
#include "plan/fault-private.h"

static gboolean
set_member_fault (HcFault *fault,
                  HcFaultKind kind,
                  const HcPart *part,
                  const HcMember *member)
{
  hc_fault_set (fault, kind, member->name, part->id, NULL);
  fault->member = member;
  return TRUE;
}

/* What is not a number is in no range, so the test is for being inside. */
static gboolean
is_within (double value,
           const HcMember *member)
{
  return value >= member->least && value <= member->most;
}

static gboolean
is_day (guint32 day)
{
  GDate date;

  if (day == 0)
    return TRUE;
  if (!g_date_valid_julian (day))
    return FALSE;
  g_date_clear (&date, 1);
  g_date_set_julian (&date, day);
  return g_date_get_year (&date) <= 9999;
}

static gboolean
is_word (int index,
         const HcMember *member)
{
  return index >= 0 && (guint) index < g_strv_length ((char **) member->words);
}

static HcFaultKind
fault_of_text (const char *text,
               gboolean required)
{
  if (text == NULL || *text == '\0')
    return required ? HC_FAULT_EMPTY : HC_FAULT_NONE;
  return g_utf8_validate (text, -1, NULL) ? HC_FAULT_NONE : HC_FAULT_TEXT;
}

static HcFaultKind
fault_of_value (gconstpointer at,
                const HcMember *member)
{
  switch (member->kind)
    {
    case HC_MEMBER_LENGTH:
    case HC_MEMBER_FIGURE:
    case HC_MEMBER_NUMBER:
      return is_within (*(const double *) at, member) ? HC_FAULT_NONE : HC_FAULT_NUMBER;
    case HC_MEMBER_COUNT:
      return is_within (*(const int *) at, member) ? HC_FAULT_NONE : HC_FAULT_NUMBER;
    case HC_MEMBER_DATE:
      return is_day (*(const guint32 *) at) ? HC_FAULT_NONE : HC_FAULT_DATE;
    case HC_MEMBER_WORD:
      return is_word (*(const int *) at, member) ? HC_FAULT_NONE : HC_FAULT_WORD;
    case HC_MEMBER_TEXT:
      return fault_of_text (*(char *const *) at, member->required);
    default:
      return HC_FAULT_NONE;
    }
}

static gboolean
find_in_ids (char **ids,
             const HcPart *part,
             const HcMember *member,
             HcFault *fault)
{
  for (guint i = 0; ids[i] != NULL; i++)
    {
      HcFaultKind kind = fault_of_text (ids[i], TRUE);

      if (kind == HC_FAULT_NONE)
        continue;
      set_member_fault (fault, kind, part, member);
      g_clear_pointer (&fault->path, g_free);
      return hc_fault_inside_item (fault, member->name, i);
    }
  return FALSE;
}

static gboolean
find_in_parts (HcParts *parts,
               const HcMember *member,
               HcFault *fault)
{
  for (guint i = 0; i < parts->len; i++)
    if (hc_part_find_fault (parts->pdata[i], fault))
      return hc_fault_inside_item (fault, member->name, i);
  return FALSE;
}

static gboolean
find_in_member (const HcPart *part,
                const HcMember *member,
                HcFault *fault)
{
  gconstpointer at = (const char *) hc_part_get_values (part) + member->offset;
  HcFaultKind kind;

  switch (member->kind)
    {
    case HC_MEMBER_IDS:
      return find_in_ids (*(char **const *) at, part, member, fault);
    case HC_MEMBER_PARTS:
      return find_in_parts (*(HcParts *const *) at, member, fault);
    case HC_MEMBER_PART:
      return hc_part_find_fault (*(HcPart *const *) at, fault)
             && hc_fault_inside (fault, member->name);
    default:
      kind = fault_of_value (at, member);
      return kind != HC_FAULT_NONE && set_member_fault (fault, kind, part, member);
    }
}

/**
 * hc_part_find_fault: (skip)
 * @part: a part
 * @fault: (out caller-allocates): filled when something is wrong
 *
 * Returns: whether a member of @part, or of a part inside it, is outside what
 *   its table row allows
 */
gboolean
hc_part_find_fault (const HcPart *part,
                    HcFault *fault)
{
  if (part->klass->has_id && !hc_id_is_valid (part->id))
    return hc_fault_set (fault, HC_FAULT_ID, "id", part->id, NULL);
  for (guint i = 0; i < part->klass->n_members; i++)
    if (find_in_member (part, &part->klass->members[i], fault))
      return TRUE;
  return FALSE;
}
