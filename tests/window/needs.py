#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The line of a need: opened, what is wrong, what to do, why, who says so, and where."""
import plans
from cases import case, open_plan, run
from floor import open_floor
from screen import equal, keys, wait

WRONG = '2 chickens have nowhere to sleep'
TO_DO = 'Lengthen the bars, or add one more.'
WHY = 'Hens sleep off the ground*'
SOURCE = '*no published source.'


def press(button):
    """Scrolled to first, as a keeper would."""
    button.bring_into_view(run.window.part('HcNeedsPanel'))
    button.click()


def press_by_keys(button):
    button.reach()
    keys('space')


def line_of(window, need):
    """The header that opens a need, and all that is under it."""
    panel = window.part('HcNeedsPanel')
    header = panel.find(need, 'push button')
    item = next(each for each in panel.look_for(role='list item')
                if list(each.look_for(need, 'push button')))
    return header, item


def open_and_close(press_it):
    window = open_plan(plans.two_pens())
    open_floor(window)
    header, item = line_of(window, 'Places to sleep')
    equal(WRONG in item.texts(), False, 'told before')
    press_it(header)
    wait(lambda: {WRONG, TO_DO} <= set(item.texts()), 'what is wrong, and what to do')
    equal(header.has('expanded'), True, 'the line is told to be open')
    why, source = item.find(WHY).name, item.find(SOURCE).name
    equal({why, source} & set(item.texts()), set(), 'why and source before they are asked for')
    ask = item.find('Why?', 'push button')
    press_it(ask)
    wait(lambda: {why, source} <= set(item.texts()), 'why it matters, and who says so')
    press_it(ask)
    wait(lambda: why not in item.texts(), 'why is closed again')
    if press_it is press_by_keys:
        header.reach('shift+Tab')
    press_it(header)
    wait(lambda: WRONG not in item.texts(), 'the line is closed again')
    equal(header.has('expanded'), False, 'the line is told to be closed')


@case('a need is opened to what is wrong, what to do, why and the source, by mouse')
def open_by_mouse():
    open_and_close(press)


@case('a need is opened to what is wrong, what to do, why and the source, by keys')
def open_by_keys():
    open_and_close(press_by_keys)


def show(need, press_it, plan):
    window = open_plan(plan)
    floor = open_floor(window)
    header, item = line_of(window, need)
    press_it(header)
    press_it(item.find('Show Me', 'push button'))
    return window, floor


def show_thing(press_it):
    bars = [plans.roost(*place, base_mm=400)
            for place in (('Bar',), ('Second', 1000, 2000), ('Pole', 3000, 40))]
    window, floor = show('Places to sleep', press_it, plans.two_pens(fittings=bars))
    wait(floor.item('Pole*').has_focus, 'the bar has the focus')
    window.part('HcProperties').find('Length', 'text')


@case('Show Me leads to the thing that is wrong, by mouse')
def show_thing_by_mouse():
    show_thing(press)


@case('Show Me leads to the thing that is wrong, by keys')
def show_thing_by_keys():
    show_thing(press_by_keys)


def show_pen(press_it):
    lone = {**plans.hens(females=1, males=0), 'id': 'lone', 'pen': 'run'}
    window, floor = show('Who lives together', press_it,
                         plans.two_pens(batches=[plans.hens(), lone]))
    wait(floor.item('Run*').has_focus, 'the pen has the focus')
    window.part('HcProperties').find('Width of dig guard', 'text')


@case('Show Me leads to the pen of the birds that are wrong, by mouse')
def show_pen_by_mouse():
    show_pen(press)


@case('Show Me leads to the pen of the birds that are wrong, by keys')
def show_pen_by_keys():
    show_pen(press_by_keys)


def show_group(press_it):
    homeless = {**plans.hens(), 'id': 'homeless', 'name': 'Homeless'}
    del homeless['pen']
    window, _ = show('Who lives together', press_it,
                     plans.two_pens(batches=[plans.hens(), homeless]))
    page = window.part('HcFlockPage')

    def focused():
        return [field.text for field in page.look_for('Name', 'text') if field.has_focus()]
    wait(lambda: focused() == ['Homeless'], 'the card of the group has the focus')


@case('Show Me leads to the card of the birds that are wrong, by mouse')
def show_group_by_mouse():
    show_group(press)


@case('Show Me leads to the card of the birds that are wrong, by keys')
def show_group_by_keys():
    show_group(press_by_keys)


def see_figure(press_it):
    window = open_plan(plans.two_pens())
    open_floor(window)
    header, item = line_of(window, 'Places to sleep')
    press_it(header)
    press_it(item.find('Why?', 'push button'))
    press_it(item.find('See the Figure', 'push button'))
    rules = window.dialog('Whose Rules')
    wait(lambda: any(field.has_focus() for field in rules.look_for('My own figure', 'text')),
         'a figure of one\'s own can be typed')


@case('a finding leads to the figure it is judged by, by mouse')
def figure_by_mouse():
    see_figure(press)


@case('a finding leads to the figure it is judged by, by keys')
def figure_by_keys():
    see_figure(press_by_keys)


run()
