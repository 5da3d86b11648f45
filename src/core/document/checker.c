/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The checker: needs at once, the headline when the worker has it. */
#include "config.h"

#include "document/checker.h"

#include "document/headline-worker.h"

#define N_CONDITIONS (HC_CONDITION_SHUT_IN + 1)

/* How long a plan stands still before its birds are counted. */
#define SETTLED_MS 100

struct _HcChecker
{
  GObject parent_instance;

  HcDocument *document;
  HcBook *book;
  HcCondition condition;

  HcCheckCache *cache;
  HcPlan *plan;
  guint32 day;
  HcFlock *flock;
  HcCheck *checks[N_CONDITIONS];
  HcCheck *settled[N_CONDITIONS];
  gboolean is_preview;

  HcHeadlineWorker *worker;
  guint settling;
  gboolean is_working;
  gboolean has_headline;
  HcHeadline headline;
};

G_DEFINE_FINAL_TYPE (HcChecker, hc_checker, G_TYPE_OBJECT)

enum
{
  PROP_DOCUMENT = 1,
  PROP_CONDITION,
  N_PROPS
};

enum
{
  CHECKED,
  COUNTED,
  N_SIGNALS
};

static GParamSpec *props[N_PROPS];
static guint signals[N_SIGNALS];

static void
hc_checker_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  HcChecker *self = HC_CHECKER (object);

  switch (id)
    {
    case PROP_DOCUMENT:
      g_value_set_object (value, self->document);
      break;
    case PROP_CONDITION:
      g_value_set_uint (value, self->condition);
      break;
    default:
      G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
    }
}

static void
hc_checker_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  HcChecker *self = HC_CHECKER (object);

  switch (id)
    {
    case PROP_CONDITION:
      hc_checker_set_condition (self, g_value_get_uint (value));
      break;
    default:
      G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
    }
}

/* What was judged before a drag stands beside what is judged during it. */
static void
keep_settled (HcChecker *self, guint condition)
{
  HcCheck *check = g_steal_pointer (&self->checks[condition]);

  if (check != NULL && self->is_preview)
    hc_check_unref (check);
  else if (check != NULL)
    {
      g_clear_pointer (&self->settled[condition], hc_check_unref);
      self->settled[condition] = check;
    }
}

static void
forget_answers (HcChecker *self)
{
  for (guint i = 0; i < N_CONDITIONS; i++)
    keep_settled (self, i);
  g_clear_pointer (&self->flock, hc_flock_unref);
  g_clear_pointer (&self->plan, hc_plan_unref);
}

static void
hc_checker_finalize (GObject *object)
{
  HcChecker *self = HC_CHECKER (object);

  g_clear_handle_id (&self->settling, g_source_remove);
  forget_answers (self);
  for (guint i = 0; i < N_CONDITIONS; i++)
    g_clear_pointer (&self->settled[i], hc_check_unref);
  g_clear_pointer (&self->cache, hc_check_cache_free);
  g_clear_pointer (&self->worker, hc_headline_worker_unref);
  g_clear_pointer (&self->book, hc_book_unref);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (hc_checker_parent_class)->finalize (object);
}

static void
hc_checker_class_init (HcCheckerClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);

  object_class->get_property = hc_checker_get_property;
  object_class->set_property = hc_checker_set_property;
  object_class->finalize = hc_checker_finalize;

  props[PROP_DOCUMENT] = g_param_spec_object ("document", NULL, NULL, HC_TYPE_DOCUMENT,
                                              G_PARAM_READABLE | G_PARAM_STATIC_STRINGS);
  props[PROP_CONDITION] = g_param_spec_uint (
      "condition", NULL, NULL, HC_CONDITION_DAY, HC_CONDITION_SHUT_IN, HC_CONDITION_DAY,
      G_PARAM_READWRITE | G_PARAM_STATIC_STRINGS | G_PARAM_EXPLICIT_NOTIFY);
  g_object_class_install_properties (object_class, N_PROPS, props);

  signals[CHECKED] = g_signal_new ("checked", HC_TYPE_CHECKER, G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                                   NULL, G_TYPE_NONE, 0);
  signals[COUNTED] = g_signal_new ("counted", HC_TYPE_CHECKER, G_SIGNAL_RUN_LAST, 0, NULL, NULL,
                                   NULL, G_TYPE_NONE, 0);
}

static void
hc_checker_init (HcChecker *self)
{
  self->cache = hc_check_cache_new ();
  self->worker = hc_headline_worker_new ();
}

/**
 * hc_checker_new:
 * @document: the document to keep judged
 * @book: the book to judge by
 *
 * Returns: (transfer full): a checker that has not looked yet
 */
HcChecker *
hc_checker_new (HcDocument *document, HcBook *book)
{
  HcChecker *self = g_object_new (HC_TYPE_CHECKER, NULL);

  self->document = g_object_ref (document);
  self->book = hc_book_ref (book);
  return self;
}

/**
 * hc_checker_get_book:
 * @self: a checker
 *
 * Returns: (transfer none): the book it judges by
 */
HcBook *
hc_checker_get_book (HcChecker *self)
{
  g_return_val_if_fail (HC_IS_CHECKER (self), NULL);
  return self->book;
}

/**
 * hc_checker_get_document:
 * @self: a checker
 *
 * Returns: (transfer none): the document it judges
 */
