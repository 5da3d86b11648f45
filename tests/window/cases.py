# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Cases of a window test, told as TAP; a failed one leaves a picture."""
import os
import pathlib
import sys
import traceback

import screen

_cases = []


def case(sentence):
    def remember(function):
        _cases.append((sentence, function))
        return function
    return remember


def open_plan(plan=None, **options):
    """A fresh home with the program running in it; the case's last one is told of."""
    home = screen.new_home('home')
    run.window = screen.Screen(plan, home, **options)
    return run.window


def reopen(file):
    """The program again, in the home the last one left."""
    run.window = screen.Screen(file, run.window.home)
    return run.window


def _tell_failure(number, error):
    for line in traceback.format_exception(error):
        print('#', line.rstrip().replace('\n', '\n# '))
    if run.window is None:
        return
    print('#', run.window.stderr().replace('\n', '\n# '))
    folder = pathlib.Path(os.environ.get('PICTURES', '.'))
    run.window.picture(folder / f'{pathlib.Path(sys.argv[0]).stem}-{number}.png')


def run():
    wanted = sys.argv[1:]
    chosen = [(n, *each) for n, each in enumerate(_cases, 1)
              if not wanted or str(n) in wanted]
    print(f'1..{len(chosen)}', flush=True)
    for told, (number, sentence, function) in enumerate(chosen, 1):
        run.window = None
        try:
            function()
            print(f'ok {told} {sentence}', flush=True)
        except Exception as error:  # every case is to be told of
            _tell_failure(number, error)
            print(f'not ok {told} {sentence}', flush=True)
        finally:
            if run.window is not None:
                run.window.close()


run.window = None
