"""FuelMath from Python: every formula of the native library as a function, one by one or over arrays. Needs no package.

    import fuelmath
    fm = fuelmath.Library("FuelMath.Native.so")
    fm.call("Orifice.CarriedVolumeFlow", 800, 300, 740, 400, 740, units="customary")   # cm3/min
"""

import array
import ctypes
import json

DOUBLES = ctypes.POINTER(ctypes.c_double)


class Refused(ValueError):
    """The library refused a call; the message says what is allowed and what came."""


class Library:
    def __init__(self, path):
        self._library = ctypes.CDLL(path)
        self._library.fuelmath_column.argtypes = [
            ctypes.c_int32,
            ctypes.POINTER(DOUBLES),
            DOUBLES,
            ctypes.c_int32,
            ctypes.c_int64,
            DOUBLES,
            ctypes.POINTER(ctypes.c_int64),
            ctypes.POINTER(ctypes.c_int64),
        ]
        self._indices = None

    @property
    def indices(self):
        """The place of each formula in the library's list, by name."""
        if self._indices is None:
            self._indices = {self.describe(i)["name"]: i for i in range(self._library.fuelmath_count())}
        return self._indices

    def describe(self, formula):
        """Name, arguments with units and ranges, sources and example of a formula, by name or place."""
        place = ctypes.c_int32(self._place(formula))
        return json.loads(self._text(lambda to, room: self._library.fuelmath_describe(place, to, room)))

    def call(self, formula, *arguments, units="si"):
        """One checked call, in SI or customary units."""
        result = ctypes.c_double()
        given = (ctypes.c_double * len(arguments))(*arguments)
        status = self._library.fuelmath_call(
            ctypes.c_int32(self._place(formula)),
            ctypes.c_int32({"si": 0, "customary": 1}[units]),
            given,
            ctypes.c_int32(len(arguments)),
            ctypes.byref(result),
        )
        if status != 0:
            raise Refused(self.message())
        return result.value

    def column(self, formula, *arguments):
        """A formula over rows, in SI units: each argument is a number or an array of doubles.

        Gives the results, how many rows have none, and the first of them (None where every row has one).
        """
        count = len(arguments)
        lengths = {len(a) for a in arguments if not isinstance(a, (int, float))}
        if len(lengths) != 1:
            raise Refused("There must be one array or more, all of one length.")
        rows = lengths.pop()
        results = array.array("d", bytes(8 * rows))
        columns, numbers, kept = (DOUBLES * count)(), (ctypes.c_double * count)(), []
        for i, argument in enumerate(arguments):
            if isinstance(argument, (int, float)):
                numbers[i] = argument
            else:
                doubles = argument if isinstance(argument, array.array) else array.array("d", argument)
                kept.append(doubles)
                columns[i] = ctypes.cast(doubles.buffer_info()[0], DOUBLES)
        bad, first = ctypes.c_int64(), ctypes.c_int64()
        status = self._library.fuelmath_column(
            self._place(formula),
            columns,
            numbers,
            count,
            rows,
            ctypes.cast(results.buffer_info()[0], DOUBLES),
            ctypes.byref(bad),
            ctypes.byref(first),
        )
        if status != 0:
            raise Refused(self.message())
        return results, bad.value, None if first.value < 0 else first.value

    def solve(self, system, points):
        """Verdict, findings and tables of a system document at a list of operating points, both as text."""
        system, points = system.encode(), points.encode()
        return json.loads(
            self._text(
                lambda to, room: self._library.fuelmath_solve(system, len(system), points, len(points), to, room), 1 << 17
            )
        )

    def message(self):
        """Why the last refused call was refused."""
        return self._text(self._library.fuelmath_message, 500)

    def _place(self, formula):
        if isinstance(formula, int):
            return formula
        if formula not in self.indices:
            raise Refused(f"No formula is called {formula!r}.")
        return self.indices[formula]

    def _text(self, write, room=1 << 13):
        text = ctypes.create_string_buffer(room)
        size = write(text, room)
        if size < 0:
            raise Refused(self.message())
        if size >= room:
            text = ctypes.create_string_buffer(size + 1)
            write(text, size + 1)
        return text.value.decode()
