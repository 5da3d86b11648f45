/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Goes through what happens to each group, day by day. */
#include "config.h"

#include "flock/timeline.h"

/* Birds of one sex of a group in one pen. */
typedef struct
{
  const char *pen;
  gboolean female;
  int count;
  guint32 since;
} Pile;

/* Something that happens: a move to @pen, or a departure. With neither
 * females nor males given, all there are. */
typedef struct
{
  guint32 on;
  gboolean leaves;
  const char *from;
  const char *pen;
  int count[2];
  gboolean all[2];
  HcLeavingWhy why;
} Event;

typedef struct
{
  HcTimeline *timeline;
  guint group;
  GArray *piles;
  GArray *events;
} Telling;

static const char *
intern_pen (const char *pen)
{
  return g_intern_string (pen != NULL ? pen : "");
}

static void
tell_stay (const Telling *telling, const Pile *pile, guint32 until)
{
  HcStay stay = { telling->group, pile->female, pile->count, pile->pen, pile->since, until };

  if (pile->count > 0 && until > pile->since)
    g_array_append_val (telling->timeline->stays, stay);
}

static void
change_pile (Telling *telling, Pile *pile, int by, guint32 on)
{
  tell_stay (telling, pile, on);
  pile->count += by;
  pile->since = on;
}

static void
put (Telling *telling, const char *pen, gboolean female, int count, guint32 on)
{
  Pile fresh = { pen, female, count, on };

  for (guint i = 0; i < telling->piles->len; i++)
    {
      Pile *pile = &g_array_index (telling->piles, Pile, i);

      if (pile->pen == pen && pile->female == female)
        {
          change_pile (telling, pile, count, on);
          return;
        }
    }
  g_array_append_val (telling->piles, fresh);
}

/* Takes up to @count birds of one sex from where the event says, the pen they
 * have been in longest first. */
static int
take (Telling *telling, const Event *event, gboolean female, int count)
{
  int taken = 0;

  for (guint i = 0; i < telling->piles->len && taken < count; i++)
    {
      Pile *pile = &g_array_index (telling->piles, Pile, i);
      int here = MIN (pile->count, count - taken);

      if (pile->female != female || here == 0 || (*event->from != '\0' && pile->pen != event->from)
          || (!event->leaves && pile->pen == event->pen))
        continue;
      change_pile (telling, pile, -here, event->on);
      taken += here;
    }
  return taken;
}

static void
tell_departure (Telling *telling, const Event *event, gboolean female, int count)
{
  HcDeparture departure = { telling->group, female, count, event->on, event->why };

  g_array_append_val (telling->timeline->departures, departure);
}

static void
tell_movement (Telling *telling, const Event *event, gboolean female, int count)
{
  HcMovement movement = { telling->group, female, count, event->pen, event->on };

  g_array_append_val (telling->timeline->movements, movement);
  put (telling, event->pen, female, count, event->on);
}

static void
happen (Telling *telling, const Event *event)
{
  for (int sex = 0; sex < 2; sex++)
    {
      gboolean female = sex == 0;
      int asked = event->all[sex] ? G_MAXINT : event->count[sex];
      int taken = take (telling, event, female, asked);

      if (taken == 0)
        continue;
      if (event->leaves)
        tell_departure (telling, event, female, taken);
      else
        tell_movement (telling, event, female, taken);
    }
}

static int
compare_events (gconstpointer a, gconstpointer b)
{
  const Event *one = a;
  const Event *other = b;

  return (one->on > other->on) - (one->on < other->on);
}

static void
add_event (Telling *telling, Event event, int females, int males)
{
  event.count[0] = females;
  event.count[1] = males;
  event.all[0] = event.all[1] = females == 0 && males == 0;
  g_array_append_val (telling->events, event);
}

