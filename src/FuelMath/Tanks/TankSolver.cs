using FuelMath.Formulas;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath;

/// <summary>Finds the volumes that bring a tank to a content, or gives the range that can be reached.</summary>
internal static class TankSolver
{
    internal static Tank.FillPlan Reach(Tank tank, Ratio target, Tank.Liquid liquid, Temperature measuredAt)
    {
        ArgumentNullException.ThrowIfNull(liquid);
        if (tank.IsEmpty)
        {
            throw new RefusedOperationException(
                RefusalCode.TankEmpty,
                "An empty tank takes on the content of whatever is put in: use two liquids and a final volume."
            );
        }

        double wanted = Guard.InRange(target, target.InSi(), 0, 1, SiUnits.Ratio);
        double held = tank.EthanolContent.InSi();
        double volume = tank.ReferenceVolume;
        bool reached = Math.Abs(wanted - held) <= Guard.EdgeTolerance;
        bool between = (wanted - held) * (liquid.Ethanol - wanted) > 0;
        if (!reached && !between)
        {
            throw Guard.OutOfRange(
                target,
                $"from {Rounded(held, target):least} (what the tank holds) to below {Rounded(liquid.Ethanol, target):below} (what is added)"
            );
        }

        double added = reached
            ? 0
            : TankBalance
                .AddedVolume(new Real(held), new Real(volume), new Real(liquid.Ethanol), new Real(wanted))
                .Value;
        double density = liquid.Fuel.Density.Law.AtKelvins(Tank.Liquid.ReferenceKelvins);
        double inTank = added * density / liquid.Fuel.Density.Law.At(tank.Temperature);
        double room = tank.CapacitySi - tank.HeldSi;
        if (inTank > room + (Guard.EdgeTolerance * tank.CapacitySi))
        {
            throw TooLittleRoom(tank, target, liquid, room * added / inTank);
        }

        Volume measured = SiUnits.Volume(added * density / liquid.Fuel.Density.Law.At(measuredAt));
        return new(
            [new(liquid, measured, tank.Add(liquid, measured, measuredAt))],
            () =>
                reached
                    ? Traced.Input(TankSymbols.AddedVolume, 0)
                    : TankBalance.AddedVolume(
                        Traced.Input(TankSymbols.HeldContent, held),
                        Traced.Input(TankSymbols.HeldVolume, volume),
                        Traced.Input(TankSymbols.AddedContent, liquid.Ethanol),
                        Traced.Input(TankSymbols.Target, wanted)
                    )
        );
    }

    internal static Tank.FillPlan FillTo(
        Tank tank,
        Ratio target,
        Volume finalVolume,
        Tank.Liquid first,
        Tank.Liquid second,
        Temperature measuredAt
    )
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        double wanted = Guard.InRange(target, target.InSi(), 0, 1, SiUnits.Ratio);
        double final = Guard.InRange(finalVolume, finalVolume.InSi(), tank.HeldSi, tank.CapacitySi, SiUnits.Volume);
        if (first.Ethanol == second.Ethanol)
        {
            throw new RefusedArgumentException(
                RefusalCode.NotDifferent,
                $"Must differ in ethanol content from '{first.ToString():other}'; both have {Rounded(first.Ethanol, target):value}.",
                nameof(second)
            );
        }

        double room = final - tank.HeldSi;
        double held = tank.EthanolContent.InSi();
        double volume = tank.ReferenceVolume;
        double firstExpansion = Expansion(first, tank);
        double secondExpansion = Expansion(second, tank);
        double allFirst = ContentWith(first, room / firstExpansion);
        double allSecond = ContentWith(second, room / secondExpansion);
        double slack = Guard.EdgeTolerance;
        if (!(wanted >= Math.Min(allFirst, allSecond) - slack && wanted <= Math.Max(allFirst, allSecond) + slack))
        {
            throw Guard.OutOfRange(
                target,
                $"from {Rounded(Math.Min(allFirst, allSecond), target):least} to {Rounded(Math.Max(allFirst, allSecond), target):most}, which is what '{first.ToString():first}' alone and '{second.ToString():second}' alone reach in {finalVolume:finalVolume}"
            );
        }

