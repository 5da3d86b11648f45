# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The floor on the screen: millimetres to pixels, and the keeper's moves on it."""
import plans
from screen import drag, x


class Floor:
    """The floor of a window, measured from two fittings or pens whose places are known."""

    def __init__(self, window):
        self.window = window
        self.floor = window.part('HcFloorView').find('Floor plan', 'panel')

    def item(self, name):
        return self.floor.find(name, 'push button')

    def measure(self):
        """Where millimetres are: the house begins at 0, and the run ends at 7 m."""
        house, run = self.item('House*').box, self.item('Run*').box
        self.scale = (run[0] + run[2] - house[0]) / 7000
        self.left, self.top = house[:2]
        return self

    def px(self, x_mm, y_mm):
        return self.left + x_mm * self.scale, self.top + y_mm * self.scale

    def mm(self, pixels):
        return pixels / self.scale

    def choose(self, x_mm, y_mm):
        left, top = self.px(x_mm, y_mm)
        x('mousemove', round(left), round(top))
        x('click', 1)

    def drag(self, start, end, **options):
        drag(self.px(*start), self.px(*end), **options)

    def tab_to(self, name):
        return self.item(name).reach()


def open_floor(window):
    return Floor(window).measure()


__all__ = ['Floor', 'open_floor', 'plans']
