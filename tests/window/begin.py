#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""How plans begin: empty, from three questions, from a ready house, by example."""
import json
import re

from cases import case, open_plan, run
from chooser import save_plan_as
from floor import Floor
from plans import layout
from screen import equal, keys, wait, write, write_over

# What is typed for the outside of each house, and what it means in millimetres.
HOUSES = [
    ('a garden shed', ('3.1 m', 3100), ('9\' 6"', 2895.6)),
    ('a lean-to', ('400 cm', 4000), ('12\' 3"', 3733.8)),
    ('a stone byre', ('6.25 m', 6250), ('20 ft', 6096)),
    ('a gable barn', ('5550 mm', 5550), ('18\' 1/2"', 5499.1)),
    ('a small ark', ('1.8m', 1800), ('5\' 6 1/4"', 1682.75)),
]


def pens(window):
    return [item.name for item in Floor(window).floor.look_for('*m²', 'push button')]


def outside_width(plan):
    """Over the outer faces of the walls of the house."""
    parts = layout(plan)
    pen = next(pen for pen in parts['pens'] if pen['kind'] == 'indoor')
    walls = [wall for wall in parts['walls'] if wall['id'] in pen['walls']]
    ends = {wall['from'] for wall in walls} | {wall['to'] for wall in walls}
    across = [corner['x_mm'] for corner in parts['corners'] if corner['id'] in ends]
    return max(across) - min(across) + 2 * walls[0]['thickness_mm']


def begun(window):
    """The plan that began, by way of a file; what is asked stands on the strip."""
    window.part('HcFloorView')
    wait(lambda: any(re.search(r'\d+ in comfort', thing.name)
                     for thing in window.part('HcStrip').walk()),
         'the strip says in birds how it stands')
    save_plan_as(window, 'mine.hencote')
    return json.loads(window.file.read_text(encoding='utf-8'))


def house_fields(window, number):
    start = window.part('HcStartPage')
    start.find('Begin With This', 'push button', nth=len(HOUSES) - 1)
    return (start.find('Outside width', 'text', nth=number),
            start.find('Begin With This', 'push button', nth=number))


def stretch_house(number, name, typed, mm):
    @case(f'{name} is {typed} wide outside, typed where its picture stands')
    def by_mouse():
        window = open_plan()
        width, button = house_fields(window, number)
        width.bring_into_view(window.part('HcStartPage'))
        width.click()
        write_over(typed)
        button.bring_into_view(window.part('HcStartPage'))
        button.click()
        equal(round(outside_width(begun(window)), 2), mm, f'what {typed} means')


def stretch_house_by_keys(number, name, typed, mm):
    @case(f'{name} is {typed} wide outside, by keys')
    def by_keys():
        window = open_plan()
        width, button = house_fields(window, number)
        width.reach('shift+Tab' if number > 1 else 'Tab')
        write_over(typed)
        button.reach()
        keys('space')
        equal(round(outside_width(begun(window)), 2), mm, f'what {typed} means')


for n, (house, metric, feet) in enumerate(HOUSES):
    stretch_house(n, house, *metric)
    stretch_house_by_keys(n, house, *feet)


@case('a house cannot be made smaller than it works, and says so')
def too_small():
    window = open_plan()
    width, button = house_fields(window, 1)
    width.reach()
    write_over('1 m')
    button.reach()
    keys('space')
    window.part('HcStartPage').says('from')
    window.part('HcStartPage').find('Begin With This', 'push button')


@case('three questions are answered by typing, and the house is as large as typed')
def three_questions():
    window = open_plan()
    start = window.part('HcStartPage')
    for label, text in (('Width', '3 m'), ('Length', '4 m')):
        start.find(label, 'text').click()
        write_over(text)
    start.find('Begin', 'push button').click()
    wait(lambda: any('12 m²' in name for name in pens(window)), 'a pen of 3 m by 4 m')


@case('three questions are answered by keys alone, birds and cold as well')
def three_questions_by_keys():
    window = open_plan()
    start = window.part('HcStartPage')
    start.find('Width', 'text').reach()
    keys('ctrl+a')
    write('10 ft')
    start.find('Length', 'text').reach()
    keys('ctrl+a')
    write('400 cm')
    start.find('How many', 'spin button').reach()
    keys('ctrl+a')
    write('9')
    start.find('Coldest night*', 'spin button').reach()
    keys('ctrl+a')
    write('-18')
    start.find('Begin', 'push button').reach()
    keys('space')
    plan = begun(window)
    equal(plan['site']['coldest_night_c'], -18, 'coldest night')
    equal(sum(batch.get('females', 0) + batch.get('males', 0) for batch in plan['batches']), 9,
          'birds')
    wait(lambda: any('12.19 m²' in name for name in pens(window)), 'a pen of 10 ft by 4 m')


@case('the example opens by keys')
def example():
    window = open_plan()
    window.part('HcStartPage').find('*Look at an Example', 'push button').reach()
    keys('space')
    wait(lambda: len(pens(window)) == 7, 'the pens of the example')


@case('an empty plan has nothing on its floor, by mouse')
def empty():
    window = open_plan()
    window.part('HcStartPage').find('*Empty Plan', 'push button').click()
    window.part('HcFloorView')
    equal(pens(window), [], 'pens')


@case('an empty plan has nothing on its floor, by keys')
def empty_by_keys():
    window = open_plan()
    window.part('HcStartPage').find('*Empty Plan', 'push button').reach()
    keys('space')
    window.part('HcFloorView')
    equal(pens(window), [], 'pens')


run()
