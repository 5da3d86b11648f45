/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the makers of offers share. */
#pragma once

#include "supply/offer.h"

G_BEGIN_DECLS

/* A maker adds the places of one kind in the context's room. */
typedef void (*HcOfferMaker) (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer);

void hc_offer_make_floor (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer);
void hc_offer_make_run (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer);
void hc_offer_make_roost (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer);
void hc_offer_make_nests (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer);
void hc_offer_make_edges (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer);
void hc_offer_make_nipples (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer);
void hc_offer_make_warmth (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer);
void hc_offer_make_way_out (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer);
void hc_offer_make_light (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer);
void hc_offer_make_vents (HcOfferKind kind, const HcOfferContext *context, HcOffer *offer);

void hc_offer_add_place (HcOffer *offer, const HcPlace *place);
void hc_place_init (HcPlace *place, const HcOfferContext *context, const char *id);
void hc_place_set_amount (HcPlace *place, double amount);
void hc_place_set_suits (HcPlace *place, HcBodies suits);

/* Bodies of the context's flock. */
typedef gboolean (*HcBodyFilter) (const HcBody *body);

HcBodies hc_bodies_all (const HcOfferContext *context);
HcBodies hc_bodies_which (const HcOfferContext *context, HcBodyFilter filter);
gboolean hc_bodies_have (HcBodies bodies, guint body);

/* Figures of the context's standard. */
const HcLimit *hc_figure_for (const HcOfferContext *context, const char *name,
                              const HcBody *body);
double hc_figure_get_bound (const HcOfferContext *context, const char *name, HcLevel level);
void hc_place_keep_within (HcPlace *place, const HcOfferContext *context, const char *name,
                           double measured);

G_END_DECLS
