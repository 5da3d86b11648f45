#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The side view: walls looked at, and heights set by mouse, by keys and typed."""
import plans
from cases import case, open_plan, run
from floor import open_floor
from plans import find_fitting, part
from screen import drag, equal, keys, near, wait, write_over


class Side:
    """The side view of the small house: four metres along the wall it looks at first."""

    def __init__(self, window):
        self.window = window
        window.find('Floor plan', 'panel')
        keys('ctrl+2')
        self.view = window.part('HcSideView')
        self.side = self.view.find('Side view', 'panel')

    def item(self, name):
        return self.side.find(name, 'push button')

    @property
    def scale(self):
        return self.item('Bedding of House*').box[2] / 4000

    def drag_up(self, name, by_mm, **options):
        left, top = self.item(name).middle
        drag((left, top), (left, top - by_mm * self.scale), **options)

    def looks_at(self, wall):
        return wait(lambda: list(self.view.look_for(wall)), f'{wall!r} is looked at')


def pop_hole():
    return plans.opening('hole', 'pop_hole', 'north', 2600, 400, 400, sill_mm=200)


@case('Ctrl+2 shows the side, Ctrl+1 the floor again')
def switch():
    window = open_plan(plans.two_pens())
    side = Side(window)
    side.item('Bar*')
    keys('ctrl+1')
    window.part('HcFloorView').find('Bar*', 'push button')
    wait(lambda: not side.side.has('showing'), 'the side is gone')


@case('what is selected on the floor is selected in the side view')
def selection():
    window = open_plan(plans.two_pens())
    open_floor(window).choose(1000, 1000)
    bar = Side(window).item('Bar*')
    wait(lambda: bar.has('selected'), 'the bar is selected')


@case('a bar is dragged higher, in one step')
def raise_by_mouse():
    window = open_plan(plans.two_pens())
    side = Side(window)
    side.drag_up('Bar*', 300, hold='ctrl')
    near(find_fitting(window.saved(), 'Bar')['base_mm'], 900, 40, 'the height of the bar')
    keys('ctrl+z')
    equal(find_fitting(window.saved(), 'Bar')['base_mm'], 600, 'the height before')


@case('a bar dragged along stays as high as it was')
def move_along():
    window = open_plan(plans.two_pens())
    side = Side(window)
    left, top = side.item('Bar*').middle
    drag((left, top), (left + 800 * side.scale, top + 2))
    bar = find_fitting(window.saved(), 'Bar')
    equal(bar['base_mm'], 600, 'the height of the bar')
    near(abs(bar['x_mm'] - 1000), 800, 60, 'how far it went along')


@case('arrow keys raise and lower, with Shift by ten centimetres')
def raise_by_keys():
    window = open_plan(plans.two_pens())
    Side(window).item('Bar*').reach()
    keys('Up')
    keys('shift+Up')
    keys('alt+Down')
    equal(find_fitting(window.saved(), 'Bar')['base_mm'], 709, 'the height of the bar')


@case('a height is typed')
def type_height():
    window = open_plan(plans.two_pens())
    Side(window).item('Bar*').reach()
    field = window.part('HcProperties').find('Above the floor', 'text')
    field.click()
    write_over('85 cm')
    equal(find_fitting(window.saved(), 'Bar')['base_mm'], 850, 'the height of the bar')


@case('a pop hole is slid and raised by keys, its lower edge by its handle')
def opening_by_keys():
    window = open_plan(plans.two_pens(openings=[pop_hole()]))
    side = Side(window)
    side.item('Pop hole*').reach()
    keys('shift+Up')
    hole = part(window.saved(), 'openings', 'hole')
    equal(hole['sill_mm'], 300, 'the sill')
    side.item('Lower edge').reach()
    keys('shift+Down')
    hole = part(window.saved(), 'openings', 'hole')
    equal((hole['sill_mm'], hole['height_mm']), (200, 500), 'sill and height')


@case('a pop hole is dragged along its wall')
def slide_by_mouse():
    window = open_plan(plans.two_pens(openings=[pop_hole()]))
    side = Side(window)
    left, top = side.item('Pop hole*').middle
    drag((left, top), (left - 600 * side.scale, top))
    hole = part(window.saved(), 'openings', 'hole')
    equal(hole['sill_mm'], 200, 'the sill')
    near(abs(hole['along_mm'] - 2600), 600, 60, 'how far it went along')


@case('bedding is made deeper by keys and by mouse')
def bedding():
    window = open_plan(plans.two_pens())
    side = Side(window)
    side.item('Bedding of House*').reach()
    keys('shift+Up')
    equal(part(window.saved(), 'pens', 'house')['bedding_mm'], 160, 'its depth')
    side.drag_up('Bedding of House*', 200, hold='ctrl')
    near(part(window.saved(), 'pens', 'house')['bedding_mm'], 360, 40, 'its depth now')


@case('Page Down looks at the next wall, and the list at any')
def walls():
    window = open_plan(plans.two_pens())
    side = Side(window)
    side.looks_at('House, wall 1')
    side.item('Bar*').reach()
    keys('Page_Down')
    side.looks_at('House, wall 2')
    keys('Page_Up')
    side.looks_at('House, wall 1').pop().click()
    window.find('Wall 3, 4 m').click()
    side.looks_at('House, wall 3')
    side.item('Bath*')


@case('the cut is typed, and what was behind it comes into sight')
def cut():
    window = open_plan(plans.two_pens())
    side = Side(window)
    side.item('Bar*')
    side.side.is_gone('Bath*')
    side.view.find('Cut from the wall', 'text').click()
    write_over('2.5 m')
    side.item('Bath*')


@case('the wall gone to on the floor is looked at from the side')
def wall_of_floor():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    floor.choose(3000, 500)
    floor.item('Wall 3').reach()
    Side(window).looks_at('House, wall 3')


@case('a drag given up by Escape changes nothing')
def give_up():
    window = open_plan(plans.two_pens())
    side = Side(window)
    side.drag_up('Bar*', 300, before_release=lambda: keys('Escape'))
    keys('Right')
    equal(find_fitting(window.saved(), 'Bar')['base_mm'], 600, 'the height of the bar')


run()
