/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One drawing, three kinds of file, with nothing of the day they are made. */
#include "config.h"

#include "export.h"

#include "drawing/dimension.h"
#include "drawing/floor-drawing.h"
#include "drawing/report.h"
#include "drawing/side-air.h"
#include "drawing/side-drawing.h"

#include "base/error.h"

#include <cairo-pdf.h>
#include <cairo-svg.h>
#include <errno.h>
#include <glib/gi18n-lib.h>
#include <math.h>

#define PNG_DOTS_PER_INCH 150.0
#define MOST_DOTS 16000.0
#define FLOOR_SCALE 20
#define FLOOR_MARGIN (HC_DIMENSION_ROOM_UNITS + 10)

/* The day written into every PDF: a file that did not change is the same. */
#define FIXED_DAY "2026-01-01T00:00:00Z"

typedef enum
{
  KIND_PDF,
  KIND_SVG,
  KIND_PNG,
} Kind;

typedef struct
{
  Kind kind;
  const char *path;
  cairo_surface_t *surface;
  GByteArray *bytes;
} Target;

static gboolean
find_kind (const char *path, Kind *kind, GError **error)
{
  static const char *const endings[] = { ".pdf", ".svg", ".png" };
  g_autofree char *lower = g_ascii_strdown (path, -1);

  for (guint i = 0; i < G_N_ELEMENTS (endings); i++)
    if (g_str_has_suffix (lower, endings[i]))
      {
        *kind = (Kind) i;
        return TRUE;
      }
  g_set_error (error, HC_ERROR, HC_ERROR_SAVE,
               _("%s: a drawing's name ends in .pdf, .svg or .png."), path);
  return FALSE;
}

static cairo_status_t
keep_bytes (void *target, const unsigned char *bytes, unsigned int length)
{
  g_byte_array_append (((Target *) target)->bytes, bytes, length);
  return CAIRO_STATUS_SUCCESS;
}

static gboolean
open_target (Target *target, double width, double height, GError **error)
{
  double dots = PNG_DOTS_PER_INCH / 72;

  if (target->kind == KIND_PNG && MAX (width, height) * dots > MOST_DOTS)
    {
      g_set_error_literal (error, HC_ERROR, HC_ERROR_SAVE,
                           _("The picture would be too large. Choose a smaller scale, such as "
                             "1:100, or a .pdf file."));
      return FALSE;
    }
  target->bytes = g_byte_array_new ();
  if (target->kind == KIND_PDF)
    {
      target->surface
          = cairo_pdf_surface_create_for_stream (keep_bytes, target, width, height);
      cairo_pdf_surface_set_metadata (target->surface, CAIRO_PDF_METADATA_CREATE_DATE,
                                      FIXED_DAY);
    }
  else if (target->kind == KIND_SVG)
    target->surface = cairo_svg_surface_create_for_stream (keep_bytes, target, width, height);
  else
    {
      target->surface = cairo_image_surface_create (
          CAIRO_FORMAT_RGB24, (int) ceil (width * dots), (int) ceil (height * dots));
      cairo_surface_set_device_scale (target->surface, dots, dots);
    }
  return TRUE;
}

static gboolean
say_failed (const Target *target, const char *why, GError **error)
{
  g_set_error (error, HC_ERROR, HC_ERROR_SAVE, _("%s: the drawing could not be written: %s."),
               target->path, why);
  return FALSE;
}

static gboolean
close_target (Target *target, GError **error)
{
  g_autoptr (GError) failed = NULL;
  cairo_status_t status;

  if (target->kind == KIND_PNG)
    cairo_surface_write_to_png_stream (target->surface, keep_bytes, target);
  cairo_surface_finish (target->surface);
  status = cairo_surface_status (target->surface);
  if (status != CAIRO_STATUS_SUCCESS)
    return say_failed (target, cairo_status_to_string (status), error);
  if (!g_file_set_contents (target->path, (const char *) target->bytes->data,
                            target->bytes->len, &failed))
    return say_failed (target, failed->message, error);
  return TRUE;
}

