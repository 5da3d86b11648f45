#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""How many birds: three questions, how well, when, and what runs out next."""
import json
import os
import pathlib
import re
import subprocess

import choices
from cases import case, open_plan, run
from screen import equal, keys, wait

BARN = pathlib.Path(__file__).parents[2] / 'data' / 'houses' / 'barn-bay.hencote'


def told_by_command(window, *options):
    """Birds in comfort and at most, as the command line answers the same question."""
    done = subprocess.run([os.environ['HENCOTE_PLAN'], 'capacity', '--json', *options,
                           str(window.file)], check=True, capture_output=True, text=True)
    told = json.loads(done.stdout)
    equal(told['condition'], 'day', 'the worse condition of this house')
    return told['good'], told['least']


class Page:
    """The page, and a way to choose on it."""

    def __init__(self, window, choose):
        self.page = window.part('HcHowMany')
        self.choose_by = choose

    def choose(self, what, name):
        self.choose_by(self.page.find(what, 'combo box'), name)

    def tells(self, birds, what):
        wait(lambda: birds in self.numbers(), f'{birds} birds {what}')

    def numbers(self):
        found = (re.fullmatch(r'(\d+) birds?', text) for text in self.page.texts())
        return [int(each[1]) for each in found if each]

    def rungs(self):
        return [text for text in self.page.texts() if 'would carry' in text]


def go_by_mouse(window):
    window.find('How Many', 'page tab').click()


def go_by_keys(window):
    window.find('Needs', 'page tab').reach('shift+Tab')
    keys('Right', 'space')


def open_page(go, choose):
    window = open_plan(json.loads(BARN.read_text(encoding='utf-8')))
    window.part('HcFloorView')
    window.part('HcNeedsPanel')
    go(window)
    return window, Page(window, choose)


def ask_mix(go, choose):
    window, page = open_page(go, choose)
    good, least = told_by_command(window)
    page.tells(good, 'of this mix in comfort')
    wait(page.rungs, 'what runs out next')
    page.choose('How well', 'At most')
    page.tells(least, 'of this mix at most')
    window.part('HcStrip').says(f'{good} in comfort, {least} at most')


def ask_shut_in(go, choose):
    _, page = open_page(go, choose)
    wait(lambda: any(rung.startswith('Room outside') for rung in page.rungs()),
         'the run counts on an ordinary day')
    page.choose('When', 'Shut in')
    wait(lambda: page.rungs() and not any(rung.startswith('Room outside')
                                          for rung in page.rungs()),
         'the run does not count when shut in')
    page.choose('When', 'On an ordinary day')
    wait(lambda: any(rung.startswith('Room outside') for rung in page.rungs()),
         'the run counts again')


def ask_more(go, choose):
    window, page = open_page(go, choose)
    good, least = told_by_command(window, '--kind', 'duck')
    page.choose('Which birds', 'More of one kind')
    page.choose('Kind of bird', 'ducks')
    page.tells(max(good, 0), 'more ducks in comfort')
    page.choose('How well', 'At most')
    page.tells(max(least, 0), 'more ducks at most')
    wait(lambda: any(re.match('room for|just enough|none:', text) for text in page.page.texts()),
         'how many more is told in words')


def ask_alone(go, choose):
    window, page = open_page(go, choose)
    good, least = told_by_command(window, '--kind', 'heavy_breed', '--empty')
    page.choose('Which birds', 'One kind alone')
    page.choose('Kind of bird', 'heavy hens')
    page.tells(good, 'heavy hens alone in comfort')
    page.choose('How well', 'At most')
    page.tells(least, 'heavy hens alone at most')


for way, go, choose in (('by mouse', go_by_mouse, choices.by_mouse),
                        ('by keys', go_by_keys, choices.by_keys)):
    for sentence, ask in (
            ('how many of this mix, in comfort and at most', ask_mix),
            ('how many on an ordinary day and shut in', ask_shut_in),
            ('how many more of one kind', ask_more),
            ('how many of one kind alone', ask_alone)):
        case(f'{sentence}, {way}')(lambda ask=ask, go=go, choose=choose: ask(go, choose))

run()
