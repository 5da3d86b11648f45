/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Judges each space with the same birds in it once. */
#include "config.h"

#include "needs/tally.h"

#include "flock/flock-private.h"
#include "needs/context.h"
#include "needs/serve/serving.h"

#include <string.h>

/* Past this many it starts afresh. */
#define MOST_SPACES 20000

struct _HcTallier
{
  HcCheckCache *cache;
  HcPlan *plan;
  HcBook *book;
  HcHouse *house;
  GHashTable *rooms;
  GHashTable *spaces;
};

/* One body in a space; the head of a key is a row too. */
typedef struct
{
  gint32 kind;
  gint32 week;
  gint32 traits;
  gint32 count;
} Key;

/* Where @condition is felt, and by which needs. */
typedef struct
{
  HcCondition condition;
  HcNeedScope scope;
  guint number;
  const HcSpace *space;
} Place;

/**
 * hc_tallier_new: (skip)
 * @cache: what earlier checks worked out; it must live as long
 * @book: the book
 *
 * Returns: (transfer full): someone to ask about flocks, once a plan is shown
 */
HcTallier *
hc_tallier_new (HcCheckCache *cache, HcBook *book)
{
  HcTallier *self = g_new0 (HcTallier, 1);

  self->cache = cache;
  self->book = hc_book_ref (book);
  self->rooms = g_hash_table_new (NULL, NULL);
  self->spaces = g_hash_table_new_full (g_bytes_hash, g_bytes_equal,
                                        (GDestroyNotify) g_bytes_unref, g_free);
  return self;
}

void
hc_tallier_free (HcTallier *self)
{
  g_hash_table_unref (self->spaces);
  g_hash_table_unref (self->rooms);
  g_clear_pointer (&self->house, hc_house_unref);
  g_clear_pointer (&self->plan, hc_plan_unref);
  hc_book_unref (self->book);
  g_free (self);
}

/**
 * hc_tallier_get_book: (skip)
 * @self: a tallier
 *
 * Returns: (transfer none): the book
 */
HcBook *
hc_tallier_get_book (const HcTallier *self)
{
  return self->book;
}

static gboolean
has_same_house (HcPlan *one, HcPlan *other)
{
  return hc_plan_get_layout (one) == hc_plan_get_layout (other)
         && hc_plan_get (one)->rules == hc_plan_get (other)->rules
         && hc_plan_get (one)->site == hc_plan_get (other)->site;
}

/* Pens of flocks are interned, so rooms are found by their pointers. */
static void
enter_house (HcTallier *self, HcHouse *house)
{
  g_clear_pointer (&self->house, hc_house_unref);
  self->house = hc_house_ref (house);
  g_hash_table_remove_all (self->spaces);
  g_hash_table_remove_all (self->rooms);
  for (guint i = 0; i < hc_house_get_n_rooms (house); i++)
    {
      HcPen *pen = hc_room_get_pen (hc_house_get_room (house, i));

      g_hash_table_insert (self->rooms, (gpointer) g_intern_string (hc_pen_get_id (pen)),
                           GUINT_TO_POINTER (i + 1));
    }
}

/**
 * hc_tallier_look_at: (skip)
 * @self: a tallier
 * @plan: the plan whose house the next flocks live in
 *
 * What it knows stays good when only birds and eggs have changed.
 */
void
hc_tallier_look_at (HcTallier *self, HcPlan *plan)
{
  HcPlan *before = self->plan;

  if (before == NULL || !has_same_house (before, plan)
      || g_hash_table_size (self->spaces) > MOST_SPACES)
    enter_house (self, hc_check_cache_get_house (self->cache, hc_plan_get_layout (plan)));
  self->plan = hc_plan_ref (plan);
  g_clear_pointer (&before, hc_plan_unref);
}

static gboolean
is_in (const HcSpace *space, guint room)
{
  for (guint i = 0; i < space->rooms->len; i++)
    if (g_array_index (space->rooms, guint, i) + 1 == room)
      return TRUE;
  return FALSE;
}

/* The birds of @flock that live in the space, by body. */
static guint
count_birds (const HcTallier *self, const Place *place, const HcFlock *flock, gint64 *counts)
{
  guint n = 0;

  for (guint i = 0; i < hc_flock_get_n_rows (flock); i++)
    {
      const HcFlockRow *row = hc_flock_get_row (flock, i);
      guint room = GPOINTER_TO_UINT (g_hash_table_lookup (self->rooms, row->pen));

      if (row->count == 0 || !is_in (place->space, room))
        continue;
      n += counts[row->body] == 0;
      counts[row->body] += row->count;
    }
  return n;
}

