#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Openings of every kind: put into walls, slid along, moved to another wall."""
import plans
from cases import case, open_plan, run
from floor import open_floor
from plans import layout, part
from screen import equal, keys, near, wait, write, write_over

KINDS = {'keeper_door': 'Keeper door', 'pop_hole': 'Pop hole', 'window': 'Window',
         'vent': 'Vent', 'egg_door': 'Egg door'}


def with_every_kind():
    return plans.two_pens(openings=[
        plans.opening(kind, kind, 'south', 500 + 700 * n, 400, 400)
        for n, kind in enumerate(KINDS)])


@case('every kind of opening is found by its name and added by keys')
def add_all():
    window = open_plan(plans.two_pens())
    for n, name in enumerate(KINDS.values(), 1):
        open_floor(window).tab_to('House*')
        keys('ctrl+f')
        write(name.lower())
        keys('Return')
        wait(lambda: len(layout(window.saved()).get('openings', [])) == n, f'{name} is added')
        keys('Delete')
        wait(lambda: len(layout(window.saved()).get('openings', [])) == n - 1,
             f'{name} is removed')
        keys('ctrl+z')
    equal({each['kind'] for each in layout(window.saved())['openings']}, set(KINDS), 'kinds')


@case('every kind of opening slides along its wall by dragging')
def slide_all():
    window = open_plan(with_every_kind())
    floor = open_floor(window)
    for n, kind in enumerate(KINDS):
        place = 4000 - 500 - 700 * n
        floor.drag((place, 3050), (place - 150, 3050), hold='ctrl')
        hole = part(window.saved(), 'openings', kind)
        equal(hole['wall'], 'south', f'wall of the {kind}')
        near(hole['along_mm'], 650 + 700 * n, 40, f'{kind} along it')


@case('every kind of opening is dragged to another wall')
def to_other_wall():
    window = open_plan(with_every_kind())
    floor = open_floor(window)
    for n, kind in enumerate(KINDS):
        place = 4000 - 500 - 700 * n
        floor.drag((place, 3050), (place, -40))
        equal(part(window.saved(), 'openings', kind)['wall'], 'north', f'wall of the {kind}')


@case('every kind of opening slides by arrow keys and goes to the next wall by Page Down')
def by_keys():
    window = open_plan(with_every_kind())
    floor = open_floor(window)
    for n, (kind, name) in enumerate(KINDS.items()):
        floor.tab_to(f'{name}*')
        keys('Left')
        equal(part(window.saved(), 'openings', kind)['along_mm'], 510 + 700 * n, f'{kind} along')
        keys('Next')
        equal(part(window.saved(), 'openings', kind)['wall'], 'west', f'next wall of the {kind}')
        keys('Prior')
        equal(part(window.saved(), 'openings', kind)['wall'], 'south', f'{kind} is back')
        keys('ctrl+z', 'ctrl+z')


@case('Enter leads to the measures of an opening, which are typed')
def type_measures():
    window = open_plan(plans.two_pens(openings=[
        plans.opening('hole', 'pop_hole', 'south', 2000, 400, 400)]))
    open_floor(window).tab_to('Pop hole*')
    keys('Return')
    fields = window.part('HcProperties')
    for label, text in (('Width', '14"'), ('Height', '45 cm'), ('Above the floor', '0.2m'),
                        ('Along the wall', '1.5 m')):
        fields.find(label, 'text').reach()
        write_over(text)
    hole = part(window.saved(), 'openings', 'hole')
    equal((hole['width_mm'], hole['height_mm'], hole['sill_mm'], hole['along_mm']),
          (355.6, 450, 200, 1500), 'width, height, sill and place')
    keys('Escape')
    wait(open_floor(window).item('Pop hole*').has_focus, 'Escape goes back to the floor')


run()
