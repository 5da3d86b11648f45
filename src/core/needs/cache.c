/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reuse by identity: what was worked out for the same room stays good. */
#include "config.h"

#include "needs/cache.h"

#include "flock/own-standard.h"
#include "needs/lru.h"

#define MOST_KEPT 4096
#define MOST_HOUSES 4
#define MOST_STANDARDS 4
#define MOST_TABLES 16

/* Kept beside the offers. */
enum
{
  KIND_CLEARANCE = HC_N_OFFER_KINDS,
  KIND_WAY,
  KIND_CLIMB,
};

/* What an offer depends on. @measure is the coldest night, or how wide a way is. */
typedef struct
{
  HcRoom *room;
  HcStandard *standard;
  double measure;
  guint table;
  guint kind;
  HcCondition condition;
} Key;

typedef struct
{
  HcRules *rules;
  HcBook *book;
} Rules;

struct _HcCheckCache
{
  HcLru *kept;
  HcLru *houses;
  HcLru *standards;
  HcHouse *last_house;
  GQueue tables;
  guint n_tables;
  guint64 n_worked_out;
};

typedef struct
{
  guint id;
  GArray *bodies;
} Table;

static guint
hash_key (gconstpointer data)
{
  const Key *key = data;
  guint hash = g_direct_hash (key->room) ^ g_direct_hash (key->standard) * 31;

  return ((hash * 33 + key->table) * 33 + key->kind) * 33 + key->condition;
}

static gboolean
equal_keys (gconstpointer a, gconstpointer b)
{
  const Key *one = a;
  const Key *other = b;

  return one->room == other->room && one->standard == other->standard
         && one->table == other->table && one->kind == other->kind
         && one->condition == other->condition
         && one->measure == other->measure;
}

static Key *
copy_key (const Key *key)
{
  Key *copy = g_memdup2 (key, sizeof *key);

  hc_room_ref (copy->room);
  hc_standard_ref (copy->standard);
  return copy;
}

static void
free_key (gpointer data)
{
  Key *key = data;

  hc_room_unref (key->room);
  hc_standard_unref (key->standard);
  g_free (key);
}

static guint
hash_rules (gconstpointer data)
{
  return g_direct_hash (((const Rules *) data)->rules);
}

static gboolean
equal_rules (gconstpointer a, gconstpointer b)
{
  const Rules *one = a;
  const Rules *other = b;

  return one->rules == other->rules && one->book == other->book;
}

static void
free_rules (gpointer data)
{
  Rules *key = data;

  hc_rules_unref (key->rules);
  hc_book_unref (key->book);
  g_free (key);
}

static void
free_table (gpointer data)
{
  Table *table = data;

  g_array_unref (table->bodies);
  g_free (table);
}

/**
 * hc_check_cache_new: (skip)
 *
 * Returns: (transfer full): a cache that has seen no plan yet
 */
HcCheckCache *
hc_check_cache_new (void)
{
  HcCheckCache *cache = g_new0 (HcCheckCache, 1);

  cache->kept = hc_lru_new (MOST_KEPT, hash_key, equal_keys, free_key);
  cache->houses = hc_lru_new (MOST_HOUSES, g_direct_hash, g_direct_equal,
                              (GDestroyNotify) hc_layout_unref);
  cache->standards = hc_lru_new (MOST_STANDARDS, hash_rules, equal_rules, free_rules);
  return cache;
}

/**
 * hc_check_cache_free: (skip)
 * @cache: (transfer full): a cache
 *
 * Forgets everything; checks made with it stay good.
 */
void
hc_check_cache_free (HcCheckCache *cache)
{
  hc_lru_free (cache->kept);
  hc_lru_free (cache->houses);
  hc_lru_free (cache->standards);
  g_clear_pointer (&cache->last_house, hc_house_unref);
  g_queue_clear_full (&cache->tables, free_table);
  g_free (cache);
}

/* Rooms that did not change are taken over from the house looked at last. */
HcHouse *
hc_check_cache_get_house (HcCheckCache *cache, HcLayout *layout)
{
  HcHouse *house = hc_lru_find (cache->houses, layout);

  if (house == NULL)
    {
      house = hc_house_new (layout, cache->last_house);
      hc_lru_keep (cache->houses, hc_layout_ref (layout), house, (GDestroyNotify) hc_house_unref);
    }
  if (house != cache->last_house)
    {
      g_clear_pointer (&cache->last_house, hc_house_unref);
      cache->last_house = hc_house_ref (house);
    }
  return house;
}

