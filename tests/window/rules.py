#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Whose rules: chosen, read from a file of the keeper's, and figures of one's own."""
import json
import pathlib

import choices
import plans
from cases import case, open_plan, reopen, run
from screen import equal, keys, wait, write

RULES = pathlib.Path(__file__).parents[2] / 'data' / 'standards'
WHOSE = 'Whose rules the plan is judged by'
REASON = 'Small birds'


def open_rules(window):
    """The rules window, once it takes the keys."""
    window.part('HcStrip')
    keys('ctrl+r')
    rules = window.dialog('Whose Rules')
    wait(lambda: any(thing.has_focus() for thing in rules.walk()), 'the window takes the keys')
    return rules


def close_rules(window):
    keys('Escape')
    wait(lambda: all(frame.name != 'Whose Rules' for frame in window.frames()), 'it is closed')


def first_perch(rules):
    """The row of what a bantam is given to sleep on, the first of its section."""
    rules.find('Places to sleep', 'push button').click()
    return rules.find('Places to sleep', 'list').find(role='list item')


def own_figures(plan):
    return [(each['figure'], each['value'], each['reason'])
            for each in plan['rules'].get('own_figures', [])]


@case('an own figure is set with its reason by mouse, and taken back')
def own_by_mouse():
    window = open_plan(plans.two_pens())
    rules = open_rules(window)
    row = first_perch(rules)
    row.find('My Own…', 'push button').click()
    row.find('My own figure', 'text').click()
    write('16')
    row.find('Reason for my own figure', 'text').click()
    write(REASON)
    row.find('Set', 'push button').click()
    row.says('My own: 16 cm. ' + REASON)
    close_rules(window)
    equal(own_figures(window.saved()), [('roost.seat-bantam', 16, REASON)], 'own figures')
    row = first_perch(open_rules(window))
    row.find('My Own…', 'push button').click()
    row.find('Take Back', 'push button').click()
    row.is_gone('My own: *')
    close_rules(window)
    equal(own_figures(window.saved()), [], 'own figures')


@case('an own figure is set with its reason by keys, and taken back')
def own_by_keys():
    window = open_plan(plans.two_pens())
    rules = open_rules(window)
    rules.find('Places to sleep', 'push button').reach()
    keys('space')
    row = rules.find('Places to sleep', 'list').find(role='list item')
    row.find('My Own…', 'push button').reach()
    keys('space')
    row.find('My own figure', 'text').reach()
    write('16')
    row.find('Reason for my own figure', 'text').reach()
    write(REASON)
    keys('Return')
    row.says('My own: 16 cm. ' + REASON)
    close_rules(window)
    equal(own_figures(window.saved()), [('roost.seat-bantam', 16, REASON)], 'own figures')
    rules = open_rules(window)
    rules.find('Places to sleep', 'push button').reach()
    keys('space')
    row = rules.find('Places to sleep', 'list').find(role='list item')
    row.find('My Own…', 'push button').reach()
    keys('space')
    row.find('Take Back', 'push button').reach()
    keys('space')
    row.is_gone('My own: *')
    close_rules(window)
    equal(own_figures(window.saved()), [], 'own figures')


def standards():
    """Name and id of each, as the list has them."""
    for file in RULES.glob('*.json'):
        rules = json.loads(file.read_text(encoding='utf-8'))
        yield rules['name'], rules['id'], rules['about']


def choose_each(choose):
    """From the usual ones to each of the others, and back to the usual."""
    window = open_plan(plans.two_pens())
    each = sorted(standards(), key=lambda rules: rules[1] == 'home-cold')
    equal(len(each), 5, 'rules to choose from')
    for name, ident, about in each:
        rules = open_rules(window)
        choose(rules.find(WHOSE, 'combo box'), name)
        rules.says(about)
        close_rules(window)
        equal(window.saved()['rules']['standard'], ident, 'rules of the plan')
        window.part('HcStrip').says(name)


@case('each of the five sets of rules is chosen by mouse')
def choose_by_mouse():
    choose_each(choices.by_mouse)


@case('each of the five sets of rules is chosen by keys')
def choose_by_keys():
    choose_each(choices.by_keys)


def find_figure(go_to_search):
    window = open_plan(plans.two_pens())
    rules = open_rules(window)
    search = rules.find('Find a figure', 'entry')
    go_to_search(search)
    write('nipple')
    rules.is_gone('Places to sleep', 'push button')
    wait(lambda: any('nipple' in text.lower() for text in rules.texts()), 'figures of nipples')
    keys('ctrl+a')
    write('no such thing')
    wait(lambda: 'No figure speaks of that.' in rules.texts(), 'nothing is found, and told')


@case('a figure is found by a word, the search pressed by mouse')
def find_by_mouse():
    find_figure(lambda search: search.click())


@case('a figure is found by a word, by keys')
def find_by_keys():
    find_figure(lambda search: search.reach())


@case('the button on the strip opens the rules, and the pointer closes them')
def open_by_mouse():
    window = open_plan(plans.two_pens())
    window.part('HcStrip').find('Home flock, cold country', 'push button').click()
    rules = window.dialog('Whose Rules')
    rules.find('Close', 'push button').click()
    wait(lambda: all(frame.name != 'Whose Rules' for frame in window.frames()), 'it is closed')


@case('rules of the keeper are found in the data folder, and faulty ones left out by name')
def own_rules():
    mine = json.loads((RULES / 'home-cold.json').read_text(encoding='utf-8'))
    mine.update(id='valley', name='Rules of our valley', about='Agreed on by the neighbours.')
    open_plan(plans.two_pens()).close()
    folder = run.window.home / 'data' / 'hencote' / 'standards'
    folder.mkdir(parents=True)
    (folder / 'valley.json').write_text(json.dumps(mine), encoding='utf-8')
    (folder / 'spoilt.json').write_text('{"format": 7', encoding='utf-8')
    window = reopen(run.window.file)
    window.find('*spoilt.json*')
    rules = open_rules(window)
    rules.find('*spoilt.json*', 'label')
    choices.by_keys(rules.find(WHOSE, 'combo box'), 'Rules of our valley')
    rules.says('Agreed on by the neighbours.')
    close_rules(window)
    equal(window.saved()['rules']['standard'], 'valley', 'rules')


@case('rules of a plan of a newer version are to be read only')
def newer():
    newer_plan = {**plans.two_pens(), 'version': 99}
    window = open_plan(newer_plan)
    rules = open_rules(window)
    rules.says('This plan is from a newer version of Hencote')
    equal(rules.find(WHOSE, 'combo box').has('sensitive'), False, 'rules can be chosen')
    row = first_perch(rules)
    equal(row.find('My Own…', 'push button').has('sensitive'), False, 'a figure can be set')


run()
