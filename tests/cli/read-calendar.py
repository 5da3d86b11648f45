# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# read-calendar.py HENCOTE-PLAN PLAN: the calendar as another program's parser reads
# it, and that writing it again after a date moved changes days and no ids.
import json
import subprocess
import sys
import tempfile
from datetime import date, timedelta
from pathlib import Path

from icalendar import Calendar

PROGRAM, PLAN = sys.argv[1], Path(sys.argv[2])
CLUTCH = {'id': 'eggs', 'name': 'Spring eggs; brown, and "white"', 'kind': 'medium_layer',
          'eggs': 24, 'pen': 'brooder'}


def write_plan(folder, set_on):
    plan = json.loads(PLAN.read_text(encoding='utf-8'))
    plan['clutches'] = [{**CLUTCH, 'set_on': set_on.isoformat()}]
    path = folder / 'plan.hencote'
    path.write_text(json.dumps(plan), encoding='utf-8')
    return path


def export(folder, set_on):
    to = folder / 'chores.ics'
    plan = write_plan(folder, set_on)
    subprocess.run([PROGRAM, 'calendar', plan, '--to', to, '--weeks', '20'], check=True,
                   stdout=subprocess.DEVNULL)
    listed = subprocess.run([PROGRAM, 'calendar', plan, '--json', '--weeks', '20'], check=True,
                            capture_output=True)
    return (list(Calendar.from_ical(to.read_bytes()).walk('VEVENT')),
            {task['uid']: task for task in json.loads(listed.stdout)})


def day_of(event):
    return event['DTSTART'].dt


def main():
    number = 0

    def report(ok, what):
        nonlocal number
        number += 1
        print(f'{"ok" if ok else "not ok"} {number} - {what}')

    print('1..6')
    with tempfile.TemporaryDirectory() as folder:
        first, tasks = export(Path(folder), date(2026, 5, 1))
        later, _ = export(Path(folder), date(2026, 5, 11))
    days = {str(event['UID']): day_of(event) for event in first}
    moved = {str(event['UID']): day_of(event) for event in later}
    eggs = [uid for uid in days if '-eggs-' in uid and not uid.startswith('raise')]
    report(len(days) == len(first) > 20, 'every event has an id of its own')
    report(days == {uid: date.fromisoformat(task['date']) for uid, task in tasks.items()},
           'every day is that of the list')
    report(all(type(day) is date and event['DTEND'].dt - day == timedelta(1)
               for event in first for day in [day_of(event)]), 'events last a whole day')
    report(all(moved[uid] - days[uid] == timedelta(10) for uid in eggs) and len(eggs) >= 5,
           'what hangs on the eggs moves with them')
    report(all(str(event['SUMMARY']) == tasks[str(event['UID'])]['sentence']
               for event in first), 'names come through whole')
    report(all(str(event['DESCRIPTION']) for event in first), 'every event says why')


main()
