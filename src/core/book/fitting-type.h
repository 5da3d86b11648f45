/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The things a keeper can add to a house, and the sizes they come in. */
#pragma once

#include "book/source.h"

#include <glib.h>

G_BEGIN_DECLS

/**
 * HcFittingGroup:
 * @HC_FITTING_GROUP_SLEEP: sleep
 * @HC_FITTING_GROUP_LAY: lay
 * @HC_FITTING_GROUP_EAT_AND_DRINK: eat and drink
 * @HC_FITTING_GROUP_KEEP_WARM: keep warm
 * @HC_FITTING_GROUP_BREATHE: breathe
 * @HC_FITTING_GROUP_COME_AND_GO: come and go
 * @HC_FITTING_GROUP_STAY_SAFE: stay safe
 *
 * What birds do with it.
 */
typedef enum
{
  HC_FITTING_GROUP_SLEEP,
  HC_FITTING_GROUP_LAY,
  HC_FITTING_GROUP_EAT_AND_DRINK,
  HC_FITTING_GROUP_KEEP_WARM,
  HC_FITTING_GROUP_BREATHE,
  HC_FITTING_GROUP_COME_AND_GO,
  HC_FITTING_GROUP_STAY_SAFE,
} HcFittingGroup;

/**
 * HcMeasureRange:
 * @name: the measure as plan files call it, "width_mm", "bars", interned
 * @start: its value when the thing is added
 * @least: the smallest that makes sense
 * @most: the largest that makes sense
 *
 * Lengths in mm; bars, columns, rows and places are counts.
 */
typedef struct
{
  const char *name;
  double start;
  double least;
  double most;
} HcMeasureRange;

/**
 * HcCaution:
 * @text: an English sentence
 */
typedef struct
{
  const char *text;
} HcCaution;

/**
 * HcDevice:
 * @id: the device's id, interned
 * @name: its English name; see hc_device_get_name()
 * @width_mm: its width
 * @depth_mm: its depth
 * @height_mm: its height
 * @places: nipples, cups or feeding holes it has, 0 if that is not how it counts
 * @litres: what it holds, 0 if it holds nothing
 * @water_mm: depth of water a head can dip into
 * @chicks: chicks its maker says it serves, 0 if he does not say
 * @watts: electric power, 0 for none
 * @lowest_room_c: the coldest room its maker allows, -273 if he does not say
 * @heated: whether it keeps water liquid in frost
 *
 * A bought thing: it has its maker's size and does not stretch.
 */
typedef struct
{
  const char *id;
  const char *name;
  double width_mm;
  double depth_mm;
  double height_mm;
  int places;
  double litres;
  double water_mm;
  int chicks;
  double watts;
  double lowest_room_c;
  gboolean heated;
} HcDevice;

/**
 * HcFittingType:
 * @kind: what the plan calls it, "feeder", interned
 * @form: its form as plan files call it, "long", interned
 * @name: English name of one; see hc_fitting_type_get_name()
 * @plural: English name of several
 * @why: what it is for, an English sentence; see hc_fitting_type_get_why()
 * @group: what birds do with it
 * @stretches: whether it is made to measure
 * @ranges: the measures it has
 * @n_ranges: how many of them
 * @devices: the sizes it can be bought in
 * @n_devices: how many of them
 * @cautions: English sentences; see hc_fitting_type_get_caution()
 * @n_cautions: how many of them
 * @evidence: what stands behind the sizes
 * @source: (nullable): what was published about them
 *
 * A thing to add. It lives as long as its book.
 */
typedef struct
{
  const char *kind;
  const char *form;
  const char *name;
  const char *plural;
  const char *why;
  HcFittingGroup group;
  gboolean stretches;
  const HcMeasureRange *ranges;
  guint n_ranges;
  const HcDevice *devices;
  guint n_devices;
  const HcCaution *cautions;
  guint n_cautions;
  HcEvidence evidence;
  const HcSource *source;
} HcFittingType;

const char *hc_fitting_group_get_name (HcFittingGroup group);
const char *hc_fitting_type_get_name (const HcFittingType *self, gulong count);
const char *hc_fitting_type_get_why (const HcFittingType *self);
const char *hc_fitting_type_get_caution (const HcFittingType *self, guint index);
const HcMeasureRange *hc_fitting_type_find_range (const HcFittingType *self,
                                                  const char *measure);
const HcDevice *hc_fitting_type_find_device (const HcFittingType *self, const char *id);
const char *hc_device_get_name (const HcDevice *self);

G_END_DECLS
