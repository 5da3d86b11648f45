#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Files: the question before closing, what a crash leaves, changes by others."""
import json

import plans
from cases import case, open_plan, reopen, run
from chooser import save_as
from floor import Floor, open_floor
from plans import find_fitting, layout
from screen import equal, keys, wait


def change(window):
    open_floor(window).tab_to('Bath*')
    keys('Right')
    window.frame.says('changed since it was saved')


def on_disk(window):
    return find_fitting(json.loads(window.file.read_text(encoding='utf-8')), 'Bath')['x_mm']


def ended(window):
    wait(lambda: window.process.poll() is not None, 'the program ends')


@case('closing a changed plan asks; cancel keeps the window')
def ask_and_cancel():
    window = open_plan(plans.two_pens())
    change(window)
    keys('ctrl+w')
    window.dialog('Save the Changes?').find('*Cancel', 'push button').click()
    window.frame.says('changed since it was saved')
    equal(on_disk(window), 2600, 'on disk')


@case('closing a changed plan asks; save writes it and closes')
def ask_and_save():
    window = open_plan(plans.two_pens())
    change(window)
    keys('ctrl+w')
    window.dialog('Save the Changes?')
    keys('Return')
    ended(window)
    equal(on_disk(window), 2610, 'on disk')


@case('closing a changed plan asks; discard closes and leaves the file')
def ask_and_discard():
    window = open_plan(plans.two_pens())
    change(window)
    keys('ctrl+q')
    window.dialog('Save the Changes?').find('*Discard', 'push button')
    keys('alt+d')
    ended(window)
    equal(on_disk(window), 2600, 'on disk')


@case('a plan that has no file yet is asked for its name before it closes')
def name_and_save():
    window = open_plan()
    window.part('HcStartPage').find('*Empty Plan', 'push button').click()
    window.part('HcShelf').find('Add one and type its lengths', 'push button').click()
    wait(lambda: list(Floor(window).floor.look_for('*m²', 'push button')), 'there is a pen')
    keys('ctrl+w')
    window.dialog('Save the Changes?')
    file = save_as(window, 'named.hencote', 'Return', window_stays=False)
    ended(window)
    equal(len(layout(json.loads(file.read_text(encoding='utf-8')))['pens']), 1, 'pens on disk')


@case('a plan that was not changed closes at once')
def close_unchanged():
    window = open_plan(plans.two_pens())
    open_floor(window)
    keys('ctrl+w')
    ended(window)


@case('after the program is killed the draft is offered')
def recover_draft():
    window = open_plan(plans.two_pens())
    change(window)
    drafts = window.home / 'state' / 'hencote' / 'drafts'
    wait(lambda: drafts.is_dir() and any(drafts.glob('*.hencote-draft')), 'a draft is written')
    window.kill()
    equal(on_disk(window), 2600, 'on disk')
    again = reopen(None)
    again.find('Window test', 'list item').click()
    again.file = window.file
    equal(find_fitting(again.saved(), 'Bath')['x_mm'], 2610, 'recovered')


@case('a file changed by another program is not written over unasked')
def changed_elsewhere():
    window = open_plan(plans.two_pens())
    change(window)
    window.put(plans.two_pens(fittings=[plans.bath(x=1234)]))
    keys('ctrl+s')
    window.dialog('The File Was Changed Elsewhere')
    equal(on_disk(window), 1234, 'on disk')


run()
