"""A folder in which the real program runs, and the small guides that the tests of faults use."""

import os
import shutil
import signal
import subprocess
import tempfile
from pathlib import Path

DEVICE = """device lamp "Bench lamp"

part body "body"

part lid "lid"
  covers     board

fastener lid-screws "lid screw" 4 x screw M3 x 8, hexalobular 10
  holds      lid to body
  torque     0.5 N.m

part board "board" kind circuit-board
"""

GUIDE = """use "lamp.mmk"

guide open-lamp "Open the lamp"
  for        competent
  tool       driver-10 "hexalobular torque driver 10"

take-apart

step open "Open the lid"
  undo       lid-screws with driver-10
  remove     lid

put-back
  derived
"""

# The lid goes back without its screws: `mend` writes them in.
FAULTY = GUIDE.replace("  derived\n", '\nstep close "Close the lid"\n  fit        lid\n')
UNTIDY = GUIDE.replace("  undo       lid-screws", "  undo lid-screws")

TABLE = """Name,Title,Type,Qty,Size,Drive,Torque (Nm),Holds,To,Covers,Face,At,Note
body,housing,,1,,,,,,,,,
lid,,,1,,,,,,board,,,
board,main board,circuit board,1,,,,,,,,,
lid-screws,lid screw,screw,4,M3x8,hexalobular 10,0.5,lid,body,,,,
"""

NOTES = """device: Sula 3 field radio
job: replace cell

1. undo 4 screw M2x6 hexalobular 6, back cover
2. remove back cover
3. discharge cell
4. disconnect friction plug, cell to main board
5. unstick double-sided tape, cell
6. remove cell, lithium pouch cell
"""

PICTURE = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 80 60"><rect width="80" height="60"/></svg>\n'


def with_photo(path):
    return GUIDE.replace("  remove     lid\n", f'  remove     lid\n  photo "{path}" "The lid"\n')


class Tally:
    def __init__(self):
        self.passed = 0
        self.failed = 0

    def check(self, so, what):
        if so:
            self.passed += 1
        else:
            self.failed += 1
            print(f"FAILED: {what}")

    def skip(self, what):
        print(f"skipped: {what}")


class Shop:
    """A folder `w` that is taken away in the end; the program's current folder."""

    def __init__(self, program):
        self.program = program
        self.top = Path(tempfile.mkdtemp(prefix="faults-"))
        self.top.chmod(0o755)
        self.at = self.top / "w"
        self.at.mkdir()

    def __enter__(self):
        return self

    def __exit__(self, *_):
        shutil.rmtree(self.top, ignore_errors=True)

    def put(self, name, text):
        path = self.at / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text)
        return path

    def with_lamp(self, guide=GUIDE):
        self.put("lamp.mmk", DEVICE)
        return self.put("open.mmk", guide)

    def empty(self):
        shutil.rmtree(self.at)
        self.at.mkdir()

    def start(self, *arguments, before=(), **more):
        settings = {"stdin": subprocess.DEVNULL, "stdout": subprocess.PIPE, "stderr": subprocess.PIPE}
        # Python ignores SIGPIPE and SIGXFSZ and hands that on; the program is to start as from a shell.
        return subprocess.Popen([*before, self.program, *arguments], cwd=more.pop("cwd", self.at),
                                **{**settings, **more})

    def run(self, *arguments, **more):
        process = self.start(*arguments, **more)
        out, err = process.communicate(timeout=120)
        return Ran(process.returncode, (out or b"").decode(), (err or b"").decode())

    def files(self):
        return {str(path.relative_to(self.at)): path.read_bytes()
                for path in sorted(self.at.rglob("*")) if path.is_file()}


class Ran:
    def __init__(self, code, out, err):
        self.code, self.out, self.err = code, out, err
        self.told = out + err

    def __repr__(self):
        return f"exit {self.code}: {self.told[:600]}"


def is_left_over(name):
    base = os.path.basename(name)
    return base.startswith(".") and base.endswith("~")


def strace_works():
    try:
        return subprocess.run(["strace", "-f", "-o", "/dev/null", "true"], capture_output=True, check=False,
                              timeout=20).returncode == 0
    except (OSError, subprocess.TimeoutExpired):
        return False


KILLED = -signal.SIGKILL
