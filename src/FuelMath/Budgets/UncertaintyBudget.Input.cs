namespace FuelMath.Statistics;

public sealed partial class UncertaintyBudget
{
    /// <summary>An input of an uncertainty budget: its estimate, its standard uncertainty and their source.</summary>
    /// <remarks>Numbers are in the input's own unit; the uncertainty of a temperature in °C is in kelvins.</remarks>
    public sealed class Input
    {
        /// <summary>Creates an input.</summary>
        /// <param name="name">Its name; for a listed formula the name of the argument. Not blank.</param>
        /// <param name="value">The estimate; finite.</param>
        /// <param name="standardUncertainty">Its standard uncertainty, whatever the shape; finite and not
        /// negative.</param>
        /// <param name="unit">The unit of both, <c>1</c> for a pure number; not blank.</param>
        /// <param name="shape">The distribution of its possible values about the estimate.</param>
        /// <param name="source">Where value and uncertainty come from.</param>
        /// <exception cref="ArgumentException">A text is blank.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A number is not finite, or the uncertainty is
        /// negative.</exception>
        public Input(
            string name,
            double value,
            double standardUncertainty,
            string unit,
            SpreadShape shape,
            DataSource source
        )
        {
            ArgumentNullException.ThrowIfNull(source);
            Name = Guard.Name(name);
            Value = Guard.Finite(value);
            StandardUncertainty = Guard.NotNegative(standardUncertainty);
            Unit = Guard.Name(unit);
            Shape = Guard.Known(shape);
            DegreesOfFreedom = DegreesOfFreedom.Unlimited;
            Source = source;
        }

        /// <summary>Its name.</summary>
        public string Name { get; }

        /// <summary>The estimate.</summary>
        public double Value { get; }

        /// <summary>Its standard uncertainty.</summary>
        public double StandardUncertainty { get; }

        /// <summary>The unit of both.</summary>
        public string Unit { get; }

        /// <summary>The distribution of its possible values about the estimate.</summary>
        public SpreadShape Shape { get; }

        /// <summary>The degrees of freedom of the standard uncertainty.</summary>
        public DegreesOfFreedom DegreesOfFreedom { get; private init; }

        /// <summary>Where value and uncertainty come from.</summary>
        public DataSource Source { get; }

        /// <summary>An input that counts as exact.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="value">Its value; finite.</param>
        /// <param name="unit">Its unit; not blank.</param>
        /// <param name="source">Where it comes from.</param>
        /// <returns>The input.</returns>
        /// <exception cref="ArgumentException">A text is blank.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is not finite.</exception>
        public static Input FromExact(string name, double value, string unit, DataSource source) =>
            new(name, value, 0, unit, SpreadShape.Normal, source);

        /// <summary>The mean of repeats, with its standard error. Source: [JCGM-100] section 4.2.3.</summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="repeats">The repeats.</param>
        /// <param name="unit">Their unit; not blank.</param>
        /// <param name="source">Where they come from.</param>
        /// <returns>The input; its degrees of freedom are the number of repeats minus one.</returns>
        /// <exception cref="ArgumentException">A text is blank.</exception>
        /// <exception cref="ArgumentNullException">An argument is null.</exception>
        public static Input FromSample(string name, Sample repeats, string unit, DataSource source)
        {
            ArgumentNullException.ThrowIfNull(repeats);
            return new Input(
                name,
                repeats.Mean,
                repeats.StandardError,
                unit,
                SpreadShape.Normal,
                source
            ).WithDegreesOfFreedom(DegreesOfFreedom.From(repeats.Count - 1));
        }

        /// <summary>
        /// An input between two limits: a tolerance, a resolution. Source: [JCGM-100] sections 4.3.7 and 4.3.9.
        /// </summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="value">The middle between the limits; finite.</param>
        /// <param name="halfWidth">Distance to each limit; finite and not negative.</param>
        /// <param name="unit">The unit of both; not blank.</param>
        /// <param name="shape">A shape that has limits.</param>
        /// <param name="source">Where it comes from.</param>
        /// <returns>The input, with the standard deviation of that shape.</returns>
        /// <exception cref="ArgumentException">A text is blank, or the shape has no limits.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">A number is not finite, or the half width is
        /// negative.</exception>
        public static Input FromHalfWidth(
            string name,
            double value,
            double halfWidth,
            string unit,
            SpreadShape shape,
            DataSource source
        )
        {
            Guard.Known(shape);
            double reach = SpreadShapes.HalfWidth(shape);
            if (double.IsInfinity(reach))
            {
                throw new RefusedArgumentException(
                    RefusalCode.NotOneOf,
                    $"Must be a shape that has limits; it was {shape:given}.",
                    nameof(shape)
                );
            }

            double u = Guard.NotNegative(halfWidth) / reach;
            return new(name, value, u, unit, shape, source);
        }

        /// <summary>
        /// An input from a certificate that states an expanded uncertainty. Source: [JCGM-100] section 4.3.3.
        /// </summary>
        /// <param name="name">Its name; not blank.</param>
        /// <param name="value">The stated value; finite.</param>
        /// <param name="expandedUncertainty">The stated uncertainty; finite and not negative.</param>
        /// <param name="coverageFactor">The stated coverage factor; 1 to 10.</param>
        /// <param name="unit">The unit of value and uncertainty; not blank.</param>
        /// <param name="source">The certificate.</param>
        /// <returns>The input, normal.</returns>
        /// <exception cref="ArgumentException">A text is blank.</exception>
        /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
        /// <exception cref="ArgumentOutOfRangeException">
        /// A number is not finite, the uncertainty is negative, or the coverage factor is not from 1 to 10.
        /// </exception>
        public static Input FromExpanded(
            string name,
            double value,
            double expandedUncertainty,
            double coverageFactor,
            string unit,
            DataSource source
        )
        {
            double u = Guard.NotNegative(expandedUncertainty) / Guard.InRange(coverageFactor, 1, 10);
            return new(name, value, u, unit, SpreadShape.Normal, source);
        }

        /// <summary>The same input whose standard uncertainty rests on so many degrees of freedom; unlimited otherwise.</summary>
        /// <param name="degreesOfFreedom">The degrees of freedom of the standard uncertainty.</param>
        /// <returns>A new input.</returns>
        public Input WithDegreesOfFreedom(DegreesOfFreedom degreesOfFreedom) =>
            new(Name, Value, StandardUncertainty, Unit, Shape, Source) { DegreesOfFreedom = degreesOfFreedom };

        /// <summary>Gives the name.</summary>
        /// <returns>The name.</returns>
        public override string ToString() => Name;
    }
}
