using System.Globalization;
using FuelMath.Workbooks;

namespace FuelMath.Examples;

/// <summary>What an add-in does with the functions of cells, with a host made up for the example.</summary>
public sealed class SheetFunctionExamples
{
    [Fact]
    public void Loop()
    {
        #region Loop
        // Stands for the host: its functions by name, called with what stands in the cells.
        Dictionary<string, Func<object?[], object>> host = [];

        foreach (SheetFunction function in SheetFunctions.All)
        {
            string help = $"{function.Summary}. Gives {function.Result}. {function.Source}";
            string arguments = string.Join("; ", function.Arguments.Select(a => $"{a.Name}: {a.Help}"));
            Console.WriteLine($"{help} {arguments}"); // what the host shows while a formula is typed
            host[$"FUEL.{function.Name.ToUpperInvariant()}"] = cells =>
                ForHost(function.Call(CultureInfo.CurrentCulture, cells));
        }

        // The host's own value for each kind of error, in a cell and in each cell of a range.
        object ForHost(object result)
        {
            if (result is object[,] range)
            {
                for (int i = 0; i < range.Length; i++)
                {
                    (int row, int column) = int.DivRem(i, range.GetLength(1));
                    range[row, column] = ForHost(range[row, column]);
                }
            }

            return result is CellError error
                ? error.Kind switch
                {
                    CellErrorKind.Number => "#NUM!",
                    CellErrorKind.NotAvailable => "#N/A",
                    _ => "#VALUE!",
                }
                : result;
        }

        object duty = host["FUEL.DUTYCYCLE"]([10.0, 20.0]); // 50, in percent
        object outside = host["FUEL.DUTYCYCLE"]([10.0, 0.0]); // "#NUM!"
        object wrongUnit = host["FUEL.DUTYCYCLE"]([10.0, "3 bar"]); // "#VALUE!"
        object empty = host["FUEL.DUTYCYCLE"]([10.0, null]); // "#N/A"
        object column = host["FUEL.DUTYCYCLE"]
            ([
                new object?[,]
                {
                    { 5.0 },
                    { "0.01 s" },
                },
                20.0,
            ]); // 25 and 50
        #endregion

        Assert.Equal(50.0, (double)duty, 12);
        Assert.Equal(["#NUM!", "#VALUE!", "#N/A"], new[] { outside, wrongUnit, empty });
        Assert.Equal([25.0, 50.0], ((object[,])column).Cast<double>().Select(d => Math.Round(d, 12)));
    }
}