HcDocument *
hc_checker_get_document (HcChecker *self)
{
  g_return_val_if_fail (HC_IS_CHECKER (self), NULL);
  return self->document;
}

/**
 * hc_checker_get_condition:
 * @self: a checker
 *
 * Returns: the condition that is shown
 */
HcCondition
hc_checker_get_condition (HcChecker *self)
{
  g_return_val_if_fail (HC_IS_CHECKER (self), HC_CONDITION_DAY);
  return self->condition;
}

/**
 * hc_checker_set_condition:
 * @self: a checker
 * @condition: the condition to show
 *
 * Emits `checked`: there is an answer for it at once.
 */
void
hc_checker_set_condition (HcChecker *self, HcCondition condition)
{
  g_return_if_fail (HC_IS_CHECKER (self));
  g_return_if_fail (condition < N_CONDITIONS);
  if (self->condition == condition)
    return;
  self->condition = condition;
  g_object_notify_by_pspec (G_OBJECT (self), props[PROP_CONDITION]);
  g_signal_emit (self, signals[CHECKED], 0);
}

static void ask_worker (HcChecker *self);

static void
take_headline (GObject *source, GAsyncResult *result, gpointer data)
{
  GWeakRef *asked_by = data;
  g_autoptr (HcChecker) self = g_weak_ref_get (asked_by);
  HcHeadline headline;
  g_autoptr (HcPlan) plan = hc_headline_worker_finish (result, &headline);

  g_weak_ref_clear (asked_by);
  g_free (asked_by);
  if (self == NULL)
    return;
  self->is_working = FALSE;
  if (plan != self->plan)
    {
      ask_worker (self);
      return;
    }
  self->headline = headline;
  self->has_headline = TRUE;
  g_signal_emit (self, signals[COUNTED], 0);
}

/* While one question is in hand the next waits, and only the newest is asked
 * then. */
static void
ask_worker (HcChecker *self)
{
  GWeakRef *asked_by;

  if (self->is_working)
    return;
  self->is_working = TRUE;
  asked_by = g_new0 (GWeakRef, 1);
  g_weak_ref_init (asked_by, self);
  hc_headline_worker_ask (self->worker, self->plan, self->book, self->flock, take_headline,
                          asked_by);
}

static gboolean
count_settled (gpointer data)
{
  HcChecker *self = data;

  self->settling = 0;
  ask_worker (self);
  return G_SOURCE_REMOVE;
}

/* Frames come first: neither a drag nor the first frame of a plan shares the
 * processor with the worker. */
static void
count_when_settled (HcChecker *self)
{
  g_clear_handle_id (&self->settling, g_source_remove);
  self->settling = g_timeout_add_full (G_PRIORITY_LOW, SETTLED_MS, count_settled, self, NULL);
}

static gboolean
is_newest (HcChecker *self)
{
  HcPlan *plan = hc_document_get_plan (self->document);

  return self->plan == plan && self->day == hc_plan_get_day (plan)
         && self->is_preview == hc_document_is_previewing (self->document);
}

/**
 * hc_checker_update:
 * @self: a checker
 *
 * To be called once a frame: looks whether the plan shown is another, or the
 * day; then emits `checked`, and `counted` some time after the plan has settled.
 *
 * Returns: whether it was another
 */
gboolean
hc_checker_update (HcChecker *self)
{
  g_return_val_if_fail (HC_IS_CHECKER (self), FALSE);
  if (is_newest (self))
    return FALSE;
  forget_answers (self);
  self->plan = hc_plan_ref (hc_document_get_plan (self->document));
  self->day = hc_plan_get_day (self->plan);
  self->is_preview = hc_document_is_previewing (self->document);
  self->flock = hc_flock_on (self->plan, self->book, self->day);
  count_when_settled (self);
  g_signal_emit (self, signals[CHECKED], 0);
  return TRUE;
}

static HcCheck *
judge (HcChecker *self, HcCondition condition)
{
  if (self->is_preview && self->settled[condition] != NULL)
    return hc_check_follow (self->settled[condition], self->cache, self->plan, self->book,
                            self->flock);
  return hc_check_plan (self->cache, self->plan, self->book, condition, self->flock);
}

/**
 * hc_checker_get_check:
 * @self: a checker
 * @condition: a condition
 *
 * The plan of the last hc_checker_update() is judged, in a condition not asked
 * for before only now.
 *
 * Returns: (transfer none): how it stands
 */
HcCheck *
hc_checker_get_check (HcChecker *self, HcCondition condition)
{
  g_return_val_if_fail (HC_IS_CHECKER (self), NULL);
  g_return_val_if_fail (condition < N_CONDITIONS, NULL);
  if (self->plan == NULL)
    hc_checker_update (self);
  if (self->checks[condition] == NULL)
    self->checks[condition] = judge (self, condition);
  return self->checks[condition];
}

/**
 * hc_checker_get_headline:
 * @self: a checker
 *
 * Returns: (nullable) (transfer none): how many birds the plan carries, %NULL
 *   before the first answer; while the next is worked out, the last one
 */
const HcHeadline *
hc_checker_get_headline (HcChecker *self)
{
  g_return_val_if_fail (HC_IS_CHECKER (self), NULL);
  return self->has_headline ? &self->headline : NULL;
}
