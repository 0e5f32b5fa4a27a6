using Entry = (string Spelling, FuelMath.Unit Unit);

namespace FuelMath;

/// <summary>
/// The unit lists of the lenient reader. Factors as in the table of units; those of columns of liquid: [NIST-SP-811]
/// appendix B.8.
/// </summary>
internal static class LenientUnitLists
{
    private const double UsGallon = 3.785411784;
    private const double ImperialGallon = 4.54609;
    private const double Pound = 0.45359237;
    private const double Gravity = 9.80665;
    private const double Inch = 0.0254;

    internal static readonly Entry[] Volume =
    [
        .. Many("m3", 1, 1, "cbm", "cubic meter", "cubic meters", "cubic metre", "cubic metres"),
        .. Many("L", 1, 1e3, "l", "ltr", "ltrs", "liter", "liters", "litre", "litres", "dm3"),
        .. Many("mL", 1, 1e6, "ml", "milliliter", "milliliters", "millilitre", "millilitres"),
        .. Many("cm3", 1, 1e6, "cc", "ccs", "cu cm", "cubic centimeters", "cubic centimetres"),
        .. Many("mm3", 1, 1e9, "cu mm"),
        .. Many("in3", Inch * Inch * Inch, 1, "cu in", "cubic inch", "cubic inches"),
        .. Gallons("US gal", UsGallon, 1e3, "US", "U S"),
        .. Gallons("imperial gal", ImperialGallon, 1e3, "imperial", "imp", "UK"),
        .. Gallons("US gal", UsGallon, 1e3, ""),
        .. Gallons("imperial gal", ImperialGallon, 1e3, ""),
        .. Ounces("US fl oz", UsGallon / 128, "US fl oz", "fl oz", "oz", "fluid ounces"),
        .. Ounces("imperial fl oz", ImperialGallon / 160, "imp fl oz", "UK fl oz", "fl oz", "oz", "fluid ounces"),
    ];

    internal static readonly Entry[] Mass =
    [
        .. Many("kg", 1, 1, "kgs", "kilo", "kilos", "kilogram", "kilograms"),
        .. Many("g", 1, 1e3, "gr", "gram", "grams", "gramme", "grammes"),
        .. Many("mg", 1, 1e6, "milligram", "milligrams"),
        .. Many("lb", Pound, 1, "lbs", "lbm", "pound", "pounds"),
        .. Many("oz", Pound / 16, 1, "ounce", "ounces"),
    ];

    internal static readonly Entry[] Time =
    [
        .. Many("s", 1, 1, "sec", "secs", "second", "seconds"),
        .. Many("ms", 1, 1e3, "msec", "msecs", "millisec", "millisecond", "milliseconds"),
        .. Many("us", 1, 1e6, "usec", "usecs", "microsecond", "microseconds"),
        .. Many("min", 60, 1, "mins", "minute", "minutes"),
        .. Many("h", 3600, 1, "hr", "hrs", "hour", "hours"),
    ];

    /// <summary>Source: [NIST-SP-811] appendix B.8; columns of mercury and water are the conventional ones.</summary>
    private static readonly Entry[] Pressures =
    [
        .. Many("Pa", 1, 1, "pascal", "pascals", "N/m2"),
        .. Many("hPa", 100, 1),
        .. Many("kPa", 1e3, 1, "kilopascal", "kilopascals"),
        .. Many("MPa", 1e6, 1, "megapascal", "megapascals", "N/mm2"),
        .. Many("mbar", 100, 1, "millibar", "millibars"),
        .. Many("bar", 1e5, 1, "bars"),
        .. Many("psi", Pound * Gravity / (Inch * Inch), 1, "lb/in2", "lbf/in2", "lbs/in2", "lb/sq in", "lbf/sq in"),
        .. Many("inHg", 3386.389, 1, "in Hg", "\"Hg", "inches Hg", "inches of mercury"),
        .. Many("mmHg", 133.3224, 1, "mm Hg"),
        .. Many("inH2O", 249.0889, 1, "in H2O", "\"H2O", "inches of water"),
        .. Many("atm", 101325, 1, "atmosphere", "atmospheres"),
        .. Many("torr", 101325, 760),
        .. Many("kgf/cm2", 98066.5, 1, "kg/cm2", "kp/cm2"),
    ];

    internal static IEnumerable<Entry> Pressure(string name, params string[] endings) =>
        from p in Pressures
        from ending in name.Length == 0 ? endings.Prepend("") : endings
        select (p.Spelling + ending, new Unit(p.Unit.Symbol + name, p.Unit.Numerator, p.Unit.Denominator, 0));

    /// <summary>A vacuum is a gauge pressure below zero.</summary>
    internal static IEnumerable<Entry> Vacuum() =>
        from p in Pressures
        from ending in (string[])[" vacuum", " vac", " of vacuum"]
        select (p.Spelling + ending, new Unit(p.Unit.Symbol + " vacuum", -p.Unit.Numerator, p.Unit.Denominator, 0));

