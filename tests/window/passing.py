#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Passing through the window with Tab and back with Shift+Tab: no way leads into a trap."""
import plans
from cases import case, open_plan, run
from floor import open_floor


@case('Shift+Tab leaves the floor, and Tab comes back to it')
def leave_floor():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    floor.tab_to('Bath*')
    window.part('HcShelf').find('post', 'push button').reach('shift+Tab')
    floor.item('Run*').reach()


@case('Shift+Tab passes every field of what is selected')
def leave_fields():
    window = open_plan(plans.two_pens())
    open_floor(window).choose(1000, 1000)
    fields = window.part('HcProperties')
    fields.find('Above the floor', 'text').click()
    fields.find('Name', 'text').reach('shift+Tab')
    window.part('HcShelf').find('post', 'push button').reach('shift+Tab')


@case('Tab goes on past the floor and its buttons to the needs')
def pass_floor():
    window = open_plan(plans.two_pens())
    open_floor(window).tab_to('House*')
    need = window.part('HcNeedsPanel').find('Places to sleep', 'push button')
    need.reach()
    window.find('Look closer', 'push button').reach('shift+Tab')


run()
