/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fittings as a table of their members. */
#include "config.h"

#include "plan/fitting.h"

#include "plan/bounds.h"

static const char *const kinds[]
    = { "roost",        "droppings_board", "nest_boxes", "feeder", "drinker",
        "floor_heat_pad", "heat_plate",    "heat_lamp",  "hopper", "dust_bath",
        "ramp",         "platform",        "store_bin",  "post",   NULL };
static const char *const forms[]
    = { "long", "round", "nipples", "cups", "group", "grid", "rungs", NULL };

static const HcMember members[] = {
  HC_WORD_REQUIRED (HcFittingValues, kind, "kind", kinds),
  HC_WORD (HcFittingValues, form, "form", forms, HC_FORM_LONG),
  HC_TEXT (HcFittingValues, device, "device"),
  HC_TEXT (HcFittingValues, name, "name"),
  HC_LENGTH_REQUIRED (HcFittingValues, x_mm, "x_mm", -HC_FARTHEST_MM, HC_FARTHEST_MM),
  HC_LENGTH_REQUIRED (HcFittingValues, y_mm, "y_mm", -HC_FARTHEST_MM, HC_FARTHEST_MM),
  HC_NUMBER (HcFittingValues, turn_deg, "turn_deg", -360, 360, 0),
  HC_LENGTH_REQUIRED (HcFittingValues, width_mm, "width_mm", 1, HC_LONGEST_FITTING_MM),
  HC_LENGTH_REQUIRED (HcFittingValues, depth_mm, "depth_mm", 1, HC_LONGEST_FITTING_MM),
  HC_LENGTH (HcFittingValues, height_mm, "height_mm", 0, HC_TALLEST_MM, 0),
  HC_LENGTH (HcFittingValues, base_mm, "base_mm", 0, HC_TALLEST_MM, 0),
  HC_COUNT (HcFittingValues, bars, "bars", 1, 200, 1),
  HC_LENGTH (HcFittingValues, bar_width_mm, "bar_width_mm", 1, 1000, 50),
  HC_LENGTH (HcFittingValues, rise_mm, "rise_mm", 0, 2000, 0),
  HC_COUNT (HcFittingValues, columns, "columns", 1, 500, 1),
  HC_COUNT (HcFittingValues, rows, "rows", 1, 20, 1),
  HC_COUNT (HcFittingValues, places, "places", 0, 2000, 0),
  HC_LENGTH (HcFittingValues, water_mm, "water_mm", 0, 2000, 0),
  HC_NUMBER (HcFittingValues, watts, "watts", 0, 10000, 0),
  HC_FLAG (HcFittingValues, lined, "lined", FALSE),
  HC_FLAG (HcFittingValues, heated, "heated", FALSE),
  HC_FLAG (HcFittingValues, out_at_night, "out_at_night", FALSE),
  HC_FLAG (HcFittingValues, locked, "locked", FALSE),
};

HC_DEFINE_PART (HcFitting, hc_fitting, TRUE, members)

static gboolean
index_of (const char *const *words, const char *word, int *index)
{
  for (int i = 0; words[i] != NULL; i++)
    if (g_strcmp0 (words[i], word) == 0)
      {
        *index = i;
        return TRUE;
      }
  return FALSE;
}

/**
 * hc_fitting_kind_get_word:
 * @kind: a kind
 *
 * Returns: the word for @kind in plan files and in the book
 */
const char *
hc_fitting_kind_get_word (HcFittingKind kind)
{
  g_return_val_if_fail (kind < HC_N_FITTING_KINDS, NULL);
  return kinds[kind];
}

/**
 * hc_fitting_kind_from_word:
 * @word: a word of plan files or of the book
 * @kind: (out): the kind it stands for
 *
 * Returns: whether it stands for one
 */
gboolean
hc_fitting_kind_from_word (const char *word, HcFittingKind *kind)
{
  int index;

  if (!index_of (kinds, word, &index))
    return FALSE;
  *kind = (HcFittingKind) index;
  return TRUE;
}

/**
 * hc_fitting_form_get_word:
 * @form: a form
 *
 * Returns: the word for @form in plan files and in the book
 */
const char *
hc_fitting_form_get_word (HcFittingForm form)
{
  g_return_val_if_fail (form < G_N_ELEMENTS (forms) - 1, NULL);
  return forms[form];
}

/**
 * hc_fitting_form_from_word:
 * @word: a word of plan files or of the book
 * @form: (out): the form it stands for
 *
 * Returns: whether it stands for one
 */
gboolean
hc_fitting_form_from_word (const char *word, HcFittingForm *form)
{
  int index;

  if (!index_of (forms, word, &index))
    return FALSE;
  *form = (HcFittingForm) index;
  return TRUE;
}

/**
 * hc_fitting_is_heater:
 * @fitting: a fitting
 *
 * Returns: whether it keeps chicks warm
 */
gboolean
hc_fitting_is_heater (const HcFitting *fitting)
{
  int kind = hc_fitting_get (fitting)->kind;

  return kind == HC_FITTING_FLOOR_HEAT_PAD || kind == HC_FITTING_HEAT_PLATE
         || kind == HC_FITTING_HEAT_LAMP;
}
