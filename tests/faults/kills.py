"""Killed at any moment: every file is the old one or the new one, and the next run leaves nothing of the killed one."""

import os
import random
import time

from bench import DEVICE, FAULTY, GUIDE, KILLED, NOTES, TABLE, UNTIDY, is_left_over

LAMP = {"lamp.mmk": DEVICE}
OPEN = {**LAMP, "open.mmk": GUIDE}

# What is there before, and the command.
JOBS = [
    ({**OPEN, "site/open-lamp.html": "old\n", "site/open-lamp.json": "old\n"},
     ["publish", "open.mmk", "--to", "html,json,pdf", "-o", "site"]),
    ({**LAMP, "open.mmk": FAULTY}, ["mend", "open.mmk", "--all"]),
    ({**LAMP, "open.mmk": UNTIDY}, ["tidy", "open.mmk"]),
    ({**LAMP, "new.mmk": "old\n"}, ["draft", "lamp.mmk", "--goal", "replace board", "-o", "new.mmk"]),
    ({"parts.csv": TABLE}, ["import", "parts.csv", "--name", "kettle", "-o", "new.mmk"]),
    ({"monday.txt": NOTES, "radio/replace-cell.mmk": "old\n"}, ["capture", "monday.txt", "-o", "radio", "--force"]),
    ({**OPEN, "de.po": "old\n"}, ["catalog", "open.mmk", "--language", "de", "-o", "de.po"]),
    (OPEN, ["check", "open.mmk", "--cache", "kept"]),
]


def begin(shop, files):
    shop.empty()
    for name, text in files.items():
        shop.put(name, text)
    return shop.files()


def whole(shop, old, new):
    """What is wrong with what a killed run left; empty when nothing is."""
    for name, content in shop.files().items():
        if is_left_over(name):
            continue
        if content not in (old.get(name), new.get(name)):
            return f"{name} is neither the old file nor the new one ({len(content)} bytes)"
    missing = set(old) - set(shop.files())
    return f"{missing} are gone" if missing else ""


def one_kill(shop, tally, job, new, how):
    files, command = job
    old = begin(shop, files)
    code = how(shop, command)
    wrong = whole(shop, old, new)
    left = any(is_left_over(name) for name in shop.files())
    again = shop.run(*command)
    if not wrong and shop.files() != new:
        wrong = f"the next run gives {sorted(shop.files())} in place of {sorted(new)}: {again}"
    tally.check(not wrong, f"killed: {' '.join(command)}: {wrong}")
    return code == KILLED, left


def at_random(chance, longest):
    def how(shop, command):
        process = shop.start(*command)
        time.sleep(chance.uniform(0, longest))
        process.kill()
        process.communicate()
        return process.returncode
    return how


def at_call(call, count):
    def how(shop, command):
        return shop.run(*command, before=["strace", "-f", "-o", "/dev/null", "-e", f"trace={call}",
                                          "-e", f"inject={call}:signal=KILL:when={count}"]).code
    return how


def run(shop, tally, with_strace):
    kills = int(os.environ.get("MATCHMARK_KILLS", "100"))
    chance = random.Random(7)
    killed = left = 0
    for number, job in enumerate(JOBS):
        begin(shop, job[0])
        start = time.monotonic()
        ran = shop.run(*job[1])
        lasting = time.monotonic() - start
        new = shop.files()
        tally.check(ran.code in (0, 1) and new != begin(shop, job[0]), f"{job[1]} writes: {ran}")
        times = kills // len(JOBS) + (number < kills % len(JOBS))
        ways = [at_random(chance, lasting) for _ in range(times)]
        if with_strace:  # where a random moment seldom falls
            ways += [at_call(call, count) for call in ("write", "flock", "fchmod", "fsync", "rename") for count in (1, 2)]
        for how in ways:
            was_killed, was_left = one_kill(shop, tally, job, new, how)
            killed += was_killed
            left += was_left
    print(f"killed {killed} times in its work; {left} times a file half written was left, and cleared by the next run")
    tally.check(killed > kills // 4, f"it was killed {killed} times only")
