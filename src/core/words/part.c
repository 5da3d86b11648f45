/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Things in the plan by name, with their size. */
#include "config.h"

#include "words/words.h"

#include <glib/gi18n-lib.h>

/* How a thing is called, alone and within a sentence. */
typedef struct
{
  const char *name;
  const char *the;
} Name;

static const Name *
name_feeder (int form)
{
  static const Name feeder = { N_("feeder"), N_("the feeder") };
  static const Name round = { N_("round feeder"), N_("the round feeder") };

  return form == HC_FORM_ROUND ? &round : &feeder;
}

static const Name *
name_drinker (int form)
{
  static const Name drinker = { N_("drinker"), N_("the drinker") };
  static const Name round = { N_("round drinker"), N_("the round drinker") };
  static const Name nipples = { N_("nipple drinker"), N_("the nipple drinker") };
  static const Name cups = { N_("cup drinker"), N_("the cup drinker") };

  switch (form)
    {
    case HC_FORM_ROUND:
      return &round;
    case HC_FORM_NIPPLES:
      return &nipples;
    case HC_FORM_CUPS:
      return &cups;
    default:
      return &drinker;
    }
}

static const Name *
name_nests (const HcFittingValues *values)
{
  static const Name one = { N_("nest boxes"), N_("the nest box") };
  static const Name row = { N_("nest boxes"), N_("the row of nest boxes") };
  static const Name group = { N_("group nest"), N_("the group nest") };

  if (values->form == HC_FORM_GROUP)
    return &group;
  return values->columns * values->rows > 1 ? &row : &one;
}

static const Name *
name_fitting (const HcFittingValues *values)
{
  static const Name names[HC_N_FITTING_KINDS] = {
    [HC_FITTING_ROOST] = { N_("roost"), N_("the roost") },
    [HC_FITTING_DROPPINGS_BOARD] = { N_("droppings board"), N_("the droppings board") },
    [HC_FITTING_FLOOR_HEAT_PAD] = { N_("floor heat pad"), N_("the floor heat pad") },
    [HC_FITTING_HEAT_PLATE] = { N_("raised heat plate"), N_("the raised heat plate") },
    [HC_FITTING_HEAT_LAMP] = { N_("heat lamp"), N_("the heat lamp") },
    [HC_FITTING_HOPPER] = { N_("grit and shell hopper"), N_("the grit and shell hopper") },
    [HC_FITTING_DUST_BATH] = { N_("dust bath"), N_("the dust bath") },
    [HC_FITTING_RAMP] = { N_("ramp"), N_("the ramp") },
    [HC_FITTING_PLATFORM] = { N_("platform"), N_("the platform") },
    [HC_FITTING_STORE_BIN] = { N_("store bin"), N_("the store bin") },
    [HC_FITTING_POST] = { N_("post"), N_("the post") },
  };

  switch (values->kind)
    {
    case HC_FITTING_FEEDER:
      return name_feeder (values->form);
    case HC_FITTING_DRINKER:
      return name_drinker (values->form);
    case HC_FITTING_NEST_BOXES:
      return name_nests (values);
    default:
      return &names[values->kind];
    }
}

/* As it stands within a sentence. */
static const char *
the_opening (int kind)
{
  static const char *const names[HC_N_OPENING_KINDS] = {
    [HC_OPENING_KEEPER_DOOR] = N_("the keeper door"),
    [HC_OPENING_POP_HOLE] = N_("the pop hole"),
    [HC_OPENING_WINDOW] = N_("the window"),
    [HC_OPENING_VENT] = N_("the vent"),
    [HC_OPENING_EGG_DOOR] = N_("the egg door"),
  };

  return _(names[kind]);
}

static gboolean
is_set (const char *text)
{
  return text != NULL && *text != '\0';
}

/**
 * hc_words_part: (skip)
 * @layout: a layout
 * @id: id of a fitting, an opening or a pen
 *
 * Returns: (transfer full): the keeper's name for it, or else what it is
 */
char *
hc_words_part (const HcLayout *layout, const char *id)
{
  HcPen *inside;
  const HcFitting *fitting = hc_layout_get_fitting (layout, id, &inside);
  const HcOpening *opening = hc_layout_get_opening (layout, id);
  const HcPen *pen = hc_layout_get_pen (layout, id);

  if (fitting != NULL && is_set (hc_fitting_get (fitting)->name))
    return g_strdup (hc_fitting_get (fitting)->name);
  if (fitting != NULL)
    return g_strdup (_(name_fitting (hc_fitting_get (fitting))->the));
  if (opening != NULL)
    return g_strdup (the_opening (hc_opening_get (opening)->kind));
  return pen != NULL ? hc_words_pen_name (pen) : g_strdup (_("a part that is gone"));
}

static void
add_count (GString *text, const HcFittingValues *values)
{
  if (values->kind == HC_FITTING_ROOST)
    g_string_append_printf (text,
                            ngettext (", %d bar", ", %d bars", (gulong) values->bars),
                            values->bars);
  else if (values->kind == HC_FITTING_NEST_BOXES && values->form != HC_FORM_GROUP)
    {
      int boxes = values->columns * values->rows;

      g_string_append_printf (text, ngettext (", %d box", ", %d boxes", (gulong) boxes), boxes);
    }
  else if (values->places > 0
           && (values->form == HC_FORM_NIPPLES || values->form == HC_FORM_CUPS))
    g_string_append_printf (text,
                            ngettext (", %d place", ", %d places", (gulong) values->places),
                            values->places);
}

static char *
capitalised (const char *name)
{
  g_autofree char *first = g_utf8_strup (name, (gssize) (g_utf8_next_char (name) - name));

  return g_strconcat (first, g_utf8_next_char (name), NULL);
}

/**
 * hc_words_fitting: (skip)
 * @fitting: a fitting
 * @units: what the keeper measures in
 *
 * Returns: (transfer full): what it is and its size: "Roost, 2.4 m, 2 bars"
 */
char *
hc_words_fitting (const HcFitting *fitting, HcUnits units)
{
  const HcFittingValues *values = hc_fitting_get (fitting);
  g_autofree char *name = capitalised (is_set (values->name) ? values->name
                                                             : _(name_fitting (values)->name));
  g_autofree char *length = hc_length_format (values->width_mm, units);
  GString *text = g_string_new (NULL);

  g_string_append_printf (text, "%s, %s", name, length);
  add_count (text, values);
  return g_string_free (text, FALSE);
}
