/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Things to add become fittings of the size the catalogue starts them with. */
#include "config.h"

#include "book/book.h"
#include "book/make-fitting.h"
#include "plan/fitting-measure.h"

static void
every_type_makes_a_fitting_of_its_starting_size (void)
{
  g_autoptr (HcBook) book = hc_book_load_default (NULL);

  for (guint i = 0; i < hc_book_get_n_fitting_types (book); i++)
    {
      const HcFittingType *type = hc_book_get_fitting_type_at (book, i);
      g_autoptr (HcFitting) fitting
          = hc_fitting_type_make (type, NULL, "f1", (HcPoint){ 100, 200 });
      const HcFittingValues *values = hc_fitting_get (fitting);

      g_assert_cmpstr (hc_fitting_kind_get_word (values->kind), ==, type->kind);
      g_assert_cmpfloat (values->y_mm, ==, 200);
      for (guint m = 0; m < type->n_ranges; m++)
        {
          double amount = -1;

          g_assert_true (hc_fitting_get_measure (values, type->ranges[m].name, &amount));
          g_assert_cmpfloat (amount, ==, type->ranges[m].start);
        }
    }
}

static void
a_bought_device_keeps_its_makers_size (void)
{
  g_autoptr (HcBook) book = hc_book_load_default (NULL);

  for (guint i = 0; i < hc_book_get_n_fitting_types (book); i++)
    {
      const HcFittingType *type = hc_book_get_fitting_type_at (book, i);

      for (guint d = 0; d < type->n_devices; d++)
        {
          g_autoptr (HcFitting) fitting
              = hc_fitting_type_make (type, &type->devices[d], "f1", (HcPoint){ 0, 0 });

          g_assert_cmpfloat (hc_fitting_get (fitting)->width_mm, ==, type->devices[d].width_mm);
          g_assert_cmpstr (hc_fitting_get (fitting)->device, ==, type->devices[d].id);
        }
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/book/make-fitting/size", every_type_makes_a_fitting_of_its_starting_size);
  g_test_add_func ("/book/make-fitting/device", a_bought_device_keeps_its_makers_size);
  return g_test_run ();
}
