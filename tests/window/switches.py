#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Every switch among the properties: pressed, it is at once so in the plan."""
import plans
from cases import case, open_plan, run
from floor import open_floor
from plans import find_fitting, part
from screen import equal, wait


def drinker():
    return plans.fitting('drinker', 'Water', 2600, 2000, 300, 300, height_mm=300, places=2)


def press(window, panel, name, of_plan, before, after):
    """On and back, for the second press meets what the first has made."""
    switch = panel.find(name, 'check box')
    switch.bring_into_view(panel, across=0.05)
    for expected in (after, before):
        switch.click()
        wait(lambda: switch.has('checked') == expected, f'{name!r} is {expected}')
        equal(of_plan(window.saved()), expected, name)


@case('each switch of a pen is pressed by mouse')
def pen():
    window = open_plan(plans.two_pens())
    open_floor(window).choose(3200, 600)
    press(window, window.part('HcProperties'), 'Droppings out every day',
          lambda plan: part(plan, 'pens', 'house').get('droppings_cleared', False), False, True)


@case('each switch of a fitting is pressed by mouse')
def fitting():
    window = open_plan(plans.two_pens(fittings=[plans.roost(), drinker()]))
    open_floor(window).choose(2600, 2000)
    panel = window.part('HcProperties')
    for name, member in (('Kept from freezing', 'heated'),
                         ('Taken outside at dusk', 'out_at_night'),
                         ('Keep it where it is', 'locked')):
        press(window, panel, name,
              lambda plan: find_fitting(plan, 'Water').get(member, False), False, True)


@case('each switch of a pop hole is pressed by mouse')
def opening():
    hole = plans.opening('hole', 'pop_hole', 'middle', 1500, 300, 350)
    window = open_plan(plans.two_pens(openings=[hole]))
    open_floor(window).choose(4000, 1500)
    panel = window.part('HcProperties')
    for name, member in (('Open by day', 'open_by_day'), ('Shut at dusk', 'shut_at_dusk')):
        press(window, panel, name,
              lambda plan: part(plan, 'openings', 'hole').get(member, True), True, False)


run()
