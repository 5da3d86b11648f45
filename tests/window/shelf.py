#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Things to add: every one dragged from the shelf on to the floor, and by keys."""
import plans
from cases import case, open_plan, run
from floor import open_floor
from plans import all_fittings, layout
from screen import carry, equal, keys, near, wait, write

HOUSE_THINGS = 7


def fitting_buttons(window):
    """What fittings there are, without the two tools and the five openings."""
    shelf = window.part('HcShelf')
    shelf.find('roost', 'push button')
    return [button for button in shelf.look_for(role='push button') if button.description
            and not button.description.startswith(('Add one', 'Sizes'))][HOUSE_THINGS:]


def sizes_of(shelf, name):
    """The button with the sizes a thing comes in, which follows the thing's own."""
    buttons = list(shelf.look_for(role='push button'))
    at = next(n for n, button in enumerate(buttons) if button.name == name)
    return next(button for button in buttons[at:] if button.name.startswith('Sizes'))


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


@case('every kind of fitting is found by its name and added by keys')
def add_all_by_keys():
    window = open_plan(plans.two_pens(fittings=[]))
    floor = open_floor(window)
    floor.tab_to('House*')
    names = [button.name for button in fitting_buttons(window)]
    for name in names:
        keys('ctrl+f')
        write(name)
        keys('Return')
    wait(lambda: len(all_fittings(window.saved())) == len(names), 'all of them are added')
    found = all_fittings(window.saved())
    equal(len({(each['kind'], each.get('form')) for each in found}), len(names),
          'kinds and forms of fittings')


@case('a fitting is added by keys from its place in the list')
def add_by_keys():
    window = open_plan(plans.two_pens(fittings=[]))
    open_floor(window).choose(2000, 1500)
    window.part('HcShelf').find('roost', 'push button').reach()
    keys('space')
    equal([each['kind'] for each in all_fittings(window.saved())], ['roost'], 'added')


def bought(window):
    """The one fitting there is, bought in the size that was chosen for it."""
    wait(lambda: all_fittings(window.saved()), 'it is added')
    fitting, = all_fittings(window.saved())
    equal((fitting['device'], fitting['width_mm']), ('bin-50', 420), 'device and its width')
    floor = open_floor(window)
    equal(list(floor.floor.look_for('Right edge')), [], 'edges to drag')
    equal(list(window.part('HcProperties').look_for('Length', 'text')), [], 'lengths to type')


def take_small_bin(window, shelf):
    """From the open list of sizes."""
    window.find('metal bin with a lid, 50 l', 'menu item').reach('Down')
    keys('Return')
    window.frame.is_gone('metal bin with a lid, 50 l', 'menu item')
    wait(lambda: any(thing.has_focus() for thing in shelf.walk()), 'the list lets go of the pointer')
    shelf.says('metal bin with a lid, 50 l')


@case('a size to buy is chosen for a thing, which stays as it is made')
def bought_by_mouse():
    window = open_plan(plans.two_pens(fittings=[]))
    open_floor(window).choose(2000, 1500)
    shelf = window.part('HcShelf')
    thing = shelf.find('store bin', 'push button')
    thing.bring_into_view(shelf)
    sizes_of(shelf, 'store bin').click()
    take_small_bin(window, shelf)
    thing.bring_into_view(shelf)
    thing.click()
    bought(window)


@case('a size to buy is chosen from its list by keys')
def bought_by_keys():
    window = open_plan(plans.two_pens(fittings=[]))
    open_floor(window).choose(2000, 1500)
    shelf = window.part('HcShelf')
    thing = shelf.find('store bin', 'push button')
    sizes_of(shelf, 'store bin').find('Sizes to buy', nth=1).reach('shift+Tab')
    keys('space')
    take_small_bin(window, shelf)
    thing.reach('shift+Tab')
    keys('space')
    bought(window)


run()
