#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Looking closer, farther and elsewhere, by wheel, drag, buttons and keys."""
import subprocess

import plans
from cases import case, open_plan, run
from floor import open_floor
from screen import drag, equal, keys, near, wait, x


# Four steps of 10, 20 or 50 cm, 1 m or 2 m.
ROUND_MM = (400, 800, 2000, 4000, 8000)


def scale_of(floor):
    return floor.measure().scale


def wait_for_scale(floor, times, before, what):
    wait(lambda: abs(scale_of(floor) / before - times) < 0.02, what)


def whole(floor):
    """What shows that all is seen as it was: the plan is as wide as its room."""
    floor.measure()
    return round(floor.left), round(floor.scale, 3)


def bar_length(floor):
    """Pixels of the scale bar in the corner of the floor, read off the screen."""
    left, top, _, height = floor.floor.box
    area = f'190x1+{left + 10}+{top + height - 17}'
    row = subprocess.run(['import', '-window', 'root', '-crop', area, '-depth', '8', 'gray:-'],
                         check=True, capture_output=True).stdout
    paper = max(set(row), key=row.count)
    inked = [i for i, shade in enumerate(row) if abs(shade - paper) > 30]
    return inked[-1] - inked[0] + 1 if inked else 0


@case('buttons look closer, farther, and at the whole plan')
def buttons():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    first, seen = floor.scale, whole(floor)
    window.find('Look closer', 'push button').click()
    wait_for_scale(floor, 1.25, first, 'the plan is larger')
    window.find('Look from farther away', 'push button').click()
    wait_for_scale(floor, 1, first, 'the plan is as large as before')
    window.find('Look from farther away', 'push button').click()
    wait_for_scale(floor, 0.8, first, 'the plan is smaller')
    window.find('See the whole plan', 'push button').click()
    wait(lambda: whole(floor) == seen, 'the whole plan is seen')


@case('keys look closer, farther, and at the whole plan')
def by_keys():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    first, seen = floor.scale, whole(floor)
    keys('ctrl+plus')
    wait_for_scale(floor, 1.25, first, 'the plan is larger')
    keys('ctrl+minus', 'ctrl+minus')
    wait_for_scale(floor, 0.8, first, 'the plan is smaller')
    keys('ctrl+0')
    wait(lambda: whole(floor) == seen, 'the whole plan is seen')


@case('the wheel looks closer, and what is under the pointer stays there')
def wheel():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    first, under = floor.scale, floor.px(1000, 500)
    x('mousemove', round(under[0]), round(under[1]), 'click', 4, 'click', 4)
    wait_for_scale(floor, 1.15 ** 2, first, 'the plan is larger')
    left, top = floor.px(1000, 500)
    near(left, under[0], 3, 'across')
    near(top, under[1], 3, 'down')
    x('click', 5, 'click', 5, 'click', 5)
    wait_for_scale(floor, 1 / 1.15, first, 'the plan is smaller')


@case('the floor is dragged where nothing stands, and with the middle button anywhere')
def pan_by_drag():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    for button, start in ((1, (3000, -1500)), (2, (2600, 2000))):
        left, top = floor.measure().left, floor.top
        start = floor.px(*start)
        drag(start, (start[0] + 60, start[1] + 40), button=button)
        wait(lambda: abs(floor.measure().left - left - 60) < 3, 'the floor went across')
        near(floor.top - top, 40, 3, 'down')
    equal(plans.find_fitting(window.saved(), 'Bath')['x_mm'], 2600, 'nothing is moved')


@case('arrow keys look further when nothing is chosen')
def pan_by_keys():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    floor.tab_to('House*')
    keys('Escape')
    left, top = floor.left, floor.top
    keys('Right', 'Down')
    wait(lambda: abs(floor.measure().left - left + 40) < 3, 'further to the right')
    near(floor.top - top, -40, 3, 'further down')
    keys('ctrl+0')
    wait(lambda: abs(floor.measure().left - left) < 2, 'the whole plan is seen')


@case('the scale bar follows: it is as long as its round figure at every scale')
def scale_bar():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    lengths = set()
    for _ in range(4):
        before = floor.measure().scale

        def is_round():
            pixels = bar_length(floor)
            mm = pixels / floor.scale
            near_mm = min(ROUND_MM, key=lambda each: abs(each - mm))
            lengths.add(near_mm)
            return pixels and abs(mm - near_mm) < 4 / floor.scale
        wait(is_round, 'the bar is as long as a round measure')
        keys('ctrl+plus')
        wait_for_scale(floor, 1.25, before, 'the plan is larger')
    equal(len(lengths) > 1, True, 'another measure when close')


run()
