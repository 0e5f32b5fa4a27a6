namespace FuelMath;

/// <summary>Half a surrogate pair is no character: bytes can't hold it, and an encoder would exchange it in silence.</summary>
internal static class Surrogates
{
    /// <summary>Where half a surrogate pair stands, which no bytes can hold; -1 when nowhere.</summary>
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
