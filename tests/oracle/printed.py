"""What a run of the sample printed: its tables as CSV and the words of its page. Each number is ticked off when it is recalculated."""

import csv
import glob
import html
import os
import re

NUMBER = re.compile(r"(?<![\w.\-])[+\-\u2212±]?\d+(?:\.\d+)?(?![\w])")


def value(text):
    return float(text.replace("\u2212", "-").replace("\u00a0", "").lstrip("±"))


class Printed:
    def __init__(self, folder):
        self.tables, self.done, self.lines, self.failed = {}, set(), [], 0
        self.worst = (0.0, "")
        for path in sorted(glob.glob(os.path.join(folder, "tables", "*.csv"))):
            with open(path, encoding="utf-8", newline="") as file:
                rows = list(csv.reader(file))
            heads = [re.sub(r" \[[^\]]*\]$", "", head) for head in rows[0]]
            numbers = [head != name for head, name in zip(rows[0], heads)]
            name = os.path.basename(path)[:-4]
            self.tables[name] = (heads, numbers, rows[1:])
        with open(os.path.join(folder, "assessment.html"), encoding="utf-8") as file:
            self.page = file.read()

    def has(self, table):
        return table in self.tables

    def rows(self, table):
        """Number of each row and what stands in it by head."""
        heads, _, rows = self.tables[table]
        return [(k, dict(zip(heads, row))) for k, row in enumerate(rows)]

    def cell(self, table, row, head, mine):
        """A number of a table; None where nothing may stand."""
        heads, _, rows = self.tables[table]
        text = rows[row][heads.index(head)]
        self.done.add((table, row, head))
        where = f"{table}, {rows[row][0]}, {head}"
        if mine is None or text == "":
            if not (mine is None and text == ""):
                self.fail(where, text or "nothing", mine)
            return
        self.near(where, text, mine)

    def near(self, where, text, mine):
        """A number as printed is right when it is mine, rounded: off by half of its last digit, at most."""
        decimals = len(text.split(".")[1]) if "." in text else 0
        last = 10.0**-decimals
        off = abs(value(text) - mine) / last
        self.lines.append((where, text, mine, off))
        if off > self.worst[0]:
            self.worst = (off, where)
        if off > 0.5 + 1e-6 * abs(mine) / last:
            self.fail(where, text, mine)

    def fail(self, where, text, mine):
        self.failed += 1
        print(f"OFF  {where}: printed {text}, here {mine}")

    def words(self, where, text, mine):
        """All numbers of a sentence, in their order."""
        found = NUMBER.findall(text)
        if len(found) != len(mine):
            self.fail(where, text, mine)
            return
        for printed, own in zip(found, mine):
            if own is not None:
                self.near(where, printed, own)

    def figures(self):
        """The words of each picture."""
        return [html.unescape(x) for x in re.findall(r'<figure[^>]*aria-label="([^"]*)"', self.page)]

    def paragraphs(self):
        return [html.unescape(x) for x in re.findall(r'<p class="line">([^<]*)</p>', self.page)]

    def left(self):
        """Numbers in tables that nobody has recalculated."""
        return [
            (name, rows[k][0], head)
            for name, (heads, numbers, rows) in self.tables.items()
            for k in range(len(rows))
            for head, number, text in zip(heads, numbers, rows[k])
            if number and text != "" and (name, k, head) not in self.done
        ]
