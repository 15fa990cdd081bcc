using Clothwright.Core.Weaves;

namespace Clothwright.Interchange.Wif;

internal sealed partial class WifAssembly
{
    private const int PicksTold = 10;

    private void CheckContents()
    {
        WifSectionReader contents = Section(WifSectionNames.Contents);
        if (!contents.IsPresent)
        {
            _warnings.Add(WifSectionNames.Contents, "", 0, "The file has no list of its sections; all that are there are read.");
            return;
        }

        foreach (WifRawSection section in _sections.InFile)
        {
            if (section.Name is WifSectionNames.Wif or WifSectionNames.Contents) continue;
            if (contents.Find(section.Name) is not { } entry)
            {
                _warnings.Add(WifSectionNames.Contents, section.Written, section.Line, "The section is there but is not listed; it is read.");
            }
            else if (contents.Truth(section.Name) is false)
            {
                contents.Warn(entry, $"The section is listed as absent but stands in line {section.Line}; it is read.");
            }
        }

        foreach (WifExtraKey promised in contents.Extras())
        {
            if (contents.Truth(promised.Key) is true && contents.Find(promised.Key) is { } entry) contents.Warn(entry, "The section is promised but is not in the file.");
        }
    }

    private void CheckPlans(WifDocument document, bool? rising, WifTally ends, WifTally picks)
    {
        int weaving = _sections.Find(WifSectionNames.Weaving)?.Line ?? 0;
        if (rising is null) _warnings.Add(WifSectionNames.Weaving, "Rising Shed", weaving, "The file does not say which way the shed opens; a rising shed is assumed.");
        if (rising is false && document.LiftPlan is not null)
        {
            _warnings.Add(WifSectionNames.LiftPlan, "", _sections.Find(WifSectionNames.LiftPlan)!.Line, "The shed sinks: shafts listed in the lift plan are taken to go down. Files disagree on this; look at the cloth.");
        }

        if (document.Threading is not null && ends.Used < ends.Declared)
        {
            _warnings.Add(WifSectionNames.Threading, "", _sections.Find(WifSectionNames.Threading)!.Line, $"{ends.Declared} ends are declared and the threading stops at end {ends.Used}; those beyond are on no shaft.");
        }

        if (document.LiftPlan is null && document.Treadling is null && document.Threading is not null)
        {
            _warnings.Add(WifSectionNames.Treadling, "", 0, "The file has neither treadling nor lift plan.");
        }
        else if ((document.LiftPlan ?? document.Treadling) is not null && picks.Used < picks.Declared)
        {
            string name = document.LiftPlan is null ? WifSectionNames.Treadling : WifSectionNames.LiftPlan;
            _warnings.Add(name, "", _sections.Find(name)!.Line, $"{picks.Declared} picks are declared and the last one listed is pick {picks.Used}; those beyond move nothing.");
        }

        if (document.Treadling is not null && document.TieUp is null && document.LiftPlan is null)
        {
            _warnings.Add(WifSectionNames.TieUp, "", 0, "The file has a treadling and no tie-up: no treadle moves anything.");
        }

        Compare(document);
    }

    // Both plans stand in the file: the lift plan is used, and the picks where the other differs are told.
    private void Compare(WifDocument document)
    {
        if (document.LiftPlan is not { } liftPlan || document.TieUp is not { } tieUp || document.Treadling is not { } treadling) return;
        var differing = new List<int>();
        for (int pick = 1; pick <= document.Weft.Count; pick++)
        {
            ShaftSet lift = default;
            if (treadling.TryGet(pick, out ShaftSet pressed))
            {
                foreach (int treadle in pressed.Members())
                {
                    if (tieUp.TryGet(treadle, out ShaftSet moved)) lift |= moved;
                }
            }

            liftPlan.TryGet(pick, out ShaftSet listed);
            if (lift != listed) differing.Add(pick);
        }

        if (differing.Count == 0) return;
        string told = string.Join(", ", differing.Take(PicksTold)) + (differing.Count > PicksTold ? $" and {differing.Count - PicksTold} more" : "");
        _warnings.Add(WifSectionNames.LiftPlan, "", _sections.Find(WifSectionNames.LiftPlan)!.Line, $"Lift plan and treadling do not agree at picks {told}; the lift plan is used.");
    }
}
