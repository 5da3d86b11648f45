/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * JSON text with the place of every value in it. */
#pragma once

#include "base/json-guard.h"

G_BEGIN_DECLS

/**
 * HcJsonKind: (skip)
 *
 * What a value is. Names of members are %HC_JSON_TEXT.
 */
typedef enum
{
  HC_JSON_NULL,
  HC_JSON_FALSE,
  HC_JSON_TRUE,
  HC_JSON_NUMBER,
  HC_JSON_TEXT,
  HC_JSON_LIST,
  HC_JSON_OBJECT,
} HcJsonKind;

/**
 * HcJsonValue: (skip)
 * @start: its first byte
 * @end: the byte after its last
 * @next: the index of the value that follows it and all inside it
 * @kind: a #HcJsonKind
 * @escaped: whether it is text with escapes
 * @left_out: set by readers: paths pass it over
 *
 * One value of a scanned text. What is inside a list or an object follows it;
 * in an object each value follows its name.
 */
typedef struct
{
  guint32 start;
  guint32 end;
  guint32 next;
  guint8 kind;
  guint8 escaped;
  guint8 left_out;
} HcJsonValue;

/**
 * HcJsonText: (skip)
 * @text: (array length=length): the text, which its owner keeps alive
 * @length: its length in bytes
 * @values: (array length=n_values): the values, the whole text's first
 * @n_values: how many, names counted
 *
 * A text that passed the guard. Nothing in it is copied, so numbers and
 * unknown members can be kept exactly as written.
 */
typedef struct
{
  const char *text;
  gsize length;
  HcJsonValue *values;
  guint n_values;
} HcJsonText;

HcJsonText *hc_json_text_scan (const char *text,
                               gsize length,
                               const HcJsonGuardLimits *limits,
                               GError **error) G_GNUC_WARN_UNUSED_RESULT;
void hc_json_text_free (HcJsonText *self);

gboolean hc_json_text_is (const HcJsonText *self,
                          guint value,
                          const char *word);
void hc_json_text_decode (const HcJsonText *self,
                          guint value,
                          GString *into);
double hc_json_text_number (const HcJsonText *self,
                            guint value);
guint hc_json_text_member (const HcJsonText *self,
                           guint object,
                           const char *name);
gboolean hc_json_text_find (const HcJsonText *self,
                            const char *path,
                            guint *value);
char *hc_json_text_path_of (const HcJsonText *self,
                            guint value);

G_DEFINE_AUTOPTR_CLEANUP_FUNC (HcJsonText, hc_json_text_free)

G_END_DECLS
