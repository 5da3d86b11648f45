/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whatever call to the system fails while a plan is saved, the old file or the
 * new one is there, whole. The calls below stand in for the C library's. */
#include "config.h"

#include "base/error.h"
#include "files/store.h"
#include "scratch.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <string.h>
#include <sys/syscall.h>
#include <unistd.h>

static const char old_text[] = "the old file";

static struct
{
  gboolean armed;
  int calls_left;
  int error;
  gboolean renamed;
} fault;

static gboolean
fails_now (void)
{
  if (!fault.armed || fault.calls_left-- > 0)
    return FALSE;
  fault.armed = FALSE;
  errno = fault.error;
  return TRUE;
}

ssize_t
write (int fd,
       const void *bytes,
       size_t length)
{
  return fails_now () ? -1 : syscall (SYS_write, fd, bytes, length);
}

int
fsync (int fd)
{
  return fails_now () ? -1 : (int) syscall (SYS_fsync, fd);
}

int
rename (const char *from,
        const char *to)
{
  if (fails_now ())
    return -1;
  fault.renamed = TRUE;
  return (int) syscall (SYS_renameat2, AT_FDCWD, from, AT_FDCWD, to, 0);
}

static gboolean
holds_the_plan (GFile *file,
                const HcPlan *plan)
{
  g_autoptr (HcPlanFile) read = hc_plan_store_load (file, NULL, NULL);

  return read != NULL && hc_plan_equal (read->plan, plan);
}

/* Saves with call number @n failing; returns whether any call failed. */
static gboolean
save_with_fault (GFile *file,
                 const HcPlan *plan,
                 int n,
                 int number)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *text = NULL;
  gboolean failed, saved;

  scratch_write (g_file_peek_path (file), old_text);
  fault.calls_left = n;
  fault.error = number;
  fault.renamed = FALSE;
  fault.armed = TRUE;
  saved = hc_plan_store_save (file, plan, NULL, NULL, &error);
  failed = !fault.armed;
  fault.armed = FALSE;
  if (saved || fault.renamed)
    g_assert_true (holds_the_plan (file, plan));
  else
    {
      text = scratch_read (g_file_peek_path (file));
      g_assert_cmpstr (text, ==, old_text);
      g_assert_error (error, HC_ERROR, HC_ERROR_SAVE);
    }
  return failed;
}

static void
the_old_file_survives_every_fault (gconstpointer data)
{
  char *folder = scratch_folder_new ();
  g_autofree char *path = g_build_filename (folder, "croft.hencote", NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (HcPlan) plan = hc_plan_new_empty ("croft", "Skerry Croft");
  int n = 0;

  while (save_with_fault (file, plan, n, GPOINTER_TO_INT (data)))
    {
      g_assert_cmpuint (scratch_folder_count (folder), ==, 1);
      n++;
    }
  /* At least one write, one sync and one rename were there to fail. */
  g_assert_cmpint (n, >=, 3);
  g_assert_true (holds_the_plan (file, plan));
  scratch_folder_remove (folder);
}

int
main (int argc,
      char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_data_func ("/save-faults/disk-full", GINT_TO_POINTER (ENOSPC),
                        the_old_file_survives_every_fault);
  g_test_add_data_func ("/save-faults/disk-broken", GINT_TO_POINTER (EIO),
                        the_old_file_survives_every_fault);
  g_test_add_data_func ("/save-faults/quota", GINT_TO_POINTER (EDQUOT),
                        the_old_file_survives_every_fault);
  return g_test_run ();
}
