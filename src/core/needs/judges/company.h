/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What can go wrong among birds of one day space. */
#pragma once

#include "needs/answer.h"
#include "needs/context.h"

G_BEGIN_DECLS

/* Private to needs/. */
void hc_company_tell_mates (const HcNeedContext *context, HcAnswer *answer);
void hc_company_tell_lonely (const HcNeedContext *context, HcAnswer *answer);
void hc_company_tell_ages (const HcNeedContext *context, HcAnswer *answer);
void hc_company_tell_new_birds (const HcNeedContext *context, HcAnswer *answer);
void hc_company_tell_kinds (const HcNeedContext *context, HcAnswer *answer);

G_END_DECLS
