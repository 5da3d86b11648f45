#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Things to add: every one dragged from the shelf on to the floor, and by keys."""
import plans
from cases import case, open_plan, run
from floor import open_floor
from plans import all_fittings, layout
from screen import carry, equal, keys, near, wait

HOUSE_THINGS = 7


def fitting_buttons(window):
    """What fittings there are, without the two tools and the five openings."""
    shelf = window.part('HcShelf')
    shelf.find('roost', 'push button')
    return [button for button in shelf.look_for(role='push button') if button.description
            and not button.description.startswith(('Add one', 'Sizes'))][HOUSE_THINGS:]


@case('every kind of fitting is dragged from the shelf on to the floor')
def drag_all():
    window = open_plan(plans.two_pens(fittings=[]))
    floor = open_floor(window)
    shelf = window.part('HcShelf')
    buttons = fitting_buttons(window)
    for n, button in enumerate(buttons, 1):
        name = button.name
        button.bring_into_view(shelf)
        carry(button, floor.px(2000, 1500))
        wait(lambda: len(all_fittings(window.saved())) == n, f'{name!r} is dropped')
        keys('Escape')
        wait(lambda: window.look_for_part('HcProperties') is None, 'nothing is chosen')
    found = all_fittings(window.saved())
    equal(len({(each['kind'], each.get('form')) for each in found}), len(buttons),
          'kinds and forms of fittings')
    for each in found:
        near(each['x_mm'], 2000, 60, f'{each["kind"]} across')
        near(each['y_mm'], 1500, 60, f'{each["kind"]} down')


@case('every kind of opening is dragged into a wall')
def drag_openings():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    for n, name in enumerate(('keeper door', 'pop hole', 'window', 'vent', 'egg door'), 1):
        carry(window.part('HcShelf').find(name, 'push button'), floor.px(500 + 600 * n, 60))
        wait(lambda: len(layout(window.saved()).get('openings', [])) == n, f'{name} is dropped')
        keys('Escape')
    openings = layout(window.saved())['openings']
    equal({each['wall'] for each in openings}, {'north'}, 'walls')
    equal(len({each['kind'] for each in openings}), 5, 'kinds of openings')


@case('a fitting is added by keys')
def add_by_keys():
    window = open_plan(plans.two_pens(fittings=[]))
    open_floor(window).choose(2000, 1500)
    window.part('HcShelf').find('roost', 'push button').reach()
    keys('space')
    equal([each['kind'] for each in all_fittings(window.saved())], ['roost'], 'added')


run()
