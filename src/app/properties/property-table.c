/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the keeper can set of each part of a plan. */
#include "config.h"

#include "app/properties/property-table.h"

#include <glib/gi18n.h>

static const HcFittingType *
type_of (const HcFittingValues *fitting, HcBook *book)
{
  const char *kind = hc_fitting_kind_get_word (fitting->kind);
  const HcFittingType *type
      = hc_book_get_fitting_type (book, kind, hc_fitting_form_get_word (fitting->form));

  return type != NULL ? type : hc_book_get_fitting_type (book, kind, "");
}

static gboolean
has_measure (gconstpointer values, HcBook *book, const char *measure)
{
  const HcFittingType *type = type_of (values, book);

  return type != NULL && hc_fitting_type_find_range (type, measure) != NULL;
}

/* Bought devices keep their maker's size. */
static gboolean
is_made_to_measure (gconstpointer values)
{
  const HcFittingValues *fitting = values;

  return fitting->device == NULL || *fitting->device == '\0';
}

#define MEASURE(name)                                                     \
  static gboolean has_##name (gconstpointer values, HcBook *book)         \
  {                                                                       \
    return is_made_to_measure (values) && has_measure (values, book, #name); \
  }

MEASURE (width_mm)
MEASURE (height_mm)
MEASURE (bars)
MEASURE (bar_width_mm)
MEASURE (rise_mm)
MEASURE (columns)
MEASURE (rows)
MEASURE (places)
MEASURE (water_mm)

static gboolean
has_depth_mm (gconstpointer values, HcBook *book)
{
  return is_made_to_measure (values) && ((const HcFittingValues *) values)->form != HC_FORM_ROUND
         && has_measure (values, book, "depth_mm");
}

static gboolean
has_base_mm (gconstpointer values, HcBook *book)
{
  return has_measure (values, book, "base_mm");
}

static gboolean
is_nest (gconstpointer values, HcBook *book)
{
  return ((const HcFittingValues *) values)->kind == HC_FITTING_NEST_BOXES;
}

static gboolean
is_drinker (gconstpointer values, HcBook *book)
{
  return ((const HcFittingValues *) values)->kind == HC_FITTING_DRINKER;
}

static const HcProperty of_fittings[] = {
  { "name", N_("Name"), NULL, NULL, HC_CHOICES_NONE },
  { "width_mm", N_("Length"), has_width_mm, NULL, HC_CHOICES_NONE },
  { "depth_mm", N_("Depth"), has_depth_mm, NULL, HC_CHOICES_NONE },
  { "height_mm", N_("Height"), has_height_mm, NULL, HC_CHOICES_NONE },
  { "base_mm", N_("Above the floor"), has_base_mm, NULL, HC_CHOICES_NONE },
  { "bars", N_("Bars"), has_bars, NULL, HC_CHOICES_NONE },
  { "bar_width_mm", N_("Width of a bar"), has_bar_width_mm, NULL, HC_CHOICES_NONE },
  { "rise_mm", N_("Each bar higher by"), has_rise_mm, NULL, HC_CHOICES_NONE },
  { "columns", N_("Boxes side by side"), has_columns, NULL, HC_CHOICES_NONE },
  { "rows", N_("Rows of boxes"), has_rows, NULL, HC_CHOICES_NONE },
  { "places", N_("Nipples or cups"), has_places, NULL, HC_CHOICES_NONE },
  { "water_mm", N_("Depth of water"), has_water_mm, NULL, HC_CHOICES_NONE },
  { "lined", N_("Lined with bedding"), is_nest, NULL, HC_CHOICES_NONE },
  { "heated", N_("Kept from freezing"), is_drinker, NULL, HC_CHOICES_NONE },
  { "out_at_night", N_("Taken outside at dusk"), is_drinker, NULL, HC_CHOICES_NONE },
  { "x_mm", N_("Across"), NULL, NULL, HC_CHOICES_NONE },
  { "y_mm", N_("Down"), NULL, NULL, HC_CHOICES_NONE },
  { "turn_deg", N_("Turned, degrees"), NULL, NULL, HC_CHOICES_NONE },
  { "locked", N_("Keep it where it is"), NULL, NULL, HC_CHOICES_NONE },
};

static gboolean
birds_pass (gconstpointer values, HcBook *book)
{
  int kind = ((const HcOpeningValues *) values)->kind;

  return kind == HC_OPENING_KEEPER_DOOR || kind == HC_OPENING_POP_HOLE;
}

static gboolean
air_passes (gconstpointer values, HcBook *book)
{
  int kind = ((const HcOpeningValues *) values)->kind;

  return kind == HC_OPENING_WINDOW || kind == HC_OPENING_VENT;
}

static gboolean
is_door (gconstpointer values, HcBook *book)
{
  return ((const HcOpeningValues *) values)->kind == HC_OPENING_KEEPER_DOOR;
}

static gboolean
is_shut (gconstpointer values, HcBook *book)
{
  return !air_passes (values, book);
}

static gboolean
is_meshed (gconstpointer values, HcBook *book)
{
  const HcOpeningValues *opening = values;

  return air_passes (values, book) && opening->mesh != NULL && *opening->mesh != '\0';
}

static const char *const fixings[] = { N_("Screws or battens"), N_("Staples alone"), NULL };
static const char *const swings[] = { N_("Inwards"), N_("Outwards"), N_("Slides"), NULL };
static const char *const hinges[] = { N_("At the wall's start"), N_("At the wall's end"), NULL };

static const HcProperty of_openings[] = {
  { "width_mm", N_("Width"), NULL, NULL, HC_CHOICES_NONE },
  { "height_mm", N_("Height"), NULL, NULL, HC_CHOICES_NONE },
  { "sill_mm", N_("Above the floor"), NULL, NULL, HC_CHOICES_NONE },
  { "along_mm", N_("Along the wall"), NULL, NULL, HC_CHOICES_NONE },
  { "open_by_day", N_("Open by day"), birds_pass, NULL, HC_CHOICES_NONE },
  { "shut_at_dusk", N_("Shut at dusk"), birds_pass, NULL, HC_CHOICES_NONE },
  { "open_winter", N_("Open in winter"), air_passes, NULL, HC_CHOICES_NONE },
  { "open_summer", N_("Open in summer"), air_passes, NULL, HC_CHOICES_NONE },
  { "glazed", N_("Part of it is glass"), is_door, NULL, HC_CHOICES_NONE },
  { "swing", N_("Swings"), is_door, swings, HC_CHOICES_NONE },
  { "hinge", N_("Hinges"), is_door, hinges, HC_CHOICES_NONE },
  { "mesh", N_("Mesh over it"), air_passes, NULL, HC_CHOICES_MESH },
  { "fixing", N_("Mesh fixed with"), is_meshed, fixings, HC_CHOICES_NONE },
  { "latch", N_("Latch"), is_shut, NULL, HC_CHOICES_LATCH },
  { "gap_mm", N_("Widest gap when shut"), is_shut, NULL, HC_CHOICES_NONE },
};

static gboolean
is_indoor (gconstpointer values, HcBook *book)
{
  return ((const HcPenValues *) values)->kind == HC_PEN_INDOOR;
}

static gboolean
may_slope (gconstpointer values, HcBook *book)
{
  return is_indoor (values, book) && ((const HcPenValues *) values)->roof_shape != HC_ROOF_FLAT;
}

static gboolean
slopes (gconstpointer values, HcBook *book)
{
  const HcPenValues *pen = values;

  return may_slope (values, book) && pen->ridge_mm > pen->height_mm;
}

static gboolean
has_two_slopes (gconstpointer values, HcBook *book)
{
  return slopes (values, book) && ((const HcPenValues *) values)->roof_shape == HC_ROOF_GABLE;
}

static gboolean
is_meshed_over (gconstpointer values, HcBook *book)
{
  int roof = ((const HcPenValues *) values)->roof;

  return roof == HC_ROOF_NET || roof == HC_ROOF_MESH;
}

static const char *const pen_kinds[] = { N_("Indoor pen"), N_("Run"), NULL };
static const char *const roofs[]
    = { N_("Solid"), N_("Netting"), N_("Stiff mesh"), N_("Open sky"), NULL };
static const char *const roof_shapes[] = { N_("Flat"), N_("Lean-to"), N_("Gable"), NULL };

static const char *const roof_colours[] = { N_("Light"), N_("Middling"), N_("Dark"), NULL };

static const HcProperty of_pens[] = {
  { "name", N_("Name"), NULL, NULL, HC_CHOICES_NONE },
  { "kind", N_("It is"), NULL, pen_kinds, HC_CHOICES_NONE },
  { "height_mm", N_("Height"), NULL, NULL, HC_CHOICES_NONE },
  { "floor_layers", N_("Floor"), NULL, NULL, HC_CHOICES_FLOOR },
  { "bedding", N_("Bedding"), is_indoor, NULL, HC_CHOICES_BEDDING },
  { "bedding_mm", N_("Depth of bedding"), is_indoor, NULL, HC_CHOICES_NONE },
  { "roof", N_("Roof"), NULL, roofs, HC_CHOICES_NONE },
  { "roof_colour", N_("Colour of the roof"), is_indoor, roof_colours, HC_CHOICES_NONE },
  { "roof_mesh", N_("Mesh over it"), is_meshed_over, NULL, HC_CHOICES_MESH },
  { "roof_shape", N_("Shape of the roof"), is_indoor, roof_shapes, HC_CHOICES_NONE },
  { "ridge_mm", N_("Height of the ridge"), may_slope, NULL, HC_CHOICES_NONE },
  { "roof_turn_deg", N_("Roof turned, degrees"), slopes, NULL, HC_CHOICES_NONE },
  /* Translators: a share of the house's width, 0 to 1; 0.5 is the middle. */
  { "ridge_at", N_("Ridge, part of the way over"), has_two_slopes, NULL, HC_CHOICES_NONE },
  { "droppings_cleared", N_("Droppings out every day"), is_indoor, NULL, HC_CHOICES_NONE },
  { "apron_mm", N_("Width of dig guard"), NULL, NULL, HC_CHOICES_NONE },
  { "dug_mm", N_("Depth of dig guard"), NULL, NULL, HC_CHOICES_NONE },
  { "building", N_("Part of"), NULL, NULL, HC_CHOICES_BUILDING },
};

static const char *const building_kinds[] = { N_("House"), N_("Ark"), NULL };

static const HcProperty of_buildings[] = {
  { "name", N_("Name of the building"), NULL, NULL, HC_CHOICES_NONE },
  { "kind", N_("The building is"), NULL, building_kinds, HC_CHOICES_NONE },
};

static const char *const terrains[]
    = { N_("Sea or lake"), N_("Open fields"), N_("Woods, hedges"), N_("Town"), NULL };

static const HcProperty of_sites[] = {
  { "place", N_("Place"), NULL, NULL, HC_CHOICES_NONE },
  { "coldest_night_c", N_("Coldest night, °C"), NULL, NULL, HC_CHOICES_NONE },
  { "hottest_day_c", N_("Hottest day, °C"), NULL, NULL, HC_CHOICES_NONE },
  { "humidity_percent", N_("Humidity in winter, %"), NULL, NULL, HC_CHOICES_NONE },
  { "wind_m_s", N_("Wind in winter, m/s"), NULL, NULL, HC_CHOICES_NONE },
  /* Translators: degrees clockwise; north is up on the plan. */
  { "wind_from_deg", N_("Wind from (0 north, 90 east)"), NULL, NULL, HC_CHOICES_NONE },
  { "terrain", N_("All around"), NULL, terrains, HC_CHOICES_NONE },
  { "elevation_m", N_("Above the sea, m"), NULL, NULL, HC_CHOICES_NONE },
  { "birds_go_out", N_("Birds go out"), NULL, NULL, HC_CHOICES_NONE },
  { "longest_shut_in_days", N_("Longest spell shut in, days"), NULL, NULL, HC_CHOICES_NONE },
  { "birds_allowed", N_("Birds allowed (0: any number)"), NULL, NULL, HC_CHOICES_NONE },
  { "males_allowed", N_("Males allowed (−1: any number)"), NULL, NULL, HC_CHOICES_NONE },
};

static gboolean
has_no_breed (gconstpointer values, HcBook *book)
{
  const HcBatchValues *batch = values;

  return batch->breed == NULL || *batch->breed == '\0';
}

static const HcProperty of_batches[] = {
  { "name", N_("Name"), NULL, NULL, HC_CHOICES_NONE },
  { "breed", N_("Breed"), NULL, NULL, HC_CHOICES_BREED },
  { "kind", N_("Kind"), has_no_breed, NULL, HC_CHOICES_KIND },
  { "females", N_("Females"), NULL, NULL, HC_CHOICES_NONE },
  { "males", N_("Males"), NULL, NULL, HC_CHOICES_NONE },
  { "hatched", N_("Hatched"), NULL, NULL, HC_CHOICES_NONE },
  { "pen", N_("Home pen"), NULL, NULL, HC_CHOICES_PEN },
};

static const struct
{
  const HcPartClass *klass;
  const HcProperty *properties;
  guint n;
} tables[] = {
  { &hc_fitting_class, of_fittings, G_N_ELEMENTS (of_fittings) },
  { &hc_opening_class, of_openings, G_N_ELEMENTS (of_openings) },
  { &hc_pen_class, of_pens, G_N_ELEMENTS (of_pens) },
  { &hc_building_class, of_buildings, G_N_ELEMENTS (of_buildings) },
  { &hc_site_class, of_sites, G_N_ELEMENTS (of_sites) },
  { &hc_batch_class, of_batches, G_N_ELEMENTS (of_batches) },
};

/**
 * hc_properties_of: (skip)
 * @klass: the class of a part
 * @n_properties: (out): how many there are
 *
 * Returns: (nullable): what the keeper can set of such a part
 */
const HcProperty *
hc_properties_of (const HcPartClass *klass, guint *n_properties)
{
  for (guint i = 0; i < G_N_ELEMENTS (tables); i++)
    if (tables[i].klass == klass)
      {
        *n_properties = tables[i].n;
        return tables[i].properties;
      }
  *n_properties = 0;
  return NULL;
}

/**
 * hc_property_find_member: (skip)
 * @klass: the class of a part
 * @name: a member's name in plan files
 *
 * Returns: (nullable): its row in the class's table
 */
const HcMember *
hc_property_find_member (const HcPartClass *klass, const char *name)
{
  for (guint i = 0; i < klass->n_members; i++)
    if (g_str_equal (klass->members[i].name, name))
      return &klass->members[i];
  return NULL;
}

/**
 * hc_property_suits: (skip)
 * @klass: a class of parts
 * @member: a member's name in plan files
 * @values: what a part is
 * @book: the book
 *
 * Returns: whether the keeper may set that member of it
 */
gboolean
hc_property_suits (const HcPartClass *klass, const char *member, gconstpointer values,
                   HcBook *book)
{
  guint n_properties;
  const HcProperty *properties = hc_properties_of (klass, &n_properties);

  for (guint i = 0; i < n_properties; i++)
    if (g_str_equal (properties[i].member, member))
      return properties[i].suits == NULL || properties[i].suits (values, book);
  return FALSE;
}
