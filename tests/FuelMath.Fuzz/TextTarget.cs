using System.Globalization;
using System.Reflection;
using System.Text;
using FuelMath.Tests.House;
using UnitsNet;

namespace FuelMath.Fuzz;

/// <summary>Quantities as text: the strict reader, the lenient one, and what the library writes itself.</summary>
internal sealed class TextTarget : IFuzzTarget
{
    private const int LongNumber = 400;
    private const int MostChanges = 5;

    /// <summary>Signs of many kinds, white space, digits of other scripts, halves of pairs, marks that are not seen.</summary>
    private const string Alphabet =
        "0123456789.,+-eE /*^()%'\"\t\n\r\0\u0001\u001b\u00a0\u2009\u200b\u202e\u2212\u2013\u00b5\u03bc\u00b0\u00b2\u00b3\u207b\u00b9\u0663\u0967\uff11\ud83d\ude00abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ_$\\{}[]<>#";

    private static readonly CultureInfo[] Writers =
    [
        CultureInfo.InvariantCulture,
        Culture(",", "."),
        Culture(",", " "),
        Culture(".", "'"),
        Culture("\u066b", "\u066c"),
    ];

    private readonly Feed[] feeds =
    [
        .. typeof(QuantityKinds)
            .GetProperties()
            .Concat(typeof(PressureKinds).GetProperties())
            .Select(p => p.GetValue(null)!)
            .Select(kind =>
                (Feed)
                    Activator.CreateInstance(
                        typeof(Feed<>).MakeGenericType(kind.GetType().GetGenericArguments()),
                        BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.Public,
                        null,
                        [kind],
                        null
                    )!
            ),
    ];

    public string Name => "texts";

    public bool Run(Random random)
    {
        Feed feed = feeds[random.Next(feeds.Length)];
        // Mostly a unit of its own kind.
        Feed writer = random.Next(4) > 0 ? feed : feeds[random.Next(feeds.Length)];
        string text = Damaged(
            Number(random) + (random.Next(5) > 0 ? " " : "") + writer.Units[random.Next(writer.Units.Length)],
            random
        );
        return feed.Read(text, Writers[random.Next(Writers.Length)]);
    }

    private static string Number(Random random) =>
        random.Next(8) switch
        {
            0 => random.Next().ToString(CultureInfo.InvariantCulture),
            1 => BitConverter.Int64BitsToDouble(random.NextInt64()).ToString("R", CultureInfo.InvariantCulture),
            2 => "-" + random.NextDouble().ToString("R", CultureInfo.InvariantCulture),
            3 => $"{random.Next(10)}e{random.Next(-400, 400)}",
            4 => new string((char)('0' + random.Next(10)), random.Next(1, LongNumber)),
            5 => $"{random.Next(1000)},{random.Next(1000):000}.{random.Next(100)}",
            6 => $"{random.Next(5)} {random.Next(1, 64)}/{1 << random.Next(7)}",
            _ => (random.Next(100000) / 1000.0).ToString(CultureInfo.InvariantCulture),
        };

    private static string Damaged(string text, Random random)
    {
        var damaged = new StringBuilder(text);
        for (int i = random.Next(MostChanges); i > 0 && damaged.Length > 0; i--)
        {
            int at = random.Next(damaged.Length);
            char other = Alphabet[random.Next(Alphabet.Length)];
            switch (random.Next(4))
            {
                case 0:
                    damaged.Remove(at, Math.Min(random.Next(1, 4), damaged.Length - at));
                    break;
                case 1:
                    damaged.Insert(at, other.ToString(), random.Next(50) == 0 ? LongNumber : 1);
                    break;
                case 2:
                    damaged[at] = other;
                    break;
                default:
                    damaged.Append(damaged.ToString(at, damaged.Length - at));
                    break;
            }
        }

        return damaged.ToString();
    }

    private static CultureInfo Culture(string point, string group)
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = point;
        culture.NumberFormat.NumberGroupSeparator = group;
        return culture;
    }

    private abstract class Feed
    {
        internal abstract string[] Units { get; }

        internal abstract bool Read(string text, CultureInfo writer);
    }

    private sealed class Feed<T>(QuantityKind<T> kind) : Feed
        where T : struct
    {
        internal override string[] Units { get; } = [.. kind.Units];

        internal override bool Read(string text, CultureInfo writer)
        {
            bool strict = Answers("Parse", text, () => kind.Parse(text, writer), out T value);
            bool lenient = Answers("ParseLenient", text, () => kind.ParseLenient(text, writer), out T loose);
            if (
                strict != kind.TryParse(text, writer, out _)
                || lenient != kind.TryParseLenient(text, writer, out _, out _)
            )
            {
                throw new FuzzFailure(
                    $"{kind} try",
                    text,
                    $"{kind}: the form that throws and the one that tries disagree."
                );
            }

            if (strict)
            {
                ReadsBack(text, value);
            }

            if (lenient)
            {
                ReadsBack(text, loose);
            }

            return strict || lenient;
        }

        /// <summary>What was read is a number, and what is written of it reads as the same.</summary>
        private void ReadsBack(string text, T value)
        {
            if (value is IQuantity quantity && !double.IsFinite((double)quantity.Value))
            {
                throw new FuzzFailure($"{kind} finite", text, $"{kind}: was read as {quantity.Value}.");
            }

            // The first unit of a kind is that of its SI numbers.
            string written = kind.Format(value, Units[0], "R", CultureInfo.InvariantCulture);
            T again = kind.Parse(written, CultureInfo.InvariantCulture);
            if (written != kind.Format(again, Units[0], "R", CultureInfo.InvariantCulture))
            {
                throw new FuzzFailure(
                    $"{kind} written",
                    text,
                    $"{kind}: wrote '{written}', which reads as another number."
                );
            }
        }

        private bool Answers(string member, string text, Func<T> read, out T value)
        {
            try
            {
                value = read();
                return true;
            }
            catch (QuantityTextException)
            {
                value = default!;
                return false;
            }
            catch (Exception other)
            {
                throw FuzzFailure.Undocumented($"{kind}.{member}", text, other);
            }
        }
    }
}
