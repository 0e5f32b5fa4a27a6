// FuelMath from Node: every formula of the native library as a function, one by one or over arrays. Needs the package koffi.
//
//   import koffi from "koffi";
//   import { open } from "./fuelmath.mjs";
//   const fm = open(koffi, "FuelMath.Native.so");
//   fm.call("Orifice.CarriedVolumeFlow", [800, 300, 740, 400, 740], "customary"); // cm3/min

export function open(koffi, path) {
  const library = koffi.load(path);
  const count = library.func("int32_t fuelmath_count()");
  const describe = library.func("int32_t fuelmath_describe(int32_t formula, _Out_ uint8_t *text, int32_t capacity)");
  const call = library.func(
    "int32_t fuelmath_call(int32_t formula, int32_t units, double *arguments, int32_t count, _Out_ double *result)"
  );
  const column = library.func(
    "int32_t fuelmath_column(int32_t formula, double **columns, double *numbers, int32_t count, int64_t rows," +
      " _Out_ double *results, _Out_ int64_t *bad, _Out_ int64_t *first)"
  );
  const message = library.func("int32_t fuelmath_message(_Out_ uint8_t *text, int32_t capacity)");

  function text(write, room) {
    let bytes = Buffer.alloc(room);
    const size = write(bytes, room);
    if (size < 0) {
      throw new RangeError(text(message, 500));
    }

    if (size >= room) {
      bytes = Buffer.alloc(size + 1);
      write(bytes, size + 1);
    }

    return bytes.toString("utf8", 0, size);
  }

  const formulas = Array.from({ length: count() }, (_, i) =>
    JSON.parse(text((to, room) => describe(i, to, room), 8192))
  );
  const places = new Map(formulas.map((formula, i) => [formula.name, i]));

  function place(name) {
    if (!places.has(name)) {
      throw new RangeError(`No formula is called ${name}.`);
    }

    return places.get(name);
  }

  function check(status) {
    if (status !== 0) {
      throw new RangeError(text(message, 500));
    }
  }

  return {
    /** What each formula computes, from what, in which ranges and units. */
    formulas,

    /** One checked call, in "si" or "customary" units. */
    call(name, given, units = "si") {
      const result = [0];
      check(call(place(name), units === "customary" ? 1 : 0, given, given.length, result));
      return result[0];
    },

    /** A formula over rows in SI units: each argument is a number or a Float64Array. */
    column(name, given) {
      const arrays = given.filter((a) => typeof a !== "number");
      const results = new Float64Array(arrays.length === 0 ? 0 : arrays[0].length);
      if (arrays.length === 0 || arrays.some((a) => a.length !== results.length)) {
        throw new RangeError("There must be one array or more, all of one length.");
      }

      const [bad, first] = [[0], [0]];
      const columns = given.map((a) => (typeof a === "number" ? null : a));
      const numbers = given.map((a) => (typeof a === "number" ? a : 0));
      check(column(place(name), columns, numbers, given.length, results.length, results, bad, first));
      return { results, badRows: Number(bad[0]), firstBadRow: Number(first[0]) < 0 ? null : Number(first[0]) };
    },
  };
}
