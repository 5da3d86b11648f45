/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading the members of one JSON object. */
#include "config.h"

#include "book/record.h"

#include <glib/gi18n-lib.h>

#include <math.h>

struct _HcRecord
{
  HcReading *reading;
  JsonObject *object;
  char *place;
  GPtrArray *asked;
};

/* @object is NULL after a fault: such a record has no members. */
HcRecord *
hc_record_new (HcReading *reading, JsonObject *object, const char *place)
{
  HcRecord *self = g_new0 (HcRecord, 1);

  self->reading = reading;
  self->object = object;
  self->place = g_strdup (place);
  self->asked = g_ptr_array_new ();
  return self;
}

static void
find_fault_with_strangers (HcRecord *self)
{
  g_autoptr (GList) members = json_object_get_members (self->object);

  for (GList *link = members; link != NULL; link = link->next)
    if (!g_ptr_array_find_with_equal_func (self->asked, link->data, g_str_equal, NULL))
      hc_record_fault (self, link->data, _("nothing is called this here; check the spelling."));
}

void
hc_record_close (HcRecord *self)
{
  if (self->object != NULL && !hc_reading_is_faulty (self->reading))
    find_fault_with_strangers (self);
  g_ptr_array_unref (self->asked);
  g_free (self->place);
  g_free (self);
}

HcReading *
hc_record_get_reading (HcRecord *self)
{
  return self->reading;
}

static char *
place_of (HcRecord *self, const char *member)
{
  if (self->place == NULL)
    return g_strdup (member);
  if (member == NULL)
    return g_strdup (self->place);
  return g_strdup_printf ("%s.%s", self->place, member);
}

/* @member is the member at fault, or NULL for the object as a whole. */
void
hc_record_fault (HcRecord *self, const char *member, const char *format, ...)
{
  g_autofree char *place = place_of (self, member);
  g_autofree char *what = NULL;
  va_list arguments;

  va_start (arguments, format);
  what = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  hc_reading_fault (self->reading, place, "%s", what);
}

static JsonNode *
member_of (HcRecord *self, const char *member)
{
  g_ptr_array_add (self->asked, (gpointer) member);
  if (self->object == NULL || hc_reading_is_faulty (self->reading))
    return NULL;
  return json_object_get_member (self->object, member);
}

static JsonNode *
needed_member_of (HcRecord *self, const char *member)
{
  JsonNode *node = member_of (self, member);

  if (node == NULL)
    hc_record_fault (self, member, _("this is missing."));
  return node;
}

gboolean
hc_record_has (HcRecord *self, const char *member)
{
  return member_of (self, member) != NULL;
}

static const char *
text_of (HcRecord *self, const char *member, JsonNode *node)
{
  const char *text = NULL;

  if (node == NULL)
    return NULL;
  if (JSON_NODE_HOLDS_VALUE (node) && json_node_get_value_type (node) == G_TYPE_STRING)
    text = json_node_get_string (node);
  if (text == NULL || *text == '\0')
    {
      hc_record_fault (self, member, _("this should be a text in quotes."));
      return NULL;
    }
  return hc_keep_text (hc_reading_get_keep (self->reading), text);
}

/* Never NULL: an empty text after a fault. */
const char *
hc_record_text (HcRecord *self, const char *member)
{
  const char *text = text_of (self, member, needed_member_of (self, member));

  return text != NULL ? text : "";
}

const char *
hc_record_maybe_text (HcRecord *self, const char *member)
{
  return text_of (self, member, member_of (self, member));
}

static gboolean
is_id (const char *text)
{
  for (const char *at = text; *at != '\0'; at++)
    if (!g_ascii_islower (*at) && !g_ascii_isdigit (*at) && strchr ("-_.", *at) == NULL)
      return FALSE;
  return TRUE;
}

/* Interned, so that ids outlive the book and compare by pointer. */
const char *
hc_record_id (HcRecord *self, const char *member)
{
  const char *id = hc_record_text (self, member);

  if (!is_id (id))
    hc_record_fault (self, member,
                     _("use only small letters a to z, digits, and the signs - _ . here."));
  return g_intern_string (id);
}

static double
number_of (HcRecord *self, const char *member, JsonNode *node, double least, double most)
{
  double number = NAN;

  if (node == NULL)
    return least;
  if (JSON_NODE_HOLDS_VALUE (node)
      && (json_node_get_value_type (node) == G_TYPE_INT64
          || json_node_get_value_type (node) == G_TYPE_DOUBLE))
    number = json_node_get_double (node);
  if (number >= least && number <= most)
    return number;
  hc_record_fault (self, member, _("this should be a number from %.6g to %.6g."), least, most);
  return least;
}

double
hc_record_number (HcRecord *self, const char *member, double least, double most)
{
  return number_of (self, member, needed_member_of (self, member), least, most);
}

double
hc_record_maybe_number (HcRecord *self, const char *member, double least, double most,
                        double otherwise)
{
  JsonNode *node = member_of (self, member);

  return node != NULL ? number_of (self, member, node, least, most) : otherwise;
}

