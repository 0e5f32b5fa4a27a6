"""Runs inside the office suite: hands a cell's call to the native library, and notes when calls came."""

import os
import sys
import time

sys.path.insert(0, os.environ["FUELMATH_SAMPLE"])
import fuelmath

library = fuelmath.Library(os.environ["FUELMATH_LIBRARY"])


def call(name, *arguments):
    try:
        return library.call(name, *arguments, units="customary")
    except fuelmath.Refused as refusal:
        return str(refusal)
    finally:
        with open(os.environ["FUELMATH_TIMES"], "a", encoding="ascii") as times:
            times.write(f"{time.perf_counter()!r}\n")


g_exportedScripts = (call,)
