# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# links.py LIBRARY: the built core needs no toolkit, itself or through others.
import re
import subprocess
import sys

from tree import report

TOOLKIT = re.compile(r'lib(gtk|gdk|gsk|gdk_pixbuf|adwaita|cairo|pango|graphene)')


def needed_by(library):
    listing = subprocess.run(['ldd', library], text=True, check=True,
                             stdout=subprocess.PIPE).stdout
    return [line.split()[0] for line in listing.splitlines()]


report([('libhencote links no toolkit',
         [name for name in needed_by(sys.argv[1]) if TOOLKIT.match(name)])])
