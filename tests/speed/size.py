"""How time and memory grow with the text, from a thousand lines on."""

import math
import multiprocessing
import sys
import tempfile
from pathlib import Path

import devices
import measure


def exponent(points):
    """Of the power that fits the points (size, cost) best: least squares of the logarithms."""
    logs = [(math.log(size), math.log(cost)) for size, cost in points]
    mean_x = sum(x for x, _ in logs) / len(logs)
    mean_y = sum(y for _, y in logs) / len(logs)
    across = sum((x - mean_x) * (y - mean_y) for x, y in logs)
    return across / sum((x - mean_x) ** 2 for x, _ in logs)


def make_apart(make, folder, lines):
    """In a process of its own: the system counts what this one ever held as part of the peak of
    every program that it starts."""
    maker = multiprocessing.Process(target=make, args=(folder, lines))
    maker.start()
    maker.join()
    if maker.exitcode != 0:
        raise SystemExit(f"{make.__name__} failed")
    return folder / "overhaul.mmk" if (folder / "overhaul.mmk").exists() else folder


def grow(what, program, make, sizes, start):
    print(f"{what}:")
    points = []
    for lines in sizes:
        with tempfile.TemporaryDirectory() as name:
            target = make_apart(make, Path(name, "made"), lines)
            size, count, _ = devices.bytes_and_lines(Path(name, "made"))
            command = [program, "check", str(target), "--jobs", "1"]
            run = measure.least(command, 3 if lines <= 10000 else 1)
        points.append((size, max(run.processor - start.processor, 1e-4)))
        print(
            f"  {count:>9,} lines {size / 1e6:7.2f} MB {run.processor:9.3f} s "
            f"{run.peak / 1e6:7.1f} MB, {(run.peak - start.peak) / size:6.1f} bytes a byte of text",
            flush=True,
        )
    if len(points) > 1:
        print(f"  exponent of the time: {exponent(points):.2f}")


def main(program, sizes):
    with tempfile.TemporaryDirectory() as name:
        empty = Path(name, "empty.mmk")
        empty.write_text("")
        start = measure.least([program, "check", str(empty)], 9)
    print(f"An empty file: {start.processor * 1000:.0f} ms, {start.peak / 1e6:.1f} MB.")
    print("Both are left out of the exponents and of the bytes. Processor time, on one thread.")
    grow("many devices, nine guides each", program, devices.many_devices, sizes, start)
    grow("one device and its guide", program, devices.one_device,
         [lines for lines in sizes if lines <= 100000], start)


if __name__ == "__main__":
    chosen = [int(word) for word in sys.argv[2:]] or [1000, 10000, 100000, 1000000]
    main(str(Path(sys.argv[1]).resolve()), chosen)
