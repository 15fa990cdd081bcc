using Clothwright.Core.Weaves;

namespace Clothwright.Interchange.Wif;

/// <summary>What a document must be before it is written, so that what is written can be read back as the same.</summary>
internal sealed class WifSoundness
{
    private string? _fault;

    /// <summary>The first thing that is wrong, as a sentence; null if nothing is.</summary>
    public static string? FaultOf(WifDocument document)
    {
        var soundness = new WifSoundness();
        soundness.Check(document);
        return soundness._fault;
    }

    private void Check(WifDocument document)
    {
        Require(document.Shafts is >= 0 and <= ShaftSet.Highest, $"Shafts is {document.Shafts}, not 0 to {ShaftSet.Highest}.");
        Require(document.Treadles is >= 0 and <= ShaftSet.Highest, $"Treadles is {document.Treadles}, not 0 to {ShaftSet.Highest}.");
        Plan("TIEUP", document.TieUp, document.Treadles, document.Shafts);
        Plan("THREADING", document.Threading, document.Warp.Count, document.Shafts);
        Plan("TREADLING", document.Treadling, document.Weft.Count, document.Treadles);
        Plan("LIFTPLAN", document.LiftPlan, document.Weft.Count, document.Shafts);
        Threads("WARP", document.Warp);
        Threads("WEFT", document.Weft);
        foreach (WifExtraKey extra in document.ExtraKeys)
        {
            bool sound = WifSectionNames.IsStandard(extra.Section) && !WifSectionNames.IsKept(extra.Section)
                && extra.Key.Trim() is [not ';', ..] and var key && !key.Contains('=', StringComparison.Ordinal);
            Require(sound, $"\"{extra.Key}\" in [{extra.Section}] cannot be written as a key.");
        }

        foreach (WifSection section in document.KeptSections) Kept(section);
        bool repeats = document.KeptSections.DistinctBy(section => WifSectionNames.Canonical(section.Name)).Count() != document.KeptSections.Length;
        Require(!repeats, "Two kept sections have the same name.");
    }

    private void Kept(WifSection section)
    {
        bool named = WifSectionNames.TryHeading($"[{section.Name}]", out ReadOnlySpan<char> name) && name.SequenceEqual(section.Name.AsSpan().Trim())
            && WifSectionNames.IsKept(WifSectionNames.Canonical(name)) && !section.Name.AsSpan().ContainsAny('\r', '\n');
        Require(named, $"\"{section.Name}\" cannot be the name of a section that is kept word for word.");
        foreach (string line in section.Lines)
        {
            bool sound = !WifSectionNames.TryHeading(line.AsSpan().Trim(), out _) && !line.AsSpan().ContainsAny('\r', '\n');
            Require(sound, $"[{section.Name}] holds a line that would be read as another section or as two lines.");
        }
    }

    private void Plan(string name, WifNumbered<ShaftSet>? plan, int lines, int members)
    {
        if (plan is null) return;
        Require(plan.Highest <= lines, $"{name} goes to {plan.Highest}, but there are {lines}.");
        foreach ((int number, ShaftSet set) in plan) Require(set.Max <= members, $"{name} {number} holds {set.Max}, but there are {members}.");
    }

    private void Threads(string name, WifThreads threads)
    {
        int highest = Math.Max(
            Math.Max(Math.Max(threads.Colours.Highest, threads.Symbols.Highest), Math.Max(threads.Spacings.Highest, threads.SpacingZooms.Highest)),
            Math.Max(threads.Thicknesses.Highest, threads.ThicknessZooms.Highest));
        Require(threads.Count >= 0 && highest <= threads.Count, $"{name} describes thread {highest}, but there are {threads.Count}.");
    }

    private void Require(bool sound, string what)
    {
        if (!sound) _fault ??= what;
    }
}
