# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""A choice out of a list that drops down."""
from screen import keys, wait


def _entries(choice, name):
    """The entries listed, and the place of the one wanted; none before all is listed."""
    entries = list(choice.find(role='list').look_for(role='list item'))
    texts = [next((label.name for label in entry.look_for(role='label')), None)
             for entry in entries]
    return (entries, texts.index(name)) if name in texts else None


def by_keys(choice, name):
    choice.find(role='push button').reach()
    keys('space')
    entries, at = wait(lambda: _entries(choice, name), f'{name!r} is listed')
    wait(lambda: any(entry.has_focus() for entry in entries), 'the list takes the keys')
    keys('Home', *['Down'] * at, 'Return')
    choice.is_gone(role='list item')
