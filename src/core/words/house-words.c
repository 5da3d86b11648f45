/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The parts of the house in words. */
#include "config.h"

#include "words/house-words.h"

#include "base/ring.h"

#include <glib/gi18n-lib.h>

/**
 * hc_words_opening_kind:
 * @kind: a kind of opening
 *
 * Returns: what keepers call it
 */
const char *
hc_words_opening_kind (HcOpeningKind kind)
{
  switch (kind)
    {
    case HC_OPENING_KEEPER_DOOR:
      return _("Keeper door");
    case HC_OPENING_POP_HOLE:
      return _("Pop hole");
    case HC_OPENING_WINDOW:
      return _("Window");
    case HC_OPENING_VENT:
      return _("Vent");
    case HC_OPENING_EGG_DOOR:
      return _("Egg door");
    case HC_N_OPENING_KINDS:
      break;
    }
  g_return_val_if_reached ("");
}

/**
 * hc_words_opening:
 * @opening: an opening
 * @units: the keeper's units
 *
 * Returns: (transfer full): "Pop hole, 30 cm wide, 35 cm high"
 */
char *
hc_words_opening (const HcOpening *opening, HcUnits units)
{
  const HcOpeningValues *values = hc_opening_get (opening);
  g_autofree char *width = hc_length_format (values->width_mm, units);
  g_autofree char *height = hc_length_format (values->height_mm, units);

  /* Translators: kind of opening, its width, its height */
  return g_strdup_printf (_("%s, %s wide, %s high"),
                          hc_words_opening_kind ((HcOpeningKind) values->kind), width, height);
}

/**
 * hc_words_building_name:
 * @building: a building
 *
 * Returns: (transfer full): its name, or a word for a building without one
 */
char *
hc_words_building_name (const HcBuilding *building)
{
  const HcBuildingValues *values = hc_building_get (building);

  if (values->name != NULL && *values->name != '\0')
    return g_strdup (values->name);
  return g_strdup (values->kind == HC_BUILDING_ARK ? _("Ark") : _("House"));
}

/**
 * hc_words_pen_name:
 * @pen: a pen
 *
 * Returns: (transfer full): its name, or a word for a pen without one
 */
char *
hc_words_pen_name (const HcPen *pen)
{
  const HcPenValues *values = hc_pen_get (pen);

  if (values->name != NULL && *values->name != '\0')
    return g_strdup (values->name);
  return g_strdup (values->kind == HC_PEN_RUN ? _("Run") : _("Pen"));
}

/**
 * hc_words_pen:
 * @layout: a layout
 * @pen: a pen of it
 * @units: the keeper's units
 *
 * Returns: (transfer full): "Hen house, 7.5 m²"
 */
char *
hc_words_pen (const HcLayout *layout, const HcPen *pen, HcUnits units)
{
  g_autofree char *name = hc_words_pen_name (pen);
  g_autoptr (GArray) ring = hc_layout_get_pen_ring (layout, pen);
  g_autofree char *area = hc_area_format (
      ABS (hc_ring_area_mm2 ((const HcPoint *) ring->data, ring->len)), units);

  /* Translators: name of a pen, its area */
  return g_strdup_printf (_("%s, %s"), name, area);
}
