using Xunit;

namespace FuelMath.Mutation.Maker;

/// <summary>Reaches next to nothing of the library, but something: Stryker takes a test that reaches nothing for one that reaches all.</summary>
public sealed class NothingTests
{
    [Fact]
    public void DataSource_HasItsKey() => Assert.Equal("SAE-J2044", new DataSource("SAE-J2044", "a test").Key);
}
