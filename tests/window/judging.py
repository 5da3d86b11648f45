#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""What the plan is judged to be: live while dragging, shown, and by whose rules."""
import json
import pathlib
import re

import plans
from cases import case, open_plan, run
from floor import Floor, open_floor
from screen import carry, drag, equal, keys, wait, write

HOUSES = pathlib.Path(__file__).parents[2] / 'data' / 'houses'


def count_of(window, need):
    """The line under a need's title: how many birds of how many."""
    header = window.part('HcNeedsPanel').find(need, 'push button')
    return [label.name for label in header.look_for(role='label') if 'bird' in label.name]


@case('needs change while an edge is dragged, before it is let go')
def live_needs():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    floor.choose(1000, 1000)
    floor.item('Right edge')
    before = count_of(window, 'Places to sleep')
    equal(before, ['5 of 7 birds'], 'before')

    def changed():
        wait(lambda: count_of(window, 'Places to sleep') not in (before, []), 'the need follows')
        equal(plans.find_fitting(plans.two_pens(), 'Bar')['width_mm'], 1200, 'as it began')
    drag(floor.px(1600, 1000), floor.px(2600, 1000), before_release=changed)
    keys('ctrl+z')
    wait(lambda: count_of(window, 'Places to sleep') == before, 'undone, it is as before')


@case('the condition is switched by Alt+1 to Alt+3 and told by its button')
def switch_condition():
    window = open_plan(plans.two_pens())
    for key, name in (('alt+3', 'Shut In'), ('alt+2', 'Night'), ('alt+1', 'Day')):
        keys(key)
        button = window.part('HcStrip').find(name)
        wait(lambda: button.has('pressed') or button.has('checked'), f'{name} is pressed')


@case('what is asked of the keeper is told in a sentence')
def headline():
    window = open_plan(plans.two_pens())
    window.part('HcStrip').says('Not one bird is served yet')


def barn():
    """A ready house whose nest boxes run out first."""
    return json.loads((HOUSES / 'barn-bay.hencote').read_text(encoding='utf-8'))


def in_comfort(window):
    """Birds the strip says the house holds in comfort, and what it says runs out first."""
    for thing in window.part('HcStrip').walk():
        found = re.match(r'(\d+) in comfort, \d+ at most; (.*) runs? out first', thing.name)
        if found:
            return int(found[1]), found[2]
    return None


def more_nests(add):
    window = open_plan(barn())
    window.part('HcFloorView')
    before, first = wait(lambda: in_comfort(window), 'the strip says how many')
    equal(first, 'nest boxes', 'what runs out first')
    add(window)
    wait(lambda: (in_comfort(window) or (0, ''))[0] > before, 'the house holds more birds')
    equal(in_comfort(window)[1] == first, False, 'nest boxes still run out first')
    keys('ctrl+z')
    wait(lambda: in_comfort(window) == (before, first), 'undone, it is as before')


@case('nest boxes dragged on to the floor raise what the strip says')
def more_nests_by_mouse():
    def add(window):
        floor = Floor(window).item('Indoors*')
        left, top, width, height = floor.box
        carry(window.part('HcShelf').find('nest box', 'push button'),
              (left + width * 0.5, top + height * 0.85))
    more_nests(add)


@case('nest boxes added by keys raise what the strip says')
def more_nests_by_keys():
    def add(window):
        Floor(window).tab_to('Indoors*')
        keys('ctrl+f')
        write('nest box')
        keys('Return')
    more_nests(add)


@case('every item of the floor has a role, a name, and says where it is')
def told():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    items = list(floor.floor.look_for(role='push button'))
    equal(len(items), 4, 'two pens and two fittings')
    for item in items:
        equal(bool(item.name) and not item.name.startswith('Hc'), True, f'{item.name} is a name')
    floor.tab_to('Bath*')
    before = floor.item('Bath*').description
    keys('shift+Down')
    wait(lambda: floor.item('Bath*').description != before, 'where it is now is told')


@case('every button that shows has a name')
def buttons_named():
    window = open_plan(plans.two_pens())
    open_floor(window)
    unnamed = [(thing.name, thing.description) for thing in window.frame.look_for('Gtk*')
               if thing.role == 'push button' and thing.description]
    equal(unnamed, [], 'buttons without a name')


run()
