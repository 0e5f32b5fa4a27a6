using System.Text;

namespace FuelMath.Native;

/// <summary>Texts over the border, as UTF-8.</summary>
internal static unsafe class NativeText
{
    /// <summary>Writes as many whole characters as fit, and a zero after them.</summary>
    /// <returns>The bytes of the whole text without the zero: the room that it needs, less one.</returns>
    internal static int Copy(string text, byte* to, int capacity)
    {
        int needed = Encoding.UTF8.GetByteCount(text);
        if (to is not null && capacity > 0)
        {
            Encoding
                .UTF8.GetEncoder()
                .Convert(text, new Span<byte>(to, capacity - 1), true, out _, out int used, out _);
            to[used] = 0;
        }

        return needed;
    }
}