HcStandard *
hc_check_cache_get_standard (HcCheckCache *cache, HcPlan *plan, HcBook *book)
{
  Rules key = { hc_plan_get (plan)->rules, book };
  HcStandard *standard = hc_lru_find (cache->standards, &key);

  if (standard == NULL)
    {
      Rules *kept = g_new (Rules, 1);

      standard = hc_plan_get_own_standard (plan, book);
      *kept = (Rules) { hc_rules_ref (key.rules), hc_book_ref (book) };
      hc_lru_keep (cache->standards, kept, standard, (GDestroyNotify) hc_standard_unref);
    }
  return standard;
}

static gboolean
same_bodies (GArray *bodies, HcFlock *flock)
{
  if (bodies->len != hc_flock_get_n_bodies (flock))
    return FALSE;
  for (guint i = 0; i < bodies->len; i++)
    if (!hc_body_equal (&g_array_index (bodies, HcBody, i), hc_flock_get_body (flock, i)))
      return FALSE;
  return TRUE;
}

static Table *
add_table (HcCheckCache *cache, HcFlock *flock)
{
  Table *table = g_new (Table, 1);

  table->id = cache->n_tables++;
  table->bodies = g_array_new (FALSE, FALSE, sizeof (HcBody));
  for (guint i = 0; i < hc_flock_get_n_bodies (flock); i++)
    g_array_append_vals (table->bodies, hc_flock_get_body (flock, i), 1);
  if (cache->tables.length == MOST_TABLES)
    free_table (g_queue_pop_tail (&cache->tables));
  return table;
}

/* A number that stands for the flock's table of bodies. */
guint
hc_check_cache_get_table (HcCheckCache *cache, HcFlock *flock)
{
  for (GList *at = cache->tables.head; at != NULL; at = at->next)
    if (same_bodies (((Table *) at->data)->bodies, flock))
      {
        g_queue_unlink (&cache->tables, at);
        g_queue_push_head_link (&cache->tables, at);
        return ((Table *) at->data)->id;
      }
  g_queue_push_head (&cache->tables, add_table (cache, flock));
  return ((Table *) cache->tables.head->data)->id;
}

HcOffer *
hc_check_cache_get_offer (HcCheckCache *cache, HcOfferKind kind, const HcOfferContext *context,
                          guint table)
{
  Key key = { context->room, context->standard, context->coldest_night_c, table, kind,
              context->condition };
  HcOffer *offer = hc_lru_find (cache->kept, &key);

  if (offer == NULL)
    {
      offer = hc_offer_new (kind, context);
      cache->n_worked_out++;
      hc_lru_keep (cache->kept, copy_key (&key), offer, (GDestroyNotify) hc_offer_unref);
    }
  return offer;
}

/* What is wrong with what stands in a room, whoever lives there. */
GPtrArray *
hc_check_cache_get_room_findings (HcCheckCache *cache, HcRoom *room, HcStandard *standard,
                                  GPtrArray *(*judge) (HcRoom *room, HcStandard *standard))
{
  Key key = { room, standard, 0, 0, KIND_CLEARANCE, HC_CONDITION_DAY };
  GPtrArray *findings = hc_lru_find (cache->kept, &key);

  if (findings == NULL)
    {
      findings = judge (room, standard);
      cache->n_worked_out++;
      hc_lru_keep (cache->kept, copy_key (&key), findings, (GDestroyNotify) g_ptr_array_unref);
    }
  return findings;
}

/* Where a walker can stand in a room; its heights are those of @standard. */
HcShape *
hc_check_cache_get_way (HcCheckCache *cache, HcRoom *room, HcStandard *standard,
                        const HcWalker *walker)
{
  Key key = { room, standard, walker->width_mm, 0, KIND_WAY, HC_CONDITION_DAY };
  HcShape *way = hc_lru_find (cache->kept, &key);

  if (way == NULL)
    {
      way = hc_way_new (room, walker);
      cache->n_worked_out++;
      hc_lru_keep (cache->kept, copy_key (&key), way, (GDestroyNotify) hc_shape_unref);
    }
  return way;
}

/* The ways up and down in a room, whoever lives there. */
const HcClimb *
hc_check_cache_get_climb (HcCheckCache *cache, HcRoom *room, HcStandard *standard)
{
  Key key = { room, standard, 0, 0, KIND_CLIMB, HC_CONDITION_DAY };
  HcClimb *climb = hc_lru_find (cache->kept, &key);

  if (climb == NULL)
    {
      climb = hc_climb_new (room, standard);
      cache->n_worked_out++;
      hc_lru_keep (cache->kept, copy_key (&key), climb, (GDestroyNotify) hc_climb_free);
    }
  return climb;
}

/* How often something had to be worked out: what tests count. */
guint64
hc_check_cache_get_n_worked_out (const HcCheckCache *cache)
{
  return cache->n_worked_out;
}
