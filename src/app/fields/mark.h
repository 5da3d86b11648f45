/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The mark of a level, as it stands on the floor. */
#pragma once

#include "app/fields/picture.h"

G_BEGIN_DECLS

#define HC_TYPE_MARK (hc_mark_get_type ())
G_DECLARE_FINAL_TYPE (HcMark, hc_mark, HC, MARK, HcPicture)

void hc_mark_set_level (HcMark *self, HcLevel level);

G_END_DECLS
