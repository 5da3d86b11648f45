# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The program in a real window: pointer and keys through the X server, what is
there through the accessibility bus, and the saved plan as the truth."""
import fnmatch
import json
import os
import pathlib
import shutil
import signal
import subprocess
import time

import gi

gi.require_version('Atspi', '2.0')
from gi.repository import Atspi, GLib  # noqa: E402

PATIENCE_S = float(os.environ.get("PATIENCE", 30))
# Panels that hold panels, which are looked into for one.
HOLDERS = ('HcLatePanel', 'HcViews', 'HcNeedsPanel')
SETTINGS = '[Settings]\ngtk-enable-animations=0\ngtk-cursor-blink=0\n' \
           'gtk-theme-name=Adwaita\ngtk-font-name=Sans 10\n'


class Failed(AssertionError):
    """What was waited for did not come."""


def wait(question, what):
    """Asks again until the answer is yes; the answer is handed back."""
    until = time.monotonic() + PATIENCE_S
    while True:
        answer = question()
        if answer:
            return answer
        if time.monotonic() > until:
            raise Failed(f'waited in vain: {what}')
        time.sleep(0.01)


def equal(seen, expected, what):
    if seen != expected:
        raise Failed(f'{what}: {seen!r} instead of {expected!r}')


def near(seen, expected, by, what):
    if abs(seen - expected) > by:
        raise Failed(f'{what}: {seen} instead of {expected} within {by}')


def x(*words):
    return subprocess.run(['xdotool', *map(str, words)], check=True,
                          capture_output=True, text=True).stdout


def keys(*names):
    x('key', *names)


def write(text):
    x('type', '--delay', '0', '--', text)


def write_over(text):
    """Types in place of all there is in the field, and enters it."""
    keys('ctrl+a')
    write(text)
    keys('Return')


class Thing:
    """Something on the screen, as the accessibility bus tells it."""

    def __init__(self, accessible, window):
        self.accessible = accessible
        self.window = window

    @property
    def name(self):
        return self.accessible.get_name() or ''

    @property
    def description(self):
        return self.accessible.get_description() or ''

    @property
    def role(self):
        return self.accessible.get_role_name()

    def has(self, state):
        return self.accessible.get_state_set().contains(getattr(Atspi.StateType, state.upper()))

    @property
    def box(self):
        """x, y, width and height on the screen; nothing of what has no place."""
        component = self.accessible.get_component_iface()
        if component is None:
            return 0, 0, 0, 0
        area = component.get_extents(Atspi.CoordType.WINDOW)
        return (area.x + self.window.left, area.y + self.window.top, area.width, area.height)

    @property
    def middle(self):
        left, top, width, height = self.box
        return left + width / 2, top + height / 2

    @property
    def text(self):
        length = Atspi.Text.get_character_count(self.accessible)
        return Atspi.Text.get_text(self.accessible, 0, length)

    @property
    def value(self):
        return self.accessible.get_value_iface().get_current_value()

    def children(self):
        for i in range(self.accessible.get_child_count()):
            child = self.accessible.get_child_at_index(i)
            if child is not None:
                yield Thing(child, self.window)

    def walk(self):
        """Itself and all in it that is shown."""
        if not self.has('visible'):
            return
        yield self
        for child in self.children():
            yield from child.walk()

    def look_for(self, name=None, role=None):
        """All in it with a name, which may have stars in place of what is not known."""
        for thing in self.walk():
            if role is not None and thing.role != role:
                continue
            if name is None or fnmatch.fnmatchcase(thing.name, name):
                yield thing

    def find(self, name=None, role=None, nth=0):
        def look():
            try:
                found = list(self.look_for(name, role))
            except GLib.Error:
                return None
            return found[nth] if len(found) > nth else None
        return wait(look, f'{role or "something"} called {name!r} in {self.name!r}')

    def is_gone(self, name=None, role=None):
        def look():
            try:
                return not list(self.look_for(name, role))
            except GLib.Error:
                return False
        wait(look, f'{role or "something"} called {name!r} is gone from {self.name!r}')

    def says(self, text):
        """Waits until something in it shows a text."""
        def look():
            try:
                return any(text in thing.name for thing in self.walk())
            except GLib.Error:
                return False
        wait(look, f'{self.name!r} says {text!r}')

    def walk_open(self):
        """As walk, without what is folded away."""
        if not self.has('visible') or 0 in self.box[2:]:
            return
        yield self
        for child in self.children():
            yield from child.walk_open()

    def texts(self):
        """What can be read in it now."""
        try:
            return [thing.name for thing in self.walk_open() if thing.role == 'label']
        except GLib.Error:
            return []

    def click(self, button=1, at=None):
        point_at(self, at)
        x('click', button)

    def around(self):
        """What it is in, from the nearest, within its window."""
        at = self.accessible.get_parent()
        while at is not None and at.get_role_name() not in ('frame', 'dialog'):
            yield Thing(at, self.window)
            at = at.get_parent()

    def click_in_popup(self):
        """For what is in a list or a menu that dropped down. The X server has moved
        that to fit the screen, which the bus does not know of."""
        def look():
            popups = {shape[2:]: shape[:2] for shape in map(self.window.shape_of,
                                                            self.window.ids()[1:])}
            return next(((popups[around.box[2:]], around.box[:2], self.middle)
                         for around in self.around() if around.box[2:] in popups), None)

        def rests():
            """The pointer is brought to where it is, and it is there still."""
            found = look()
            if found is None:
                return False
            point_at(self, [middle - told + now for now, told, middle in zip(*found)])
            return all(look() == found for _ in range(3))
        wait(rests, f'what has {self.name!r} is on the screen')
        x('click', 1)

    def bring_into_view(self, area, across=0.5):
        """Scrolls what is below the edge of an area up, or down; the pointer is part
        of the way over, where no field takes the wheel for itself."""
        def look():
            _, top, _, height = self.box
            _, from_top, _, most = area.box
            if top < from_top:
                button = 4
            elif top + height > from_top + most:
                button = 5
            else:
                return True
            left, up, width, down = area.box
            x('mousemove', round(left + width * across), round(up + down / 2))
            x('click', button)
            return False
        wait(look, f'{self.name!r} is in view')

    def has_focus(self):
        return self.has('focused')

    def reach(self, key='Tab', most=200):
        """Goes on with the Tab key until it has the focus, and keeps it. The answer
        to a first question may be older than the key."""
        for _ in range(most):
            if any(self.has_focus() for _ in range(3)) and all(self.has_focus() for _ in range(3)):
                return self
            keys(key)
        return wait(self.has_focus, f'{self.name!r} is reached by the key {key}')


class Screen:
    """One run of the program, on a plan of its own, in a home of its own."""

    def __init__(self, plan=None, home=None, program=None):
        self.home = pathlib.Path(home or os.environ['HOME'])
        self.file = None
        self.left = self.top = 0
        self.parts = {}
        self.errors = open(self.home / 'stderr', 'w+', encoding='utf-8')
        words = [program or os.environ['HENCOTE']]
        if plan is not None:
            self.file = plan if isinstance(plan, pathlib.Path) else self.put(plan)
            words.append(str(self.file))
        self._settings()
        self.process = subprocess.Popen(words, stdin=subprocess.DEVNULL, stderr=self.errors,
                                        env={**os.environ, 'G_DEBUG': 'fatal-warnings'},
                                        start_new_session=True)
        self.frame = wait(self._first_frame, 'the window opens')
        self._place()

    def put(self, plan, name='plan.hencote'):
        file = self.home / name
        file.write_text(json.dumps(plan), encoding='utf-8')
        return file

    def _settings(self):
        folder = pathlib.Path(os.environ['XDG_CONFIG_HOME']) / 'gtk-4.0'
        folder.mkdir(parents=True, exist_ok=True)
        (folder / 'settings.ini').write_text(SETTINGS, encoding='utf-8')

    def frames(self):
        """Every window the program has open."""
        desktop = Atspi.get_desktop(0)
        for i in range(desktop.get_child_count()):
            application = desktop.get_child_at_index(i)
            if application is None or application.get_process_id() != self.process.pid:
                continue
            application.set_cache_mask(Atspi.Cache.NONE)
            yield from Thing(application, self).children()

    def _first_frame(self):
        if self.process.poll() is not None:
            raise Failed(f'the program ended: {self.stderr()}')
        try:
            return next((frame for frame in self.frames() if frame.role == 'frame'), None)
        except GLib.Error:
            return None

    def _place(self):
        """Where the content of the window is: the shadow round it is no part of it."""
        self.id = wait(self.ids, 'the window is on the screen')[0]
        left, top, outer_width, outer_height = self.shape_of(self.id)

        def size():
            _, _, width, height = self.frame.box
            return (width, height) if width > 0 else None
        width, height = wait(size, 'the window is laid out')
        self.left = left + (outer_width - width) // 2
        self.top = top + (outer_height - height) // 2
        x('windowfocus', '--sync', self.id)
        x('mousemove', self.left + 400, self.top + 20)

    def ids(self):
        """What the X server calls the windows of the program that can be seen."""
        try:
            return x('search', '--onlyvisible', '--pid', self.process.pid).split()
        except subprocess.CalledProcessError:
            return []

    def shape_of(self, ident):
        """x, y, width and height on the screen of a window of the X server."""
        shape = dict(line.split('=') for line in
                     x('getwindowgeometry', '--shell', ident).split() if '=' in line)
        return tuple(int(shape[name]) for name in ('X', 'Y', 'WIDTH', 'HEIGHT'))

    def find(self, name=None, role=None, nth=0):
        return self.frame.find(name, role, nth)

    def part(self, widget):
        """A panel, by the name of its widget, which is what the toolkit calls what
        has no other name. It is looked for once."""
        if widget not in self.parts:
            self.parts[widget] = wait(lambda: self.look_for_part(widget), f'there is a {widget}')
        return self.parts[widget]

    def look_for_part(self, widget):
        waiting = [self.frame]
        while waiting:
            thing = waiting.pop(0)
            if thing.name == widget:
                return thing
            if not thing.name.startswith('Hc') or thing.name in HOLDERS \
                    or thing is self.frame:
                waiting += thing.children()
        return None

    def dialog(self, heading):
        """A window of the program that shows a heading, and takes the keys."""
        def look():
            for frame in self.frames():
                if any(thing.name == heading for thing in frame.walk()):
                    return frame
            return None

        def guarded():
            try:
                return look()
            except GLib.Error:
                return None
        found = wait(guarded, f'a dialog says {heading!r}')
        return found

    def stderr(self):
        self.errors.flush()
        return (self.home / 'stderr').read_text(encoding='utf-8')

    def saved(self):
        """Saves with Ctrl+S and reads the file back."""
        before = self._stamp()
        keys('ctrl+s')
        wait(lambda: self._stamp() not in (before, None), 'the plan is saved')
        return json.loads(self.file.read_text(encoding='utf-8'))

    def _stamp(self):
        try:
            state = self.file.stat()
        except FileNotFoundError:
            return None
        return state.st_ino, state.st_mtime_ns

    def picture(self, file):
        subprocess.run(['import', '-window', 'root', str(file)], check=False)

    def kill(self):
        """Ends it at once, as a failing machine would."""
        if self.process.poll() is None:
            self.process.send_signal(signal.SIGKILL)
            self.process.wait()

    def close(self):
        self.kill()
        self.errors.close()


def point_at(thing, at=None):
    """The pointer rests on its middle, or on a place of it."""
    left, top = at or thing.middle
    x('mousemove', round(left), round(top))


def drag(start, end, button=1, hold=None, steps=6, before_release=None, hold_first=None):
    """Presses, moves in steps and lets go, with a key held down if asked, from the
    press on or from before it."""
    x('mousemove', round(start[0]), round(start[1]))
    if hold_first:
        x('keydown', hold_first)
    x('mousedown', button)
    hold = hold or hold_first
    if hold:
        x('keydown', hold)
    for i in range(1, steps + 1):
        part = i / steps
        x('mousemove', round(start[0] + (end[0] - start[0]) * part),
          round(start[1] + (end[1] - start[1]) * part))
    try:
        if before_release:
            before_release()
    finally:
        x('mouseup', button)
        if hold:
            x('keyup', hold)


def carry(thing, end):
    """Drags a thing to where it is dropped: the X server's two sides of a drop first
    agree by messages, for which the pointer lingers while the program answers."""
    def linger():
        for i in range(20):
            x('mousemove', round(end[0]) + i % 2, round(end[1]))
            thing.name
    drag(thing.middle, end, steps=12, before_release=linger)


def new_home(name):
    """An empty home for a run, so that none finds what another has left."""
    home = pathlib.Path(os.environ['XDG_RUNTIME_DIR']).parent / name
    shutil.rmtree(home, ignore_errors=True)
    home.mkdir()
    for variable in ('config', 'data', 'state', 'cache'):
        folder = home / variable
        folder.mkdir()
        os.environ[f'XDG_{variable.upper()}_HOME'] = str(folder)
    os.environ['HOME'] = str(home)
    return home
