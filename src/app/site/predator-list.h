/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The predators there are, ticked where they are about. */
#pragma once

#include "app/window/panel.h"

G_BEGIN_DECLS

#define HC_TYPE_PREDATOR_LIST (hc_predator_list_get_type ())
/**
 * HcPredatorList:
 *
 * Signal `entered` when the keeper has ticked one, or taken its tick off.
 */
G_DECLARE_FINAL_TYPE (HcPredatorList, hc_predator_list, HC, PREDATOR_LIST, GtkBox)

void hc_predator_list_show (HcPredatorList *self, HcBook *book, char **ids);
char **hc_predator_list_get_ids (HcPredatorList *self,
                                 char **before) G_GNUC_WARN_UNUSED_RESULT;

G_END_DECLS
