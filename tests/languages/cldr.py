"""Compares the table of compiler/language/language.cpp with Unicode CLDR as Babel carries it."""
import re
import sys

from babel import Locale, units

source = open(sys.argv[1] + "/compiler/language/language.cpp", encoding="utf-8").read()
names = {"none": "", "space": " ", "no_break": "\u00a0", "narrow": "\u202f"}
rows = re.findall(
    r'\{"(\w+)", "[^"]*", PluralRule::(\w+), "(.)", (\w+), (\w+)\}', source)
wrong = 0
checked = 0
for tag, plural, decimal, unit_space, percent_space in rows:
    if tag in ("qaa", "en"):
        continue
    locale = Locale.parse(tag)
    symbols = locale.number_symbols
    symbols = symbols.get("latn", symbols)
    checks = {
        "decimal sign": (decimal, symbols["decimal"]),
        "plural of 0": (plural == "none_and_one", locale.plural_form(0) == "one"),
        "plural of 1": (True, locale.plural_form(1) == "one"),
        "plural of 2": (False, locale.plural_form(2) == "one"),
        "space before the unit": (
            names[unit_space],
            # An ordinary space there does not break here.
            units.format_unit(5, "length-millimeter", "short",
                              locale=locale)[1:-2].replace(" ", "\u00a0")),
    }
    percent = str(locale.percent_formats[None].pattern)
    spaces = re.findall("0(.?)%", percent)
    checks["space before %"] = (names[percent_space], spaces[0])
    for what, (ours, theirs) in checks.items():
        checked += 1
        if ours != theirs:
            wrong += 1
            print(f"{tag}: {what}: here {ours!r}, CLDR {theirs!r}")
print(f"{checked} facts of {len(rows) - 2} languages compared")
sys.exit(1 if wrong or checked < 20 else 0)
