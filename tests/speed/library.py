"""Makes a library of guides, and measures how long checking it takes, cold, warm and after a change.

The same number makes the same files: all that differs from one to the next is counted out of its
number. Nine guides for each device; one guide in fifty leaves its screws out of the put-back.
"""

import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path

GUIDES_OF_A_DEVICE = 9
THINGS = "sensor relay filter buzzer display keypad aerial heater pump valve fan motor".split()
PICTURE = """<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 80 60" width="80" height="60">
<rect x="5" y="5" width="70" height="50" fill="none" stroke="black"/>
</svg>
"""


def device(number):
    text = f"""# Device {number} of a library made for measuring.
device unit-{number} "Unit {number}"
  revision   {"ABCD"[number % 4]}
  mass       {200 + number % 97} g

face front 80 x 60 mm, corner 4 mm

part case "case"
part lid "lid"
  covers     cell, cell-plug, main, {", ".join(f"cover-{n}" for n in range(GUIDES_OF_A_DEVICE))}
  covers     {", ".join(f"cover-screws-{n}" for n in range(GUIDES_OF_A_DEVICE))}
part main "main board" kind circuit-board
part cell "cell" kind lithium-pouch-cell {1000 + number % 7 * 100} mAh 3.7 V
  feeds      main, {", ".join(f"{thing(number, n)}" for n in range(GUIDES_OF_A_DEVICE))} through cell-plug

fastener lid-screws "lid screw" 4 x screw M2 x {6 + number % 3 * 2}, hexalobular 6, pan
  holds      lid to case
  torque     0.20 N.m
  at         front 5,5 75,5 5,55 75,55

connector cell-plug "cell plug" kind press-fit-plug
  joins      cell to main

function running "It starts"
  through    cell, cell-plug, main
"""
    for n in range(GUIDES_OF_A_DEVICE):
        name = thing(number, n)
        screws = 2 + (number + n) % 3
        text += f"""
part cover-{n} "cover {n}"
  covers     {name}, plug-{n}, screws-{n}
part {name} "{name.replace("-", " ")}" kind circuit-board
fastener cover-screws-{n} "cover screw {n}" 2 x screw M2 x 5, hexalobular 6, pan
  holds      cover-{n} to case
  torque     0.15 N.m
fastener screws-{n} "screw of the {name.replace("-", " ")}" {screws} x screw M1.6 x 4, cross-recess 0, pan
  holds      {name} to case
  torque     0.08 N.m
connector plug-{n} "plug {n}" kind friction-plug
  joins      {name} to main
function work-{n} "The {name.replace("-", " ")} works"
  through    main, plug-{n}, {name}
"""
    return text


def thing(number, n):
    return f"{THINGS[(number + n) % len(THINGS)]}-{n}"


def guide(number, n):
    name = thing(number, n)
    words = name.replace("-", " ")
    faulty = (number * GUIDES_OF_A_DEVICE + n) % 50 == 49
    text = f"""# Guide {n} for device {number} of a library made for measuring.
use "unit-{number}.mmk"

guide renew-{name} "Renew the {words}"
  goal       replace {name} with {name}-new
  for        competent
  before     discharge cell below 25 %
  spare      {name}-new "{words}", 1, {5 + number % 40}.{n}0 EUR for {name}
  tool       driver-6 "hexalobular torque driver 6"
  tool       driver-0 "cross-recess driver 0"
  text: The {words} has stopped, or stops after {2 + number % 9} minutes.

take-apart

step open "Open the lid"
  undo       lid-screws with driver-6
  remove     lid
  text: Lay the unit on a soft cloth.
  photo "front.svg" "The lid with its four screws"
    mark     lid-screws 0.1,0.1 0.9,0.1 0.1,0.9 0.9,0.9

step isolate "Isolate the cell"
  disconnect cell-plug
  text: Fold the plug back.

step cover-off "Take the cover off"
  undo       cover-screws-{n} with driver-6
  remove     cover-{n}

step out "Take the {words} out"
  disconnect plug-{n}
  undo       screws-{n} with driver-0
  remove     {name}
  text: Hold it by its edges.

work

step renew "Take the new {words}"
  replace    {name} with {name}-new
  dispose    {name} as electronic-waste
  text: Compare the numbers on both.

put-back
"""
    if faulty:
        return text + f"""
step back-in "Put it in and close"
  fit        {name}
  fasten     screws-{n} with driver-0
  connect    plug-{n}
  fit        cover-{n}
  fasten     cover-screws-{n} with driver-6
  connect    cell-plug
  fit        lid
"""
    return text + f"""  derived

step out "Put the new {words} in"
  text: Lay it flat on its seat.

test works "The {words} works"
  when       cell-plug connected, plug-{n} connected, lid out
  proves     {name}, work-{n}, running

step open "Close the lid"
  text: Check that no lead lies under the edge.
"""


