"""Checks guides, and has cmark-gfm turn the same bytes into HTML: whole processes, side by side."""

import shutil
import sys
import tempfile
from pathlib import Path

import devices
import measure


def compare(what, check, bytes_of, lines, files, runs):
    texts = ["cmark-gfm", *map(str, files)]
    print(f"{what}: {lines:,} lines, {bytes_of / 1e6:.2f} MB")
    for how, keeps in (("thrown away", False), ("kept", True)):
        ours = measure.least(check, runs, keeps)
        theirs = measure.least(texts, runs, keeps)
        print(
            f"  output {how}: check {ours.processor * 1000:8.1f} ms, "
            f"cmark-gfm {theirs.processor * 1000:7.1f} ms: "
            f"{ours.processor / max(theirs.processor, 1e-4):6.1f} times as long"
        )


def main(program, runs):
    if shutil.which("cmark-gfm") is None:
        print("skipped: cmark-gfm is not there")
        return
    print(f"Processor time of whole processes, the least of {runs} runs.")
    with tempfile.TemporaryDirectory() as name:
        for lines in (1000, 10000, 100000):
            folder = Path(name, f"one-{lines}")
            guide = devices.one_device(folder, lines)
            facts = devices.bytes_and_lines(folder)
            compare("one device", [program, "check", str(guide)], *facts, runs)
        folder = devices.many_devices(Path(name, "many"), 64000)
        command = [program, "check", str(folder), "--jobs", "1"]
        compare("many devices", command, *devices.bytes_and_lines(folder), runs)
        command = [program, "tidy", "--check", str(folder)]
        facts = devices.bytes_and_lines(folder)
        compare("many devices, read and laid out alone (tidy --check)", command, *facts, runs)


if __name__ == "__main__":
    main(str(Path(sys.argv[1]).resolve()), int(sys.argv[2]))
