using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;

namespace Clothwright.Core.Worksheets;

public sealed partial record YarnEntry
{
    // Label shares are rounded, so three fibres may miss the whole by a little.
    private const double Rounding = 0.015;

    /// <summary>A yarn as it is written down; what its count was written as is not known any more, its mass per length is.</summary>
    /// <param name="yarn">The yarn.</param>
    public static YarnEntry Of(Yarn yarn)
    {
        ArgumentNullException.ThrowIfNull(yarn);
        return new YarnEntry
        {
            Id = yarn.Id,
            Name = yarn.Name,
            LinearDensity = yarn.LinearDensity.Value,
            Fibres = [.. yarn.Fibres.Shares.Select(p => new FibreEntry(p.Fibre.Id, p.MassShare))],
            Construction = yarn.Construction,
            Colour = yarn.Colour,
            Wraps = yarn.MeasuredWraps?.Value,
            Packages = yarn.Packages,
            Offer = yarn.Offer,
        };
    }

    /// <summary>The yarn, with its count read and its fibres looked up.</summary>
    /// <param name="where">Place to name in a problem, for example <c>shelf[2]</c>.</param>
    public Parsed<Yarn> ToYarn(string where = "yarn")
    {
        Parsed<Derived<LinearDensity>> fineness = Fineness(where);
        if (!fineness.TryGet(out Derived<LinearDensity>? tex)) return fineness.Problem!;
        Parsed<FibreBlend> blend = Blend(where);
        if (!blend.TryGet(out FibreBlend? fibres)) return blend.Problem!;
        return new Yarn(Id, Name, tex, fibres, Construction, Colour)
        {
            MeasuredWraps = Wraps is { } wraps ? Derived.Given($"wraps of {Name}", wraps, Source.Measured, wraps.PerMetre * WrapsScatter) : null,
            Packages = Packages,
            Offer = Offer,
        };
    }

    // Two people wrapping one yarn differ by about this share.
    private const double WrapsScatter = 0.06;

    private Parsed<Derived<LinearDensity>> Fineness(string where)
    {
        if (LinearDensity is { } known) return Derived.Given($"mass per length of {Name}", known, Source.Measured);
        if (Label is { } label)
        {
            Parsed<YarnLabel> printed = YarnLabel.Parse(label, $"{where}.label");
            return printed.TryGet(out YarnLabel? read) ? read.ToLinearDensity() : printed.Problem!;
        }

        if (Count is not { } count) return new InputProblem($"Nothing says how fine \"{Name}\" is.", where, "Give count and system, a label such as \"400 m / 100 g\", or tex.");
        if (CountSystem is not { } name) return YarnSize.Parse(count, null, $"{where}.count");
        Parsed<CountSystem> system = CountSystems.Parse(name, $"{where}.system");
        return system.TryGet(out CountSystem value) ? YarnSize.Parse(count, value, $"{where}.count") : system.Problem!;
    }

    private Parsed<FibreBlend> Blend(string where)
    {
        if (Fibres.IsDefaultOrEmpty) return new InputProblem($"Nothing says what \"{Name}\" is made of.", $"{where}.fibres", "Name at least one fibre, for example wool.");
        double whole = Fibres.Sum(f => f.MassShare.Value);
        if (Math.Abs(whole - 1) > Rounding)
        {
            return new InputProblem($"The fibres of \"{Name}\" sum to {Ratio.FromValue(whole)}.", $"{where}.fibres", "Let the shares sum to 100 %.");
        }

        var parts = new List<(Fibre Fibre, double Part)>();
        for (int i = 0; i < Fibres.Length; i++)
        {
            Parsed<Fibre> fibre = FibreCatalogue.Find(Fibres[i].FibreId, $"{where}.fibres[{i}].fibre");
            if (!fibre.TryGet(out Fibre? found)) return fibre.Problem!;
            if (Fibres[i].MassShare.Value <= 0) return new InputProblem($"A share of {Fibres[i].MassShare} cannot be.", $"{where}.fibres[{i}].sharePercent", "Give a share above 0, or take the fibre out.");
            parts.Add((found, Fibres[i].MassShare.Value));
        }

        return FibreBlend.Of(parts);
    }
}
