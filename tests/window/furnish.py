#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Fittings and openings: moved, turned, resized, copied, removed, undone."""
import plans
from cases import case, open_plan, run
from floor import open_floor
from plans import all_fittings, find_fitting, part
from screen import drag, equal, keys, near, wait, x


@case('a fitting is dragged to where it is let go')
def move():
    window = open_plan(plans.two_pens())
    open_floor(window).drag((2600, 2000), (2000, 1500), hold='ctrl')
    bath = find_fitting(window.saved(), 'Bath')
    near(bath['x_mm'], 2000, 30, 'across')
    near(bath['y_mm'], 1500, 30, 'down')


@case('a fitting dragged close to a wall stands at the wall')
def move_to_wall():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    floor.drag((2600, 2000), (2600, 2660))
    equal(find_fitting(window.saved(), 'Bath')['y_mm'], 2700, 'against the south wall')


@case('a fitting dragged into the run belongs to the run')
def move_to_other_pen():
    window = open_plan(plans.two_pens())
    open_floor(window).drag((2600, 2000), (5600, 1500), hold='ctrl')
    equal([each['name'] for each in part(window.saved(), 'pens', 'run')['fittings']], ['Bath'],
          'in the run')


@case('arrow keys move by a centimetre, with Shift by ten, with Alt by a millimetre')
def nudge():
    window = open_plan(plans.two_pens())
    open_floor(window).tab_to('Bath*')
    keys('Right')
    keys('shift+Down')
    keys('alt+Left')
    bath = find_fitting(window.saved(), 'Bath')
    equal((bath['x_mm'], bath['y_mm']), (2609, 2100), 'place')


@case('a fitting is turned by its handle')
def turn_by_handle():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    floor.choose(1000, 1000)
    handle = floor.item('Turn')
    left, top = handle.middle
    drag((left, top), floor.px(2000, 1000))
    equal(find_fitting(window.saved(), 'Bar')['turn_deg'], 90, 'turned')


@case('a fitting is turned by the keys R and ]')
def turn_by_keys():
    window = open_plan(plans.two_pens())
    open_floor(window).tab_to('Bar*')
    keys('r')
    equal(find_fitting(window.saved(), 'Bar')['turn_deg'], 90, 'a quarter')
    keys('bracketright')
    equal(find_fitting(window.saved(), 'Bar')['turn_deg'], 105, 'and fifteen degrees')


@case('a fitting is made longer by its edge, and the other end stays')
def resize_by_handle():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    floor.choose(1000, 1000)
    floor.item('Right edge')
    floor.drag((1600, 1000), (1950, 1000), hold='ctrl')
    bar = find_fitting(window.saved(), 'Bar')
    near(bar['width_mm'], 1550, 30, 'length')
    near(bar['x_mm'] - bar['width_mm'] / 2, 400, 0.01, 'the other end')


@case('a fitting is made longer by arrow keys on its edge')
def resize_by_keys():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    floor.tab_to('Bar*')
    floor.tab_to('Right edge')
    keys('Right', 'Right')
    equal(find_fitting(window.saved(), 'Bar')['width_mm'], 1220, 'length')


@case('a fitting is copied and removed by keys')
def copy_and_remove():
    window = open_plan(plans.two_pens())
    open_floor(window).tab_to('Bath*')
    keys('ctrl+d')
    copies = [each for each in all_fittings(window.saved()) if each.get('name') == 'Bath']
    equal(len(copies), 2, 'baths')
    equal(len({each['id'] for each in copies}), 2, 'ids of their own')
    keys('Delete')
    equal(len(all_fittings(window.saved())), 2, 'fittings after the copy is removed')


@case('a fitting is copied and removed by the buttons over its properties')
def copy_and_remove_by_mouse():
    window = open_plan(plans.two_pens())
    open_floor(window).choose(2600, 2000)
    fields = window.part('HcProperties')
    fields.find('Duplicate', 'push button').click()
    wait(lambda: len(all_fittings(window.saved())) == 3, 'there is a copy')
    fields.find('Remove', 'push button').click()
    wait(lambda: len(all_fittings(window.saved())) == 2, 'the copy is gone')


@case('with Shift a second thing is chosen as well, and both go')
def choose_two():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    floor.choose(2600, 2000)
    x('keydown', 'shift')
    floor.choose(1000, 1000)
    x('keyup', 'shift')
    keys('Delete')
    equal(all_fittings(window.saved()), [], 'fittings left')


@case('with Shift what was chosen is let go again')
def unchoose():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    floor.choose(2600, 2000)
    x('keydown', 'shift')
    floor.choose(1000, 1000)
    floor.choose(1000, 1000)
    x('keyup', 'shift')
    keys('Delete')
    equal([each['name'] for each in all_fittings(window.saved())], ['Bar'], 'fittings left')


@case('all is chosen by Ctrl+A and a drag is given up by Escape')
def give_up():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    floor.drag((2600, 2000), (2000, 1500), before_release=lambda: keys('Escape'))
    equal(find_fitting(window.saved(), 'Bath'), find_fitting(plans.two_pens(), 'Bath'),
          'as it was')
    keys('ctrl+a', 'Delete')
    equal(all_fittings(window.saved()), [], 'fittings left')


def with_pop_hole():
    return plans.two_pens(openings=[plans.opening('hole', 'pop_hole', 'south', 2000, 400, 400)])


@case('an opening slides along its wall, and on to another')
def slide_opening():
    window = open_plan(with_pop_hole())
    floor = open_floor(window)
    floor.drag((2000, 3050), (3000, 3050))
    hole = part(window.saved(), 'openings', 'hole')
    equal(hole['wall'], 'south', 'still in its wall')
    near(hole['along_mm'], 1000, 60, 'along it')
    floor.drag((3000, 3050), (4050, 1500))
    equal(part(window.saved(), 'openings', 'hole')['wall'], 'middle', 'in the other wall')


@case('an opening slides by arrow keys')
def nudge_opening():
    window = open_plan(with_pop_hole())
    open_floor(window).tab_to('Pop hole*')
    keys('Right')
    equal(part(window.saved(), 'openings', 'hole')['along_mm'], 1990, 'along the wall')


@case('a drag is one step of undo, told by its name')
def undo_drag():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    floor.drag((2600, 2000), (2000, 1500), steps=20)
    moved = find_fitting(window.saved(), 'Bath')
    undo = window.find('Undo*', 'push button')
    wait(lambda: 'Move' in undo.name + undo.description, 'undo tells what it takes back')
    keys('ctrl+z')
    equal(find_fitting(window.saved(), 'Bath'), find_fitting(plans.two_pens(), 'Bath'), 'undone')
    keys('ctrl+shift+z')
    equal(find_fitting(window.saved(), 'Bath'), moved, 'done again')
    undo.click()
    equal(find_fitting(window.saved(), 'Bath'), find_fitting(plans.two_pens(), 'Bath'),
          'undone by the button')


run()
