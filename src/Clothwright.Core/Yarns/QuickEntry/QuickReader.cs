using Clothwright.Core.Colours;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>Understands one part of the free words after the other: what has a mark of its own first, then what is left to guess.</summary>
internal static class QuickReader
{
    private static readonly SrgbColour Undyed = new(0xe9, 0xdf, 0xc9);

    public static QuickYarn Read(string words)
    {
        var text = new QuickText(words);
        QuickFound<SrgbColour>? hex = text.Take(QuickPatterns.Hex()) is { } code ? new(SrgbColour.Parse(code.Value).Value, text.Words(code)) : null;
        QuickFound<string>? lot = text.Take(QuickPatterns.Lot()) is { } batch ? new(batch.Groups["lot"].Value, text.Words(batch)) : null;
        QuickFound<Money>? price = text.Take(QuickPatterns.Price()) is { } cost ? new(Money.FromAmount(QuickNumber.Of(cost.Groups["price"].Value)), text.Words(cost)) : null;
        QuickFound<YarnLabel>? label = QuickFineness.Label(text);
        (QuickFound<FibreBlend>? fibres, bool guessed) = QuickBlend.Read(text);
        QuickFound<Mass>? massLeft = QuickStock.MassLeft(text);
        QuickFound<Mass>? packageMass = QuickStock.PackageMass(text, label);
        QuickCount? count = label is null ? QuickFineness.Count(text, fibres?.Value) : null;
        (QuickFound<double> packages, PackageForm? said) = QuickStock.Packages(text);
        QuickFound<PackageForm> form = QuickWords.Take(text, QuickWords.Forms)
            ?? (said is { } named ? new QuickFound<PackageForm>(named, packages.From) : new QuickFound<PackageForm>(Usual(packageMass?.Value), ""));
        QuickFound<YarnConstruction> construction = QuickWords.Take(text, QuickWords.Constructions)
            ?? (count is { Readings: [{ Plies: 1 }, ..] } single && single.From.EndsWith("/1", StringComparison.Ordinal) ? new(YarnConstruction.Singles, single.From) : new(YarnConstruction.Spun, ""));
        QuickFound<string>? colourName = QuickColour.Name(text);
        return new QuickYarn
        {
            Words = words,
            Count = count,
            Label = label,
            Fibres = fibres,
            SharesAreGuessed = guessed,
            Construction = construction,
            Form = form,
            PackageMass = packageMass,
            Packages = packages,
            MassLeft = massLeft,
            ColourName = colourName,
            Colour = hex ?? QuickColour.Of(colourName) ?? new QuickFound<SrgbColour>(Undyed, ""),
            Lot = lot,
            Price = price,
        };
    }

    // Up to 100 g yarn is mostly sold in balls and skeins, above that on cones.
    private static PackageForm Usual(Mass? package) => package is { Grams: <= 100 } ? PackageForm.Ball : PackageForm.Cone;
}