def make(folder, guides):
    for at in range(guides):
        number, n = divmod(at, GUIDES_OF_A_DEVICE)
        place = folder / f"shelf-{number // 100}" / f"unit-{number}"
        if n == 0:
            place.mkdir(parents=True)
            (place / f"unit-{number}.mmk").write_text(device(number))
            (place / "front.svg").write_text(PICTURE)
        (place / f"renew-{n}.mmk").write_text(guide(number, n))


def check(program, folder, cache=None):
    """Seconds, peak memory in MiB, and what it said."""
    command = [program, "check", ".", "--json"] + (["--cache", cache] if cache else [])
    with tempfile.TemporaryFile() as out:
        start = time.monotonic()
        child = subprocess.Popen(command, cwd=folder, stdout=out, stderr=subprocess.STDOUT)
        _, status, usage = os.wait4(child.pid, 0)
        seconds = time.monotonic() - start
        child.returncode = os.waitstatus_to_exitcode(status)
        if child.returncode not in (0, 1):
            sys.exit(f"check ended with {child.returncode}")
        out.seek(0)
        return seconds, usage.ru_maxrss / 1024, out.read()


def measure(program, guides):
    with tempfile.TemporaryDirectory() as name:
        folder, cache = Path(name) / "library", str(Path(name) / "cache")
        make(folder, guides)
        first = folder / "shelf-0" / "unit-0"
        runs = [check(program, folder), check(program, folder, cache), check(program, folder, cache)]
        if not runs[0][2] == runs[1][2] == runs[2][2]:
            sys.exit("the cache changes what is said")
        for changed in ("renew-0.mmk", "unit-0.mmk"):
            with (first / changed).open("a") as file:
                file.write("# changed\n")
            runs.append(check(program, folder, cache))
        if not check(program, folder)[2] == runs[4][2]:
            sys.exit("the cache tells what was so before the change")
        size = sum(file.stat().st_size for file in folder.rglob("*") if file.is_file())
        kept = sum(file.stat().st_size for file in Path(cache).rglob("*") if file.is_file())
        return [run[:2] for run in runs], size / 2**20, kept / 2**20


def main():
    program = str(Path(sys.argv[1]).resolve())
    sizes = [int(word) for word in sys.argv[2:]]
    titles = ("no cache", "cold", "warm", "a guide changed", "a device changed")
    first = None
    print(f"{'guides':>7} {'MiB':>6} {'cache':>6}", *(f"{title:>22}" for title in titles))
    for guides in sizes:
        runs, size, kept = measure(program, guides)
        cells = (f"{seconds:9.3f} s {memory:7.0f} MiB" for seconds, memory in runs)
        print(f"{guides:>7} {size:6.1f} {kept:6.1f}", *(f"{cell:>22}" for cell in cells), flush=True)
        first = first or runs
    growth = (f"{last[0] / start[0]:.0f}, {last[1] / start[1]:.1f}"
              for start, last in zip(first, runs))
    label = f"x {sizes[-1] / sizes[0]:.0f}: time, memory"
    print(f"{label:>21}", *(f"{cell:>22}" for cell in growth))


if __name__ == "__main__":
    main()
