/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Seats birds on bars: at once where that seats all, by search where not. */
#include "config.h"

#include "needs/allot/packing.h"

#include "base/whole.h"

#include <string.h>

static gboolean
sit_alike (const HcPacking *self, guint a, guint b)
{
  if (self->seats_mm[a] != self->seats_mm[b])
    return FALSE;
  for (guint i = 0; i < self->n_stretches; i++)
    if ((self->stretches[i].suits >> a & 1) != (self->stretches[i].suits >> b & 1))
      return FALSE;
  return TRUE;
}

static double
length_for (const HcPacking *self, const HcPackClass *klass)
{
  double length_mm = 0;

  for (guint i = 0; i < self->n_stretches; i++)
    if (hc_pack_class_suits (klass, &self->stretches[i]))
      length_mm += self->stretches[i].length_mm;
  return length_mm;
}

/* Birds that find least bar first; of those, the widest. */
static int
compare_classes (gconstpointer a, gconstpointer b, gpointer data)
{
  const HcPackClass *one = a;
  const HcPackClass *other = b;
  double difference = length_for (data, one) - length_for (data, other);

  if (difference == 0)
    difference = other->width_mm - one->width_mm;
  return difference < 0 ? -1 : difference > 0;
}

static GArray *
list_classes (const HcPacking *self)
{
  GArray *classes = g_array_new (FALSE, FALSE, sizeof (HcPackClass));

  for (guint body = 0; body < self->n_bodies; body++)
    {
      HcPackClass *klass = NULL;

      if (self->counts[body] == 0)
        continue;
      for (guint i = 0; i < classes->len && klass == NULL; i++)
        if (sit_alike (self, body,
                       g_bit_nth_lsf (g_array_index (classes, HcPackClass, i).bodies, -1)))
          klass = &g_array_index (classes, HcPackClass, i);
      if (klass == NULL)
        {
          g_array_set_size (classes, classes->len + 1);
          klass = &g_array_index (classes, HcPackClass, classes->len - 1);
          *klass = (HcPackClass) { self->seats_mm[body], 0, 0 };
        }
      klass->count += self->counts[body];
      klass->bodies |= (HcBodies) 1 << body;
    }
  g_array_sort_with_data (classes, compare_classes, (gpointer) self);
  return classes;
}

gboolean
hc_pack_class_suits (const HcPackClass *klass, const HcPackStretch *stretch)
{
  return (stretch->suits & klass->bodies) == klass->bodies;
}

/* Each class in turn takes what it needs of every stretch it can use. */
static gint64 *
seat_in_turn (const HcPacking *self, GArray *classes, gboolean *all)
{
  gint64 *seats = g_new0 (gint64, classes->len * self->n_stretches + 1);
  g_autofree double *room = g_new0 (double, self->n_stretches + 1);

  for (guint i = 0; i < self->n_stretches; i++)
    room[i] = self->stretches[i].length_mm;
  *all = TRUE;
  for (guint c = 0; c < classes->len; c++)
    {
      const HcPackClass *klass = &g_array_index (classes, HcPackClass, c);
      gint64 left = klass->count;

      for (guint i = 0; i < self->n_stretches && left > 0; i++)
        if (hc_pack_class_suits (klass, &self->stretches[i]))
          {
            gint64 here = MIN (left, hc_whole_fit (room[i], klass->width_mm));

            seats[c * self->n_stretches + i] = here;
            room[i] = MAX (0, room[i] - (double) here * klass->width_mm);
            left -= here;
          }
      *all = *all && left == 0;
    }
  return seats;
}

/* Seats of a class become seats of its bodies, in their order. */
static gint64 *
seats_by_body (const HcPacking *self, GArray *classes, const gint64 *seats)
{
  gint64 *by_body = g_new0 (gint64, self->n_bodies * self->n_stretches + 1);

  for (guint c = 0; c < classes->len; c++)
    {
      HcBodies bodies = g_array_index (classes, HcPackClass, c).bodies;
      guint body = g_bit_nth_lsf (bodies, -1);
      gint64 left = self->counts[body];

      for (guint i = 0; i < self->n_stretches; i++)
        for (gint64 here = seats[c * self->n_stretches + i]; here > 0;)
          {
            gint64 taken = MIN (here, left);

            by_body[body * self->n_stretches + i] += taken;
            here -= taken;
            left -= taken;
            if (left > 0 || here == 0)
              continue;
            body = g_bit_nth_lsf (bodies, (gint) body);
            left = self->counts[body];
          }
    }
  return by_body;
}

/* Birds of each body on each stretch (n_bodies rows of n_stretches). @exact
 * is unset where more might fit than the quick answer found. */
gint64 *
hc_packing_seat (const HcPacking *self, gboolean *exact)
{
  g_autoptr (GArray) classes = list_classes (self);
  gboolean all;
  g_autofree gint64 *seats = seat_in_turn (self, classes, &all);

  *exact = all || classes->len == 1;
  if (!*exact)
    {
      gint64 *found = hc_packing_search (self, (const HcPackClass *) classes->data, classes->len);

      *exact = found != NULL;
      if (found != NULL)
        {
          g_free (seats);
          seats = found;
        }
    }
  return seats_by_body (self, classes, seats);
}
