# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Small plans the window tests begin with: a house of four metres by three, a
run beside it, and named fittings that are easy to find."""


def _corner(name, x, y):
    return {'id': name, 'x_mm': x, 'y_mm': y}


def _wall(name, start, end, kind='solid'):
    return {'id': name, 'from': start, 'to': end, 'kind': kind,
            'thickness_mm': 100 if kind == 'solid' else 50}


def fitting(kind, name, x, y, width, depth, **more):
    return {'id': name.lower().replace(' ', '-'), 'kind': kind, 'name': name, 'x_mm': x,
            'y_mm': y, 'width_mm': width, 'depth_mm': depth, **more}


def roost(name='Bar', x=1000, y=1000, **more):
    return fitting('roost', name, x, y, 1200, 60,
                   **{'height_mm': 50, 'base_mm': 600, 'bars': 1, 'bar_width_mm': 60, **more})


def bath(name='Bath', x=2600, y=2000, **more):
    return fitting('dust_bath', name, x, y, 800, 600, height_mm=250, **more)


def opening(name, kind, wall, along, width=600, height=600, **more):
    return {'id': name, 'kind': kind, 'wall': wall, 'along_mm': along, 'width_mm': width,
            'height_mm': height, **more}


def hens(females=6, males=1, pen='house'):
    return {'id': 'hens', 'name': 'Hens', 'breed': 'orpington', 'females': females,
            'males': males, 'hatched': '2025-03-20', 'pen': pen}


def two_pens(fittings=None, openings=None, batches=None, units='metric'):
    return {
        'format': 'hencote-plan', 'version': 1, 'uid': 'window-test', 'title': 'Window test',
        'as_of': '2026-06-01',
        'site': {'units': units, 'coldest_night_c': -5, 'birds_go_out': True},
        'rules': {'standard': 'home-cold'},
        'buildings': [],
        'variants': [{
            'id': 'main',
            'corners': [_corner('nw', 0, 0), _corner('n', 4000, 0), _corner('s', 4000, 3000),
                        _corner('sw', 0, 3000), _corner('ne', 7000, 0),
                        _corner('se', 7000, 3000)],
            'walls': [_wall('north', 'nw', 'n'), _wall('middle', 'n', 's'),
                      _wall('south', 's', 'sw'), _wall('west', 'sw', 'nw'),
                      _wall('fence-north', 'n', 'ne', 'fence'),
                      _wall('fence-east', 'ne', 'se', 'fence'),
                      _wall('fence-south', 'se', 's', 'fence')],
            'openings': openings or [],
            'pens': [
                {'id': 'house', 'name': 'House', 'kind': 'indoor', 'height_mm': 2000,
                 'walls': ['north', 'middle', 'south', 'west'], 'floor_layers': ['boards'],
                 'bedding': 'shavings', 'bedding_mm': 60, 'roof': 'solid',
                 'fittings': [roost(), bath()] if fittings is None else fittings},
                {'id': 'run', 'name': 'Run', 'kind': 'run', 'height_mm': 1800,
                 'walls': ['middle', 'fence-north', 'fence-east', 'fence-south'],
                 'floor_layers': ['earth'], 'roof': 'none', 'fittings': []}],
            'loose_fittings': []}],
        'variant': 'main',
        'batches': [hens()] if batches is None else batches}


def empty():
    plan = two_pens(fittings=[], batches=[])
    plan['variants'][0].update(corners=[], walls=[], pens=[])
    return plan


def layout(plan):
    return plan['variants'][0]


def part(plan, group, name):
    return next(each for each in layout(plan)[group] if each['id'] == name)


def all_fittings(plan):
    found = list(layout(plan).get('loose_fittings', []))
    for pen in layout(plan)['pens']:
        found += pen.get('fittings', [])
    return found


def find_fitting(plan, name):
    return next(each for each in all_fittings(plan) if each.get('name') == name)
