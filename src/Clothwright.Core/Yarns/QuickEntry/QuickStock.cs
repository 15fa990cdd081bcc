using System.Text.RegularExpressions;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Yarns;

/// <summary>Packages in free words: how much is on one, how many there are, what is left.</summary>
internal static class QuickStock
{
    /// <summary>Mass that is left in all, as in <c>120 g left</c>.</summary>
    public static QuickFound<Mass>? MassLeft(QuickText text) => text.Take(QuickPatterns.MassLeft()) is { } match ? Mass(match, text) : null;

    /// <summary>Yarn in one package, as in <c>200 g cone</c>, or as the label tells it.</summary>
    public static QuickFound<Mass>? PackageMass(QuickText text, QuickFound<YarnLabel>? label)
    {
        if (text.Take(QuickPatterns.Mass()) is { } match) return Mass(match, text);
        // "400 m / 100 g" tells what one package holds, "1450 yd/lb" does not.
        return label is { } printed && NumbersIn(printed.From) > 1 ? new QuickFound<Mass>(printed.Value.Mass, printed.From) : null;
    }

    /// <summary>How many packages there are, and their form where it stands with the number.</summary>
    public static (QuickFound<double> Packages, PackageForm? Form) Packages(QuickText text)
    {
        Match? match = text.Take(QuickPatterns.CountLeft()) ?? text.Take(QuickPatterns.Times()) ?? text.Take(QuickPatterns.CountOfForms());
        if (match is null) return (new QuickFound<double>(1, ""), null);
        double packages = match.Groups["part"].Success ? Part(match.Groups["begun"]) : QuickNumber.Of(match.Groups["whole"].Value);
        string form = match.Groups["form"].Value;
        PackageForm? said = QuickWords.Forms.Where(f => f.Word.Equals(form, StringComparison.OrdinalIgnoreCase)).Select(f => (PackageForm?)f.Means).FirstOrDefault();
        return (new QuickFound<double>(packages, text.Words(match)), said);
    }

    private static int NumbersIn(string words) => QuickPatterns.Number().Count(words);

    // "2 ½ left", "2 1/2 left", "half a cone left".
    private static double Part(Group whole) => (whole.Success && whole.Value is not ("a" or "an" or "one") ? QuickNumber.Of(whole.Value) : 0) + 0.5;

    private static QuickFound<Mass>? Mass(Match match, QuickText text) =>
        MassText.Parse(match.Groups["mass"].Value.Replace("gramm", "grams", StringComparison.OrdinalIgnoreCase)).TryGet(out Mass mass) ? new QuickFound<Mass>(mass, text.Words(match)) : null;
}
