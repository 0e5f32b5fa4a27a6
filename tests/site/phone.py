"""Opens the pages of the built site 390 pixels wide in a headless browser and lists those that are wider than the window.

A table, a block of code or a long formula may scroll within itself; the page may not. Besides, each page must have its
navigation and no formula that failed. On demand: python3 tests/site/phone.py artifacts/site. Needs Chromium.
"""

import functools
import html
import http.server
import json
import pathlib
import re
import socket
import subprocess
import sys
import tempfile
import threading

WIDTH = 390
SCRIPT = """<body><iframe id="f" style="width:%dpx;height:900px;border:0"></iframe><pre id="o"></pre><script>
const pages = %s, f = document.getElementById('f'), o = document.getElementById('o');
(async () => {
  for (const page of pages) {
    await new Promise(done => { f.onload = () => setTimeout(done, 900); f.src = '/' + page; });
    const d = f.contentDocument, root = d.documentElement;
    o.textContent += JSON.stringify({
      page, wide: Math.max(0, root.scrollWidth - %d), failed: d.querySelectorAll('mjx-merror').length,
      links: d.querySelectorAll('.toc a').length}) + '\\n';
  }
  o.textContent += 'end';
})();
</script>"""


class Server(http.server.ThreadingHTTPServer):
    def handle_error(self, *_):
        """The browser leaves a page before all of its files are read."""


class Handler(http.server.SimpleHTTPRequestHandler):
    script = ""

    def do_GET(self):
        if self.path != "/_phone":
            return super().do_GET()
        body = self.script.encode()
        self.send_response(200)
        self.send_header("Content-Type", "text/html; charset=utf-8")
        self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        self.wfile.write(body)

    def log_message(self, *_):
        pass


def main(site: pathlib.Path) -> int:
    pages = sorted(
        str(p.relative_to(site))
        for folder in ("", "start", "guide", "teach", "formulas")
        for p in (site / folder).glob("*.html")
        if p.name != "toc.html" and not p.name.startswith("_")
    )
    Handler.script = SCRIPT % (WIDTH, json.dumps(pages), WIDTH)
    server = Server((socket.gethostname(), 0), functools.partial(Handler, directory=str(site)))
    threading.Thread(target=server.serve_forever, daemon=True).start()
    with tempfile.TemporaryDirectory() as profile:
        dom = subprocess.run(
            ["chromium", "--headless", "--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-sync",
             "--disable-background-networking", "--disable-component-update", f"--user-data-dir={profile}",
             f"--virtual-time-budget={4000 * len(pages)}", "--dump-dom",
             f"http://{server.server_address[0]}:{server.server_address[1]}/_phone"],
            capture_output=True, text=True, check=True,
        ).stdout
    server.shutdown()
    seen = [json.loads(html.unescape(line)) for line in re.findall(r"\{&quot;page.*?\}|\{\"page.*?\}", dom)]
    wrong = [s for s in seen if s["wide"] > 0 or s["failed"] > 0 or s["links"] == 0]
    for s in wrong:
        print(f"{s['page']}: {s['wide']} px too wide, {s['failed']} formulas failed, {s['links']} links of navigation")
    print(f"{len(seen)} of {len(pages)} pages at {WIDTH} px, {len(wrong)} wrong")
    return 0 if seen and len(seen) == len(pages) and not wrong else 1


if __name__ == "__main__":
    sys.exit(main(pathlib.Path(sys.argv[1])))
