/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a fuzzer calls. With clang: build a target with -fsanitize=fuzzer and
 * without the driver, and give it the corpus. */
#pragma once

#include <stddef.h>

int LLVMFuzzerTestOneInput (const unsigned char *data,
                            size_t size);
