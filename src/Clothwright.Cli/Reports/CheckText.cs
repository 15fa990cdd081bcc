using System.Globalization;
using System.Text;
using Clothwright.Cli.Checks;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Weaves.Analysis.Floats;

namespace Clothwright.Cli.Reports;

/// <summary>What a check of a draft found, for a person.</summary>
internal static class CheckText
{
    /// <summary>The findings: the cloth, its floats, its edges, its heddles, then what is wrong.</summary>
    public static string Of(DraftChecked check)
    {
        ClothAnalysis cloth = check.Cloth;
        var text = new StringBuilder();
        string name = cloth.Draft?.Name is { Length: > 0 } given ? given + ": " : "";
        text.AppendLine($"{name}{cloth.Ends} ends, {cloth.Picks} picks, {cloth.Draft!.Shafts} shafts, {cloth.Draft.Treadles} treadles; {Layers(cloth)}");
        text.AppendLine();
        text.AppendLine(check.Ends is null ? "Longest floats" : $"Longest floats, at {check.Ends.Value.PerInch:0.#} ends and {check.Picks!.Value.PerInch:0.#} picks per inch");
        foreach (FloatTally floats in cloth.Floats.All) text.AppendLine(Longest(check, floats));
        text.AppendLine();
        text.AppendLine(cloth.TabbySheds is { } tabby ? $"Plain weave  shafts {tabby.OddEnds} against {tabby.EvenEnds}" : "Plain weave  not on this threading");
        text.AppendLine($"Face         {cloth.WarpFaceFraction * 100:0} % warp");
        text.AppendLine(string.Create(CultureInfo.InvariantCulture, $"Firmness     {cloth.Counts.CrossingOverFirmness:0.00} changes of face a crossing (plain weave 2); mean float {cloth.Counts.MeanEndFloat:0.0} ends, {cloth.Counts.MeanPickFloat:0.0} picks"));
        text.AppendLine($"Repeat       {cloth.Repeat.Ends} ends, {cloth.Repeat.Picks} picks");
        WrappedText.Append(text, Symmetry(cloth), "Symmetry     ", "             ");
        text.AppendLine($"Fewest       {cloth.FewestShafts} shafts, {cloth.FewestTreadles} treadles with one treadle a pick");
        WrappedText.Append(text, string.Join(", ", cloth.EndsPerShaft!.Counts.Select((n, i) => $"{n} on shaft {i + 1}")) + $"; {cloth.EndsPerShaft.Heddles} in all", "Heddles      ", "             ");
        foreach (string note in cloth.Notes) WrappedText.Append(text, note);
        foreach (string warning in check.FileWarnings) WrappedText.Append(text, "In the file: " + warning);
        AppendFloats(text, check.Floats);
        foreach (InputProblem problem in check.Problems) WrappedText.Append(text, $"{problem.What} {problem.Mend}", "Fault: ", "       ");
        return text.ToString().TrimEnd();
    }

    private static void AppendFloats(StringBuilder text, FloatAdvice? advice)
    {
        if (advice is null) return;
        string limit = QuantityText.Format(QuantityKind.Length, advice.Rule.Longest.Metres, UnitStyle.Metric);
        if (advice.IsFine)
        {
            text.AppendLine($"No float is longer than {limit}, which does well for {Use(advice.Rule.Purpose)} ({advice.Rule.Source}).");
            return;
        }

        foreach (FloatWarning warning in advice.Warnings) WrappedText.Append(text, $"{warning.Text} ({advice.Rule.Source})", "Too long: ", "          ");
        if (advice.Caution.Length > 0) WrappedText.Append(text, advice.Caution, "Caution: ", "         ");
    }

    private static string Longest(DraftChecked check, FloatTally floats)
    {
        string kind = FloatPlace.Kind(floats.Kind);
        if (floats.Longest is not { } longest) return $"  {kind,-16}  none";
        string threads = longest.Endless ? "without end" : $"{longest.Length} {(longest.IsWarp ? "pick" : "end")}{(longest.Length == 1 ? "" : "s")}";
        string length = longest.Endless ? "" : check.LengthOf(longest) is { } measured ? $"{measured.Millimetres:0.0} mm" : "";
        long alike = longest.Endless ? floats.EndlessThreads : floats.Times(longest.Length);
        return $"  {kind,-16}  {threads,-11}  {length,-8}  {FloatPlace.Of(longest, check.Cloth.Ends, check.Cloth.Picks)}{(alike > 1 ? $"; {alike} alike" : "")}";
    }

    private static string Use(FloatPurpose purpose) => purpose switch
    {
        FloatPurpose.ChildThrow => "a small child's piece",
        FloatPurpose.Blanket => "a throw or blanket",
        _ => $"a {purpose.ToString().ToLowerInvariant()}",
    };

    private static string Symmetry(ClothAnalysis cloth) => SymmetryWords.Of(cloth) switch
    {
        null => "not looked for in so large a repeat",
        { Count: 0 } => "none but the repeat",
        var words => string.Join("; ", words),
    };

    private static string Layers(ClothAnalysis cloth) => cloth.Layers switch
    {
        { HangsTogether: true } => "it hangs together.",
        { Layers.Length: > 1 } layers => $"{layers.Layers.Length} layers: {string.Join("; ", layers.Layers)}",
        _ => "it falls apart.",
    };
}
