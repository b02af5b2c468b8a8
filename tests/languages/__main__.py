"""`python3 -m tests.languages`: bring the catalogues up to date with the source, and compile them.

Translations are kept, sentences that are gone are dropped, new ones are marked
unfinished and listed. After a conflict between two branches in a `.qm`, run it again.
"""

from __future__ import annotations

from app.setup import start


def main() -> int:
    """Update every catalogue; 1 while something in one is not translated."""
    from app.languages.catalogue import ENGLISH, NAMES
    from tests.languages import collect, source

    wanted = collect.messages()
    missing = 0
    for code in sorted(NAMES.keys() - {ENGLISH}):
        translated = source.kept(code)
        source.write(code, wanted, translated)
        new = sorted(message for message in wanted if not translated.get(message))
        missing += len(new)
        for message in new:
            print(f"{code}: {message.text!r}" + (f" ({message.about})" if message.about else ""))
        print(f"{code}: {len(wanted)} messages, {len(new)} not translated.")
    return 1 if missing else 0


if __name__ == "__main__":
    start.ensure(["app"])
    raise SystemExit(main())
