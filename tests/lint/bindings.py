# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The library answers through its bindings, as another language calls it.
import gi

gi.require_version('Hencote', '0')
from gi.repository import GLib, Hencote  # noqa: E402

from tree import report  # noqa: E402


def differences(*pairs):
    for said, wanted in pairs:
        if said != wanted:
            yield f'{said!r}, not {wanted!r}'


def lengths():
    yield from differences(
        (Hencote.length_parse('2\' 3 1/2"', Hencote.Units.FEET), (True, 698.5)),
        (Hencote.length_parse('70 cm', Hencote.Units.METRIC), (True, 700.0)))
    try:
        Hencote.length_parse('many', Hencote.Units.METRIC)
        yield 'a word was taken for a length'
    except GLib.Error as error:
        yield from differences((error.domain, 'hc-error-quark'))


def plans():
    plan = Hencote.Plan.new_empty('uid', 'Byre')
    values = plan.get()
    yield from differences(
        (plan.get_id(), 'uid'), (values.title, 'Byre'), (len(values.variants), 1))


report([
    ('a length is read, or refused with an error', lengths()),
    ('a plan is made and its values are read', plans()),
])
