#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Files: saved under another name, opened by name, found again, or refused."""
import json

import plans
from cases import case, open_plan, reopen, run
from chooser import open_by_name, save_as, save_plan_as
from floor import Floor, open_floor
from plans import find_fitting
from screen import equal, keys, wait, x


def bath_across(file):
    return find_fitting(json.loads(file.read_text(encoding='utf-8')), 'Bath')['x_mm']


def newer_plan():
    """A plan of a version to come, with a part and members nobody knows yet."""
    plan = plans.two_pens()
    plan.update(version=99, weather_of_tomorrow={'rain': True})
    return plan


@case('saved under another name, the first file stays as it was')
def save_elsewhere():
    window = open_plan(plans.two_pens())
    first = window.file
    open_floor(window).tab_to('Bath*')
    keys('Right')
    save_plan_as(window, 'other.hencote')
    equal((bath_across(first), bath_across(window.file)), (2600, 2610), 'both files')
    open_floor(window).tab_to('Bath*')
    keys('Right')
    equal(find_fitting(window.saved(), 'Bath')['x_mm'], 2620, 'saved again')
    equal(bath_across(first), 2600, 'the first file')


@case('a file is opened by its name, in the window that shows none yet')
def open_first():
    window = open_plan()
    file = window.put(plans.two_pens(), 'here.hencote')
    open_by_name(window, file)
    window.frame.says('here.hencote')
    Floor(window).item('Bath*')


@case('a second plan gets a window of its own')
def open_second():
    window = open_plan(plans.two_pens())
    open_floor(window)
    open_by_name(window, window.put(plans.empty(), 'second.hencote'))
    wait(lambda: any(thing.name == 'second.hencote'
                     for frame in window.frames() for thing in frame.walk()),
         'the second plan is shown')
    window.frame.says('plan.hencote')


@case('a plan that was open is listed as recent, and opens by mouse and by keys')
def recent():
    window = open_plan(plans.two_pens())
    open_floor(window)
    listed = window.home / 'data' / 'recently-used.xbel'
    wait(lambda: listed.exists() and 'plan.hencote' in listed.read_text(encoding='utf-8'),
         'the list is written')
    file = window.file
    window.close()
    for open_it in (lambda row: row.click(), lambda row: (row.reach('shift+Tab'), keys('space'))):
        again = reopen(None)
        page = again.part('HcStartPage')
        row = page.find('plan.hencote', 'list item')
        row.bring_into_view(page)
        open_it(row)
        again.file = file
        Floor(again).item('Bath*')
        again.close()


@case('a plan of a newer version is shown, and is changed only under another name')
def newer():
    window = open_plan(newer_plan())
    before = window.file.read_bytes()
    window.frame.says('from a newer version')
    open_floor(window).tab_to('Bath*')
    keys('Right', 'Delete', 'ctrl+s')
    bath = Floor(window).item('Bath*')
    equal(window.find('Save', 'push button').has('sensitive'), False, 'Save can be pressed')
    equal((window.file.read_bytes(), bath.has('visible')), (before, True), 'file and floor')
    save_plan_as(window, 'mine.hencote')
    Floor(window).tab_to('Bath*')
    keys('Right')
    equal(find_fitting(window.saved(), 'Bath')['x_mm'], 2610, 'across, in a file of its own')


@case('a broken file is told by line and column, and nothing of it is lost')
def broken():
    window = open_plan()
    text = json.dumps(plans.two_pens(), indent=1).replace('"title": "Window test"',
                                                          '"title": Window')
    line = next(n for n, each in enumerate(text.splitlines(), 1) if '"title": Window' in each)
    file = window.home / 'broken.hencote'
    file.write_text(text, encoding='utf-8')
    open_by_name(window, file)
    dialog = window.dialog('This Plan Cannot Be Opened')
    dialog.says(f'{line}')
    dialog.says('column')
    keys('Escape')
    equal(file.read_text(encoding='utf-8'), text, 'the file')
    window.part('HcStartPage').find('*Empty Plan', 'push button')


@case('a member that makes no sense is named with its place')
def senseless():
    window = open_plan()
    plan = plans.two_pens()
    plans.layout(plan)['pens'][0]['height_mm'] = 'high'
    file = window.put(plan, 'senseless.hencote')
    open_by_name(window, file)
    window.dialog('This Plan Cannot Be Opened').says('height_mm')


def change_elsewhere(window):
    """Another program writes the file, and the keeper comes back to the window."""
    window.put(plans.two_pens(fittings=[plans.bath(x=1234)]))
    keys('ctrl+o')
    wait(lambda: any(frame.name == 'Open a Plan' for frame in window.frames()), 'a dialog')
    keys('Escape')
    wait(lambda: len(list(window.frames())) == 1, 'the dialog is closed')
    x('windowfocus', '--sync', window.id)
    window.frame.says('changed by another program')
    return window.find('*Read It Again', 'push button')


@case('a file changed on disk is noticed, and read again by a press')
def read_again():
    window = open_plan(plans.two_pens())
    open_floor(window)
    change_elsewhere(window).click()
    Floor(window).floor.is_gone('Bar*', 'push button')
    equal(find_fitting(window.saved(), 'Bath')['x_mm'], 1234, 'across, as on disk')


@case('a file changed on disk is read again by keys')
def read_again_by_keys():
    window = open_plan(plans.two_pens())
    open_floor(window)
    change_elsewhere(window).reach('shift+Tab')
    keys('space')
    Floor(window).floor.is_gone('Bar*', 'push button')


@case('the drawing is saved as PDF, SVG and PNG')
def drawings():
    window = open_plan(plans.two_pens())
    open_floor(window)
    for name, start in (('a.pdf', b'%PDF'), ('a.svg', b'<?xml'), ('a.png', b'\x89PNG')):
        file = save_as(window, name, 'ctrl+e', 'Save a Drawing (PDF, SVG or PNG)')
        wait(lambda: file.read_bytes().startswith(start), f'{name} is a drawing')


run()
