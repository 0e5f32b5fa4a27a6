"""One printed page beside what it was printed from; see check.sh. Python 3, standard library only."""

import html
import re
import sys

MOST_PAGES = 6
MARGIN = 25  # points; 10 mm are 28
NUMBER = re.compile(r"\d+(?:\.\d+)?")


def main(name, page_file, box_file):
    with open(page_file, encoding="utf-8") as file:
        page = file.read()
    with open(box_file, encoding="utf-8") as file:
        boxes = file.read()
    failed = []
    pages = re.findall(r'<page width="([\d.]+)" height="([\d.]+)">(.*?)</page>', boxes, re.S)
    if len(pages) > MOST_PAGES:
        failed.append(f"{len(pages)} pages")
    printed = {}
    for number, (width, height, words) in enumerate(pages, 1):
        for x1, y1, x2, y2, word in re.findall(r'<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">(.*?)</word>', words):
            if float(x1) < MARGIN or float(x2) > float(width) - MARGIN or float(y1) < MARGIN or float(y2) > float(height) - MARGIN:
                failed.append(f"page {number}: '{html.unescape(word)}' stands in the margin")
            for one in NUMBER.findall(html.unescape(word)):
                printed[one] = printed.get(one, 0) + 1
    # What a reader sees: the words of the page, without styles, pictures' alternatives and the words of charts.
    seen = re.sub(r"<style>.*?</style>|<title>.*?</title>|<svg.*?</svg>", " ", page, flags=re.S)
    asked = {}
    for one in NUMBER.findall(html.unescape(re.sub(r"<[^>]*>", " ", seen))):
        asked[one] = asked.get(one, 0) + 1
    missing = {n: k for n, k in asked.items() if printed.get(n, 0) < k}
    if missing:
        failed.append(f"numbers that are not on paper: {missing}")
    print(f"{name}: {len(pages)} pages, {sum(asked.values())} numbers in words and tables")
    for line in failed[:20]:
        print("  " + line)
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:4]))
