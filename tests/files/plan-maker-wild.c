/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Makes plans that hold whatever the tables of members allow. */
#include "config.h"

#include "base/whole.h"
#include "plan-maker.h"

static const char *const texts[] = {
  "", "Skerry Croft", "two\nlines\tand a tab",
  "“quoted” \"twice\" \\ / \x7f", "h\xc3\xa9nhouse \xf0\x9f\x90\x94",
  "{\"not\": [\"a part\"]}",
};
static const char *const lists[][3]
    = { { NULL }, { "fox", NULL }, { "concrete", "boards, oak", NULL } };
static const char *const extras[] = {
  NULL,
  NULL,
  NULL,
  "{\"rings\":[]}",
  "{\"a\":12345678901234567890123456789,\"b\":{\"c\":[1.25e-7,null,{}]}}",
  "{\"text \\u0041\\\" , : [\":\" a , b { \\\\\",\"list\":[[1,2],[true,false]]}",
};
/* Members that other members have to agree with. */
static const char *const agreed[] = { "from",     "to",       "wall",      "building", "pen",
                                      "variant",  "walls",    "along_mm",  "width_mm", "height_mm",
                                      "sill_mm",  "x_mm",     "y_mm",      NULL };

static HcPart *scramble (GRand *chance, HcPart *part);

static gboolean
toss (GRand *chance)
{
  return g_rand_boolean (chance);
}

static guint
below (GRand *chance,
       guint n)
{
  return (guint) g_rand_int_range (chance, 0, (gint32) n);
}

static double
any_number (GRand *chance,
            const HcMember *member)
{
  switch (below (chance, 4))
    {
    case 0:
      return member->least;
    case 1:
      return member->most;
    case 2:
      return CLAMP (member->normal, member->least, member->most);
    default:
      return hc_mm (g_rand_double_range (chance, member->least, member->most));
    }
}

static guint32
any_day (GRand *chance)
{
  const guint32 last = 3652059; /* 9999-12-31 */

  switch (below (chance, 4))
    {
    case 0:
      return 0;
    case 1:
      return 1;
    case 2:
      return last;
    default:
      return 1 + below (chance, last);
    }
}

static void
scramble_scalar (GRand *chance,
                 const HcMember *member,
                 gpointer at)
{
  switch (member->kind)
    {
    case HC_MEMBER_LENGTH:
    case HC_MEMBER_FIGURE:
    case HC_MEMBER_NUMBER:
      *(double *) at = any_number (chance, member);
      break;
    case HC_MEMBER_COUNT:
      *(int *) at = (int) any_number (chance, member);
      break;
    case HC_MEMBER_FLAG:
      *(gboolean *) at = toss (chance);
      break;
    case HC_MEMBER_DATE:
      *(guint32 *) at = any_day (chance);
      break;
    case HC_MEMBER_WORD:
      *(int *) at = (int) below (chance, g_strv_length ((char **) member->words));
      break;
    case HC_MEMBER_TEXT:
      *(const char **) at = texts[below (chance, G_N_ELEMENTS (texts) - member->required)
                                  + member->required];
      break;
    case HC_MEMBER_IDS:
      *(const char *const **) at = lists[below (chance, G_N_ELEMENTS (lists))];
      break;
    default:
      g_assert_not_reached ();
    }
}

static HcParts *
scramble_parts (GRand *chance,
                HcParts *parts)
{
  HcParts *scrambled = hc_parts_new ();

  for (guint i = 0; i < parts->len; i++)
    g_ptr_array_add (scrambled, scramble (chance, parts->pdata[i]));
  return scrambled;
}

static void
scramble_member (GRand *chance,
                 const HcMember *member,
                 gpointer at)
{
  if (member->kind == HC_MEMBER_PARTS)
    *(HcParts **) at = scramble_parts (chance, *(HcParts **) at);
  else if (member->kind == HC_MEMBER_PART)
    *(HcPart **) at = scramble (chance, *(HcPart **) at);
  else if (toss (chance) && !g_strv_contains (agreed, member->name))
    scramble_scalar (chance, member, at);
}

static void
let_go (const HcMember *member,
        gpointer at)
{
  if (member->kind == HC_MEMBER_PARTS)
    g_ptr_array_unref (*(HcParts **) at);
  else if (member->kind == HC_MEMBER_PART)
    hc_part_unref (*(HcPart **) at);
}

static HcPart *
scramble (GRand *chance,
          HcPart *part)
{
  const HcPartClass *klass = part->klass;
  g_autofree char *values = g_memdup2 (hc_part_get_values (part), klass->values_size);
  guint64 given = (guint64) g_rand_int (chance) << 32 | g_rand_int (chance);
  HcPart *scrambled;

  for (guint i = 0; i < klass->n_members; i++)
    scramble_member (chance, &klass->members[i], values + klass->members[i].offset);
  scrambled = hc_part_read (klass, part->id, values, given,
                            extras[below (chance, G_N_ELEMENTS (extras))]);
  for (guint i = 0; i < klass->n_members; i++)
    let_go (&klass->members[i], values + klass->members[i].offset);
  return scrambled;
}

HcPlan *
plan_maker_make_wild (guint32 seed,
                      guint n_pens,
                      guint n_fittings)
{
  g_autoptr (HcPlan) plan = plan_maker_make (seed, n_pens, n_fittings);
  GRand *chance = g_rand_new_with_seed (seed);
  HcPlan *wild = (HcPlan *) scramble (chance, (HcPart *) plan);

  g_rand_free (chance);
  return wild;
}
