# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The toolkit's file chooser, by keys: a whole path is typed into it."""
from screen import keys, wait, write


def _named(window, title):
    return wait(lambda: next((frame for frame in window.frames() if frame.name == title), None),
                f'the window {title!r}')


def _closed(window, title):
    wait(lambda: all(frame.name != title for frame in window.frames()), f'{title!r} is closed')


def save_as(window, name, key='ctrl+shift+s', title='Save the Plan As',
            window_stays=True):
    """Saves into the run's home."""
    file = window.home / name
    keys(key)
    field = _named(window, title).find('Name:', 'text')
    wait(field.has_focus, 'the name can be typed')
    keys('ctrl+a')
    write(str(file))
    wait(lambda: field.text == str(file), 'the name is typed')
    keys('Return')
    wait(file.exists, f'{name} is saved')
    if window_stays:
        _closed(window, title)
    return file


def save_plan_as(window, name):
    window.file = save_as(window, name)
    window.frame.says(name)


def open_by_name(window, file):
    keys('ctrl+o')
    chooser = _named(window, 'Open a Plan')
    wait(lambda: any(thing.has_focus() for thing in chooser.walk()), 'the chooser has the focus')
    keys('slash')
    field = chooser.find('GtkFileChooserEntry', 'text')
    wait(field.has_focus, 'the path can be typed')
    keys('ctrl+a')
    write(str(file))
    wait(lambda: field.text == str(file), 'the path is typed')
    keys('Return')
    _closed(window, 'Open a Plan')
