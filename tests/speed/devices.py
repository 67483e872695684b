"""Makes inputs of any length for the scripts beside it: the same number gives the same bytes.

`one_device` is a cabinet of bays, each with a screwed panel, a battery that feeds a board, a plug
and a function, one guide that opens them all, and a test for fifty bays. `many_devices` are those
of library.py: small devices, nine guides for each.
"""

import importlib.util
from pathlib import Path

HERE = Path(__file__).resolve().parent
# With the driver that each thread usually takes.
SCREWS = [
    ("M2.5 x 6", 8),
    ("M2.5 x 10", 8),
    ("M3 x 6", 10),
    ("M3 x 8", 10),
    ("M3 x 12", 10),
    ("M4 x 8", 20),
]
BAYS_OF_A_TEST = 50


def load(name):
    """A script of this folder as a module."""
    spec = importlib.util.spec_from_file_location(name, HERE / f"{name}.py")
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def device(bays):
    text = """# A cabinet made for measuring.
device cabinet "Cabinet of bays"
  mass       90 kg

part frame "frame"
"""
    for n in range(bays):
        size, driver = SCREWS[n % len(SCREWS)]
        text += f"""
part panel-{n} "panel {n}"
  covers     board-{n}, cell-plug-{n}, plug-{n}, board-screws-{n}
fastener panel-screws-{n} "panel screw {n}" {2 + n % 5} x screw {size}, hexalobular {driver}, pan
  holds      panel-{n} to frame
  torque     0.{30 + n % 20} N.m
  told by    "the number on its bag"
part board-{n} "board {n}" kind circuit-board
fastener board-screws-{n} "board screw {n}" 4 x screw M2.5 x 5, hexalobular 8, pan
  holds      board-{n} to frame
  torque     0.25 N.m
connector plug-{n} "plug {n}" kind friction-plug
  joins      board-{n} to frame
part cell-{n} "cell {n}" kind lithium-pouch-cell {1000 + n % 7 * 100} mAh 3.7 V
  feeds      board-{n} through cell-plug-{n}
connector cell-plug-{n} "cell plug {n}" kind press-fit-plug
  joins      cell-{n} to board-{n}
function runs-{n} "Bay {n} runs"
  through    cell-{n}, cell-plug-{n}, board-{n}
"""
    return text


def guide(bays):
    text = """# All bays of a cabinet made for measuring.
use "cabinet.mmk"

guide overhaul "Take all boards out"
  goal       remove board-0
  tool       driver-8 "hexalobular torque driver 8"
  tool       driver-10 "hexalobular torque driver 10"
  tool       driver-20 "hexalobular torque driver 20"
"""
    text += "".join(f"  before     discharge cell-{n} below 25 %\n" for n in range(bays))
    text += "\ntake-apart\n"
    for n in range(bays):
        text += f"""
step open-{n} "Open panel {n}"
  undo       panel-screws-{n} with driver-{SCREWS[n % len(SCREWS)][1]}
  remove     panel-{n}
  text: The panel is light. Hold it by its upper edge.
step isolate-{n} "Isolate bay {n}"
  disconnect cell-plug-{n}
step out-{n} "Take board {n} out"
  disconnect plug-{n}
  undo       board-screws-{n} with driver-8
  remove     board-{n}
  text: Pull it straight out, and lay it on its bag of number {n}.
"""
    text += "\nput-back\n  derived\n"
    for first in range(0, bays, BAYS_OF_A_TEST):
        group = range(first, min(first + BAYS_OF_A_TEST, bays))
        text += f"""
test works-{first} "These bays run"
  when       {", ".join(f"cell-plug-{n} connected" for n in group)}
  proves     {", ".join(f"runs-{n}" for n in group)}
"""
    return text


def one_device(folder, lines):
    """A device and its guide of about so many lines together; gives the guide's file."""
    bays = max(1, round(lines / 32))
    folder.mkdir(parents=True, exist_ok=True)
    (folder / "cabinet.mmk").write_text(device(bays))
    (folder / "overhaul.mmk").write_text(guide(bays))
    return folder / "overhaul.mmk"


def many_devices(folder, lines):
    """A library of about so many lines; gives its folder."""
    load("library").make(folder, max(1, round(lines / 71)))
    return folder


def bytes_and_lines(folder):
    files = sorted(folder.rglob("*.mmk"))
    size = lines = 0
    for file in files:
        text = file.read_bytes()
        size += len(text)
        lines += text.count(b"\n")
    return size, lines, files
