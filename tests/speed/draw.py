"""Draws samples, and has dot lay out and draw the same boxes and lines, read off the SVG."""

import re
import shutil
import sys
import tempfile
from pathlib import Path

import measure

RECT = re.compile(
    r'<rect x="([-\d.]+)" y="([-\d.]+)" width="([\d.]+)" height="([\d.]+)"[^>]* stroke='
)
TEXT = re.compile(r'<text x="([-\d.]+)" y="([-\d.]+)"[^>]*>([^<]*)')
LINE = re.compile(r'<path d="(M[^"Z]*)" fill="none"')
MM_PER_INCH = 25.4


def boxes_of(svg):
    return [tuple(map(float, found)) for found in RECT.findall(svg)]


def nearest(boxes, x, y):
    def away(box):
        left, top, width, height = box
        return max(left - x, x - left - width, 0) + max(top - y, y - top - height, 0)

    return min(range(len(boxes)), key=lambda i: away(boxes[i]))


def dot_of(svg):
    boxes = boxes_of(svg)
    words = [[] for _ in boxes]
    for x, y, text in TEXT.findall(svg):
        for i, (left, top, width, height) in enumerate(boxes):
            if left <= float(x) <= left + width and top <= float(y) <= top + height:
                words[i].append(text.replace('"', ""))
    lines = []
    for path in LINE.findall(svg):
        numbers = [float(word) for word in re.findall(r"[-\d.]+", path)]
        ends = nearest(boxes, *numbers[:2]), nearest(boxes, *numbers[-2:])
        if ends[0] != ends[1]:
            lines.append(ends)
    text = "digraph g {\nrankdir=LR; splines=polyline; nodesep=0.1; ranksep=0.43\n"
    text += "node [shape=box, fixedsize=true]\n"
    for i, (_, _, width, height) in enumerate(boxes):
        label = "\\n".join(words[i])
        size = f"width={width / MM_PER_INCH:.4f}, height={height / MM_PER_INCH:.4f}"
        text += f'{i} [label="{label}", {size}]\n'
    text += "".join(f"{start} -> {end}\n" for start, end in lines)
    return text + "}\n", len(boxes), len(lines)


def main(program, runs):
    if shutil.which("dot") is None:
        print("skipped: dot is not there")
        return
    print(f"Processor time of whole processes, the least of {runs} runs.")
    samples = Path(__file__).resolve().parents[2] / "samples"
    for guide, what in (("press/renew-platen", "access"), ("press/renew-platen", "held")):
        with tempfile.TemporaryDirectory() as name:
            command = [program, "draw", str(samples / f"{guide}.mmk"), "--what", what, "-o", name]
            ours = measure.least(command, runs)
            svg = next(Path(name).glob("*.svg")).read_text()
            text, boxes, lines = dot_of(svg)
            graph = Path(name, "graph.dot")
            graph.write_text(text)
            theirs = measure.least(["dot", "-Tsvg", str(graph)], runs, True)
            print(
                f"{guide}, {what}, {boxes} boxes, {lines} lines: "
                f"draw {ours.processor * 1000:.0f} ms, dot -Tsvg {theirs.processor * 1000:.0f} ms: "
                f"{ours.processor / theirs.processor:.1f} times as long"
            )


if __name__ == "__main__":
    main(str(Path(sys.argv[1]).resolve()), int(sys.argv[2]))
