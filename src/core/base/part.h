/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What every part of a plan has in common: an id, members a newer file may
 * hold, and a life shared between plans and threads. */
#pragma once

#include <glib-object.h>

G_BEGIN_DECLS

typedef struct _HcPart HcPart;
typedef struct _HcPartClass HcPartClass;

/* Private to core: the first member of every part. Parts never change once
 * they have been handed out, so references may cross threads. */
struct _HcPart
{
  const HcPartClass *klass;
  gatomicrefcount refs;
  char *id;
  char *extra;
};

struct _HcPartClass
{
  const char *name;
  gsize size;
  void (*duplicate) (gconstpointer from, gpointer to);
  void (*clear) (gpointer self);
  gboolean (*equal) (gconstpointer a, gconstpointer b);
};

gpointer hc_part_new (const HcPartClass *klass, const char *id) G_GNUC_WARN_UNUSED_RESULT;
gpointer hc_part_copy (gconstpointer part) G_GNUC_WARN_UNUSED_RESULT;
gpointer hc_part_ref (gpointer part);
void hc_part_unref (gpointer part);
gboolean hc_part_equal (gconstpointer a, gconstpointer b);
const char *hc_part_get_id (gconstpointer part);
const char *hc_part_get_extra (gconstpointer part);
gpointer hc_part_with_extra (gpointer part, const char *extra) G_GNUC_WARN_UNUSED_RESULT;
gpointer hc_part_with_id (gpointer part, const char *id) G_GNUC_WARN_UNUSED_RESULT;

/* Lists of parts: immutable once handed out, shared by reference. */
typedef GPtrArray HcParts;

HcParts *hc_parts_new (void) G_GNUC_WARN_UNUSED_RESULT;
gpointer hc_parts_find (HcParts *parts, const char *id);
gboolean hc_parts_find_index (HcParts *parts, const char *id, guint *index);
HcParts *hc_parts_with (HcParts *parts, gpointer part) G_GNUC_WARN_UNUSED_RESULT;
HcParts *hc_parts_with_at (HcParts *parts, guint index, gpointer part) G_GNUC_WARN_UNUSED_RESULT;
HcParts *hc_parts_without (HcParts *parts, const char *id) G_GNUC_WARN_UNUSED_RESULT;
gboolean hc_parts_equal (HcParts *a, HcParts *b);

/* Declares the type, its reference functions and its id of a part. */
#define HC_DECLARE_PART(Type, prefix)                                         \
  typedef struct _##Type Type;                                                \
  GType prefix##_get_type (void);                                             \
  static inline G_GNUC_UNUSED Type *prefix##_ref (Type *self)                 \
  { return (Type *) hc_part_ref (self); }                                     \
  static inline G_GNUC_UNUSED void prefix##_unref (Type *self)                \
  { hc_part_unref (self); }                                                   \
  static inline G_GNUC_UNUSED const char *prefix##_get_id (const Type *self)  \
  { return hc_part_get_id (self); }                                           \
  static inline G_GNUC_UNUSED gboolean prefix##_equal (const Type *a, const Type *b) \
  { return hc_part_equal (a, b); }                                            \
  G_DEFINE_AUTOPTR_CLEANUP_FUNC (Type, prefix##_unref)

#define HC_DEFINE_PART(Type, prefix) \
  G_DEFINE_BOXED_TYPE (Type, prefix, hc_part_ref, hc_part_unref)

G_END_DECLS
