# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""A name picked out of the list that a button opens."""
from screen import keys, wait, write


def _focused(choice):
    return next((row for row in choice.look_for(role='list item') if row.has_focus()), None)


def open_by_keys(choice):
    """The row the list opens on: what is picked, under the arrow keys."""
    choice.find(role='push button').reach()
    keys('space')
    return wait(lambda: _focused(choice), 'the list takes the keys')


def open_by_mouse(choice):
    choice.find(role='push button').click()
    return wait(lambda: _focused(choice), 'the list takes the keys')


def closed(choice):
    """The list is gone and its button has the focus again."""
    choice.is_gone(role='list item')
    wait(choice.find(role='push button').has_focus, 'the button has the focus')


def by_keys(choice, name):
    """The names are gone through with the arrow keys, from the first."""
    open_by_keys(choice)
    names = [row.name for row in choice.look_for(role='list item')]
    keys('Home', *['Down'] * names.index(name), 'Return')
    closed(choice)


def by_typing(choice, typed, name):
    """A part of the name is typed, and the first that has it taken."""
    open_by_keys(choice)
    narrow(choice, typed, name)
    keys('Return')
    closed(choice)


def narrow(choice, typed, name):
    write(typed)
    first = choice.find(role='list item')
    wait(lambda: choice.find(role='list item').name == name, f'{typed!r} finds {name!r} first')
    return first


def by_mouse(choice, name):
    wait(lambda: choice.box[3] > 0, f'{choice.name!r} is laid out')
    open_by_mouse(choice)
    row = choice.find(name, 'list item')
    row.bring_into_view(choice.find(role='list'))
    row.click_in_popup()
    closed(choice)