static int
compare_keys (gconstpointer a, gconstpointer b)
{
  return memcmp (a, b, sizeof (Key));
}

static GBytes *
make_key (const Place *place, const HcFlock *flock, const gint64 *counts, guint n)
{
  Key *keys = g_new0 (Key, n + 1);
  guint at = 1;

  keys[0] = (Key) { place->condition, place->scope, (gint32) place->number, -1 };
  for (guint i = 0; i < hc_flock_get_n_bodies (flock); i++)
    if (counts[i] > 0)
      {
        const HcBody *body = hc_flock_get_body (flock, i);

        keys[at++] = (Key) { (gint32) body->kind->order, body->age_weeks,
                             body->female << 3 | body->at_lay << 2 | body->under_heat << 1
                                 | body->roosts,
                             (gint32) counts[i] };
      }
  qsort (keys + 1, n, sizeof *keys, compare_keys);
  return g_bytes_new_take (keys, (n + 1) * sizeof *keys);
}

/* Only the birds of the space, so that the table of bodies is the same
 * whoever lives elsewhere. */
static HcFlock *
gather (const HcTallier *self, const Place *place, const HcFlock *flock, const gint64 *counts)
{
  g_autoptr (GArray) bodies = g_array_new (FALSE, FALSE, sizeof (HcBody));
  HcFlock *inside = hc_flock_new (self->book, bodies);
  HcRoom *room = hc_house_get_room (self->house, g_array_index (place->space->rooms, guint, 0));

  for (guint i = 0; i < hc_flock_get_n_bodies (flock); i++)
    {
      HcFlockRow row = { 0, counts[i], g_intern_string (hc_pen_get_id (hc_room_get_pen (room))),
                         g_intern_static_string ("") };

      if (counts[i] > 0 && hc_bodies_intern (bodies, hc_flock_get_body (flock, i), &row.body))
        hc_flock_add_row (inside, &row);
    }
  return inside;
}

/* What is asked and offered is told at the least level; above it only whether
 * all are served. */
static gint64
serve (const HcNeedContext *context, HcLevel level, HcTallied *tallied)
{
  HcServing serving = { 0 };

  context->need->serve (context, level, level == HC_LEVEL_TIGHT, &serving);
  if (level == HC_LEVEL_TIGHT)
    {
      tallied->birds = serving.there;
      tallied->served = serving.served;
      tallied->offered = serving.offered;
      tallied->required = serving.required;
      tallied->unit = serving.unit;
    }
  hc_serving_clear (&serving);
  return serving.there - serving.served;
}

static void
tally_need (HcCase *about, const HcNeed *need, guint number, HcTallied *tallied)
{
  HcNeedContext context;

  hc_need_context_init (&context, about, need, number);
  for (HcLevel level = HC_LEVEL_TIGHT; level <= HC_LEVEL_PLENTY && tallied->missed == 0; level++)
    {
      tallied->missed = serve (&context, level, tallied);
      if (tallied->missed == 0)
        tallied->level = level;
    }
  tallied->applies = tallied->birds > 0;
}

static gboolean
is_asked (const HcNeed *need, HcNeedScope scope)
{
  return need->sort == HC_NEED_COUNTING && need->scope == scope;
}

static HcTallied *
tally_space (HcTallier *self, const Place *place, HcFlock *inside)
{
  HcTallied *tallied = g_new0 (HcTallied, HC_N_NEEDS);
  HcCase about;

  hc_case_init (&about, self->cache, self->plan, self->book, place->condition, inside);
  for (guint id = 0; id < HC_N_NEEDS; id++)
    if (is_asked (hc_need_get (id), place->scope) && hc_case_judges (&about, hc_need_get (id)))
      tally_need (&about, hc_need_get (id), place->number, &tallied[id]);
  hc_case_clear (&about);
  return tallied;
}

static const HcTallied *
find_space (HcTallier *self, const Place *place, const HcFlock *flock)
{
  gint64 counts[HC_MOST_BODIES] = { 0 };
  guint n = count_birds (self, place, flock, counts);
  g_autoptr (GBytes) key = NULL;
  g_autoptr (HcFlock) inside = NULL;
  HcTallied *tallied;

  if (n == 0)
    return NULL;
  key = make_key (place, flock, counts, n);
  tallied = g_hash_table_lookup (self->spaces, key);
  if (tallied != NULL)
    return tallied;
  inside = gather (self, place, flock, counts);
  tallied = tally_space (self, place, inside);
  g_hash_table_insert (self->spaces, g_bytes_ref (key), tallied);
  return tallied;
}

