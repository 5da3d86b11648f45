/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Beginning a plan: from a ready house, from three questions, empty, or from a file. */
#pragma once

#include "document/document.h"

#include <adwaita.h>

G_BEGIN_DECLS

#define HC_TYPE_START_PAGE (hc_start_page_get_type ())
/**
 * HcStartPage:
 *
 * Signals: `begin` with an #HcDocument, `open` with a #GFile. The page loads
 * what it offers when it is shown first.
 */
G_DECLARE_FINAL_TYPE (HcStartPage, hc_start_page, HC, START_PAGE, AdwBin)

G_END_DECLS
