using FuelMath.Formulas;
using UnitsNet;
using UnitsNet.Units;

namespace FuelMath.Tests.Laws;

/// <summary>
/// One of each part that takes pressure from a flow, or gives it, with a gasoline of our workshop class; and the wiring,
/// which takes voltage from a current by laws of the same kind.
/// </summary>
public static class Characteristics
{
    private const double Rho = 740;
    private const double Mu = 5e-4;

    private static readonly Density Density = Density.FromKilogramsPerCubicMeter(Rho);
    private static readonly DynamicViscosity Viscosity = DynamicViscosity.FromPascalSeconds(Mu);
    private static readonly DataSource Source = new("Workshop-class", "one of each part, for the laws");

    public static IReadOnlyList<Characteristic> All { get; } =
    [
        OfHose("smooth hose", roughness: 0, lossCoefficient: 0),
        OfHose("rough hose with bends", roughness: 5e-5, lossCoefficient: 3.2),
        OfCoil(),
        OfFitting(),
        OfLine(),
        OfFilter(),
        OfStrainer(),
        OfRegulator(),
        OfRelief(),
        OfJet(),
        OfTable(),
        OfInjector(),
        OfPump(),
        OfCircuit(),
    ];

    /// <summary>Liters an hour of gasoline through 8.7 mm: from laminar through the passage into turbulent flow.</summary>
    private static Characteristic OfHose(string name, double roughness, double lossCoefficient)
    {
        const double bore = 8.7e-3;
        const double length = 3;
        var hose = new Hose(
            name,
            Length.FromMeters(length),
            Length.FromMeters(bore),
            Length.FromMeters(roughness),
            Ratio.FromDecimalFractions(lossCoefficient),
            Source
        );

        return OverFlow(
            name,
            VolumeFlow.FromLitersPerHour(400).CubicMetersPerSecond,
            q => hose.LossAt(q, Density, Viscosity),
            q =>
            {
                Dual<Real> velocity = Friction.Velocity(q, Of(bore));
                return Friction.PressureLoss(velocity, Of(bore), Of(length), Of(roughness), Of(Rho), Of(Mu))
                    + MinorLoss.PressureLoss(Of(lossCoefficient), Of(Rho), velocity);
            }
        );
    }

    /// <summary>A tight end of 90 degrees, of 7 mm in a hose of 8.7 mm.</summary>
    private static Characteristic OfFitting()
    {
        const double bore = 7e-3;
        Fitting end = HoseEnds.Tight(
            "tight end",
            Angle.FromDegrees(90),
            Length.FromMeters(bore),
            Length.FromMeters(8.7e-3)
        );
        double k = end.LossCoefficient.DecimalFractions;

        return OverFlow(
            "tight end",
            VolumeFlow.FromLitersPerHour(400).CubicMetersPerSecond,
            q => end.LossAt(q, Density),
            q => MinorLoss.PressureLoss(Of(k), Of(Rho), Friction.Velocity(q, Of(bore)))
        );
    }

    /// <summary>A line of one hose between two adapters.</summary>
    private static Characteristic OfLine()
    {
        const double bore = 8.7e-3;
        const double length = 1.4;
        var flare = FittingEnd.Flare37(6, FittingEnd.EndGender.Female);
        var union = new Adapter("union", flare.Mate, flare.Mate);
        var loss = new Fitting(
            "union",
            Length.FromMeters(bore),
            Ratio.FromDecimalFractions(0.6),
            Fitting.LossBasis.Supplied,
            Source
        );
        var end = new HoseAssembly.EndFitting(flare, loss, Length.FromMeters(0.025));
        var hose = new HoseAssembly(
            "hose",
            new HoseStock("stock", Length.FromMeters(bore), Length.FromMeters(1e-5)),
            Length.FromMeters(length + 0.05),
            end,
            end,
            Source
        );
        var line = new LinePlan(
            "line",
            [
                new LinePlan.AdapterPiece(union, loss),
                new LinePlan.HosePiece(hose),
                new LinePlan.AdapterPiece(union, loss),
            ]
        );

        return OverFlow(
            "line",
            VolumeFlow.FromLitersPerHour(400).CubicMetersPerSecond,
            q => line.LossAt(q, Density, Viscosity),
            q =>
            {
                Dual<Real> velocity = Friction.Velocity(q, Of(bore));
                return Friction.PressureLoss(velocity, Of(bore), Of(length), Of(1e-5), Of(Rho), Of(Mu))
                    + MinorLoss.PressureLoss(Of(4 * 0.6), Of(Rho), velocity);
            }
        );
    }

