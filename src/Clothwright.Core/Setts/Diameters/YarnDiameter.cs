using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Setts.Diameters;

/// <summary>The diameter of a yarn: the one to reckon with, and what each rule says.</summary>
public static class YarnDiameter
{
    internal const string PlainLabel = "yarn diameter";

    /// <summary>The diameter to reckon with: from wraps if they were counted, else by Ashenhurst's K of fibre and construction.</summary>
    /// <param name="yarn">The yarn.</param>
    public static Derived<Length> Of(Yarn yarn)
    {
        ArgumentNullException.ThrowIfNull(yarn);
        return yarn.MeasuredWraps is { } wraps
            ? WrapsDiameter.Of(wraps, yarn.WrapMeasure, Label(yarn))
            : AshenhurstDiameter.Of(yarn.LinearDensity, AshenhurstK.Of(yarn), Label(yarn));
    }

    /// <summary>What each rule says, the diameter to reckon with first.</summary>
    /// <param name="yarn">The yarn.</param>
    public static ImmutableArray<DiameterReading> Readings(Yarn yarn)
    {
        ArgumentNullException.ThrowIfNull(yarn);
        var readings = ImmutableArray.CreateBuilder<DiameterReading>();
        if (yarn.MeasuredWraps is not null) Add(Of(yarn));
        Add(AshenhurstDiameter.Of(yarn.LinearDensity, AshenhurstK.Of(yarn), Label(yarn)));
        Add(BulkDensityDiameter.Of(yarn.LinearDensity, yarn.Fibres.BulkDensity, Label(yarn)));
        Add(PeirceDiameter.Of(yarn.LinearDensity, Label(yarn)));
        return readings.ToImmutable();

        void Add(Derived<Length> diameter) => readings.Add(new DiameterReading(diameter.Working.Rule.Name, diameter));
    }

    private static string Label(Yarn yarn) => $"diameter of {yarn.Name}";
}
