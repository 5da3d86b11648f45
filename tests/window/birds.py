#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Keeping a flock: which birds there are, where they live, when they hatched."""
import choices
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
    return choices.open_by_mouse(choice)


def added(window):
    batches = window.saved()['batches']
    equal(len(batches), 2, 'groups')
    return batches[1]


def first(window):
    return window.saved()['batches'][0]


@case('a group is added, and its breed found by a part of its name, by mouse')
def add_breed_by_mouse():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    add_by_mouse(page)
    choice = page.find('Breed', 'combo box', nth=1)
    open_by_mouse(choice, page)
    choices.narrow(choice, 'summ', 'Welsummer').click()
    choices.closed(choice)
    group = added(window)
    equal((group['breed'], group['females'], group['pen']), ('welsummer', 1, 'house'), 'group')


@case('a group is added, and its breed found by a part of its name, by keys')
def add_breed_by_keys():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    page.find('Add a Group of Birds', 'push button').reach()
    keys('space')
    choice = page.find('Breed', 'combo box', nth=1)
    choice.find(role='push button').reach('shift+Tab')
    choices.by_typing(choice, 'summ', 'Welsummer')
    equal(added(window)['breed'], 'welsummer', 'breed')


@case('a group without a breed is of the kind chosen by mouse')
def add_kind():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    add_by_mouse(page)
    choice = page.find('Kind', 'combo box')
    open_by_mouse(choice, page)
    choice.find('bantam', 'list item').click()
    choices.closed(choice)
    equal(added(window)['kind'], 'bantam', 'kind')


@case('the kind of a group without a breed is changed by keys')
def kind_by_keys():
    batch = {**plans.hens(), 'kind': 'heavy_breed'}
    del batch['breed']
    window = open_plan(plans.two_pens(batches=[batch]))
    choices.by_keys(birds_page(window).find('Kind', 'combo box'), 'duck')
    equal(first(window)['kind'], 'duck', 'kind')
    keys('ctrl+z')
    equal(first(window)['kind'], 'heavy_breed', 'kind, undone')


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
    choice.find('Run', 'list item').click()
    choices.closed(choice)
    equal(first(window)['pen'], 'run', 'home pen')


@case('the home pen is chosen by keys')
def home_by_keys():
    window = open_plan(plans.two_pens())
    choice = birds_page(window).find('Home pen', 'combo box')
    equal(choices.open_by_keys(choice).name, 'House', 'the pen under the arrow keys')
    keys('Down', 'Return')
    choices.closed(choice)
    equal(first(window)['pen'], 'run', 'home pen')


def first_breed(window):
    return birds_page(window).find('Breed', 'combo box')


@case('the list of breeds opens on the one there is, and a screen reader is told its kind')
def breeds_are_told():
    choice = first_breed(open_plan(plans.two_pens()))
    row = choices.open_by_keys(choice)
    equal(f'Breed: {row.name}', choice.find(role='push button').name, 'the button')
    equal(row.description, 'heavy hen, chosen now', 'what is told of the breed')
    equal(row.has('selected'), True, 'the row is selected')
    keys('Down')
    other = wait(lambda: next((each for each in choice.look_for(role='list item')
                               if each.has_focus() and each.name != row.name), None),
                 'the next breed has the focus')
    wait(lambda: other.description and 'chosen' not in other.description, 'its kind alone')


@case('words anywhere in a name find it, those it begins with first; Escape leaves all as it was')
def search_breeds():
    window = open_plan(plans.two_pens())
    choice = first_breed(window)
    choices.open_by_keys(choice)
    choices.narrow(choice, 'leg', 'Leghorn')
    keys('ctrl+a')
    choices.narrow(choice, 'red rhode', 'Rhode Island Red')
    keys('ctrl+a')
    write('zzz')
    choice.says('No name has that in it')
    keys('Return')
    keys('Escape')
    choices.closed(choice)
    equal(first(window)['breed'], plans.hens()['breed'], 'breed')
    row = choices.open_by_keys(choice)
    equal(len(list(choice.look_for(role='list item'))) > 90, True, 'all breeds are listed again')
    equal(choice.find(role='push button').name, f'Breed: {row.name}', 'where it opens')


@case('arrow keys go from what is typed to the names found and back')
def arrows_in_search():
    window = open_plan(plans.two_pens())
    choice = first_breed(window)
    choices.open_by_keys(choice)
    row = choices.narrow(choice, 'brahma', 'Brahma')
    keys('Down')
    wait(row.has_focus, 'the first name found has the focus')
    keys('Up')
    wait(choice.find('Any part of the name', 'entry').has_focus, 'the entry has it again')
    keys('Down', 'Return')
    choices.closed(choice)
    equal(first(window)['breed'], 'brahma', 'breed')


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


@case('a group is removed by keys, and comes back when undone')
def remove_by_keys():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    page.find('Remove this group of birds', 'push button').reach()
    keys('space')
    page.is_gone('Remove this group of birds')
    equal(window.saved().get('batches', []), [], 'groups')
    keys('ctrl+z')
    page.find('Remove this group of birds', 'push button')
    equal(window.saved()['batches'], [plans.hens()], 'groups')


@case('a group is given a name, the field pressed by mouse')
def name_by_mouse():
    window = open_plan(plans.two_pens())
    birds_page(window).find('Name', 'text').click()
    write_over('Old ladies')
    equal(first(window)['name'], 'Old ladies', 'name')


@case('a group is given a name by keys')
def name_by_keys():
    window = open_plan(plans.two_pens())
    birds_page(window).find('Name', 'text').reach()
    write_over('Old ladies')
    equal(first(window)['name'], 'Old ladies', 'name')


@case('the day the plan is judged on is typed')
def type_day():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    page.find('Judged on: *', 'push button').click()
    page.find('Type a day', 'text')
    write_over('2026-08-15')
    page.find('Judged on: 15 Aug 2026', 'push button')
    equal(window.saved()['as_of'], '2026-08-15', 'day')


@case('the day the plan is judged on is opened and typed by keys')
def type_day_by_keys():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    page.find('Judged on: *', 'push button').reach()
    keys('space')
    page.find('Type a day', 'text').find(role='text').reach()
    write_over('2026-08-15')
    page.find('Judged on: 15 Aug 2026', 'push button')
    equal(window.saved()['as_of'], '2026-08-15', 'day')


@case('the day a group hatched is typed, its field opened by mouse')
def hatched_by_mouse():
    window = open_plan(plans.two_pens())
    page = birds_page(window)
    page.find('Hatched: *', 'push button').click()
    page.find('Type a day', 'text')
    write_over('2026-05-01')
    page.find('Hatched: 1 May 2026', 'push button')
    equal(first(window)['hatched'], '2026-05-01', 'hatched')


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
