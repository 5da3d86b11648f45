#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Lengths as keepers type them, and the units they are shown in."""
import menus
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


@case('lengths are typed in every unit by keys alone')
def type_lengths_by_keys():
    window = open_plan(plans.two_pens())
    open_floor(window).tab_to('Bar*')
    keys('Return')
    field = window.part('HcProperties').find('Length', 'text')
    field.reach()
    for text, mm in TYPED:
        write_over(text)
        equal(find_fitting(window.saved(), 'Bar')['width_mm'], mm, f'what {text} means')


@case('what is not understood by keys keeps the length, and says what would be')
def type_nonsense_by_keys():
    window = open_plan(plans.two_pens())
    open_floor(window).tab_to('Bar*')
    keys('Return')
    field = window.part('HcProperties').find('Length', 'text')
    field.reach()
    write_over('3 doors')
    wait(lambda: field.has('invalid'), 'the field is marked')
    window.part('HcProperties').says('70 cm')
    equal(find_fitting(window.saved(), 'Bar')['width_mm'], 1200, 'the length')
    write_over('70 cm')
    wait(lambda: not field.has('invalid'), 'the field is as others')
    equal(find_fitting(window.saved(), 'Bar')['width_mm'], 700, 'the length')


def switch_units(switch):
    window = open_plan(plans.two_pens())
    field = length_of_bar(window)
    equal(field.text, '1.2 m', 'shown before')
    switch(window)
    wait(lambda: '″' in field.text or '"' in field.text, 'inches are shown')
    plan = window.saved()
    equal(plan['site']['units'], 'feet', 'units of the plan')
    equal(find_fitting(plan, 'Bar')['width_mm'], 1200, 'the length itself')
    switch(window)
    wait(lambda: field.text == '1.2 m', 'metres are shown again')


@case('Ctrl+U shows feet, and the plan remembers')
def units_by_keys():
    switch_units(lambda window: keys('ctrl+u'))


@case('the menu shows feet and metres by mouse')
def units_by_mouse():
    switch_units(lambda window: menus.by_mouse(window, 'Feet and Inches'))


@case('the menu shows feet and metres by keys')
def units_by_menu_keys():
    switch_units(lambda window: menus.by_keys(window, 'Feet and Inches'))


run()