int
hc_record_whole (HcRecord *self, const char *member, int least, int most)
{
  double number = hc_record_number (self, member, least, most);

  if (number != floor (number))
    hc_record_fault (self, member, _("this should be a whole number."));
  return (int) number;
}

int
hc_record_maybe_whole (HcRecord *self, const char *member, int least, int most, int otherwise)
{
  return hc_record_has (self, member) ? hc_record_whole (self, member, least, most) : otherwise;
}

/* FALSE when it is not there. */
gboolean
hc_record_flag (HcRecord *self, const char *member)
{
  JsonNode *node = member_of (self, member);

  if (node == NULL)
    return FALSE;
  if (JSON_NODE_HOLDS_VALUE (node) && json_node_get_value_type (node) == G_TYPE_BOOLEAN)
    return json_node_get_boolean (node);
  hc_record_fault (self, member, _("this should be true or false."));
  return FALSE;
}

static int
find_word (HcRecord *self, const char *member, const char *const *words, const char *word)
{
  g_autofree char *allowed = NULL;

  for (int i = 0; words[i] != NULL; i++)
    if (g_str_equal (words[i], word))
      return i;
  allowed = g_strjoinv (", ", (char **) words);
  hc_record_fault (self, member, _("“%s” is not known here; it should be one of: %s."), word,
                   allowed);
  return 0;
}

int
hc_record_choice (HcRecord *self, const char *member, const char *const *words)
{
  return find_word (self, member, words, hc_record_text (self, member));
}

/* One bit for each word that is listed; 0 when the member is not there. */
guint
hc_record_choices (HcRecord *self, const char *member, const char *const *words)
{
  guint bits = 0;

  for (guint i = 0; i < hc_record_count (self, member); i++)
    bits |= 1u << find_word (self, member, words, hc_record_text_at (self, member, i));
  return bits;
}

static JsonArray *
array_of (HcRecord *self, const char *member)
{
  JsonNode *node = member_of (self, member);

  if (node == NULL || JSON_NODE_HOLDS_ARRAY (node))
    return node != NULL ? json_node_get_array (node) : NULL;
  hc_record_fault (self, member, _("this should be a list in [ ]."));
  return NULL;
}

/* How many things are listed; 0 when the member is not there. */
guint
hc_record_count (HcRecord *self, const char *member)
{
  JsonArray *array = array_of (self, member);

  return array != NULL ? json_array_get_length (array) : 0;
}

const char *
hc_record_text_at (HcRecord *self, const char *member, guint index)
{
  JsonArray *array = array_of (self, member);
  const char *text = NULL;

  if (array != NULL)
    text = text_of (self, member, json_array_get_element (array, index));
  return text != NULL ? text : "";
}

static gboolean
is_whole (JsonNode *node, int least, int most)
{
  return node != NULL && JSON_NODE_HOLDS_VALUE (node)
         && json_node_get_value_type (node) == G_TYPE_INT64
         && json_node_get_int (node) >= least && json_node_get_int (node) <= most;
}

int
hc_record_whole_at (HcRecord *self, const char *member, guint index, int least, int most)
{
  JsonArray *array = array_of (self, member);
  JsonNode *node = array != NULL ? json_array_get_element (array, index) : NULL;

  if (is_whole (node, least, most))
    return (int) json_node_get_int (node);
  hc_record_fault (self, member, _("whole numbers from %d to %d stand here."), least, most);
  return least;
}

static HcRecord *
open_node (HcRecord *self, JsonNode *node, char *place)
{
  g_autofree char *owned = place;

  if (node != NULL && !JSON_NODE_HOLDS_OBJECT (node))
    {
      hc_reading_fault (self->reading, place, _("this should be an object in { }."));
      node = NULL;
    }
  return hc_record_new (self->reading, node != NULL ? json_node_get_object (node) : NULL, place);
}

/* The caller closes the record. */
HcRecord *
hc_record_open_at (HcRecord *self, const char *member, guint index)
{
  JsonArray *array = array_of (self, member);
  g_autofree char *list = place_of (self, member);

  return open_node (self, array != NULL ? json_array_get_element (array, index) : NULL,
                    g_strdup_printf ("%s[%u]", list, index));
}

HcRecord *
hc_record_open (HcRecord *self, const char *member)
{
  return open_node (self, needed_member_of (self, member), place_of (self, member));
}

/* A kept table of what @read made of each object listed. */
gpointer
hc_record_table (HcRecord *self, const char *member, gsize size, HcReadItem read,
                 gpointer user_data, guint *n_items)
{
  guint n = hc_record_count (self, member);
  GArray *table = g_array_sized_new (FALSE, TRUE, (guint) size, n);

  g_array_set_size (table, n);
  for (guint i = 0; i < n; i++)
    {
      g_autoptr (HcRecord) record = hc_record_open_at (self, member, i);

      read (record, table->data + i * size, user_data);
    }
  *n_items = n;
  return hc_keep_table (hc_reading_get_keep (self->reading), table);
}
