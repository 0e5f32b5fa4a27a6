namespace FuelMath.Native;

/// <summary>The part of the header that no formula changes.</summary>
internal static class Declarations
{
    internal const string Text = """
        /* FuelMath from C: checked formulas of an engine's fuel delivery, one by one or down columns, and whole systems.
           Made from the catalog; do not edit. Link with FuelMath.Native.so. */
        #ifndef FUELMATH_H
        #define FUELMATH_H

        #include <stdint.h>

        #ifdef __cplusplus
        extern "C" {
        #endif

        /* What a call returns: zero, or why it was refused. Functions that return a size return the negative number.
           Nothing is thrown, no pointer is kept, every function may be called from several threads at once. */
        enum fuelmath_status {
            FUELMATH_FINE = 0,
            FUELMATH_COUNT = 1,         /* more or fewer arguments than the formula has */
            FUELMATH_OUTSIDE_RANGE = 2, /* an argument is outside its range, or not a number */
            FUELMATH_OUTSIDE_BOUND = 3, /* an argument is outside a range that depends on others */
            FUELMATH_NO_RESULT = 4,     /* the arguments have no finite result */
            FUELMATH_CALL = 5,          /* no such formula, a null pointer, a negative count */
            FUELMATH_DOCUMENT = 6,      /* a document is refused */
            FUELMATH_SYSTEM = 7,        /* a system is refused, or has no solution */
            FUELMATH_FAILURE = 8        /* a mistake inside the library */
        };

        enum fuelmath_units { FUELMATH_SI = 0, FUELMATH_CUSTOMARY = 1 };

        /* How many formulas the list has. */
        int32_t fuelmath_count(void);

        /* Formula number `formula` as JSON: name, arguments with kinds, units and ranges, bounds, sources, an example.
           Writes what fits into `capacity` bytes, zero-terminated, and returns the bytes of the whole without the zero. */
        int32_t fuelmath_describe(int32_t formula, char *text, int32_t capacity);

        /* One checked call. `result` is written only where the call returns FUELMATH_FINE. */
        int32_t fuelmath_call(int32_t formula, int32_t units, const double *arguments, int32_t count, double *result);

        /* A formula down columns, in SI units. Argument i is columns[i], one number a row, or where that is null numbers[i]
           in all rows; either array may be null. A row that a checked call would refuse gives "not a number" and is counted;
           `first_bad_row` counts from 0 and is -1 where every row has a result. Both may be null. The results may be one of
           the columns, row upon row, and must not overlap one otherwise. */
        int32_t fuelmath_column(int32_t formula, const double *const *columns, const double *numbers, int32_t count,
                                int64_t rows, double *results, int64_t *bad_rows, int64_t *first_bad_row);

        /* Why the last refused call of this thread was refused, in words. Sizes as for fuelmath_describe. */
        int32_t fuelmath_message(char *text, int32_t capacity);

        /* A system document at the operating points of a second document, both UTF-8: verdict, findings and tables as JSON.
           Sizes as for fuelmath_describe; asking again with more room solves again. Not in a library of formulas only. */
        int32_t fuelmath_solve(const char *system, int32_t system_bytes, const char *points, int32_t points_bytes,
                               char *answer, int32_t capacity);

        """;
}
