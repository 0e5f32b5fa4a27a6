namespace FuelMath.Samples.Assessment;

/// <summary>Text in lines of at most so many characters.</summary>
internal static class Wrapping
{
    /// <summary>Breaks between words; lines after the first are indented. A longer word is broken.</summary>
    internal static IEnumerable<string> Wrap(string text, int width, int indent)
    {
        string line = text[..(text.Length - text.TrimStart().Length)];
        bool empty = true;
        foreach (
            string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .SelectMany(w => w.Chunk(width - indent))
                .Select(c => new string(c))
        )
        {
            if (!empty && line.Length + 1 + word.Length > width)
            {
                yield return line;
                (line, empty) = (new string(' ', indent), true);
            }

            line += empty ? word : $" {word}";
            empty = false;
        }

        yield return line;
    }

    /// <summary>The same in at most so many lines; what is left off is marked.</summary>
    internal static IEnumerable<string> Fit(string text, int width, int most)
    {
        string[] lines = [.. Wrap(text, width, text.StartsWith(' ') ? 4 : 0)];
        return lines.Length <= most
            ? lines
            : [.. lines.Take(most - 1), $"{lines[most - 1][..Math.Min(lines[most - 1].Length, width - 4)]} ..."];
    }
}
