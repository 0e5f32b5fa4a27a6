namespace FuelMath.Tests.Networks;

/// <summary>A part of a law whose settings no part of the library gives by itself.</summary>
internal sealed class LawPart(LawSettings law) : FlowPart
{
    internal override LawSettings Law => law;
}