static void
clear_target (Target *target)
{
  g_clear_pointer (&target->surface, cairo_surface_destroy);
  g_clear_pointer (&target->bytes, g_byte_array_unref);
}

static HcInk
ink_for (const Target *target)
{
  return (HcInk){ cairo_create (target->surface), hc_palette_get (HC_PALETTE_PRINT), 1, FALSE };
}

static void
start_on_white (const HcInk *ink)
{
  hc_ink_set (ink, HC_PAINT_PAPER, 1);
  cairo_paint (ink->cr);
}

static void
draw_report (const HcSheet *sheet, const HcSheetSize *size, const Target *target,
             const HcInk *ink)
{
  g_autoptr (HcReport) report = hc_report_new (sheet, size, ink);

  cairo_pdf_surface_set_size (target->surface, MIN (size->width, size->height),
                              MAX (size->width, size->height));
  for (guint page = 0; page < hc_report_get_n_pages (report); page++)
    {
      hc_report_draw_page (report, ink, page);
      cairo_show_page (ink->cr);
    }
}

static gboolean
draw_sheet (const HcSheet *sheet, Target *target, GError **error)
{
  HcSheetSize size;
  HcInk ink;

  if (!hc_sheet_fit (sheet, &size, error)
      || !open_target (target, size.width, size.height, error))
    return FALSE;
  ink = ink_for (target);
  start_on_white (&ink);
  hc_sheet_draw_floor (sheet, &size, &ink);
  cairo_show_page (ink.cr);
  if (target->kind == KIND_PDF)
    draw_report (sheet, &size, target, &ink);
  cairo_destroy (ink.cr);
  return TRUE;
}

/* Opens paper round @bounds, and moves the ink's space to the house's. */
static gboolean
start_drawing (const HcSheet *sheet, Target *target, HcBox bounds, HcInk *ink, GError **error)
{
  double scale = hc_scale_to_units (sheet->scale > 0 ? sheet->scale : FLOOR_SCALE);

  if (!open_target (target, bounds.width_mm * scale + 2 * FLOOR_MARGIN,
                    bounds.depth_mm * scale + 2 * FLOOR_MARGIN, error))
    return FALSE;
  *ink = ink_for (target);
  start_on_white (ink);
  ink->scale = scale;
  cairo_translate (ink->cr, FLOOR_MARGIN, FLOOR_MARGIN);
  cairo_scale (ink->cr, scale, scale);
  cairo_translate (ink->cr, -bounds.x_mm, -bounds.y_mm);
  return TRUE;
}

static gboolean
draw_floor (const HcSheet *sheet, Target *target, GError **error)
{
  HcPlan *plan = hc_check_get_plan (sheet->check);
  HcBox bounds = hc_floor_get_bounds (hc_plan_get_layout (plan));
  HcInk ink;

  if (hc_box_is_empty (bounds))
    bounds = (HcBox){ 0, 0, 1000, 1000 };
  if (!start_drawing (sheet, target, bounds, &ink, error))
    return FALSE;
  hc_draw_floor (&ink, plan, sheet->check, HC_FLOOR_ALL);
  cairo_show_page (ink.cr);
  cairo_destroy (ink.cr);
  return TRUE;
}

static char *
list_walls (const HcLayout *layout)
{
  HcParts *walls = hc_layout_get (layout)->walls;
  g_autoptr (GPtrArray) ids = g_ptr_array_new ();

  for (guint i = 0; i < walls->len; i++)
    g_ptr_array_add (ids, (gpointer) hc_wall_get_id (walls->pdata[i]));
  g_ptr_array_add (ids, NULL);
  return g_strjoinv (", ", (char **) ids->pdata);
}

static gboolean
say_no_wall (const HcSheet *sheet, GError **error)
{
  g_autofree char *walls
      = list_walls (hc_plan_get_layout (hc_check_get_plan (sheet->check)));

  if (sheet->wall != NULL && *walls != '\0')
    g_set_error (error, HC_ERROR, HC_ERROR_SAVE,
                 /* Translators: the second is a list of names in the file, with commas. */
                 _("No indoor pen or run has a wall ‘%s’. Choose one of these: %s."), sheet->wall,
                 walls);
  else
    g_set_error_literal (error, HC_ERROR, HC_ERROR_SAVE,
                         _("There is nothing to see from the side yet. Draw a pen first."));
  return FALSE;
}

