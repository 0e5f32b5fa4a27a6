using System.Globalization;
using FuelMath.Workbooks;

namespace FuelMath.Examples;

/// <summary>What an add-in does with the functions of cells, with a host made up for the example.</summary>
public sealed class SheetFunctionExamples
{
    [Fact]
    public void Loop()
    {
        var host = new Host();
        #region Loop
        // Called by the host with what stands in the cells.
        object Calculate(SheetFunction function, object?[] cells) =>
            function.Call(CultureInfo.CurrentCulture, cells) switch
            {
                object[,] range => Host.Range(range, ForHost),
                object single => ForHost(single),
            };

        // The host's own value for each kind of error.
        object ForHost(object result) =>
            result is CellError error
                ? error.Kind switch
                {
                    CellErrorKind.Number => host.NumberError,
                    CellErrorKind.NotAvailable => host.NotAvailableError,
                    _ => host.ValueError,
                }
                : result;

        foreach (SheetFunction function in SheetFunctions.All)
        {
            host.Register(
                $"FUEL.{function.Name.ToUpperInvariant()}",
                $"{function.Summary}. Gives {function.Result}. {function.Source}",
                [.. function.Arguments.Select(a => (a.Name, a.Help))],
                cells => Calculate(function, cells)
            );
        }
        #endregion

        Assert.Equal(50.0, (double)host.Type("FUEL.DUTYCYCLE", 10.0, 20.0), 12);
        Assert.Equal(host.NumberError, host.Type("FUEL.DUTYCYCLE", 10.0, 0.0));
        Assert.Equal(host.ValueError, host.Type("FUEL.DUTYCYCLE", 10.0, "3 bar"));
        Assert.Equal(host.NotAvailableError, host.Type("FUEL.DUTYCYCLE", 10.0, null));
        object[,] column = (object[,])
            host.Type(
                "FUEL.DUTYCYCLE",
                new object?[,]
                {
                    { 5.0 },
                    { "0.01 s" },
                },
                20.0
            );
        Assert.Equal(25.0, (double)column[0, 0], 12);
        Assert.Equal(50.0, (double)column[1, 0], 12);
    }

    /// <summary>Stands for the library through which a host takes functions.</summary>
    private sealed class Host
    {
        private readonly Dictionary<string, Func<object?[], object>> functions = [];

        internal object ValueError { get; } = "error 15";

        internal object NumberError { get; } = "error 36";

        internal object NotAvailableError { get; } = "error 42";

        internal void Register(
            string name,
            string help,
            (string Name, string Help)[] arguments,
            Func<object?[], object> call
        )
        {
            Assert.NotEmpty(help);
            Assert.NotEmpty(arguments);
            functions.Add(name, call);
        }

        internal static object[,] Range(object[,] cells, Func<object, object> convert)
        {
            var own = new object[cells.GetLength(0), cells.GetLength(1)];
            for (int i = 0; i < own.GetLength(0); i++)
            {
                for (int j = 0; j < own.GetLength(1); j++)
                {
                    own[i, j] = convert(cells[i, j]);
                }
            }

            return own;
        }

        internal object Type(string name, params object?[] cells) => functions[name](cells);
    }
}
