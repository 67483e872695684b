"""Types into generated guides, by way of the language server, and measures the answers."""

import json
import resource
import subprocess
import sys
import tempfile
import time
from pathlib import Path


def device(drawers):
    text = 'device rack "Rack of drawers"\n\npart frame "frame"\n\n'
    for n in range(drawers):
        text += f"""part panel-{n} "panel {n}"
  covers     drawer-{n}

fastener panel-screws-{n} "panel screw {n}" 4 x screw M3 x 8, hexalobular 10, pan
  holds      panel-{n} to frame
  torque     0.60 N.m

connector plug-{n} "plug {n}" kind friction-plug
  joins      drawer-{n} to frame
  behind     panel-{n}

part drawer-{n} "drawer {n}"

"""
    return text


def guide(drawers, words):
    text = """use "rack.mmk"

guide clear "Take out all drawers"
  goal       remove drawer-0
  tool       driver "hexalobular torque driver 10"

take-apart
"""
    for n in range(drawers):
        text += f"""
step open-{n} "Open panel {n}"
  undo       panel-screws-{n} with driver
  remove     panel-{n}
  text: The panel is light.
{("    Hold it by its upper edge." + chr(10)) * (words + 1)}
step out-{n} "Take out drawer {n}"
  disconnect plug-{n}
  remove     drawer-{n}
  text: Pull it straight out.
{("    It is stiff at the end." + chr(10)) * words}"""
    return text + "\nput-back\n  derived\n"


class Client:
    def __init__(self, program):
        self.server = subprocess.Popen(
            [program, "editor"], stdin=subprocess.PIPE, stdout=subprocess.PIPE
        )
        self.last = 0

    def send(self, method, params, asks=False):
        message = {"jsonrpc": "2.0", "method": method, "params": params}
        if asks:
            self.last += 1
            message["id"] = self.last
        body = json.dumps(message).encode()
        self.server.stdin.write(b"Content-Length: %d\r\n\r\n" % len(body) + body)
        self.server.stdin.flush()

    def receive(self):
        length = 0
        while (line := self.server.stdout.readline().strip()):
            length = int(line.split(b":")[1])
        return json.loads(self.server.stdout.read(length))

    def answer(self):
        while (message := self.receive()).get("id") != self.last:
            pass
        return message.get("result")

    def findings_of(self, uri, version):
        while True:
            params = self.receive().get("params", {})
            if params.get("uri") == uri and params.get("version") == version:
                return params["diagnostics"]


def report(what, times):
    times.sort()
    print(
        f"{what}: median {times[len(times) // 2]:.1f}, "
        f"95 of 100 within {times[len(times) * 95 // 100]:.1f}, longest {times[-1]:.1f} ms"
    )


def measure(program, letters, drawers, words):
    with tempfile.TemporaryDirectory() as folder:
        texts = {"rack.mmk": device(drawers), "clear.mmk": guide(drawers, words)}
        for name, text in texts.items():
            Path(folder, name).write_text(text)
        uri = {name: Path(folder, name).as_uri() for name in texts}
        client = Client(program)
        client.send("initialize", {"capabilities": {}, "rootUri": Path(folder).as_uri()}, True)
        client.answer()
        client.send("initialized", {})
        opened = {"uri": uri["clear.mmk"], "languageId": "matchmark", "version": 1}
        client.send("textDocument/didOpen", {"textDocument": opened | {"text": texts["clear.mmk"]}})
        client.findings_of(uri["clear.mmk"], 1)
        lines = texts["clear.mmk"].split("\n")
        print(f"a guide of {len(lines)} lines, a device of {4 * drawers + 1} items")
        version = 1
        before = resource.getrusage(resource.RUSAGE_CHILDREN)
        marks = {
            "in a title": "step open-",
            "in an action": "  remove     panel-",
            "in prose": "  text: Pull",
        }
        for sort, mark in marks.items():
            times = []
            places = [i for i, line in enumerate(lines) if line.startswith(mark)]
            for n in range(letters):
                row = places[n * 7919 % len(places)]
                at = len(lines[row]) - (1 if mark.startswith("step") else 0)
                for change in ("s", ""):  # a letter written, and taken away again
                    version += 1
                    place = {"line": row, "character": at}
                    end = place if change else {"line": row, "character": at + 1}
                    started = time.perf_counter()
                    client.send(
                        "textDocument/didChange",
                        {
                            "textDocument": {"uri": uri["clear.mmk"], "version": version},
                            "contentChanges": [
                                {"range": {"start": place, "end": end}, "text": change}
                            ],
                        },
                    )
                    client.findings_of(uri["clear.mmk"], version)
                    times.append((time.perf_counter() - started) * 1000)
            report("  " + sort, times)
        client.send("shutdown", {}, True)
        client.answer()
        client.send("exit", {})
        client.server.wait()
        after = resource.getrusage(resource.RUSAGE_CHILDREN)
        used = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
        print(f"  the server's processor time, start and all: {used * 1000 / version:.1f} ms a letter")


if __name__ == "__main__":
    measure(sys.argv[1], int(sys.argv[2]), 140, 1)
    measure(sys.argv[1], int(sys.argv[2]), 30, 27)
