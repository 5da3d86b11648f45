/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One way to mend what is wrong. */
#include "config.h"

#include "mend/remedy.h"

/**
 * hc_remedy_new: (skip)
 * @code: what is done
 *
 * Returns: (transfer full): a remedy that does nothing yet
 */
HcRemedy *
hc_remedy_new (const char *code)
{
  HcRemedy *self = g_new0 (HcRemedy, 1);

  self->code = code;
  self->ids = g_ptr_array_new_with_free_func (g_free);
  self->amounts = g_array_new (FALSE, FALSE, sizeof (double));
  self->changes = g_array_new (FALSE, FALSE, sizeof (HcNeedChange));
  self->steps = g_ptr_array_new_with_free_func ((GDestroyNotify) hc_remedy_free);
  return self;
}

void
hc_remedy_free (HcRemedy *self)
{
  g_ptr_array_unref (self->ids);
  g_array_unref (self->amounts);
  g_array_unref (self->changes);
  g_ptr_array_unref (self->steps);
  g_clear_pointer (&self->plan, hc_plan_unref);
  g_free (self);
}

/**
 * hc_remedy_add: (skip)
 * @self: a remedy
 * @id: id of a part it is done to
 * @amount: how much
 */
void
hc_remedy_add (HcRemedy *self, const char *id, double amount)
{
  g_ptr_array_add (self->ids, g_strdup (id));
  g_array_append_val (self->amounts, amount);
}

/**
 * hc_remedy_get_amount: (skip)
 * @self: a remedy
 * @part: which of its parts
 *
 * Returns: how much is done to it
 */
double
hc_remedy_get_amount (const HcRemedy *self, guint part)
{
  g_return_val_if_fail (part < self->amounts->len, 0);
  return g_array_index (self->amounts, double, part);
}
