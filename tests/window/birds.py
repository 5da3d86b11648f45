#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Keeping a flock: which birds there are, where they live, when they hatched."""
import plans
from cases import case, open_plan, run
from floor import open_floor
from screen import equal, keys, wait, write, write_over


def birds_page(window):
    open_floor(window)
    window.find('Birds', 'page tab').click()
    return window.part('HcFlockPage')


def add_by_mouse(page):
    button = page.find('Add a Group of Birds', 'push button')
    button.bring_into_view(page)
    button.click()
    page.find('Breed', 'combo box', nth=1)


def open_by_mouse(choice, page):
    choice.bring_into_view(page)
    choice.click()
    choice.find(role='list item')


def open_by_keys(choice):
    choice.find(role='push button').reach()
    keys('space')
    wait(lambda: any(entry.has_focus() for entry in choice.look_for(role='list item')),
         'the list is open at what is chosen')


def search_for_welsummer(choice):
    search = choice.find(role='entry')
    wait(search.has_focus, 'the start of a name can be typed')
    write('wels')
    choice.is_gone('Leghorn', 'label')


def added(window):
    batches = window.saved()['batches']
    equal(len(batches), 2, 'groups')
    return batches[1]


def first(window):
    return window.saved()['batches'][0]


@case('a group is added, and its breed found by the start of its name, by mouse')
def add_breed_by_mouse():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    add_by_mouse(page)
    choice = page.find('Breed', 'combo box', nth=1)
    open_by_mouse(choice, page)
    search_for_welsummer(choice)
    choice.find('Welsummer', 'label').click()
    choice.is_gone(role='list item')
    group = added(window)
    equal((group['breed'], group['females'], group['pen']), ('welsummer', 1, 'house'), 'group')


@case('a group is added, and its breed found by the start of its name, by keys')
def add_breed_by_keys():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    page.find('Add a Group of Birds', 'push button').reach()
    keys('space')
    choice = page.find('Breed', 'combo box', nth=1)
    choice.find(role='push button').reach('shift+Tab')
    keys('space')
    choice.find(role='list item')
    search_for_welsummer(choice)
    choice.find(role='list item').reach('Down', most=3)
    keys('Return')
    choice.is_gone(role='list item')
    equal(added(window)['breed'], 'welsummer', 'breed')


@case('a group without a breed is of the kind chosen by mouse')
def add_kind():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    add_by_mouse(page)
    choice = page.find('Kind', 'combo box')
    open_by_mouse(choice, page)
    choice.find('bantam', 'label').click()
    choice.is_gone(role='list item')
    equal(added(window)['kind'], 'bantam', 'kind')


@case('females and males are counted up by the buttons')
def count_by_mouse():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    for what in ('Females', 'Males'):
        field = page.find(what, 'spin button')
        before = field.text
        left, top, width, height = field.box
        field.click(at=(left + width - height / 2, top + height / 2))
        wait(lambda: field.text == str(int(before) + 1), f'{what} are one more')
    group = first(window)
    equal((group['females'], group['males']), (7, 2), 'birds')


@case('females and males are typed')
def count_by_keys():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    for what, count in (('Females', '12'), ('Males', '0')):
        field = page.find(what, 'spin button')
        field.reach()
        write_over(count)
        wait(lambda: field.text == count, f'{what} are {count}')
    group = first(window)
    equal((group['females'], group.get('males', 0)), (12, 0), 'birds')


@case('the home pen is chosen by mouse')
def home_by_mouse():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    choice = page.find('Home pen', 'combo box')
    open_by_mouse(choice, page)
    choice.find('Run', 'label').click()
    choice.is_gone(role='list item')
    equal(first(window)['pen'], 'run', 'home pen')


@case('the home pen is chosen by keys')
def home_by_keys():
    window = open_plan(plans.two_pens())
    choice = birds_page(window).find('Home pen', 'combo box')
    open_by_keys(choice)
    keys('Down', 'Return')
    choice.is_gone(role='list item')
    equal(first(window)['pen'], 'run', 'home pen')


@case('a group is removed, and comes back when undone')
def remove():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    page.find('Remove this group of birds', 'push button').click()
    page.is_gone('Remove this group of birds')
    equal(window.saved().get('batches', []), [], 'groups')
    keys('ctrl+z')
    page.find('Remove this group of birds', 'push button')
    equal(window.saved()['batches'], [plans.hens()], 'groups')


@case('the day the plan is judged on is typed')
def type_day():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    page.find('Judged on: *', 'push button').click()
    page.find('Type a day', 'text')
    write_over('2026-08-15')
    page.find('Judged on: 15 Aug 2026', 'push button')
    equal(window.saved()['as_of'], '2026-08-15', 'day')


@case('chicks that are grown on the day need no warmth of their own')
def chicks_grow():
    chicks = {**plans.hens(), 'hatched': '2026-05-25'}
    window = open_plan(plans.two_pens(batches=[chicks]))
    page = birds_page(window)
    needs = window.part('HcNeedsPanel')
    needs.find('Warmth for chicks', 'push button')
    page.find('Judged on: *', 'push button').click()
    page.find('Type a day', 'text')
    write_over('2026-12-01')
    page.find('Judged on: 1 Dec 2026', 'push button')
    needs.is_gone('Warmth for chicks', 'push button')


@case('the day a group hatched is typed by keys, and undone')
def type_hatched():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    page.find('Hatched: *', 'push button').reach()
    keys('space')
    page.find('Type a day', 'text').find(role='text').reach()
    write_over('2026-05-01')
    page.find('Hatched: 1 May 2026', 'push button')
    equal(window.saved()['batches'][0]['hatched'], '2026-05-01', 'hatched')
    keys('ctrl+z')
    page.find('Hatched: 20 Mar 2025', 'push button')


run()
