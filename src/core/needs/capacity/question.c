/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * This mix, more of one kind, or one kind alone. */
#include "config.h"

#include "needs/capacity/question.h"

/* The home of the most birds, else the first pen with a roof. */
static const char *
find_pen (HcLayout *layout, HcFlock *flock)
{
  HcParts *pens = hc_layout_get (layout)->pens;
  const HcFlockRow *largest = NULL;

  for (guint i = 0; i < hc_flock_get_n_rows (flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (flock, i);

      if (hc_layout_get_pen (layout, row->pen) != NULL
          && (largest == NULL || row->count > largest->count))
        largest = row;
    }
  if (largest != NULL)
    return largest->pen;
  for (guint i = 0; i < pens->len; i++)
    if (hc_pen_get (pens->pdata[i])->kind == HC_PEN_INDOOR)
      return hc_pen_get_id (pens->pdata[i]);
  return "";
}

void
hc_question_init (HcQuestion *self, HcLadderQuestion question, HcBook *book, HcLayout *layout,
                  HcFlock *flock, const HcKind *kind)
{
  *self = (HcQuestion) { question, hc_book_ref (book), hc_flock_ref (flock), NULL, kind,
                         find_pen (layout, flock), 0 };
  if (question == HC_LADDER_THIS_MIX)
    self->there = hc_flock_get_total (flock);
  else
    self->there = hc_flock_get_hens (flock, kind);
  self->base = hc_question_get_flock (self, MAX (self->there, 1));
}

void
hc_question_clear (HcQuestion *self)
{
  hc_book_unref (self->book);
  hc_flock_unref (self->asked);
  hc_flock_unref (self->base);
}

HcFlock *
hc_question_get_flock (const HcQuestion *self, gint64 birds)
{
  switch (self->question)
    {
    case HC_LADDER_THIS_MIX:
      return hc_flock_scaled (self->asked, birds);
    case HC_LADDER_MORE_OF:
      return hc_flock_with_hens (self->asked, self->kind, birds, self->pen);
    case HC_LADDER_ONE_KIND:
      return hc_flock_of_kind (self->book, self->kind, birds, self->pen);
    default:
      g_return_val_if_reached (NULL);
    }
}
