/* Every formula's example through the C interface, one column, and refusals. Prints what a call costs. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "fuelmath.h"

static double now(void) {
    struct timespec t;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
    return t.tv_sec + 1e-9 * t.tv_nsec;
}

static void fail(const char *what) {
    char words[500];
    fuelmath_message(words, sizeof words);
    fprintf(stderr, "%s: %s\n", what, words);
    exit(1);
}

/* The numbers of an array in a description, by its name; enough for text that the library wrote itself. */
static int numbers(const char *json, const char *name, double *into) {
    const char *at = strstr(json, name);
    int count = 0;
    char *end;
    if (at == NULL) {
        fail(name);
    }
    at = strchr(at, ':') + 1;
    at += strspn(at, " \n[");
    do {
        into[count++] = strtod(at, &end);
        at = end + strspn(end, " \n,");
    } while (end[0] == ',' && at[0] != '"');
    return count;
}

static double least(double a, double b) { return a < b ? a : b; }

__attribute__((noinline)) static double plain(const double *a) { return a[0] / a[1]; }

int main(void) {
    char json[20000], words[500];
    double arguments[16], expected[16], tolerance[16], result = 0;
    if (fuelmath_count() != FUELMATH_FORMULAS) {
        fail("header and library differ");
    }

    for (int i = 0; i < FUELMATH_FORMULAS; i++) {
        int size = fuelmath_describe(i, json, sizeof json);
        if (size <= 0 || size >= (int)sizeof json || (int)strlen(json) != size) {
            fail("describe");
        }
        const char *example = strstr(json, "\"example\"");
        int count = numbers(example, "\"arguments\"", arguments);
        numbers(example, "\"expected\"", expected);
        numbers(example, "\"relativeTolerance\"", tolerance);
        if (fuelmath_call(i, FUELMATH_SI, arguments, count, &result) != FUELMATH_FINE) {
            fail(json);
        }
        if (fabs(result - expected[0]) > tolerance[0] * fabs(expected[0]) + 1e-300) {
            fprintf(stderr, "%.200s: %.17g, expected %.17g\n", json, result, expected[0]);
            return 1;
        }
    }

    /* 40 % and 25 % by hand, a gap, and one without a period. */
    double width[] = {0.008, 0.005, NAN, 0.005}, period[] = {0.02, 0.02, 0.02, 0}, duty[4];
    const double *columns[] = {width, period};
    int64_t bad = 0, first = 0;
    if (fuelmath_column(FUELMATH_PULSE_DUTY_CYCLE, columns, NULL, 2, 4, duty, &bad, &first) != FUELMATH_FINE) {
        fail("column");
    }
    if (duty[0] != 0.4 || duty[1] != 0.25 || bad != 2 || first != 2 || !isnan(duty[2]) || !isnan(duty[3])) {
        fail("column's results");
    }

    arguments[0] = 0.01;
    arguments[1] = -1;
    if (fuelmath_call(FUELMATH_PULSE_DUTY_CYCLE, FUELMATH_SI, arguments, 2, &result) != FUELMATH_OUTSIDE_RANGE) {
        fail("range");
    }
    if (fuelmath_message(words, sizeof words) <= 0 || strstr(words, "period must be from 1E-09 s") == NULL) {
        fail("message");
    }

    double call = 1e9, bare = 1e9;
    arguments[1] = 0.02;
    for (int round = 0; round < 50; round++) {
        double start = now();
        for (int i = 0; i < 20000; i++) {
            fuelmath_call(FUELMATH_PULSE_DUTY_CYCLE, FUELMATH_SI, arguments, 2, &result);
        }
        double between = now();
        for (int i = 0; i < 20000; i++) {
            result += plain(arguments);
        }
        call = least(call, between - start);
        bare = least(bare, now() - between);
    }
    printf("C: %d formulas; a call costs %.1f ns more than a function of C\n", FUELMATH_FORMULAS, (call - bare) / 20e-6);
    return 0;
}
