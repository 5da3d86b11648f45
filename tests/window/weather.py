#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The weather view: vents opened by mouse and keys, remedies seen and done."""
import plans
from cases import case, open_plan, run
from plans import layout
from screen import Failed, equal, keys, wait


def damp_house():
    """Twenty hens shut up in a small board house on a cold still night, with vents."""
    plan = plans.two_pens(openings=[
        plans.opening('low', 'vent', 'south', 1000, 400, 100, sill_mm=1700, open_winter=0),
        plans.opening('high', 'vent', 'north', 1500, 400, 100, sill_mm=1800, open_winter=0)],
        batches=[plans.hens(females=20)])
    plan['site'].update(coldest_night_c=-8, humidity_percent=80, wind_m_s=1)
    return plan


def open_weather(plan):
    window = open_plan(plan)
    keys('ctrl+3')
    view = window.part('HcWeatherView')
    view.says('At the roost')
    return window, view


def more(seen, least, what):
    if seen <= least:
        raise Failed(f'{what}: {seen} and no more than {least}')


def vents(window):
    return {each['id']: each.get('open_winter', 1)
            for each in layout(window.saved())['openings'] if each['kind'] == 'vent'}


def wait_for_step(window, label):
    undo = window.find('Undo*', 'push button')
    wait(lambda: label in undo.name + undo.description, f'{label} can be undone')


@case('the view opens on a sentence, figures and two answers about combs')
def opens():
    _, view = open_weather(damp_house())
    for text in ('What you can mend', 'Plain cold', 'Dew point', 'Carbon dioxide', 'Ammonia',
                 'The hottest day', 'indicative'):
        view.says(text)


@case('vents are opened by keys, in one step to undo')
def by_keys():
    window, view = open_weather(damp_house())
    view.find('Vents open, percent', 'slider').reach()
    for _ in range(4):
        keys('Right')
    wait_for_step(window, 'Open Vents')
    equal(vents(window), {'low': 0.2, 'high': 0.2}, 'both vents')
    keys('ctrl+z')
    equal(vents(window), {'low': 0, 'high': 0}, 'both vents, one step undone')


@case('vents are opened by dragging, and the figures follow')
def by_mouse():
    window, view = open_weather(damp_house())
    slider = view.find('Vents open, percent', 'slider')
    left, top, width, height = slider.box
    slider.click(at=(left + width * 0.5, top + height * 0.5))
    wait_for_step(window, 'Open Vents')
    more(min(vents(window).values()), 0.1, 'vents open')


@case('a remedy is seen first and done in one step')
def remedy():
    window, view = open_weather(damp_house())
    before = {'low': 0, 'high': 0}
    view.says('What helps')
    see = view.find('See It First', 'push button')
    see.bring_into_view(view)
    see.click()
    see.click()
    wait(lambda: not see.has('pressed'), 'it is looked at no more')
    do = view.find('Do It', 'push button')
    do.bring_into_view(view)
    do.click()
    wait_for_step(window, 'Mend the Air')
    more(max(vents(window).values()), 0.1, 'vents open')
    keys('ctrl+z')
    equal(vents(window), before, 'vents, one step undone')


run()
