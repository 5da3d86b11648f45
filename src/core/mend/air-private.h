/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The edits that mend the air: each from a night to a changed plan. */
#pragma once

#include "climate/house-night.h"
#include "mend/remedy.h"

G_BEGIN_DECLS

/* Private to mend/. Each returns the plan with the remedy done, or %NULL where there is
 * nothing for it to do, and adds to @remedy what it was done to. */
HcPlan *hc_mend_set_vents (const HcHouseNight *night, HcRemedy *remedy);
HcPlan *hc_mend_add_vent (const HcHouseNight *night, HcRemedy *remedy);
HcPlan *hc_mend_take_water_out (const HcHouseNight *night, HcRemedy *remedy);
HcPlan *hc_mend_clear_droppings (const HcHouseNight *night, HcRemedy *remedy);
HcPlan *hc_mend_insulate_roof (const HcHouseNight *night, HcRemedy *remedy);

guint hc_mend_get_faults (const HcHouseNight *night, const char *pen);

G_END_DECLS
