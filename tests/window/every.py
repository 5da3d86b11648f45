#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Every kind of fitting is moved, stretched and turned, by mouse and by keys."""
import json
import pathlib

import plans
from cases import case, open_plan, run
from floor import open_floor
from plans import find_fitting
from screen import drag, equal, keys, near, wait

BOOK = pathlib.Path(__file__).parents[2] / 'data' / 'fittings' / 'fittings.json'
ACROSS, DOWN = 5, 4
BY_MM = 150


def kinds():
    """Each kind and form once, bought where it is not made to measure."""
    for kind in json.loads(BOOK.read_text(encoding='utf-8'))['fitting_types']:
        more = {} if kind.get('stretches') else {'device': kind['devices'][0]['id']}
        yield {'kind': kind['kind'], 'form': kind['form'], **more}


def places():
    """Where each stands, and whether its edges can be dragged."""
    for n, kind in enumerate(kinds()):
        at = 400 + 750 * (n % ACROSS), 400 + 700 * (n // ACROSS % DOWN)
        yield n, kind, at


def house_with(chosen):
    return plans.two_pens(fittings=[
        plans.fitting(kind['kind'], f'F{n}', *at, 500, 300, base_mm=400,
                      **{name: kind[name] for name in ('form', 'device') if name in kind})
        for n, kind, at in chosen])


def by_mouse(chosen):
    window = open_plan(house_with(chosen))
    floor = open_floor(window)
    for _, kind, (x, y) in chosen:
        floor.drag((x, y), (x + BY_MM, y - BY_MM), hold='ctrl')
        if 'device' not in kind:
            edge, at = floor.item('Right edge'), floor.px(x + 250 + BY_MM, y - BY_MM)
            wait(lambda: abs(edge.middle[0] - at[0]) < 4, 'the edge is where it was dragged')
            drag(at, (at[0] + BY_MM * floor.scale, at[1]), hold='ctrl')
    plan = window.saved()
    for n, kind, (x, y) in chosen:
        fitting = find_fitting(plan, f'F{n}')
        longer = 0 if 'device' in kind else BY_MM
        near(fitting['width_mm'], 500 + longer, 30, f'length of {kind}')
        near(fitting['x_mm'], x + BY_MM + longer / 2, 30, f'{kind} across')
        near(fitting['y_mm'], y - BY_MM, 30, f'{kind} down')


def by_keys(chosen):
    window = open_plan(house_with(chosen))
    floor = open_floor(window)
    for n, kind, at in chosen:
        floor.choose(*at)
        wait(floor.item(f'F{n}*').has_focus, f'{kind} has the focus')
        keys('shift+Right', 'Up')
        if 'device' not in kind:
            floor.item('Right edge').reach()
            keys('Right', 'Right')
        keys('r', 'Escape')
    plan = window.saved()
    for n, kind, (x, y) in chosen:
        fitting = find_fitting(plan, f'F{n}')
        longer = 0 if 'device' in kind else 20
        equal((fitting['width_mm'], fitting['x_mm'], fitting['y_mm'], fitting['turn_deg']),
              (500 + longer, x + 100 + longer / 2, y - 10, 90), f'{kind}')


HALF = ACROSS * DOWN // 2
for part, name in ((slice(None, HALF), 'the first half'), (slice(HALF, None), 'the others')):
    some = list(places())[part]
    case(f'every kind is moved and stretched by mouse: {name}')(lambda some=some: by_mouse(some))
    case(f'every kind is moved, stretched and turned by keys: {name}')(
        lambda some=some: by_keys(some))

run()
