/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What of the weather takes longer than a frame, the latest question only. */
#include "config.h"

#include "app/weather/weather-task.h"

#include "mend/air.h"

/* The chart goes from this much colder than the coldest night to the mildest, K. */
#define COLDER_K 5
#define CHART_SIDE 40

/* The mildest night of a chart is so much milder than the coldest, K. */
#define SPAN_K 35

struct _HcWeatherTask
{
  GObject parent_instance;

  HcWeatherAnswer *answer;
  HcPlan *next_plan;
  HcBook *book;
  gboolean running;
};

G_DEFINE_FINAL_TYPE (HcWeatherTask, hc_weather_task, G_TYPE_OBJECT)

enum
{
  ANSWERED,
  N_SIGNALS
};

static guint signals[N_SIGNALS];

typedef struct
{
  HcPlan *plan;
  HcBook *book;
} Asked;

static void
asked_free (gpointer data)
{
  Asked *asked = data;

  hc_plan_unref (asked->plan);
  hc_book_unref (asked->book);
  g_free (asked);
}

static void
answer_free (HcWeatherAnswer *answer)
{
  hc_plan_unref (answer->plan);
  g_array_unref (answer->points);
  g_ptr_array_unref (answer->remedies);
  g_array_unref (answer->chicks);
  g_free (answer);
}

static void
work_out (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  const Asked *asked = data;
  HcPlan *plan = asked->plan;
  g_autoptr (HcFlock) flock = hc_flock_on (plan, asked->book, hc_plan_get_day (plan));
  g_autoptr (HcHouseNight) night = hc_house_night_new (plan, NULL, flock, NULL);
  double coldest_c = night->ask.weather.t_c;
  HcWeatherAnswer *answer = g_new0 (HcWeatherAnswer, 1);

  answer->plan = hc_plan_ref (plan);
  answer->side = CHART_SIDE;
  answer->night = night->night;
  if (night->air != NULL)
    hc_night_find_ranges (&night->ask, &answer->night);
  answer->points
      = hc_night_chart (&night->ask, coldest_c - COLDER_K, coldest_c + SPAN_K, CHART_SIDE);
  answer->remedies = hc_mend_air (night);
  hc_night_find_bird_range (night, &answer->birds);
  hc_hot_help_work_out (&night->ask, &answer->hot);
  answer->chicks = hc_chick_nights (plan, night->ask.house, flock, hc_plan_get_day (plan));
  g_task_return_pointer (task, answer, (GDestroyNotify) answer_free);
}

static void start (HcWeatherTask *self);

static void
take_answer (GObject *source, GAsyncResult *result, gpointer data)
{
  HcWeatherTask *self = HC_WEATHER_TASK (source);
  HcWeatherAnswer *answer = g_task_propagate_pointer (G_TASK (result), NULL);

  self->running = FALSE;
  g_clear_pointer (&self->answer, answer_free);
  self->answer = answer;
  if (self->next_plan != NULL)
    start (self);
  else
    g_signal_emit (self, signals[ANSWERED], 0);
}

static void
start (HcWeatherTask *self)
{
  g_autoptr (GTask) task = g_task_new (self, NULL, take_answer, NULL);
  Asked *asked = g_new0 (Asked, 1);

  asked->plan = g_steal_pointer (&self->next_plan);
  asked->book = hc_book_ref (self->book);
  self->running = TRUE;
  g_task_set_task_data (task, asked, asked_free);
  g_task_run_in_thread (task, work_out);
}

/**
 * hc_weather_task_ask: (skip)
 * @self: the task
 * @plan: a plan
 * @book: the book
 *
 * While one question is in hand only the newest of the others waits.
 */
void
hc_weather_task_ask (HcWeatherTask *self, HcPlan *plan, HcBook *book)
{
  g_clear_pointer (&self->next_plan, hc_plan_unref);
  self->next_plan = hc_plan_ref (plan);
  if (self->book == NULL)
    self->book = hc_book_ref (book);
  if (!self->running)
    start (self);
}

/**
 * hc_weather_task_get_answer: (skip)
 * @self: the task
 *
 * Returns: (transfer none) (nullable): the newest answer
 */
const HcWeatherAnswer *
hc_weather_task_get_answer (HcWeatherTask *self)
{
  return self->answer;
}

static void
hc_weather_task_finalize (GObject *object)
{
  HcWeatherTask *self = HC_WEATHER_TASK (object);

  g_clear_pointer (&self->answer, answer_free);
  g_clear_pointer (&self->next_plan, hc_plan_unref);
  g_clear_pointer (&self->book, hc_book_unref);
  G_OBJECT_CLASS (hc_weather_task_parent_class)->finalize (object);
}

static void
hc_weather_task_class_init (HcWeatherTaskClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = hc_weather_task_finalize;
  signals[ANSWERED] = g_signal_new ("answered", G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0,
                                    NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
hc_weather_task_init (HcWeatherTask *self)
{
}

HcWeatherTask *
hc_weather_task_new (void)
{
  return g_object_new (HC_TYPE_WEATHER_TASK, NULL);
}
