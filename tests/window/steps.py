#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Every step is undone and done again, one by one, and is told by its name."""
import plans
from cases import case, open_plan, run
from floor import open_floor
from screen import equal, keys, wait, write, write_over


class Steps:
    """Steps taken in one window, from the plan as it was saved first."""

    def __init__(self, window):
        self.window = window
        self.undo = window.find('Undo*', 'push button')
        self.redo = window.find('Redo*', 'push button')
        self.first = window.saved()
        self.names = []

    def took(self, name):
        wait(lambda: f'“{name}”' in self.undo.name + self.undo.description,
             f'undo tells of {name!r}')
        self.names.append(name)

    def all_back_and_again(self):
        last = self.window.saved()
        for name in reversed(self.names):
            keys('ctrl+z')
            wait(lambda: f'“{name}”' in self.redo.name + self.redo.description,
                 f'redo tells of {name!r}')
        equal(self.undo.has('sensitive'), False, 'more to undo')
        equal(self.window.saved(), self.first, 'all undone')
        for name in self.names:
            keys('ctrl+shift+z')
            wait(lambda: f'“{name}”' in self.undo.name + self.undo.description,
                 f'{name!r} is done again')
        equal(self.window.saved(), last, 'all done again')


@case('moving, turning, resizing, copying, removing and adding a fitting')
def fittings():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    steps = Steps(window)
    floor.drag((2600, 2000), (2000, 1600), steps=12)
    steps.took('Move')
    keys('r')
    steps.took('Turn')
    keys('ctrl+d')
    steps.took('Duplicate')
    keys('Delete')
    steps.took('Remove')
    keys('ctrl+f')
    write('roost')
    keys('Return')
    steps.took('Add')
    floor.choose(1000, 1000)
    floor.item('Right edge').reach()
    keys('Right')
    steps.took('Resize')
    steps.all_back_and_again()


@case('walls and corners')
def walls():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    steps = Steps(window)
    floor.tab_to('House*')
    floor.tab_to('Wall 2')
    keys('shift+Right')
    steps.took('Move Wall')
    floor.tab_to('Corner 1')
    keys('shift+Left')
    steps.took('Move Corner')
    floor.item('Wall 4').reach('shift+Tab')
    keys('Return')
    steps.took('Add a Corner')
    keys('Delete')
    steps.took('Remove a Corner')
    steps.all_back_and_again()


@case('pens drawn and added, openings, measures and units')
def pens():
    window = open_plan(plans.two_pens(openings=[
        plans.opening('hole', 'pop_hole', 'south', 2000, 400, 400)]))
    floor = open_floor(window)
    steps = Steps(window)
    floor.tab_to('Pop hole*')
    keys('Left')
    steps.took('Slide Along the Wall')
    keys('Next')
    steps.took('Move to Another Wall')
    keys('Return')
    window.part('HcProperties').find('Height', 'text').reach()
    write_over('45 cm')
    steps.took('Set Height')
    keys('ctrl+u')
    steps.took('Use Feet and Inches')
    window.part('HcShelf').find('draw a run', 'push button').click()
    floor.drag((500, 3800), (2500, 5000))
    steps.took('Draw Pen')
    steps.all_back_and_again()


@case('a long drag is one step, and so is a key held down')
def one_step():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    first = window.saved()
    floor.drag((2600, 2000), (2000, 1500), steps=40)
    keys('ctrl+z')
    equal(window.saved(), first, 'one undo after the drag')
    keys(*['Right'] * 8)
    equal(plans.find_fitting(window.saved(), 'Bath')['x_mm'], 2680, 'eight presses')
    keys('ctrl+z')
    equal(window.saved(), first, 'one undo after the key')


@case('the buttons undo and redo as the keys do')
def buttons():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    steps = Steps(window)
    floor.tab_to('Bath*')
    keys('Delete')
    steps.took('Remove')
    after = window.saved()
    steps.undo.click()
    equal(window.saved(), steps.first, 'undone')
    steps.redo.click()
    equal(window.saved(), after, 'done again')


run()