    /// <summary>Bent all along, from creeping over White's law to Ito's.</summary>
    private static Characteristic OfCoil()
    {
        const double bore = 8.7e-3;
        const double length = 3;
        const double coil = 0.35;
        Hose hose = new Hose(
            "coiled hose",
            Length.FromMeters(length),
            Length.FromMeters(bore),
            Length.FromMeters(1e-5),
            Ratio.FromDecimalFractions(1.4),
            Source
        ).WithCoil(Length.FromMeters(coil));

        return OverFlow(
            "coiled hose",
            VolumeFlow.FromLitersPerHour(400).CubicMetersPerSecond,
            q => hose.LossAt(q, Density, Viscosity),
            q =>
            {
                Dual<Real> velocity = Friction.Velocity(q, Of(bore));
                return CurvedFriction.PressureLoss(velocity, Of(bore), Of(length), Of(1e-5), Of(coil), Of(Rho), Of(Mu))
                    + MinorLoss.PressureLoss(Of(1.4), Of(Rho), velocity);
            }
        );
    }

    private static Characteristic OfFilter()
    {
        Filter filter = Filter.Fit(
            "filter",
            [Point(100, 3.2), Point(200, 7.4), Point(300, 12.6), Point(400, 18.8)],
            Density,
            Viscosity,
            Source
        );

        return OverFlow(
            "filter",
            filter.GreatestFlow.CubicMetersPerSecond,
            q => filter.LossAt(q, Density, Viscosity),
            q => PorousMedium.PressureLoss(Of(filter.LinearSi), Of(filter.QuadraticSi), Of(Mu), Of(Rho), q)
        );

        static Filter.Point Point(double litersPerHour, double kilopascals) =>
            new(Pressure.FromKilopascals(kilopascals), VolumeFlow.FromLitersPerHour(litersPerHour));
    }

    private static Characteristic OfStrainer()
    {
        var strainer = new Strainer(
            "strainer",
            Length.FromMillimeters(0.1),
            Length.FromMillimeters(0.065),
            Area.FromSquareMillimeters(600),
            Source
        );
        var law = (SquareSettings)((FlowPart)strainer).Law;

        return OverFlow(
            "strainer",
            VolumeFlow.FromLitersPerHour(400).CubicMetersPerSecond,
            q => strainer.LossAt(q, Density, Viscosity),
            q => PorousMedium.PressureLoss(Of(law.LinearPerViscosity), Of(law.SquarePerDensity), Of(Mu), Of(Rho), q)
        );
    }

    private static Characteristic OfRegulator()
    {
        const double lossAtFlow = 45e3;
        double flow = VolumeFlow.FromLitersPerHour(300).CubicMetersPerSecond;
        var regulator = new BypassRegulator(
            "regulator",
            new(Pressure.FromBars(3), VolumeFlow.FromLitersPerHour(80)),
            new(Pressure.FromBars(3.1), VolumeFlow.FromLitersPerHour(240)),
            new RegulatorMechanics(
                Area.FromSquareMillimeters(900),
                Area.FromSquareMillimeters(30),
                new(Pressure.FromPascals(lossAtFlow), VolumeFlow.FromCubicMetersPerSecond(flow), Density)
            ),
            RegulatorReference.Manifold,
            Source
        );

        return OverFlow(
            "regulator, fully open",
            flow,
            q => regulator.FullyOpenLoss(q, Density),
            q =>
                BypassValve.FullyOpenLoss(
                    BypassValve.FullyOpenCoefficient(Of(lossAtFlow), Of(Rho), Of(flow)),
                    Of(Rho),
                    q
                )
        );
    }

    /// <summary>Above its opening it is a restriction; the offset is in both.</summary>
    private static Characteristic OfRelief()
    {
        const double opening = 7e5;
        const double added = 9e4;
        double flow = VolumeFlow.FromLitersPerHour(300).CubicMetersPerSecond;
        var valve = new ReliefValve(
            "relief valve",
            Pressure.FromPascals(opening),
            Pressure.FromPascals(added),
            VolumeFlow.FromCubicMetersPerSecond(flow),
            Density,
            Source
        );

        return OverFlow(
            "relief valve",
            flow,
            q => valve.DifferentialPressureAt(q, Density),
            q =>
                opening
                + BypassValve.FullyOpenLoss(BypassValve.FullyOpenCoefficient(Of(added), Of(Rho), Of(flow)), Of(Rho), q)
        );
    }

    /// <summary>A jet of a measured power, down to where it creeps.</summary>
    private static Characteristic OfJet()
    {
        const double loss = 3e5;
        const double power = 0.56;
        double flow = VolumeFlow.FromLitersPerHour(60).CubicMetersPerSecond;
        var jet = new Jet(
            "jet",
            VolumeFlow.FromCubicMetersPerSecond(flow),
            Pressure.FromPascals(loss),
            Density,
            Ratio.FromDecimalFractions(power),
            Source
        );

        return OverFlow(
            "jet",
            flow,
            q => jet.LossAt(q, Density),
            q => Orifice.PowerLawPressureLoss(q, Of(flow), Of(loss), Of(Rho), Of(Rho), power)
        );
    }

