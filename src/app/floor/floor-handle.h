/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a handle moves. */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef enum
{
  HC_HANDLE_LEFT,
  HC_HANDLE_RIGHT,
  HC_HANDLE_BACK,
  HC_HANDLE_FRONT,
  HC_HANDLE_TURN,
  HC_HANDLE_CORNER,
  HC_HANDLE_WALL,
} HcHandleRole;

G_END_DECLS