/* Sums of measures that differ say nothing: birds then do. */
static void
add_measure (HcTallied *sum, const HcTallied *space)
{
  if (sum->unit == NULL || g_strcmp0 (sum->unit, space->unit) == 0)
    {
      sum->unit = space->unit;
      sum->offered += space->offered;
      sum->required += space->required;
      return;
    }
  sum->unit = "birds";
  sum->offered = (double) sum->served;
  sum->required = (double) sum->birds;
}

static void
add_space (HcTallied *sum, const HcTallied *space)
{
  if (!sum->applies || space->level < sum->level)
    sum->missed = 0;
  sum->level = sum->applies ? MIN (sum->level, space->level) : space->level;
  if (space->level == sum->level)
    sum->missed += space->missed;
  sum->applies = TRUE;
  sum->birds += space->birds;
  sum->served += space->served;
  add_measure (sum, space);
}

static void
merge (HcTally *tally, const HcTallied *space)
{
  for (guint id = 0; id < HC_N_NEEDS; id++)
    if (space[id].applies)
      add_space (&tally->needs[id], &space[id]);
}

/* What is felt by night is the same, shut in or not. */
static void
add_spaces (HcTallier *self, const HcFlock *flock, Place place, HcTally *tally)
{
  HcCondition felt = place.scope == HC_SCOPE_NIGHT_ROOM ? HC_CONDITION_NIGHT : place.condition;
  guint n = hc_house_get_n_spaces (self->house, felt);

  if (felt == HC_CONDITION_NIGHT)
    place.condition = HC_CONDITION_DAY;
  for (place.number = 0; place.number < n; place.number++)
    {
      const HcTallied *tallied;

      place.space = hc_house_get_space (self->house, felt, place.number);
      tallied = find_space (self, &place, flock);
      if (tallied != NULL)
        merge (tally, tallied);
    }
}

/**
 * hc_tallied_is_worse: (skip)
 * @self: a need on one day
 * @than: the same or another need
 *
 * Returns: whether @self has a lower level, or as low a one with more birds
 *   that miss the next
 */
gboolean
hc_tallied_is_worse (const HcTallied *self, const HcTallied *than)
{
  return self->level < than->level
         || (self->level == than->level && self->missed > than->missed);
}

static void
find_worst (HcTally *tally)
{
  tally->level = HC_LEVEL_PLENTY;
  tally->worst = HC_N_NEEDS;
  for (guint id = 0; id < HC_N_NEEDS; id++)
    {
      const HcTallied *need = &tally->needs[id];

      if (!need->applies
          || (tally->worst != HC_N_NEEDS && !hc_tallied_is_worse (need, &tally->needs[tally->worst])))
        continue;
      tally->level = need->level;
      tally->worst = id;
    }
}

/**
 * hc_tallier_count: (skip)
 * @self: a tallier
 * @flock: the birds of a day
 * @condition: an ordinary day or shut in; what is felt by night is in both
 * @tally: (out caller-allocates): what the counting needs come to
 *
 * The levels and counts are those of hc_check_plan() on the counting needs.
 */
void
hc_tallier_count (HcTallier *self, HcFlock *flock, HcCondition condition, HcTally *tally)
{
  *tally = (HcTally) { { { FALSE } } };
  add_spaces (self, flock, (Place) { condition, HC_SCOPE_DAY_SPACE }, tally);
  add_spaces (self, flock, (Place) { condition, HC_SCOPE_NIGHT_ROOM }, tally);
  find_worst (tally);
}

/**
 * hc_tallier_judge: (skip)
 * @self: a tallier
 * @flock: the birds of a day
 * @condition: an ordinary day or shut in
 * @tally: what the counting needs came to
 *
 * Puts the flock to the whole check: adds the needs that do not count birds,
 * and what lowers the others besides the count.
 */
void
hc_tallier_judge (HcTallier *self, HcFlock *flock, HcCondition condition, HcTally *tally)
{
  g_autoptr (HcCheck) check = hc_check_plan (self->cache, self->plan, self->book, condition, flock);

  for (guint id = 0; id < HC_N_NEEDS; id++)
    if (hc_check_applies (check, id))
      {
        tally->needs[id].applies = TRUE;
        tally->needs[id].level = hc_check_get_need_level (check, id);
      }
  find_worst (tally);
}

/**
 * hc_tally_is_worse: (skip)
 * @self: a tally
 * @than: another
 *
 * Returns: whether @self has a lower level, or as low a one with more birds
 *   that miss the next
 */
gboolean
hc_tally_is_worse (const HcTally *self, const HcTally *than)
{
  if (self->worst == HC_N_NEEDS || than->worst == HC_N_NEEDS)
    return self->worst != HC_N_NEEDS && than->worst == HC_N_NEEDS;
  return hc_tallied_is_worse (&self->needs[self->worst], &than->needs[than->worst]);
}
