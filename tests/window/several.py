#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Several things chosen at once: moved, turned, copied and removed, each as one step."""
import plans
from cases import case, open_plan, run
from floor import open_floor
from plans import all_fittings, find_fitting
from screen import drag, equal, keys, near, wait, x


def three():
    return plans.two_pens(fittings=[
        plans.roost(), plans.bath(), plans.bath('Second', 800, 2300)])


def places(plan):
    return {each['name']: (each['x_mm'], each['y_mm']) for each in all_fittings(plan)}


def choose_by_mouse(floor, *points):
    """The first alone, the others as well."""
    floor.choose(*points[0])
    x('keydown', 'shift')
    for point in points[1:]:
        floor.choose(*point)
    x('keyup', 'shift')


def choose_by_keys(floor, first, *others):
    """The first alone, the others as well, over what lies between."""
    floor.tab_to(first)
    for name in others:
        floor.item(name).reach('ctrl+Tab')
        keys('ctrl+space')


@case('two things chosen with Shift are dragged together, and one undo takes them back')
def move_by_mouse():
    window = open_plan(three())
    floor = open_floor(window)
    before = places(window.saved())
    choose_by_mouse(floor, (1000, 1000), (2600, 2000))
    floor.drag((2600, 2000), (2900, 2200), hold='ctrl')
    after = places(window.saved())
    for name in ('Bar', 'Bath'):
        near(after[name][0] - before[name][0], 300, 30, f'{name} across')
        near(after[name][1] - before[name][1], 200, 30, f'{name} down')
    equal(after['Second'], before['Second'], 'what was not chosen')
    keys('ctrl+z')
    equal(places(window.saved()), before, 'places, undone')


@case('two things chosen by keys are moved together, and one undo takes them back')
def move_by_keys():
    window = open_plan(three())
    before = places(window.saved())
    choose_by_keys(open_floor(window), 'Bar*', 'Second*')
    keys('shift+Right')
    after = places(window.saved())
    equal(after, {**before, 'Bar': (before['Bar'][0] + 100, before['Bar'][1]),
                  'Second': (before['Second'][0] + 100, before['Second'][1])}, 'places')
    keys('ctrl+z')
    equal(places(window.saved()), before, 'places, undone')


@case('two things chosen by keys are removed together, and one undo brings them back')
def remove_by_keys():
    window = open_plan(three())
    before = places(window.saved())
    choose_by_keys(open_floor(window), 'Bar*', 'Second*')
    keys('Delete')
    equal(list(places(window.saved())), ['Bath'], 'things left')
    keys('ctrl+z')
    equal(places(window.saved()), before, 'things, undone')


@case('a thing chosen by keys is let go again, and stays when the others go')
def let_go_by_keys():
    window = open_plan(three())
    choose_by_keys(open_floor(window), 'Bar*', 'Second*')
    keys('ctrl+space', 'Delete')
    equal(sorted(places(window.saved())), ['Bath', 'Second'], 'things left')


@case('things in a frame drawn with Shift are chosen, and one undo brings them back')
def frame():
    window = open_plan(three())
    floor = open_floor(window)
    before = places(window.saved())
    drag(floor.px(-300, -400), floor.px(2000, 2700), hold_first='shift')
    keys('Delete')
    equal(list(places(window.saved())), ['Bath'], 'things left')
    keys('ctrl+z')
    equal(places(window.saved()), before, 'things, undone')


@case('two things are copied and the copies turned together, by keys')
def copy_and_turn_by_keys():
    window = open_plan(three())
    choose_by_keys(open_floor(window), 'Bar*', 'Bath*')
    keys('ctrl+d')
    equal(len(all_fittings(window.saved())), 5, 'things with the copies')
    keys('r')
    turned = [each['name'] for each in all_fittings(window.saved()) if each.get('turn_deg') == 90]
    equal(sorted(turned), ['Bar', 'Bath'], 'copies turned')
    equal(find_fitting(window.saved(), 'Bar').get('turn_deg', 0), 0, 'the first bar')
    keys('ctrl+z', 'ctrl+z')
    equal(len(all_fittings(window.saved())), 3, 'things, undone')


@case('two things are removed by the button over their properties')
def remove_by_mouse():
    window = open_plan(three())
    choose_by_mouse(open_floor(window), (1000, 1000), (2600, 2000))
    window.part('HcProperties').find('Remove', 'push button').click()
    wait(lambda: list(places(window.saved())) == ['Second'], 'both are gone')
    keys('ctrl+z')
    equal(len(all_fittings(window.saved())), 3, 'things, undone')


run()
