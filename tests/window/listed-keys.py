#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The window that lists the keys. A warning of the program ends it."""
import plans
from cases import case, open_plan, run
from screen import equal, keys, wait


def open_keys():
    window = open_plan(plans.two_pens())
    window.part('HcStrip')
    keys('ctrl+question')
    return window, window.dialog('New plan')


@case('the keys are listed, the second page by mouse, without a warning')
def second_page():
    window, listed = open_keys()
    page = listed.find('_2', 'page tab')
    page.click()
    wait(lambda: page.has('selected'), 'the second page is shown')
    listed.says('Turn a quarter')
    equal(window.process.poll(), None, 'how the program ended')


@case('Escape leaves the list of keys, and the window takes them again')
def leave():
    window, _ = open_keys()
    keys('Escape')
    wait(lambda: len(list(window.frames())) == 1, 'the list is closed')
    keys('alt+2')
    night = window.find('Night', 'push button')
    wait(lambda: night.has('pressed') or night.has('checked'), 'the window takes keys')


run()
