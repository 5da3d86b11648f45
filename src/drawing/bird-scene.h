/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Birds, the places they were given and the pens they may go to; private to
 * bird-places. */
#pragma once

#include "drawing/bird-places.h"

#include "plan/layout.h"

G_BEGIN_DECLS

/**
 * HcSceneBird:
 * @body: what it is to the house
 * @index: index of the body in the flock
 * @pen: id of its home pen
 * @pens: (element-type utf8): ids of the pens it may go to
 * @coat: which colour of feathers
 * @seed: tells it from the others
 */
typedef struct
{
  const HcBody *body;
  guint index;
  const char *pen;
  GPtrArray *pens;
  guint coat;
  guint seed;
} HcSceneBird;

/**
 * HcSceneSeat:
 * @doing: what it is for
 * @pen: id of its pen
 * @id: id of the fitting
 * @from: where a stretch of bar starts
 * @to: where it ends
 * @body: index of the body that has it
 * @count: how many birds
 */
typedef struct
{
  HcBirdDoing doing;
  const char *pen;
  const char *id;
  HcPoint from;
  HcPoint to;
  guint body;
  gint64 count;
} HcSceneSeat;

/**
 * HcBirdScene:
 * @layout: the layout
 * @night: whether birds sleep
 * @birds: (element-type HcSceneBird): the birds
 * @seats: (element-type HcSceneSeat): who got what; seats on one stretch follow
 *   one another
 */
typedef struct
{
  const HcLayout *layout;
  gboolean night;
  GArray *birds;
  GArray *seats;
} HcBirdScene;

GArray *hc_bird_scene_settle (const HcBirdScene *scene) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
