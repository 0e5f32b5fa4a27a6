namespace FuelMath.Formulas;

public sealed partial class FormulaInfo
{
    /// <summary>What a formula is about, by which the catalog is sorted.</summary>
    public enum FormulaTopic
    {
        /// <summary>Friction in hoses and pipes.</summary>
        Hoses,

        /// <summary>Losses of fittings, bends and tees.</summary>
        Fittings,

        /// <summary>Flow through small openings, and ratings carried to other conditions.</summary>
        Openings,

        /// <summary>Filters and strainers.</summary>
        Filters,

        /// <summary>Pumps and what limits their inlet.</summary>
        Pumps,

        /// <summary>Pressure regulators.</summary>
        Regulators,

        /// <summary>Pulsed injectors: widths, masses, sizes.</summary>
        Injectors,

        /// <summary>Air, fuel demand and mixture of an engine.</summary>
        Engines,

        /// <summary>Combustion: stoichiometry and heating value.</summary>
        Combustion,

        /// <summary>Density, viscosity, heat capacity and compression of liquids.</summary>
        Liquids,

        /// <summary>Vapor pressure.</summary>
        Vapor,

        /// <summary>Mixing: blends, premix, tank contents.</summary>
        Mixing,

        /// <summary>The atmosphere and moist air.</summary>
        Atmosphere,

        /// <summary>Wires and windings.</summary>
        Wiring,

        /// <summary>O-rings and tube walls.</summary>
        Seals,

        /// <summary>Closed lines under pressure, leaks and flushing.</summary>
        Tightness,

        /// <summary>Heat in tank and return.</summary>
        Heat,
    }
}
