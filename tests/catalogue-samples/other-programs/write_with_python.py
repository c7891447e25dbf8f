"""Writes list.json as tables with Python's csv module, in each of its dialects and quotings."""

import csv
import json

with open("list.json", encoding="utf-8") as file:
    content = json.load(file)
bikes = content["bikes"]
names = list(dict.fromkeys(name for bike in bikes for name in bike))


def cell(value):
    if value is True or value is False:
        return "yes" if value else "no"
    if isinstance(value, list):
        return ", ".join(value) or "none"
    # What a spreadsheet would run as a formula is typed with an apostrophe in front.
    return "'" + value if isinstance(value, str) and value.startswith("=") else value


head = [[f"# {key}: {value}"] for key, value in content.items() if key != "bikes"]
rows = head + [names] + [[cell(bike.get(name, "")) for name in names] for bike in bikes]


def write(name, encoding="utf-8", **format):
    with open(f"python-{name}.csv", "w", newline="", encoding=encoding) as file:
        csv.writer(file, **format).writerows(rows)


write("excel", dialect="excel")
write("excel-tab", dialect="excel-tab")
write("unix", dialect="unix")
write("quote-all", quoting=csv.QUOTE_ALL)
write("quote-minimal-semicolon", quoting=csv.QUOTE_MINIMAL, delimiter=";")
write("quote-nonnumeric", quoting=csv.QUOTE_NONNUMERIC)
write("excel-with-mark", encoding="utf-8-sig", dialect="excel")
write("utf-16", encoding="utf-16", dialect="excel-tab")
write("windows-1252", encoding="cp1252", dialect="excel")
