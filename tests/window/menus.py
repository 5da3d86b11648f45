# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The main menu, by mouse and by keys."""
from screen import keys, wait


def _entry(window, label):
    """An entry of the menu, once it is open."""
    def look():
        return next((thing for menu in window.frame.look_for(role='menu')
                     for thing in menu.look_for(label)
                     if thing.role.endswith('menu item') and thing.box[2] > 0), None)
    return wait(look, f'the menu has {label!r}')


def _closed(window):
    wait(lambda: not list(window.frame.look_for(role='menu')), 'the menu is closed')


def by_mouse(window, label):
    window.find('Main menu', 'push button').click()
    _entry(window, label).click_in_popup()
    _closed(window)


def by_keys(window, label):
    keys('F10')
    _entry(window, label).reach('Down', most=20)
    keys('Return')
    _closed(window)
