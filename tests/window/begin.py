#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""How plans begin: empty, from three questions, from a ready house, by example."""
from cases import case, open_plan, run
from floor import Floor
from screen import equal, keys, wait, write_over


def pens(window):
    return [item.name for item in Floor(window).floor.look_for('*m²', 'push button')]


@case('three questions are answered by typing, and the house is as large as typed')
def three_questions():
    window = open_plan()
    start = window.part('HcStartPage')
    for label, text in (('Width', '3 m'), ('Length', '4 m')):
        start.find(label, 'text').click()
        write_over(text)
    start.find('Begin', 'push button').click()
    wait(lambda: any('12 m²' in name for name in pens(window)), 'a pen of 3 m by 4 m')


@case('the example opens by keys')
def example():
    window = open_plan()
    window.part('HcStartPage').find('*Look at an Example', 'push button').reach()
    keys('space')
    wait(lambda: len(pens(window)) == 7, 'the pens of the example')


@case('a ready house opens with birds in it')
def ready_house():
    window = open_plan()
    start = window.part('HcStartPage')
    button = start.find('Begin With This', 'push button')
    button.click()
    wait(lambda: len(pens(window)) == 2, 'a house and its run')


@case('an empty plan has nothing on its floor')
def empty():
    window = open_plan()
    window.part('HcStartPage').find('*Empty Plan', 'push button').click()
    window.part('HcFloorView')
    equal(pens(window), [], 'pens')


run()
