#!/usr/bin/env python3
"""Checks every internal link of the built site: that the page is there, and the heading.

    dotnet docfx docs/docfx.json --warningsAsErrors && python3 tests/site/links.py artifacts/site

Prints how many links it followed, and each broken one; ends with 1 if there is one.
"""

import collections
import json
import os
import re
import sys
import urllib.parse
from pathlib import Path

OUTSIDE = re.compile(r"(https?:|mailto:|data:|javascript:|#$|//)")


def links_of(path: Path):
    text = path.read_text(encoding="utf-8", errors="replace")
    if path.suffix == ".html":
        return [h.replace("&amp;", "&") for h in re.findall(r'(?:href|src)="([^"]+)"', text)]
    return re.findall(r'"href":\s*"([^"]+)"', json.dumps(json.loads(text)))


def main(root: Path) -> int:
    anchors = {}

    def has(page: Path, anchor: str) -> bool:
        if page not in anchors:
            text = page.read_text(encoding="utf-8", errors="replace")
            anchors[page] = set(re.findall(r'\b(?:id|name)="([^"]+)"', text))
        return urllib.parse.unquote(anchor) in anchors[page]

    followed, broken = 0, collections.Counter()
    for path in [*root.rglob("*.html"), *root.rglob("toc.json")]:
        for link in links_of(path):
            if OUTSIDE.match(link):
                continue
            followed += 1
            target, _, anchor = link.partition("#")
            target = urllib.parse.unquote(target.split("?")[0])
            page = Path(os.path.normpath(path.parent / target)) if target else path
            page = page / "index.html" if page.is_dir() else page
            if not page.exists() or (anchor and page.suffix == ".html" and not has(page, anchor)):
                broken[f"{path.relative_to(root)}: {link}"] += 1

    print(f"{followed} links, {len(broken)} broken", *sorted(broken), sep="\n")
    return 1 if broken or followed == 0 else 0


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1])))
