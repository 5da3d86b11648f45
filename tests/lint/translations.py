#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Hencote authors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# Every text a keeper reads reaches the translators, and their files are
# sound. With --write, po/POTFILES.in and po/book-texts.h are brought up to date
# first.
import json
import re
import sys
import tempfile

from tree import TOP, complaints_of, files_under, report, text_of

LIST = 'po/POTFILES.in'
BOOK = 'po/book-texts.h'
BOOK_HEAD = '''/* SPDX-FileCopyrightText: 2026 The Hencote authors
 * SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The texts of the book, for translators. Made from data/ by
 * tests/lint/translations.py --write; never compiled. */
'''

# The members of each part of the book that a keeper reads.
READ = {
    'birds': ['name', 'egg_colour'],
    'fittings': ['name', 'why', 'caution'],
    'materials': ['name'],
    'predators.json': ['name', 'note'],
    'standards': ['name', 'about', 'note'],
}
MARKED = re.compile(r'\b(?:_|N_|C_|NC_|g_dngettext|ngettext|gettext|g_dpgettext2) ?\(\s*(?:GETTEXT_PACKAGE, ?)?"'
                    r'|translatable="yes"')


def quoted(text):
    return json.dumps(text, ensure_ascii=False)


def texts_in(value, members):
    """The marked texts of one JSON value, in the order they stand in."""
    if isinstance(value, list):
        for item in value:
            yield from texts_in(item, members)
    elif isinstance(value, dict):
        for member in members:
            text, plural = value.get(member), value.get('plural')
            if text and member == 'name' and plural:
                yield f'ngettext ({quoted(text)}, {quoted(plural)}, n)'
            elif text:
                yield f'N_({quoted(text)})'
        for item in value.values():
            yield from texts_in(item, members)


def book_texts():
    lines = {}
    for folder, members in READ.items():
        root = f'data/{folder}'
        paths = [root] if root.endswith('.json') else files_under(root, suffixes=('.json',))
        for path in paths:
            lines.update(dict.fromkeys(texts_in(json.loads(text_of(path)), members)))
    return BOOK_HEAD + '\n'.join(lines) + '\n'


def with_texts():
    """The files that hold texts for translation, in order."""
    yield BOOK
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


def outdated():
    if text_of(BOOK) != book_texts():
        yield 'run tests/lint/translations.py --write'


# As the build takes the texts out of the sources (meson's preset for GLib).
KEYWORDS = ['_', 'N_', 'C_:1c,2', 'NC_:1c,2', 'g_dcgettext:2', 'g_dngettext:2,3', 'ngettext:1,2',
            'g_dpgettext2:2c,3', 'NG_:1,2']


def missing(language):
    """What the sources say that a language does not, held against them."""
    with tempfile.NamedTemporaryFile(suffix='.pot') as template:
        complaints = complaints_of(
            'xgettext', '--from-code=UTF-8', '--files-from', LIST, '-o', template.name,
            *(f'--keyword={keyword}' for keyword in KEYWORDS))
        faults = [line for line in complaints if 'warning' not in line]
        return faults or complaints_of('msgcmp', f'po/{language}.po', template.name)


wanted = list(with_texts())
if '--write' in sys.argv:
    (TOP / BOOK).write_text(book_texts(), encoding='utf-8')
    (TOP / LIST).write_text('\n'.join(wanted) + '\n', encoding='utf-8')
languages = text_of('po/LINGUAS').split()
listed = text_of(LIST).split()

report([
    (f'{LIST} lists every file with texts', difference(listed, wanted)),
    (f'{BOOK} holds the texts of the book', outdated()),
    *((f'the translation into {language} is sound',
       complaints_of('msgfmt', '-c', '-o', '/dev/null', f'po/{language}.po'))
      for language in languages),
    *((f'the translation into {language} is whole', missing(language))
      for language in languages),
])