    internal static IEnumerable<Entry> VolumeFlow() =>
        Over(Volume, Time)
            .Concat(Many("L/h", 1, 3.6e6, "lph"))
            .Concat(Many("L/min", 1, 6e4, "lpm"))
            .Concat(Many("US gal/h", UsGallon, 3.6e6, "US gph", "USgph", "gph"))
            .Concat(Many("imperial gal/h", ImperialGallon, 3.6e6, "imp gph", "UK gph", "gph"))
            .Concat(Many("US gal/min", UsGallon, 6e4, "US gpm", "USgpm", "gpm"))
            .Concat(Many("imperial gal/min", ImperialGallon, 6e4, "imp gpm", "UK gpm", "gpm"));

    internal static IEnumerable<Entry> MassFlow() => Over(Mass, Time).Concat(Many("lb/h", Pound, 3600, "pph"));

    internal static IEnumerable<Entry> Density() => Over(Mass, Volume);

    internal static IEnumerable<Entry> Others(UnitKind kind) =>
        kind.Name switch
        {
            "temperature" =>
            [
                .. Many("K", 1, 1, "kelvin", "kelvins", "deg K"),
                .. Shifted(
                    "degC",
                    1,
                    1,
                    273.15,
                    "C",
                    "deg C",
                    "celsius",
                    "degrees C",
                    "deg celsius",
                    "degrees celsius"
                ),
                .. Shifted("degF", 5, 9, 459.67, "F", "deg F", "fahrenheit", "degrees F", "degrees fahrenheit"),
                .. Shifted("degC", 1, 1, 273.15, "deg", "degree", "degrees"),
                .. Shifted("degF", 5, 9, 459.67, "deg", "degree", "degrees"),
            ],
            "temperature difference" => Many("K", 1, 1, "kelvin", "C", "degC", "deg C", "degrees C"),
            "voltage" => [.. Many("V", 1, 1, "volt", "volts"), .. Many("mV", 1, 1e3, "millivolt", "millivolts")],
            "current" => [.. Many("A", 1, 1, "amp", "amps", "ampere", "amperes"), .. Many("mA", 1, 1e3, "milliamps")],
            "resistance" =>
            [
                .. Many("ohm", 1, 1, "ohms"),
                .. Many("mohm", 1, 1e3, "milliohm", "milliohms"),
                .. Many("kohm", 1e3, 1, "kiloohm", "kilohm", "kilohms"),
            ],
            "length" =>
            [
                .. Many("m", 1, 1, "meter", "meters", "metre", "metres"),
                .. Many("cm", 1, 100, "centimeter", "centimeters", "centimetre", "centimetres"),
                .. Many("mm", 1, 1e3, "millimeter", "millimeters", "millimetre", "millimetres"),
                .. Many("um", 1, 1e6, "micron", "microns", "micrometer", "micrometers"),
                .. Many("in", 254, 1e4, "\"", "inch", "inches"),
                .. Many("ft", 3048, 1e4, "'", "foot", "feet"),
                .. Many("thou", 254, 1e7),
            ],
            "area" =>
            [
                .. Many("mm2", 1, 1e6, "sq mm"),
                .. Many("in2", 64516, 1e8, "sq in"),
                .. Many("cm2", 1, 1e4, "sq cm"),
            ],
            "rotational speed" => Many("rpm", Math.PI, 30, "r/min", "rev/min", "revs/min", "1/min"),
            "power" =>
            [
                .. Many("W", 1, 1, "watt", "watts"),
                .. Many("kW", 1e3, 1, "kilowatt", "kilowatts"),
                .. Many("metric hp", 735.49875, 1, "PS"),
            ],
            "ratio" => Many("%", 1, 100, "percent", "per cent", "pct"),
            "speed" => [.. Many("km/h", 10, 36, "kph", "kmh"), .. Many("mph", 1609.344, 3600)],
            "dynamic viscosity" => Many("cP", 1, 1e3, "centipoise"),
            "kinematic viscosity" => Many("cSt", 1, 1e6, "centistokes"),
            "frequency" => Many("Hz", 1, 1, "hertz"),
            _ => [],
        };

    /// <summary>Every unit of one list over every unit of another.</summary>
    private static IEnumerable<Entry> Over(Entry[] above, Entry[] below) =>
        from a in above
        from b in below
        select (
            $"{a.Spelling}/{b.Spelling}",
            new Unit(
                $"{a.Unit.Symbol}/{b.Unit.Symbol}",
                a.Unit.Numerator * b.Unit.Denominator,
                a.Unit.Denominator * b.Unit.Numerator,
                0
            )
        );

    private static IEnumerable<Entry> Gallons(
        string symbol,
        double numerator,
        double denominator,
        params string[] of
    ) =>
        from land in of
        from word in (string[])["gal", "gals", "gallon", "gallons"]
        select ($"{land} {word}".TrimStart(), new Unit(symbol, numerator, denominator, 0));

    private static IEnumerable<Entry> Ounces(string symbol, double liters, params string[] spellings) =>
        Many(symbol, liters, 1e3, spellings);

    private static IEnumerable<Entry> Many(
        string symbol,
        double numerator,
        double denominator,
        params string[] aliases
    ) => Shifted(symbol, numerator, denominator, 0, aliases);

    private static IEnumerable<Entry> Shifted(
        string symbol,
        double numerator,
        double denominator,
        double offset,
        params string[] aliases
    ) => aliases.Prepend(symbol).Select(s => (s, new Unit(symbol, numerator, denominator, offset)));
}
