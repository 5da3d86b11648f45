#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Lengths as keepers type them, and the units they are shown in."""
import plans
from cases import case, open_plan, run
from floor import open_floor
from plans import find_fitting
from screen import equal, keys, wait, write_over

TYPED = [('2\' 3 1/2"', 698.5), ('27.5 in', 698.5), ('70 cm', 700), ('0.7m', 700)]


def length_of_bar(window):
    open_floor(window).choose(1000, 1000)
    return window.part('HcProperties').find('Length', 'text')


@case('lengths are typed in feet, inches, centimetres and metres')
def type_lengths():
    window = open_plan(plans.two_pens())
    field = length_of_bar(window)
    for text, mm in TYPED:
        field.click()
        write_over(text)
        equal(find_fitting(window.saved(), 'Bar')['width_mm'], mm, f'what {text} means')


@case('what is not understood keeps the length, and says what would be')
def type_nonsense():
    window = open_plan(plans.two_pens())
    field = length_of_bar(window)
    field.click()
    write_over('a yard or so')
    wait(lambda: field.has('invalid'), 'the field is marked')
    window.part('HcProperties').says('70 cm')
    equal(find_fitting(window.saved(), 'Bar')['width_mm'], 1200, 'the length')


@case('Ctrl+U shows feet, and the plan remembers')
def switch_units():
    window = open_plan(plans.two_pens())
    field = length_of_bar(window)
    equal(field.text, '1.2 m', 'shown before')
    keys('ctrl+u')
    wait(lambda: '″' in field.text or '"' in field.text, 'inches are shown')
    plan = window.saved()
    equal(plan['site']['units'], 'feet', 'units of the plan')
    equal(find_fitting(plan, 'Bar')['width_mm'], 1200, 'the length itself')


run()
