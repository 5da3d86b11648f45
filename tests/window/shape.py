#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Pens and runs: drawn, stretched by corner and wall, named and given their measures."""
import choices
import plans
from cases import case, open_plan, run
from floor import Floor, open_floor
from plans import layout, part
from screen import drag, equal, keys, near, wait, write_over


def shelf_thing(window, name):
    return window.part('HcShelf').find(name, 'push button')


def pen_of_kind(plan, kind):
    found = [pen for pen in layout(plan)['pens'] if pen['kind'] == kind]
    equal(len(found), 1, f'pens of kind {kind}')
    return found[0]


def middle_of_floor(window):
    left, top, width, height = Floor(window).floor.box
    return left + width / 2, top + height / 2


@case('a pen and a run are drawn by dragging, and share the wall between them')
def draw_pen_and_run():
    window = open_plan(plans.empty())
    left, top = middle_of_floor(window)
    shelf_thing(window, 'draw a pen').click()
    drag((left - 150, top - 80), (left, top + 60))
    pen = pen_of_kind(window.saved(), 'indoor')
    shelf_thing(window, 'draw a run').click()
    drag((left, top - 80), (left + 120, top + 60))
    plan = window.saved()
    shared = set(pen_of_kind(plan, 'run')['walls']) & set(pen_of_kind(plan, 'indoor')['walls'])
    equal(pen['id'], pen_of_kind(plan, 'indoor')['id'], 'the pen that was there')
    equal(len(shared), 1, 'walls shared')


@case('a pen is added by keys, and its lengths are there to type')
def add_pen_by_keys():
    window = open_plan(plans.two_pens())
    shelf = window.part('HcShelf')
    shelf.find('Add one and type its lengths', 'push button').reach()
    keys('space')
    equal(len(layout(window.saved())['pens']), 3, 'pens')


@case('a corner is dragged, and both walls follow')
def drag_corner():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    floor.choose(3000, 500)
    floor.item('Corner 1')
    floor.drag((0, 0), (-700, -500), hold='ctrl')
    corner = part(window.saved(), 'corners', 'nw')
    near(corner['x_mm'], -700, 40, 'across')
    near(corner['y_mm'], -500, 40, 'down')


@case('a wall is dragged, and the pen behind it gives way')
def drag_wall():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    floor.choose(3000, 500)
    handle = floor.item('Wall 2')
    floor.drag((4050, 1500), (4550, 1500))
    plan = window.saved()
    for corner in ('n', 's'):
        near(part(plan, 'corners', corner)['x_mm'], 4500, 40, f'corner {corner}')
    equal(part(plan, 'corners', 'ne')['x_mm'], 7000, 'the far side of the run')
    equal(handle.role, 'push button', 'role of a handle')


@case('a corner goes by arrow keys')
def nudge_corner():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    floor.tab_to('House*')
    floor.tab_to('Corner 1')
    keys('Left')
    before = part(plans.two_pens(), 'corners', 'nw')
    after = window.saved()
    moved = [corner for corner in layout(after)['corners']
             if corner['x_mm'] != part(plans.two_pens(), 'corners', corner['id'])['x_mm']]
    equal(len(moved), 1, 'corners moved')
    equal(moved[0]['x_mm'] - part(plans.two_pens(), 'corners', moved[0]['id'])['x_mm'], -10,
          'by millimetres')
    equal(before['x_mm'], 0, 'where the first began')


@case('a pen is given a name, a height, a floor and bedding')
def describe_pen():
    window = open_plan(plans.two_pens())
    open_floor(window).choose(3000, 500)
    fields = window.part('HcProperties')
    fields.find('Name', 'text').click()
    write_over('Byre end')
    fields.find('Height', 'text').click()
    write_over('2.35 m')
    fields.find('Depth of bedding', 'text').click()
    write_over('12 cm')
    pen = part(window.saved(), 'pens', 'house')
    equal((pen['name'], pen['height_mm'], pen['bedding_mm']), ('Byre end', 2350, 120),
          'name, height and bedding')
    window.part('HcFloorView').find('Byre end*', 'push button')


@case('by keys a pen is given a name, a height and bedding')
def describe_pen_by_keys():
    window = open_plan(plans.two_pens())
    open_floor(window).tab_to('House*')
    keys('Return')
    fields = window.part('HcProperties')
    for label, text in (('Name', 'Byre end'), ('Height', '7\' 8"'),
                        ('Depth of bedding', '4 1/2"')):
        fields.find(label, 'text').reach()
        write_over(text)
    pen = part(window.saved(), 'pens', 'house')
    equal((pen['name'], pen['height_mm'], pen['bedding_mm']), ('Byre end', 2336.8, 114.3),
          'name, height and bedding')


@case('floor and bedding are chosen from lists by keys, which open at what is chosen')
def choose_materials():
    window = open_plan(plans.two_pens())
    open_floor(window).tab_to('House*')
    keys('Return')
    fields = window.part('HcProperties')
    for name in ('Floor', 'Bedding'):
        choice = fields.find(name, 'combo box')
        row = choices.open_by_keys(choice)
        equal(choice.find(role='push button').name, f'{name}: {row.name}', 'where it opens')
        keys('Up', 'Return')
        choices.closed(choice)
    pen = part(window.saved(), 'pens', 'house')
    for member, before in (('floor_layers', ['boards']), ('bedding', 'shavings')):
        equal(pen.get(member) != before, True, f'another {member} than {before}')


@case('by keys a pen becomes part of a new building, which is given a name')
def found_building():
    window = open_plan(plans.two_pens())
    open_floor(window).tab_to('House*')
    keys('Return')
    fields = window.part('HcProperties')
    choice = fields.find('Part of', 'combo box')
    choices.open_by_keys(choice)
    keys('End', 'Return')
    choices.closed(choice)
    fields.find('Name of the building', 'text').reach()
    write_over('The byre')
    plan = window.saved()
    building = part(plan, 'pens', 'house')['building']
    equal([(b['id'], b['name']) for b in plan['buildings']], [(building, 'The byre')],
          'the building of the pen')


run()
