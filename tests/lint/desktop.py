# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# desktop.py DESKTOP-FILE METAINFO-FILE: what Hencote hands to the desktop
# passes the desktop's own validators.
import sys
import tempfile
from pathlib import Path

from tree import complaints_of, files_under, report

desktop_file, metainfo_file = (str(Path(argument).resolve()) for argument in sys.argv[1:])
DESKTOP = 'data/desktop'


def mime_type():
    """The type database builds with our type in it."""
    with tempfile.TemporaryDirectory() as place:
        return complaints_of('sh', '-c', f'''
            mkdir -p "{place}/packages" &&
            cp {DESKTOP}/*.mime.xml "{place}/packages/" &&
            XDG_DATA_DIRS="{place}" update-mime-database "{place}" &&
            grep -q hencote "{place}/globs2"''')


def manual_page(path):
    """What man warns of, were it only a warning."""
    return complaints_of('sh', '-c',
                         f'! MANWIDTH=80 man --warnings=w -E UTF-8 -l {path} 2>&1 >/dev/null | grep .')


report([
    ('the desktop file is valid', complaints_of('desktop-file-validate', desktop_file)),
    ('the metainfo is valid', complaints_of('appstreamcli', 'validate', '--no-net',
                                            metainfo_file)),
    ('the settings compile', complaints_of('glib-compile-schemas', '--strict',
                                           '--dry-run', DESKTOP)),
    ('the file type is known', mime_type()),
    ('the completion parses', complaints_of('bash', '-n', 'data/completion/hencote-plan')),
    *((f'{path.name} is well-formed', complaints_of('xmllint', '--noout', str(path)))
      for path in files_under('data', suffixes=('.xml', '.ui', '.svg', '.xml.in'))),
    *((f'{path.name} is a sound manual page', manual_page(path))
      for path in files_under('data/man', suffixes=('.1',))),
])