    /// <summary>Losses read with another fluid, where the same Reynolds number is met at twice the flow.</summary>
    private static Characteristic OfTable()
    {
        const double density = 800;
        double viscosity = 2 * Mu / Rho * density;
        var table = new LossTable(
            "loss table",
            [Reading(120, 8), Reading(240, 27), Reading(480, 98)],
            Density.FromKilogramsPerCubicMeter(density),
            DynamicViscosity.FromPascalSeconds(viscosity),
            Source
        );
        double[] flows = [0, .. table.Readings.Select(r => r.Flow.CubicMetersPerSecond)];
        double[] losses = [0, .. table.Readings.Select(r => r.PressureLoss.Pascals)];
        var curve = new Curve("loss", "flow", flows, losses, OutsideRange.Extend);

        return OverFlow(
            "loss table",
            flows[^1] / 2,
            q => table.LossAt(q, Density, Viscosity),
            q => Rho / density / 4 * curve.Read(2 * q)
        );

        static LossTable.Point Reading(double litersPerHour, double kilopascals) =>
            new(VolumeFlow.FromLitersPerHour(litersPerHour), Pressure.FromKilopascals(kilopascals));
    }

    private static Characteristic OfInjector()
    {
        var rating = FlowRating.FromVolume(
            VolumeFlow.FromCubicCentimetersPerMinute(980),
            Pressure.FromBars(3),
            StandardFuels.NHeptane,
            Temperature.FromDegreesCelsius(20),
            Source
        );
        double flow = rating.StaticVolumeFlow.CubicMetersPerSecond;
        double density = rating.FluidDensity.KilogramsPerCubicMeter;

        double At(double pascals) => rating.VolumeFlowAt(Pressure.FromPascals(pascals), Density).CubicMetersPerSecond;

        return new(
            "injector, held open",
            5e5,
            At,
            pascals =>
                rating
                    .VolumeFlowAt(
                        Pressure.FromPascals(pascals).ToUnit(PressureUnit.PoundForcePerSquareInch),
                        Density.ToUnit(DensityUnit.PoundPerCubicFoot)
                    )
                    .CubicMetersPerSecond,
            p => Orifice.CarriedVolumeFlow(Of(flow), Of(3e5), Of(density), p, Of(Rho)),
            pascals => pascals * At(pascals)
        );
    }

    /// <summary>Down to no flow, so that every law can be asked there.</summary>
    private static Characteristic OfPump()
    {
        var curve = new PumpCurve(
            ElectricPotential.FromVolts(13.5),
            [Point(1, 330, 6.1), Point(3, 285, 8.0), Point(5, 225, 10.4), Point(7, 125, 13.2), Point(8.4, 0, 15.6)],
            Source
        );

        return OverFlow("pump", curve.GreatestFlow.CubicMetersPerSecond, curve.RiseAt, curve.RiseOverFlow.Read) with
        {
            PowerLost = q =>
            {
                Pressure rise = curve.RiseAt(VolumeFlow.FromCubicMetersPerSecond(q));
                return (double)(curve.ElectricPowerAt(rise) - curve.HydraulicPowerAt(rise)).Watts;
            },
        };

        static PumpCurve.Point Point(double bar, double litersPerHour, double amperes) =>
            new(
                Pressure.FromBars(bar),
                VolumeFlow.FromLitersPerHour(litersPerHour),
                ElectricCurrent.FromAmperes(amperes)
            );
    }

    private static Characteristic OfCircuit()
    {
        const double area = 2e-6;
        const double celsius = 60;
        const double contacts = 12e-3;
        var circuit = new Circuit("pump circuit", [Wire(4)], [Wire(1.5)], ElectricResistance.FromOhms(contacts));

        return new(
            "wiring",
            20,
            i => circuit.DropAt(ElectricCurrent.FromAmperes(i)).Volts,
            i => circuit.DropAt(ElectricCurrent.FromAmperes(i).ToUnit(ElectricCurrentUnit.Milliampere)).Volts,
            i => i * (Resistance(4) + Resistance(1.5) + contacts),
            i => (double)circuit.HeatAt(ElectricCurrent.FromAmperes(i)).Watts
        );

        static FuelMath.Conductor Wire(double meters) =>
            new(
                WireSize.FromArea(Area.FromSquareMeters(area)),
                Length.FromMeters(meters),
                Temperature.FromDegreesCelsius(celsius)
            );

        static Dual<Real> Resistance(double meters) =>
            WireResistance.Resistance(
                Of(WireResistance.CopperResistivity),
                Of(WireResistance.CopperCoefficient),
                Of(meters),
                Of(area),
                Of(celsius)
            );
    }

    private static Characteristic OverFlow(
        string name,
        double greatest,
        Func<VolumeFlow, Pressure> answer,
        Func<Dual<Real>, Dual<Real>> formula
    )
    {
        double At(double q) => answer(VolumeFlow.FromCubicMetersPerSecond(q)).Pascals;

        return new(
            name,
            greatest,
            At,
            q => answer(VolumeFlow.FromCubicMetersPerSecond(q).ToUnit(VolumeFlowUnit.UsGallonPerHour)).Pascals,
            formula,
            q => q * At(q)
        );
    }

    private static Dual<Real> Of(double value) => Dual<Real>.Of(value);
}
