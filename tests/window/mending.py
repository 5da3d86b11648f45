#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""What is wrong offers its remedies: tried out while pointed at, done by one press."""
import plans
from cases import case, open_plan, run
from floor import open_floor
from screen import equal, keys, wait


def nests():
    return plans.fitting('nest_boxes', 'Nests', 2000, 200, 350, 350, height_mm=400, base_mm=200,
                         columns=1, rows=1, lined=True)


def open_nests():
    """A house whose six hens share one box, with its finding open."""
    window = open_plan(plans.two_pens(fittings=[plans.roost(), nests()],
                                      batches=[plans.hens(females=9)]))
    open_floor(window)
    return window, window.part('HcNeedsPanel')


def boxes(window):
    return plans.find_fitting(window.saved(), 'Nests').get('columns')


@case('a remedy is looked for, pointed at, done and undone, by mouse')
def mend_by_mouse():
    window, needs = open_nests()
    needs.find('Nest boxes', 'push button').click()
    needs.find('How to Fix It', 'push button').click()
    needs.find('Add boxes to it*', 'push button').click()
    wait(lambda: boxes(window) > 1, 'boxes were added')
    keys('ctrl+z')
    wait(lambda: boxes(window) == 1, 'undone in one step')


@case('a remedy is looked for, tried and done, by keys')
def mend_by_keys():
    window, needs = open_nests()
    needs.find('Nest boxes', 'push button').reach()
    keys('space')
    needs.find('How to Fix It', 'push button').reach()
    keys('space')
    needs.find('Add boxes to it*', 'push button').reach()
    equal(boxes(window), 1, 'only tried out')
    keys('Return')
    wait(lambda: boxes(window) > 1, 'boxes were added')


run()
