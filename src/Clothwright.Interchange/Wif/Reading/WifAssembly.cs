using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Interchange.Wif;

/// <summary>Makes the document from the sections, and checks that they agree.</summary>
internal sealed partial class WifAssembly
{
    private readonly WifSections _sections;
    private readonly ReadingLimits _limits;
    private readonly WifWarnings _warnings;
    private readonly WifNumberedReader _numbered;
    private readonly List<WifExtraKey> _extras = [];

    public WifAssembly(WifSections sections, ReadingLimits limits, WifWarnings warnings)
    {
        _sections = sections;
        _limits = limits;
        _warnings = warnings;
        _numbered = new WifNumberedReader(sections, warnings, _extras);
    }

    public WifDocument Assemble()
    {
        WifSource source = ReadSource();
        CheckContents();
        WifText text = ReadText();

        WifSectionReader weaving = Section(WifSectionNames.Weaving);
        WifTally shafts = Tally(weaving, "Shafts", "shaft", Math.Min(_limits.MaxShafts, DraftLimits.Shafts));
        WifTally treadles = Tally(weaving, "Treadles", "treadle", Math.Min(_limits.MaxTreadles, DraftLimits.Treadles));
        bool? rising = weaving.Truth("Rising Shed");
        Finish(weaving);

        WifSectionReader warp = Section(WifSectionNames.Warp);
        WifSectionReader weft = Section(WifSectionNames.Weft);
        WifTally ends = Tally(warp, "Threads", "end", _limits.MaxEnds);
        WifTally picks = Tally(weft, "Threads", "pick", _limits.MaxPicks);
        var plans = new WifPlanReader(_sections, _numbered);
        WifNumbered<ShaftSet>? tieUp = plans.Read(WifSectionNames.TieUp, treadles, shafts);
        WifNumbered<ShaftSet>? threading = plans.Read(WifSectionNames.Threading, ends, shafts);
        WifNumbered<ShaftSet>? treadling = plans.Read(WifSectionNames.Treadling, picks, treadles);
        WifNumbered<ShaftSet>? liftPlan = plans.Read(WifSectionNames.LiftPlan, picks, shafts);
        RefuseCrossings(ends.Count, picks.Count);

        var colours = new WifColourReader(_sections, _numbered, _warnings, _limits);
        Finish(colours.Section);
        colours.TakeWritten(warp);
        colours.TakeWritten(weft);
        int? warpColour = colours.ReadDefault(warp);
        int? weftColour = colours.ReadDefault(weft);
        var document = new WifDocument
        {
            Source = source,
            Text = text,
            Shafts = shafts.Count,
            Treadles = treadles.Count,
            RisingShed = rising ?? true,
            TieUp = tieUp,
            Threading = threading,
            Treadling = treadling,
            LiftPlan = liftPlan,
            Palette = colours.Palette(),
            Warp = ReadThreads(warp, ends.Count, warpColour, colours),
            Weft = ReadThreads(weft, picks.Count, weftColour, colours),
            Notes = _numbered.Words(WifSectionNames.Notes, int.MaxValue - 1),
        };
        document = document with { Weft = ShareUnits(document.Warp, document.Weft, "WARP", "WEFT"), Warp = ShareUnits(document.Weft, document.Warp, "WEFT", "WARP") };
        CheckPlans(document, rising, ends, picks);
        return document with
        {
            KeptSections = [.. _sections.InFile.Where(s => s.IsKept).Select(s => new WifSection(s.Written, [.. s.Lines]))],
            ExtraKeys = [.. _extras],
        };
    }

    private static WifTally Tally(WifSectionReader section, string key, string thing, int most) =>
        new(thing, most, section.Count(key, most, thing + "s"));

    private WifSectionReader Section(string name) => new(_sections, name, _warnings);

    // Keys of CONTENTS and the fixed keys of WIF are made anew when written, so they are not extra.
    private void Finish(WifSectionReader section) => _extras.AddRange(section.Extras());

    private WifSource ReadSource()
    {
        WifSectionReader section = Section(WifSectionNames.Wif);
        if (!section.IsPresent) _warnings.Add(WifSectionNames.Wif, "", 0, "The file does not begin with this section; it is read as WIF 1.1.");
        if (section.Find("Version") is { } version && WifNumbers.WithoutComment(version.Value(_sections.Text)) is not "1.1")
        {
            section.Warn(version, $"Version \"{WifSections.Shortened(version.Value(_sections.Text))}\" is read as 1.1.");
        }

        section.Find("Date");
        var source = new WifSource
        {
            Program = section.Words("Source Program"),
            ProgramVersion = section.Words("Source Version"),
            Developers = section.Words("Developers"),
        };
        Finish(section);
        return source;
    }

    private WifText ReadText()
    {
        WifSectionReader section = Section(WifSectionNames.Text);
        var text = new WifText
        {
            Title = section.Words("Title"),
            Author = section.Words("Author"),
            Address = section.Words("Address"),
            EMail = section.Words("EMail"),
            Telephone = section.Words("Telephone"),
            Fax = section.Words("FAX"),
        };
        Finish(section);
        return text;
    }

    private void RefuseCrossings(int ends, int picks)
    {
        if ((long)ends * picks <= _limits.MaxCrossings) return;
        throw new InputProblemException(new InputProblem(
            $"{ends} ends and {picks} picks cross more than {_limits.MaxCrossings} times.",
            "[WARP] and [WEFT] Threads",
            "Give one repeat of the draft, for example 400 ends and 800 picks."));
    }
}
