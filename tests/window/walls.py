#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Walls and corners: the house drawn to its shape by mouse and by keys."""
import plans
from cases import case, open_plan, run
from floor import Floor, open_floor
from plans import layout, part
from screen import drag, equal, keys, near, wait, write_over, x


def walls_of(plan, pen):
    return part(plan, 'pens', pen)['walls']


def corners(plan):
    return {corner['id']: (corner['x_mm'], corner['y_mm']) for corner in layout(plan)['corners']}


def moved(plan):
    """Corners that are not where the small plan has them."""
    before = corners(plans.two_pens())
    return {name: at for name, at in corners(plan).items() if before.get(name) != at}


@case('two presses on a wall add a corner, and dragged it makes an L')
def insert_by_mouse():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    left, top = floor.px(2000, 0)

    def press_twice():
        """A busy machine may take two presses for one and one."""
        floor.choose(3000, 500)
        floor.item('Wall 1')
        window.part('HcProperties').find('Wall 4', 'text')
        x('mousemove', round(left), round(top))
        x('click', '--repeat', 2, '--delay', 1, 1)
        return len(walls_of(window.saved(), 'house')) == 5
    wait(press_twice, 'the house has five walls')
    corner = floor.item('Corner 2')
    wait(lambda: abs(corner.middle[0] - left) < 3, 'its handle is where it is')
    floor.drag((2000, 0), (2000, 900), hold='ctrl')
    (name, at), = moved(window.saved()).items()
    equal(name in corners(plans.two_pens()), False, 'the corner moved is the new one')
    near(at[0], 2000, 40, 'across')
    near(at[1], 900, 40, 'down')


@case('Enter on a wall adds a corner, arrow keys move it, Delete takes it out')
def insert_by_keys():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    floor.tab_to('House*')
    floor.tab_to('Wall 1')
    keys('Return')
    equal(len(walls_of(window.saved(), 'house')), 5, 'walls with the new corner')
    keys('shift+Down', 'shift+Down')
    equal(list(moved(window.saved()).values()), [(2000, 200)], 'where the new corner is')
    keys('Delete')
    plan = window.saved()
    equal((len(walls_of(plan, 'house')), moved(plan)), (4, {}), 'walls without it')


@case('a wall goes by arrow keys, and the run behind it gives way')
def nudge_wall():
    window = open_plan(plans.two_pens())
    floor = open_floor(window)
    floor.tab_to('House*')
    floor.tab_to('Wall 2')
    keys('shift+Right')
    equal(moved(window.saved()), {'n': (4100, 0), 's': (4100, 3000)}, 'corners')


@case('a wall is as long as typed, and stays a wall of both pens')
def type_wall():
    window = open_plan(plans.two_pens())
    open_floor(window).tab_to('House*')
    keys('Return')
    fields = window.part('HcProperties')
    fields.find('Wall 1', 'text').reach()
    write_over('13\' 1 1/2"')
    plan = window.saved()
    at = corners(plan)
    near(abs(at['n'][0] - at['nw'][0]), 4000.5, 0.01, 'length of the wall')
    equal('middle' in walls_of(plan, 'run'), True, 'the shared wall')


@case('two pens drawn side by side share one wall, which moves for both')
def shared_wall():
    window = open_plan(plans.empty())
    left, top, width, height = Floor(window).floor.box
    left, top = left + width / 2, top + height / 2
    shelf = window.part('HcShelf')
    for ends in (((-150, -80), (0, 60)), ((0, -80), (120, 60))):
        shelf.find('draw a pen', 'push button').click()
        drag(*((left + across, top + down) for across, down in ends))
    plan = window.saved()
    one, other = layout(plan)['pens']
    shared = set(one['walls']) & set(other['walls'])
    equal(len(shared), 1, 'walls shared')
    floor = Floor(window)
    x('mousemove', round(left - 75), round(top - 50), 'click', 1)
    floor.item('Wall 1')
    drag((left, top - 10), (left + 30, top - 10))
    after = window.saved()
    equal(layout(after)['pens'][0]['walls'], one['walls'], 'walls of the first')
    at = corners(after)
    wall = part(after, 'walls', shared.pop())
    before = corners(plan)
    equal(all(at[wall[end]][0] > before[wall[end]][0] for end in ('from', 'to')), True,
          'both ends moved')


@case('a run is added by keys and made as large as typed')
def run_by_keys():
    window = open_plan(plans.two_pens())
    shelf = window.part('HcShelf')
    shelf.find('Add one and type its lengths', 'push button', nth=1).reach()
    keys('space')
    wait(lambda: len(layout(window.saved())['pens']) == 3, 'a third pen')
    keys('Return')
    fields = window.part('HcProperties')
    for label, text in (('Wall 1', '4.5 m'), ('Wall 2', '12 ft')):
        fields.find(label, 'text').reach()
        write_over(text)
    plan = window.saved()
    run_pen = layout(plan)['pens'][2]
    equal(run_pen['kind'], 'run', 'kind of pen')
    ends = [part(plan, 'walls', wall) for wall in run_pen['walls']]
    at = corners(plan)
    lengths = sorted({round(abs(at[wall['from']][0] - at[wall['to']][0])
                            + abs(at[wall['from']][1] - at[wall['to']][1]), 1)
                      for wall in ends})
    equal(lengths, [3657.6, 4500], 'sides of the run')


@case('a wall is of the kind chosen by keys')
def kind_of_wall():
    window = open_plan(plans.two_pens())
    open_floor(window).tab_to('House*')
    keys('Return')
    choice = window.part('HcProperties').find('Kind of wall 2', 'combo box')
    choice.find(role='push button').reach()
    keys('space')
    wait(lambda: any(entry.has_focus() for entry in choice.look_for(role='list item')),
         'the list is open')
    keys('Down', 'Return')
    choice.is_gone(role='list item')
    equal(part(window.saved(), 'walls', 'middle')['kind'], 'mesh', 'kind of wall')


run()
