using System.Collections.Immutable;
using Clothwright.Core.Setts.Diameters;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Setts;

/// <summary>In what yarns differ, and by how much: one count in two fibres is not one yarn.</summary>
/// <param name="Yarns">The yarns, the first the one the others are held against.</param>
/// <param name="Properties">One row for each property.</param>
public sealed record YarnComparison(ImmutableArray<Yarn> Yarns, ImmutableArray<ComparedProperty> Properties)
{
    /// <summary>Compares yarns.</summary>
    /// <param name="yarns">At least one; the others are held against the first.</param>
    /// <exception cref="ArgumentException">There is no yarn.</exception>
    public static YarnComparison Of(params ImmutableArray<Yarn> yarns)
    {
        if (yarns.IsDefaultOrEmpty) throw new ArgumentException("There is no yarn to compare.", nameof(yarns));
        return new YarnComparison(yarns,
        [
            Row("mass per length", y => y.LinearDensity),
            Row("fibre density", y => y.Fibres.Density),
            Row("diameter by Ashenhurst's K", YarnDiameter.Of),
            Row("diameter by density and packing", y => BulkDensityDiameter.Of(y.LinearDensity, y.Fibres.BulkDensity)),
            Row("threads touching, by K", y => new DiameterReading("", YarnDiameter.Of(y)).Wraps),
            Row("stretch of the fibre at break", y => y.Fibres.Elongation),
            Row("strength when wet, of dry", y => y.Fibres.WetStrength),
            Row("shrinkage in the first washing", y => y.Fibres.WashingShrinkage),
        ]);

        ComparedProperty Row(string name, Func<Yarn, IDerived> value)
        {
            ImmutableArray<Working> values = [.. yarns.Select(y => value(y).Working)];
            double first = values[0].BaseValue;
            return new ComparedProperty(name, values, [.. values.Select(v => first == 0 ? 0 : v.BaseValue / first - 1)]);
        }
    }
}
