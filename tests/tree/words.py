#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Holds the words of other languages to the texts of the window and of paper.

Usage: words.py LUPDATE SOURCE_FOLDER. Extracts the texts of app/ and the sentences of core/ anew and prints each that a language lacks, has
unfinished or no longer needs, and each whose places for values, mnemonic or outer blanks are not the source's.
"""
import pathlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml


def texts(path):
    """(source, comment) → its message; contexts do not count, as the program looks up without them."""
    return {(message.findtext("source"), message.findtext("comment") or ""): message
            for message in xml.parse(path).getroot().iter("message")}


def extracted(lupdate, top):
    with tempfile.TemporaryDirectory() as folder:
        made = pathlib.Path(folder) / "app.ts"
        # TEXT: the tables of actions and sheets mark their words so; phrase: the sentences of core.
        subprocess.run([lupdate, str(top / "app"), str(top / "core"), "-recursive", "-locations", "none",
                        "-tr-function-alias", "QT_TR_NOOP+=TEXT,tr+=phrase", "-ts", str(made)],
                       check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        return texts(made)


def shape(text):
    """What a translation must keep: values' places, whether there is a mnemonic, outer blanks."""
    places = sorted(re.findall(r"%\d|%n", text))
    mnemonics = len(re.findall(r"&(?=\w)", re.sub(r"&\w+;", "", text)))
    return places, mnemonics, text[:1] == " ", text[-1:] == " "


def breaches(wanted, folder):
    had = {**texts(folder / "app.ts"), **texts(folder / "core.ts")}
    for source, comment in sorted(wanted.keys() - had.keys()):
        yield f"lacks: {source!r} {comment}"
    for source, comment in sorted(had.keys() - wanted.keys()):
        yield f"no longer needed: {source!r} {comment}"
    for (source, comment), message in had.items():
        translation = message.find("translation")
        forms = [form.text or "" for form in translation.findall("numerusform")] or [translation.text or ""]
        if translation.get("type") or not all(forms):
            yield f"unfinished: {source!r}"
        elif any(shape(form) != shape(source) for form in forms):
            yield f"other places, mnemonic or blanks: {source!r}: {forms}"
        numbered = wanted.get((source, comment))
        if numbered is not None and (numbered.get("numerus") == "yes") != (len(forms) > 1):
            yield f"one form for one and one for many, where the source has %n: {source!r}"


def main():
    lupdate, top = sys.argv[1], pathlib.Path(sys.argv[2])
    wanted = extracted(lupdate, top)
    assert len(wanted) > 1000, "the texts were found"
    found = [f"{app.parent.relative_to(top)}: {breach}" for app in sorted(top.glob("resources/words/*/app.ts"))
             for breach in breaches(wanted, app.parent)]
    print("\n".join(found))
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