        double most = room / firstExpansion;
        double solved =
            room > 0
                ? TankBalance
                    .FirstVolume(
                        new Real(held),
                        new Real(volume),
                        new Real(first.Ethanol),
                        new Real(second.Ethanol),
                        new Real(wanted),
                        new Real(room),
                        new Real(firstExpansion),
                        new Real(secondExpansion)
                    )
                    .Value
                : 0;
        if (!(solved >= -1e-6 * most && solved <= most * (1 + 1e-6)))
        {
            throw new RefusedArgumentException(
                RefusalCode.NotDifferent,
                $"Must differ more in ethanol content from '{first.ToString():other}': at {Rounded(first.Ethanol, target):otherContent} and {Rounded(second.Ethanol, target):value} no share of the two is told from another.",
                nameof(second)
            );
        }

        double one = Math.Clamp(solved, 0, most);
        Volume firstVolume = Measured(first, one, measuredAt);
        Volume secondVolume = Measured(second, (room - (one * firstExpansion)) / secondExpansion, measuredAt);
        Tank between = tank.Add(first, firstVolume, measuredAt);
        return new(
            [
                new(first, firstVolume, between),
                new(second, secondVolume, between.Add(second, secondVolume, measuredAt)),
            ],
            () =>
                TankBalance.FirstVolume(
                    Traced.Input(TankSymbols.HeldContent, held),
                    Traced.Input(TankSymbols.HeldVolume, volume),
                    Traced.Input(TankSymbols.FirstContent, first.Ethanol),
                    Traced.Input(TankSymbols.SecondContent, second.Ethanol),
                    Traced.Input(TankSymbols.Target, wanted),
                    Traced.Input(TankSymbols.Room, room),
                    Traced.Input(TankSymbols.FirstExpansion, firstExpansion),
                    Traced.Input(TankSymbols.SecondExpansion, secondExpansion)
                )
        );

        double ContentWith(Tank.Liquid liquid, double more) =>
            volume + more > 0
                ? TankBalance
                    .ContentAfter(new Real(held), new Real(volume), new Real(liquid.Ethanol), new Real(more))
                    .Value
                : 0;
    }

    private static RefusedValueException TooLittleRoom(Tank tank, Ratio target, Tank.Liquid liquid, double most)
    {
        double held = tank.EthanolContent.InSi();
        double full = TankBalance
            .ContentAfter(
                new Real(held),
                new Real(tank.ReferenceVolume),
                new Real(liquid.Ethanol),
                new Real(Math.Max(0, most))
            )
            .Value;

        // The volume of the present contents that a full tank at the target may contain; the rest must be drained
        // first.
        double capacity = tank.CapacitySi;
        double expansion = Expansion(liquid, tank);
        double mine = tank.HeldSi / tank.ReferenceVolume;
        double share = (liquid.Ethanol - target.InSi()) / (liquid.Ethanol - held);
        double keep = capacity * share * mine / ((share * mine) + ((1 - share) * expansion));
        return Guard.OutOfRange(
            target,
            $"from {Rounded(held, target):least} (what the tank holds) to {Rounded(full, target):most} (what it holds when full; drain {SiUnits.Volume(Math.Round(tank.HeldSi - keep, 6)).ToUnit(VolumeUnit.Liter):drain} first)"
        );
    }

    private static double Expansion(Tank.Liquid liquid, Tank tank) =>
        liquid.Fuel.Density.Law.AtKelvins(Tank.Liquid.ReferenceKelvins) / liquid.Fuel.Density.Law.At(tank.Temperature);

    private static Volume Measured(Tank.Liquid liquid, double reference, Temperature measuredAt) =>
        SiUnits.Volume(
            Math.Max(0, reference)
                * liquid.Fuel.Density.Law.AtKelvins(Tank.Liquid.ReferenceKelvins)
                / liquid.Fuel.Density.Law.At(measuredAt)
        );

    private static Ratio Rounded(double content, Ratio like) => SiUnits.Ratio(Math.Round(content, 6)).ToUnit(like.Unit);
}
