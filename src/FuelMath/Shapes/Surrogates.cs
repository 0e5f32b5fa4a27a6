namespace FuelMath;

/// <summary>Finds unpaired surrogates, which UTF-8 can't represent and an encoder would replace silently.</summary>
internal static class Surrogates
{
    /// <summary>The index of an unpaired surrogate; -1 when there is none.</summary>
    internal static int BrokenAt(string text)
    {
        int i = text.AsSpan().IndexOfAnyInRange('\ud800', '\udfff');
        while (i >= 0 && i < text.Length)
        {
            if (!char.IsSurrogate(text[i]))
            {
                i++;
            }
            else if (i + 1 < text.Length && char.IsSurrogatePair(text[i], text[i + 1]))
            {
                i += 2;
            }
            else
            {
                return i;
            }
        }

        return -1;
    }
}
