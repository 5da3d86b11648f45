# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The main menu, by mouse and by keys."""
from screen import keys, wait


def _entry(window, label):
    """The menu, once it shows an entry, and the entry."""
    def look():
        for menu in window.frame.look_for(role='menu'):
            for thing in menu.look_for(label):
                if thing.role.endswith('menu item') and thing.box[2] > 0:
                    return menu, thing
        return None
    return wait(look, f'the menu has {label!r}')


def _closed(window):
    wait(lambda: not list(window.frame.look_for(role='menu')), 'the menu is closed')


def _place(window, menu):
    """Where the X server has the menu, which moves it to fit the screen. The bus does
    not know of that."""
    def look():
        shapes = (window.shape_of(ident) for ident in window.ids())
        return next((shape for shape in shapes if shape[2:] == menu.box[2:]), None)
    return wait(look, 'the menu is on the screen')


def by_mouse(window, label):
    window.find('Main menu', 'push button').click()
    menu, entry = _entry(window, label)
    left, top, _, _ = _place(window, menu)
    across, down = entry.middle
    entry.click(at=(left + across - menu.box[0], top + down - menu.box[1]))
    _closed(window)


def by_keys(window, label):
    keys('F10')
    _entry(window, label)[1].reach('Down', most=20)
    keys('Return')
    _closed(window)
