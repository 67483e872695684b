"""Whole processes, measured: time, processor time and the peak of memory."""

import os
import subprocess
import tempfile
import time
from dataclasses import dataclass


@dataclass
class Run:
    seconds: float  # from start to end
    processor: float  # seconds of processor time, user's and system's
    peak: int  # bytes


def once(command, keeps_output=False):
    """`keeps_output`: into a file of /dev/shm where there is one; otherwise it is thrown away."""
    shared = "/dev/shm" if os.path.isdir("/dev/shm") else None
    with tempfile.TemporaryFile(dir=shared) as kept:
        start = time.perf_counter()
        out = kept if keeps_output else subprocess.DEVNULL
        child = subprocess.Popen(command, stdout=out, stderr=subprocess.DEVNULL)
        _, status, usage = os.wait4(child.pid, 0)
        child.returncode = os.waitstatus_to_exitcode(status)
        seconds = time.perf_counter() - start
    if child.returncode not in (0, 1):
        raise SystemExit(f"{command[0]} ended with {child.returncode}")
    return Run(seconds, usage.ru_utime + usage.ru_stime, usage.ru_maxrss * 1024)


def least(command, runs=5, keeps_output=False):
    """The run that took the least processor time: what load adds is left out as far as can be."""
    return min((once(command, keeps_output) for _ in range(runs)), key=lambda run: run.processor)
