/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Says what is unsound about a plan. */
#include "config.h"

#include "plan/fault-private.h"

#include <glib/gi18n-lib.h>

/**
 * hc_fault_clear: (skip)
 * @self: a fault
 *
 * Frees what it holds and makes it say that nothing is wrong.
 */
void
hc_fault_clear (HcFault *self)
{
  g_free (self->path);
  g_free (self->id);
  g_free (self->other);
  *self = (HcFault){ HC_FAULT_NONE };
}

/**
 * hc_fault_set: (skip)
 * @self: (out caller-allocates): a fault to fill
 * @kind: what is wrong
 * @member: (nullable): the name of the member at fault
 * @id: (nullable): the part at fault, or the id that names nothing
 * @other: (nullable): the other part concerned
 *
 * Returns: %TRUE, for the caller to hand on
 */
gboolean
hc_fault_set (HcFault *self,
              HcFaultKind kind,
              const char *member,
              const char *id,
              const char *other)
{
  *self = (HcFault){ kind, g_strdup (member), g_strdup (id), g_strdup (other), NULL };
  return TRUE;
}

static gboolean
prepend (HcFault *self,
         char *step)
{
  g_autofree char *below = g_steal_pointer (&self->path);

  if (below == NULL)
    self->path = step;
  else
    {
      self->path = g_strconcat (step, below[0] == '[' ? "" : ".", below, NULL);
      g_free (step);
    }
  return TRUE;
}

gboolean
hc_fault_inside (HcFault *self,
                 const char *member)
{
  return prepend (self, g_strdup (member));
}

gboolean
hc_fault_inside_item (HcFault *self,
                      const char *member,
                      guint index)
{
  return prepend (self, g_strdup_printf ("%s[%u]", member, index));
}

static char *
describe_number (const HcMember *member)
{
  if (member->kind == HC_MEMBER_COUNT)
    return g_strdup_printf (_("a whole number from %.10g to %.10g stands here."), member->least,
                            member->most);
  return g_strdup_printf (_("a number from %.10g to %.10g stands here."), member->least,
                          member->most);
}

static char *
describe_words (const HcMember *member)
{
  g_autofree char *words = g_strjoinv (", ", (char **) member->words);

  return g_strdup_printf (_("one of these words stands here: %s."), words);
}

static const char *
sentence_for (HcFaultKind kind)
{
  switch (kind)
    {
    case HC_FAULT_DATE:
      return _("a day of the calendar stands here, such as 2026-04-30.");
    case HC_FAULT_TEXT:
      return _("this text is not UTF-8; type it again.");
    case HC_FAULT_EMPTY:
      return _("this cannot be left empty.");
    case HC_FAULT_ID:
      return _("an id is a small letter, then small letters, digits, - or _, 64 at most.");
    case HC_FAULT_NO_LAYOUT:
      return _("a plan has at least one layout here.");
    case HC_FAULT_SHORT_WALL:
      return _("this wall starts and ends at one place; move one of its corners.");
    case HC_FAULT_TOO_MANY:
      return _("there are more of these than one pen or wall can have.");
    case HC_FAULT_NO_RING:
      return _("the walls of this pen do not close; name them in order all round it.");
    case HC_FAULT_CROSSING:
      return _("the outline of this pen crosses itself; move one of its corners.");
    case HC_FAULT_NO_FLOOR:
      return _("the walls of this pen lie on one line; move one of its corners.");
    case HC_FAULT_PAST_END:
      return _("this opening sticks out past the end of its wall; move it or make it narrower.");
    case HC_FAULT_BEFORE_HATCH:
      return _("these birds have not hatched by then; choose a later day.");
    case HC_FAULT_MORE_THAN_THERE:
      return _("more birds go than are left by then; put in fewer.");
    case HC_FAULT_LOW_ABOVE_HIGH:
      return _("the low end of a range is not above its high end; exchange the two.");
    case HC_FAULT_MORE_THAN_SET:
      return _("there are more of these than eggs were set; put in fewer.");
    default:
      return _("nothing is wrong here.");
    }
}

/**
 * hc_fault_describe: (skip)
 * @self: a fault
 *
 * Returns: (transfer full): a sentence on what is wrong and what is allowed,
 *   without the place
 */
char *
hc_fault_describe (const HcFault *self)
{
  switch (self->kind)
    {
    case HC_FAULT_NUMBER:
      return describe_number (self->member);
    case HC_FAULT_WORD:
      return describe_words (self->member);
    case HC_FAULT_ID_TWICE:
      return g_strdup_printf (_("the id “%s” is used twice; give one of the two another."),
                              self->id);
    case HC_FAULT_NO_SUCH:
      return g_strdup_printf (_("nothing of the right kind has the id “%s”; name a part that is there."),
                              self->id);
    case HC_FAULT_CROWDED_WALL:
      return g_strdup_printf (_("the wall “%s” has two pens beside it already."), self->id);
    case HC_FAULT_OVERLAP:
      return g_strdup_printf (_("this opening lies over the opening “%s”; move one of them."),
                              self->other);
    default:
      return g_strdup (sentence_for (self->kind));
    }
}
