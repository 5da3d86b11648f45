/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Birds by the name a keeper has for them. */
#include "config.h"

#include "words/words.h"

#include <glib/gi18n-lib.h>

/* What all the birds meant have in common. */
typedef struct
{
  gboolean any;
  gboolean chickens, ducks, geese;
  gboolean females, males;
  gboolean grown, under_heat;
} Common;

static Common
find_common (const HcFlock *flock, HcBodies bodies)
{
  Common common = { FALSE, TRUE, TRUE, TRUE, TRUE, TRUE, TRUE, TRUE };

  for (guint i = 0; i < hc_flock_get_n_bodies (flock); i++)
    {
      const HcBody *body = hc_flock_get_body (flock, i);

      if ((bodies >> i & 1) == 0)
        continue;
      common.any = TRUE;
      common.chickens = common.chickens && body->kind->species == HC_SPECIES_CHICKEN;
      common.ducks = common.ducks && body->kind->species == HC_SPECIES_DUCK;
      common.geese = common.geese && body->kind->species == HC_SPECIES_GOOSE;
      common.females = common.females && body->female;
      common.males = common.males && !body->female;
      common.grown = common.grown && body->age_weeks >= body->kind->grown_week;
      common.under_heat = common.under_heat && body->under_heat;
    }
  return common;
}

static const char *
name_chickens (const Common *common, gulong birds)
{
  if (common->under_heat)
    return ngettext ("%d chick", "%d chicks", birds);
  if (!common->grown)
    return ngettext ("%d young bird", "%d young birds", birds);
  if (common->females)
    return ngettext ("%d hen", "%d hens", birds);
  if (common->males)
    return ngettext ("%d cock", "%d cocks", birds);
  return ngettext ("%d chicken", "%d chickens", birds);
}

static const char *
name_waterfowl (const Common *common, gulong birds)
{
  if (common->ducks && common->under_heat)
    return ngettext ("%d duckling", "%d ducklings", birds);
  if (common->ducks && common->grown && common->males)
    return ngettext ("%d drake", "%d drakes", birds);
  if (common->ducks)
    return ngettext ("%d duck", "%d ducks", birds);
  if (common->under_heat)
    return ngettext ("%d gosling", "%d goslings", birds);
  return ngettext ("%d goose", "%d geese", birds);
}

/**
 * hc_words_birds: (skip)
 * @flock: a flock
 * @bodies: which of its bodies are meant, 0 for birds in general
 * @birds: how many birds
 *
 * Returns: (transfer full): "4 hens", "15 chicks", "3 birds"
 */
char *
hc_words_birds (const HcFlock *flock, HcBodies bodies, gint64 birds)
{
  Common common = find_common (flock, bodies);
  gulong n = (gulong) MAX (birds, 0);
  const char *text;

  if (common.any && common.chickens)
    text = name_chickens (&common, n);
  else if (common.any && (common.ducks || common.geese))
    text = name_waterfowl (&common, n);
  else
    text = ngettext ("%d bird", "%d birds", n);
  return g_strdup_printf (text, (int) n);
}
