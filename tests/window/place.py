#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The place the house stands in, and the hour it is looked at."""
import plans
from cases import case, open_plan, run
from floor import open_floor
from screen import equal, keys, wait, write_over


def place_page(window):
    open_floor(window)
    window.find('Place', 'page tab').click()
    return window.part('HcSitePage')


def site(window):
    return window.saved()['site']


@case('the coldest night is made colder by the button')
def coldest_by_mouse():
    window = open_plan(plans.two_pens())
    field = place_page(window).find('Coldest night*', 'spin button')
    left, top, width, height = field.box
    field.click(at=(left + width - height * 1.5, top + height / 2))
    wait(lambda: field.text in ('-6', '−6'), 'it is a degree colder')
    equal(site(window)['coldest_night_c'], -6, 'coldest night')


@case('the coldest night is typed, and undone')
def coldest_by_keys():
    window = open_plan(plans.two_pens())
    field = place_page(window).find('Coldest night*', 'spin button')
    field.reach()
    write_over('-18')
    equal(site(window)['coldest_night_c'], -18, 'coldest night')
    keys('ctrl+z')
    wait(lambda: field.text in ('-5', '−5'), 'it is as before')


@case('birds that stay in are told of by the switch, by mouse')
def stay_in_by_mouse():
    window = open_plan(plans.two_pens())
    switch = place_page(window).find('Birds go out', 'check box')
    needs = window.part('HcNeedsPanel')
    needs.find('Room outside', 'push button')
    switch.click()
    needs.is_gone('Room outside', 'push button')
    equal(site(window)['birds_go_out'], False, 'birds go out')


@case('birds that stay in are told of by the switch, by keys')
def stay_in_by_keys():
    window = open_plan(plans.two_pens())
    place_page(window).find('Birds go out', 'check box').reach()
    keys('space')
    window.part('HcNeedsPanel').is_gone('Room outside', 'push button')
    equal(site(window)['birds_go_out'], False, 'birds go out')


@case('a predator is ticked, unticked and ticked again by undoing, by keys')
def tick_by_keys():
    window = open_plan(plans.two_pens())
    place_page(window).find('fox', 'check box').reach()
    keys('space')
    window.part('HcNeedsPanel').find('Predators', 'push button')
    keys('space')
    window.part('HcNeedsPanel').is_gone('Predators', 'push button')
    keys('ctrl+z')
    window.part('HcNeedsPanel').find('Predators', 'push button')
    equal(site(window)['predators'], ['fox'], 'predators')


@case('a predator is ticked, unticked and ticked again by undoing, by mouse')
def tick_by_mouse():
    window = open_plan(plans.two_pens())
    page = place_page(window)
    switch = page.find('fox', 'check box')
    switch.bring_into_view(page, across=0.05)
    switch.click()
    window.part('HcNeedsPanel').find('Predators', 'push button')
    switch.click()
    window.part('HcNeedsPanel').is_gone('Predators', 'push button')
    keys('ctrl+z')
    window.part('HcNeedsPanel').find('Predators', 'push button')
    equal(site(window)['predators'], ['fox'], 'predators')


def condition_changes_lines(window, look_at):
    open_floor(window)
    needs = window.part('HcNeedsPanel')
    needs.find('Feeders', 'push button')
    look_at('Night')
    needs.is_gone('Feeders', 'push button')
    look_at('Shut In')
    needs.find('Feeders', 'push button')
    needs.is_gone('Room outside', 'push button')
    look_at('Day')
    needs.find('Room outside', 'push button')


@case('night, shut in and day each show their own needs, by mouse')
def condition_by_mouse():
    window = open_plan(plans.two_pens())
    condition_changes_lines(window, lambda name: window.part('HcStrip').find(name).click())


@case('night, shut in and day each show their own needs, by keys')
def condition_by_keys():
    window = open_plan(plans.two_pens())
    key = {'Day': 'alt+1', 'Night': 'alt+2', 'Shut In': 'alt+3'}
    condition_changes_lines(window, lambda name: keys(key[name]))


run()
