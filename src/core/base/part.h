/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What every part of a plan has in common: an id, a table of its members, the
 * members a newer file may hold, and a life shared by plans and threads. */
#pragma once

#include <glib-object.h>

G_BEGIN_DECLS

typedef struct _HcPart HcPart;
typedef struct _HcPartClass HcPartClass;
typedef struct _HcMember HcMember;

/* Lists of parts: immutable once handed out, shared by reference. The scanner
 * takes no name for a list. */
#ifdef __GI_SCANNER__
#define HcParts GPtrArray
#else
typedef GPtrArray HcParts;
#endif

/**
 * HcMemberKind:
 * @HC_MEMBER_LENGTH: `double`, millimetres, kept to 0.001
 * @HC_MEMBER_FIGURE: `double`, kept to 0.000001
 * @HC_MEMBER_NUMBER: `double`, kept to 0.001
 * @HC_MEMBER_COUNT: `int`
 * @HC_MEMBER_FLAG: `gboolean`
 * @HC_MEMBER_DATE: `guint32`, Julian day as in #GDate, 0 for none
 * @HC_MEMBER_WORD: `int`, an index into a table of words
 * @HC_MEMBER_TEXT: `char *`
 * @HC_MEMBER_IDS: `char **`
 * @HC_MEMBER_PARTS: `HcParts *`, parts of one class
 * @HC_MEMBER_PART: `HcPart *`, one part without an id of its own
 */
typedef enum
{
  HC_MEMBER_LENGTH,
  HC_MEMBER_FIGURE,
  HC_MEMBER_NUMBER,
  HC_MEMBER_COUNT,
  HC_MEMBER_FLAG,
  HC_MEMBER_DATE,
  HC_MEMBER_WORD,
  HC_MEMBER_TEXT,
  HC_MEMBER_IDS,
  HC_MEMBER_PARTS,
  HC_MEMBER_PART,
} HcMemberKind;

/* Private to core: one row of a part's table. @least and @most bound numbers
 * (and counts); @normal is what a missing member means. */
struct _HcMember
{
  const char *name;
  HcMemberKind kind;
  gsize offset;
  double least, most, normal;
  gboolean required;
  const char *const *words;
  const HcPartClass *of;
};

struct _HcPartClass
{
  const char *name;
  gsize values_size;
  gboolean has_id;
  const HcMember *members;
  guint n_members;
};

/* Private to core: the head of every part; the values follow it. @given marks
 * the members that stood in the file even where they are the normal ones. */
struct _HcPart
{
  const HcPartClass *klass;
  gatomicrefcount refs;
  char *id;
  char *extra;
  guint64 given;
};

gpointer hc_part_new (const HcPartClass *klass, const char *id,
                      gconstpointer values) G_GNUC_WARN_UNUSED_RESULT;
gpointer hc_part_read (const HcPartClass *klass, const char *id, gconstpointer values,
                       guint64 given, const char *extra) G_GNUC_WARN_UNUSED_RESULT;
gpointer hc_part_ref (gpointer part);
void hc_part_unref (gpointer part);
gboolean hc_part_equal (gconstpointer a, gconstpointer b);
const char *hc_part_get_id (gconstpointer part);
const char *hc_part_get_extra (gconstpointer part);
gconstpointer hc_part_get_values (gconstpointer part);
gpointer hc_part_with (gpointer part, gconstpointer values) G_GNUC_WARN_UNUSED_RESULT;
gpointer hc_part_with_id (gpointer part, const char *id) G_GNUC_WARN_UNUSED_RESULT;
void hc_part_class_fill_normal (const HcPartClass *klass, gpointer values);

HcParts *hc_parts_new (void) G_GNUC_WARN_UNUSED_RESULT;
gpointer hc_parts_find (HcParts *parts, const char *id);
gboolean hc_parts_find_index (HcParts *parts, const char *id, guint *index);
HcParts *hc_parts_with (HcParts *parts, gpointer part) G_GNUC_WARN_UNUSED_RESULT;
HcParts *hc_parts_with_at (HcParts *parts, guint index, gpointer part) G_GNUC_WARN_UNUSED_RESULT;
HcParts *hc_parts_without (HcParts *parts, const char *id) G_GNUC_WARN_UNUSED_RESULT;
gboolean hc_parts_equal (HcParts *a, HcParts *b);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcParts, g_ptr_array_unref)

/* Declares a part whose members are the struct TypeValues: its type, its
 * class, and the functions every part has. `prefix_get()` lends the values;
 * `prefix_with()` returns a part with other values, or the same part when
 * nothing changed. Strings and lists in the values handed in are copied. */