static gboolean
draw_side (const HcSheet *sheet, Target *target, GError **error)
{
  HcHouse *house = hc_check_get_house (sheet->check);
  g_autoptr (HcSideScene) scene = NULL;
  HcSideCut cut;
  HcInk ink;

  if (!hc_side_cut_find (house, sheet->wall, &cut))
    return say_no_wall (sheet, error);
  scene = hc_side_scene_new (house, sheet->book, &cut);
  if (!start_drawing (sheet, target, hc_side_scene_get_bounds (scene), &ink, error))
    return FALSE;
  hc_draw_side (&ink, sheet->check, scene);
  cairo_show_page (ink.cr);
  cairo_destroy (ink.cr);
  return TRUE;
}

/* Where most birds sleep. */
static guint
find_fullest (const HcNight *night)
{
  guint fullest = 0;

  for (guint i = 0; i < night->n_spaces; i++)
    if (night->spaces[i].birds > night->spaces[fullest].birds)
      fullest = i;
  return fullest;
}

static gboolean
draw_air (const HcSheet *sheet, Target *target, GError **error)
{
  HcHouse *house = hc_check_get_house (sheet->check);
  g_autoptr (HcHouseNight) night = hc_house_night_new (
      hc_check_get_plan (sheet->check), house, hc_check_get_flock (sheet->check), NULL);
  guint space = find_fullest (&night->night);
  g_autoptr (HcSideScene) scene = NULL;
  HcSideCut cut;
  HcInk ink;
  HcBox bounds;

  if (sheet->wall != NULL ? !hc_side_cut_find (house, sheet->wall, &cut)
                          : !hc_side_air_find_cut (night, space, &cut))
    return say_no_wall (sheet, error);
  bounds = hc_side_air_get_bounds (night, &cut, space);
  if (!start_drawing (sheet, target, bounds, &ink, error))
    return FALSE;
  scene = hc_side_scene_new (house, sheet->book, &cut);
  hc_draw_side (&ink, sheet->check, scene);
  hc_draw_side_air (&ink, night, &cut, space);
  cairo_show_page (ink.cr);
  cairo_destroy (ink.cr);
  return TRUE;
}

/**
 * hc_draw_to_file:
 * @sheet: what to draw
 * @view: the floor alone, the side alone, with its air, or a whole sheet
 * @path: the file; its ending says what it becomes
 * @error: return location for an error of %HC_ERROR
 *
 * Returns: whether the file was written
 */
gboolean
hc_draw_to_file (const HcSheet *sheet, HcView view, const char *path, GError **error)
{
  static gboolean (*const draws[]) (const HcSheet *, Target *, GError **) = {
    [HC_VIEW_FLOOR] = draw_floor,
    [HC_VIEW_SIDE] = draw_side,
    [HC_VIEW_AIR] = draw_air,
    [HC_VIEW_SHEET] = draw_sheet,
  };
  Target target = { .path = path };
  gboolean written;

  if (!find_kind (path, &target.kind, error))
    return FALSE;
  written = draws[view] (sheet, &target, error) && close_target (&target, error);
  clear_target (&target);
  return written;
}

/**
 * hc_draw_floor_to_file:
 * @check: a plan judged
 * @path: the file; its ending says what it becomes
 * @error: return location for an error of %HC_ERROR
 *
 * Draws a plan on a framed sheet of A4 or, for who measures in feet, Letter.
 *
 * Returns: whether the file was written
 */
gboolean
hc_draw_floor_to_file (const HcCheck *check, const char *path, GError **error)
{
  HcSheet sheet = { .check = check };

  if (hc_plan_get_site (hc_check_get_plan (check))->units == HC_UNITS_FEET)
    sheet.paper = HC_PAPER_LETTER;
  return hc_draw_to_file (&sheet, HC_VIEW_SHEET, path, error);
}