static void
tell_group (Telling *telling)
{
  g_array_sort (telling->events, compare_events);
  for (guint i = 0; i < telling->events->len; i++)
    happen (telling, &g_array_index (telling->events, Event, i));
  for (guint i = 0; i < telling->piles->len; i++)
    tell_stay (telling, &g_array_index (telling->piles, Pile, i), HC_FOR_EVER);
  g_array_set_size (telling->piles, 0);
  g_array_set_size (telling->events, 0);
}

static void
add_group (Telling *telling, HcGroup *group, int females, int males, const char *pen)
{
  group->life = hc_book_get_life (telling->timeline->book, group->kind->id);
  telling->group = telling->timeline->groups->len;
  g_array_append_vals (telling->timeline->groups, group, 1);
  put (telling, intern_pen (pen), TRUE, females, group->came);
  put (telling, intern_pen (pen), FALSE, males, group->came);
}

static void
tell_batch (Telling *telling, const HcBatch *batch)
{
  const HcBatchValues *values = hc_batch_get (batch);
  const HcBreed *breed = hc_book_get_breed (telling->timeline->book, values->breed);
  HcGroup group = { .id = g_intern_string (hc_batch_get_id (batch)),
                    .name = values->name,
                    .kind = breed != NULL ? breed->kind
                                          : hc_book_get_kind (telling->timeline->book, values->kind),
                    .breed = breed,
                    .hatched = values->hatched,
                    .came = MAX (values->hatched, values->came) };

  if (group.kind == NULL)
    return;
  add_group (telling, &group, values->females, values->males, values->pen);
  for (guint i = 0; i < values->moves->len; i++)
    {
      const HcMoveValues *move = hc_move_get (values->moves->pdata[i]);
      Event event = { MAX (move->on, group.came), FALSE, intern_pen (move->from),
                      intern_pen (move->pen) };

      add_event (telling, event, move->females, move->males);
    }
  for (guint i = 0; i < values->leavings->len; i++)
    {
      const HcLeavingValues *leaving = hc_leaving_get (values->leavings->pdata[i]);
      Event event = { MAX (leaving->on, group.came), TRUE, intern_pen (leaving->from), NULL,
                      .why = (HcLeavingWhy) leaving->why };

      add_event (telling, event, leaving->females, leaving->males);
    }
  tell_group (telling);
}

static void
add_step (Telling *telling, const HcStepValues *step, guint32 hatch_on)
{
  Event event = { hatch_on + (guint32) step->week * 7, step->deed != HC_STEP_MOVE,
                  intern_pen (NULL), intern_pen (step->pen),
                  .why = step->deed == HC_STEP_SELL ? HC_LEAVING_SOLD : HC_LEAVING_HARVESTED };

  event.all[0] = step->who != HC_STEP_MALES;
  event.all[1] = step->who != HC_STEP_FEMALES;
  g_array_append_val (telling->events, event);
}

/* Of a kind kept for eggs the males are meat, of a meat kind all are. */
static void
add_harvest_day (Telling *telling, const HcSetting *setting)
{
  guint32 on = hc_clutch_get (setting->clutch)->harvest_on;
  Event event = { on, TRUE, intern_pen (NULL), NULL, .why = HC_LEAVING_HARVESTED };

  if (on <= setting->hatch_on)
    return;
  event.all[0] = setting->kind->raised_for_meat;
  event.all[1] = TRUE;
  g_array_append_val (telling->events, event);
}

static void
tell_setting (Telling *telling, const HcSetting *setting)
{
  const HcClutchValues *values = hc_clutch_get (setting->clutch);
  HcGroup group = { .id = g_intern_string (hc_clutch_get_id (setting->clutch)),
                    .name = values->name,
                    .setting = setting->number,
                    .expected = TRUE,
                    .kind = setting->kind,
                    .breed = hc_book_get_breed (telling->timeline->book, values->breed),
                    .hatched = setting->hatch_on,
                    .came = setting->hatch_on };
  int males = (int) setting->high / 2;

  if (setting->raised)
    return;
  add_group (telling, &group, (int) setting->high - males, males, values->pen);
  for (guint i = 0; i < values->steps->len; i++)
    add_step (telling, hc_step_get (values->steps->pdata[i]), setting->hatch_on);
  add_harvest_day (telling, setting);
  tell_group (telling);
}

