#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Keeping a flock: the day a group hatched, and the day the plan is judged on."""
import plans
from cases import case, open_plan, run
from floor import open_floor
from screen import equal, keys, write_over


def birds_page(window):
    open_floor(window)
    window.find('Birds', 'page tab').click()
    return window.part('HcFlockPage')


@case('the day the plan is judged on is typed')
def type_day():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    page.find('Judged on: *', 'push button').click()
    page.find('Type a day', 'text')
    write_over('2026-08-15')
    page.find('Judged on: 15 Aug 2026', 'push button')
    equal(window.saved()['as_of'], '2026-08-15', 'day')


@case('the day a group hatched is typed by keys, and undone')
def type_hatched():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    page.find('Hatched: *', 'push button').reach()
    keys('space')
    page.find('Type a day', 'text').find(role='text').reach()
    write_over('2026-05-01')
    page.find('Hatched: 1 May 2026', 'push button')
    equal(window.saved()['batches'][0]['hatched'], '2026-05-01', 'hatched')
    keys('ctrl+z')
    page.find('Hatched: 20 Mar 2025', 'push button')


run()
