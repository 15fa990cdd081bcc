using Clothwright.Core.Quantities;

namespace Clothwright.Client.Sheet;

/// <content>Units: each worksheet has its own; shelf, bench and beginnings have those that she last chose in this browser.</content>
public sealed partial class Desk
{
    private UnitStyle? _chosenUnits = PageScript.Units() switch
    {
        nameof(UnitStyle.Metric) => UnitStyle.Metric,
        nameof(UnitStyle.Customary) => UnitStyle.Customary,
        _ => null,
    };

    /// <summary>Units of what belongs to no worksheet: those chosen last, else those of the worksheet on the desk.</summary>
    public UnitStyle StudioUnits => _chosenUnits ?? Units;

    /// <summary>Chooses the units of the worksheet, and of the studio's pages from now on.</summary>
    /// <param name="units">The units.</param>
    public void UseUnits(UnitStyle units)
    {
        UseStudioUnits(units);
        Decide(Worksheet with { Units = units });
    }

    /// <summary>Chooses the units of the studio's pages; no worksheet changes.</summary>
    /// <param name="units">The units.</param>
    public void UseStudioUnits(UnitStyle units)
    {
        _chosenUnits = units;
        PageScript.KeepUnits(units.ToString());
    }
}