static HcTimeline *
timeline_new (const HcPlan *plan, HcBook *book)
{
  HcTimeline *self = g_new0 (HcTimeline, 1);
  Telling telling = { self, 0, g_array_new (FALSE, FALSE, sizeof (Pile)),
                      g_array_new (FALSE, FALSE, sizeof (Event)) };
  HcParts *batches = hc_plan_get (plan)->batches;

  g_atomic_ref_count_init (&self->refs);
  self->plan = hc_plan_ref ((HcPlan *) plan);
  self->book = hc_book_ref (book);
  self->groups = g_array_new (FALSE, FALSE, sizeof (HcGroup));
  self->stays = g_array_new (FALSE, FALSE, sizeof (HcStay));
  self->movements = g_array_new (FALSE, FALSE, sizeof (HcMovement));
  self->departures = g_array_new (FALSE, FALSE, sizeof (HcDeparture));
  self->settings = hc_settings_of (plan, book);
  for (guint i = 0; i < batches->len; i++)
    tell_batch (&telling, batches->pdata[i]);
  for (guint i = 0; i < self->settings->len; i++)
    tell_setting (&telling, &g_array_index (self->settings, HcSetting, i));
  g_array_unref (telling.piles);
  g_array_unref (telling.events);
  return self;
}

HcTimeline *
hc_timeline_ref (HcTimeline *self)
{
  g_atomic_ref_count_inc (&self->refs);
  return self;
}

void
hc_timeline_unref (HcTimeline *self)
{
  g_return_if_fail (self != NULL);
  if (!g_atomic_ref_count_dec (&self->refs))
    return;
  g_array_unref (self->groups);
  g_array_unref (self->stays);
  g_array_unref (self->movements);
  g_array_unref (self->departures);
  g_array_unref (self->settings);
  hc_book_unref (self->book);
  hc_plan_unref (self->plan);
  g_free (self);
}

static GPrivate last = G_PRIVATE_INIT ((GDestroyNotify) hc_timeline_unref);

static gboolean
is_of (const HcTimeline *self, const HcPlan *plan, HcBook *book)
{
  const HcPlanValues *mine = hc_plan_get (self->plan);
  const HcPlanValues *values = hc_plan_get (plan);

  return self->book == book && mine->batches == values->batches
         && mine->clutches == values->clutches && mine->results == values->results
         && mine->keeping == values->keeping;
}

/**
 * hc_timeline_of: (skip)
 * @plan: a plan
 * @book: the book
 *
 * Each thread keeps the one it worked out last: plans that differ only in
 * their house have the same.
 *
 * Returns: (transfer full): what the groups and eggs of @plan come to
 */
HcTimeline *
hc_timeline_of (const HcPlan *plan, HcBook *book)
{
  HcTimeline *kept = g_private_get (&last);

  if (kept == NULL || !is_of (kept, plan, book))
    {
      kept = timeline_new (plan, book);
      g_private_replace (&last, kept);
    }
  return hc_timeline_ref (kept);
}

/**
 * hc_timeline_get_group: (skip)
 * @self: a timeline
 * @group: index of a group
 *
 * Returns: (transfer none): the group
 */
const HcGroup *
hc_timeline_get_group (const HcTimeline *self, guint group)
{
  g_return_val_if_fail (group < self->groups->len, NULL);
  return &g_array_index (self->groups, HcGroup, group);
}

/**
 * hc_group_get_weeks: (skip)
 * @self: a group
 * @day: a day not before they hatched
 *
 * Returns: their age in weeks, %HC_WEEK_GROWN when it is not known
 */
double
hc_group_get_weeks (const HcGroup *self, guint32 day)
{
  return self->hatched == 0 ? HC_WEEK_GROWN : (day - self->hatched) / 7.0;
}
