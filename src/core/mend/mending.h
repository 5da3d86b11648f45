/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A finding being mended: what its recipes may look at, and how they are judged. */
#pragma once

#include "mend/remedy.h"
#include "mend/score.h"

G_BEGIN_DECLS

/* Private to mend/. @best is the best plan the recipe in hand has made so far. */
typedef struct
{
  HcCheckCache *cache;
  HcBook *book;
  HcCheck *check;
  HcPlan *plan;
  HcLayout *layout;
  HcNeedId need;
  const HcFinding *finding;
  HcScore score;
  const char *recipe;
  guint tries;
  HcRemedy *best;
  HcScore best_score;
} HcMending;

/* Private to mend/. One way of mending, by the name that needs list it by. */
typedef struct
{
  const char *id;
  void (*suggest) (HcMending *mending);
} HcRecipe;

extern const HcRecipe hc_recipes_of_bars[];
extern const HcRecipe hc_recipes_of_birds[];
extern const HcRecipe hc_recipes_of_floors[];
extern const HcRecipe hc_recipes_of_guards[];
extern const HcRecipe hc_recipes_of_nests[];
extern const HcRecipe hc_recipes_of_nights[];
extern const HcRecipe hc_recipes_of_openings[];
extern const HcRecipe hc_recipes_of_places[];
extern const HcRecipe hc_recipes_of_troughs[];
extern const HcRecipe hc_recipes_of_heaters[];

const char *const *hc_mending_list_remedies (HcNeedId need);

gboolean hc_mending_try (HcMending *self, HcPlan *plan, const char *part, double amount);
gboolean hc_mending_try_fitting (HcMending *self, const HcFitting *fitting,
                                 const HcFittingValues *values, double amount);
gboolean hc_mending_is_mended (const HcMending *self);
gboolean hc_mending_is_done (const HcMending *self);

GPtrArray *hc_mending_list_pens (const HcMending *self) G_GNUC_WARN_UNUSED_RESULT;
GPtrArray *hc_mending_list_fittings (const HcMending *self,
                                     HcFittingKind kind) G_GNUC_WARN_UNUSED_RESULT;
GPtrArray *hc_mending_list_openings (const HcMending *self,
                                     HcOpeningKind kind) G_GNUC_WARN_UNUSED_RESULT;
HcFitting *hc_mending_get_fitting (const HcMending *self, HcPen **pen);
HcOpening *hc_mending_get_opening (const HcMending *self);
double hc_mending_get_figure (const HcMending *self, const char *name, double otherwise);

gboolean hc_mending_has_room (const HcMending *self, const HcPen *pen, const char *id,
                              const HcFittingValues *values);
void hc_mending_try_places (HcMending *self, const HcPen *pen, const char *id,
                            const HcFittingValues *values, gboolean is_new);
void hc_mending_add_fitting (HcMending *self, const HcFittingValues *values, double amount);

G_END_DECLS
