# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# Every text a keeper reads reaches the translators, and their files are
# sound. With --write, po/POTFILES.in is brought up to date first.
import re
import sys

from tree import TOP, complaints_of, files_under, report, text_of

LIST = 'po/POTFILES.in'
MARKED = re.compile(r'\b(?:_|N_|C_|NC_|g_dngettext|ngettext|gettext|g_dpgettext2) ?\(\s*(?:GETTEXT_PACKAGE, ?)?"'
                    r'|translatable="yes"')


def with_texts():
    """The files that hold texts for translation, in order."""
    for path in files_under('data', suffixes=('.desktop.in', '.gschema.xml',
                                              '.metainfo.xml.in', '.mime.xml')):
        yield str(path)
    for path in files_under('data', 'src', suffixes=('.c', '.h', '.ui')):
        if MARKED.search(text_of(path)):
            yield str(path)


def difference(listed, wanted):
    for path in sorted(set(wanted) - set(listed)):
        yield f'{path} holds texts and is not in {LIST}'
    for path in sorted(set(listed) - set(wanted)):
        yield f'{path} is in {LIST} and holds no texts'


wanted = list(with_texts())
if '--write' in sys.argv:
    (TOP / LIST).write_text('\n'.join(wanted) + '\n', encoding='utf-8')
languages = text_of('po/LINGUAS').split()
listed = text_of(LIST).split()

report([
    (f'{LIST} lists every file with texts', difference(listed, wanted)),
    *((f'the translation into {language} is sound',
       complaints_of('msgfmt', '-c', '-o', '/dev/null', f'po/{language}.po'))
      for language in languages),
])