#define HC_DECLARE_PART(Type, prefix)                                                 \
  typedef struct _##Type Type;                                                        \
  extern const HcPartClass prefix##_class;                                            \
  GType prefix##_get_type (void);                                                     \
  Type *prefix##_new (const char *id, const Type##Values *values)                     \
      G_GNUC_WARN_UNUSED_RESULT;                                                      \
  const Type##Values *prefix##_get (const Type *self);                                \
  Type *prefix##_with (Type *self, const Type##Values *values)                        \
      G_GNUC_WARN_UNUSED_RESULT;                                                      \
  void prefix##_values_init (Type##Values *values);                                   \
  Type *prefix##_ref (Type *self);                                                    \
  void prefix##_unref (Type *self);                                                   \
  const char *prefix##_get_id (const Type *self);                                     \
  gboolean prefix##_equal (const Type *a, const Type *b);                             \
  G_DEFINE_AUTOPTR_CLEANUP_FUNC (Type, prefix##_unref)

#define HC_DEFINE_PART(Type, prefix, with_id, table)                                  \
  const HcPartClass prefix##_class                                                    \
      = { #Type, sizeof (Type##Values), with_id, table, G_N_ELEMENTS (table) };       \
  G_DEFINE_BOXED_TYPE (Type, prefix, hc_part_ref, hc_part_unref)                      \
  Type *prefix##_new (const char *id, const Type##Values *values)                     \
  { return (Type *) hc_part_new (&prefix##_class, id, values); }                      \
  const Type##Values *prefix##_get (const Type *self)                                 \
  { return (const Type##Values *) hc_part_get_values (self); }                        \
  Type *prefix##_with (Type *self, const Type##Values *values)                        \
  { return (Type *) hc_part_with (self, values); }                                    \
  void prefix##_values_init (Type##Values *values)                                    \
  { hc_part_class_fill_normal (&prefix##_class, values); }                            \
  Type *prefix##_ref (Type *self) { return (Type *) hc_part_ref (self); }             \
  void prefix##_unref (Type *self) { hc_part_unref (self); }                          \
  const char *prefix##_get_id (const Type *self) { return hc_part_get_id (self); }    \
  gboolean prefix##_equal (const Type *a, const Type *b)                              \
  { return hc_part_equal (a, b); }

/* Rows of a member table. */
#define HC_LENGTH(Values, field, json, least, most, normal) \
  { json, HC_MEMBER_LENGTH, G_STRUCT_OFFSET (Values, field), least, most, normal, FALSE, NULL, NULL }
#define HC_NUMBER(Values, field, json, least, most, normal) \
  { json, HC_MEMBER_NUMBER, G_STRUCT_OFFSET (Values, field), least, most, normal, FALSE, NULL, NULL }
#define HC_FIGURE(Values, field, json, least, most, normal) \
  { json, HC_MEMBER_FIGURE, G_STRUCT_OFFSET (Values, field), least, most, normal, FALSE, NULL, NULL }
#define HC_COUNT(Values, field, json, least, most, normal) \
  { json, HC_MEMBER_COUNT, G_STRUCT_OFFSET (Values, field), least, most, normal, FALSE, NULL, NULL }
#define HC_FLAG(Values, field, json, normal) \
  { json, HC_MEMBER_FLAG, G_STRUCT_OFFSET (Values, field), 0, 1, normal, FALSE, NULL, NULL }
#define HC_DATE(Values, field, json) \
  { json, HC_MEMBER_DATE, G_STRUCT_OFFSET (Values, field), 0, 0, 0, FALSE, NULL, NULL }
#define HC_WORD(Values, field, json, table, normal) \
  { json, HC_MEMBER_WORD, G_STRUCT_OFFSET (Values, field), 0, 0, normal, FALSE, table, NULL }
#define HC_TEXT(Values, field, json) \
  { json, HC_MEMBER_TEXT, G_STRUCT_OFFSET (Values, field), 0, 0, 0, FALSE, NULL, NULL }
#define HC_TEXT_REQUIRED(Values, field, json) \
  { json, HC_MEMBER_TEXT, G_STRUCT_OFFSET (Values, field), 0, 0, 0, TRUE, NULL, NULL }
#define HC_WORD_REQUIRED(Values, field, json, table) \
  { json, HC_MEMBER_WORD, G_STRUCT_OFFSET (Values, field), 0, 0, 0, TRUE, table, NULL }
#define HC_LENGTH_REQUIRED(Values, field, json, least, most) \
  { json, HC_MEMBER_LENGTH, G_STRUCT_OFFSET (Values, field), least, most, 0, TRUE, NULL, NULL }
#define HC_IDS(Values, field, json) \
  { json, HC_MEMBER_IDS, G_STRUCT_OFFSET (Values, field), 0, 0, 0, FALSE, NULL, NULL }
#define HC_PARTS(Values, field, json, klass) \
  { json, HC_MEMBER_PARTS, G_STRUCT_OFFSET (Values, field), 0, 0, 0, FALSE, NULL, klass }
#define HC_PART(Values, field, json, klass) \
  { json, HC_MEMBER_PART, G_STRUCT_OFFSET (Values, field), 0, 0, 0, FALSE, NULL, klass }

G_END_DECLS
