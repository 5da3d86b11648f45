# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# help.py [PROGRAM]: the manual is valid, hangs together, is listed for
# installing, and has a page for every need PROGRAM names.
import re
import subprocess
import sys

from tree import complaints_of, files_under, report, text_of

MANUAL = 'help/C'
pages = [path.stem for path in files_under(MANUAL, suffixes=('.page',))]


def not_installed():
    listed = re.findall(r"'([\w-]+)\.page'", text_of('help/meson.build'))
    return sorted(set(pages) ^ set(listed))


def misnamed():
    for page in pages:
        if f' id="{page}"' not in text_of(f'{MANUAL}/{page}.page'):
            yield f'{page}.page has another id'


def needs_without_page(program):
    words = subprocess.run([program], text=True, check=True,
                           stdout=subprocess.PIPE).stdout.split()
    return [word for word in words if word not in pages]


report([
    ('every page is valid', complaints_of('yelp-check', 'validate', MANUAL)),
    ('every link leads somewhere', complaints_of('yelp-check', 'links', MANUAL)),
    ('every page is reached', complaints_of('yelp-check', 'orphans', MANUAL)),
    ('every page is named by its id', misnamed()),
    ('every page is installed', not_installed()),
    *(('every need has its page', needs_without_page(program))
      for program in sys.argv[1:]),
])
