using Clothwright.Core.Looms;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.WorksheetJson.Fields;

namespace Clothwright.Interchange.WorksheetJson.Sections;

/// <summary>Every word that a worksheet file uses for a choice.</summary>
internal static class JsonWords
{
    public static WordList<UnitStyle> Units { get; } = new(("metric", UnitStyle.Metric), ("customary", UnitStyle.Customary));

    public static WordList<LoomKind> LoomKinds { get; } = new(
        ("rigidHeddle", LoomKind.RigidHeddle), ("table", LoomKind.Table), ("floor", LoomKind.Floor));

    public static WordList<ShedAction> Sheds { get; } = new(
        ("rising", ShedAction.Rising),
        ("sinking", ShedAction.Sinking),
        ("counterbalance", ShedAction.Counterbalance),
        ("countermarche", ShedAction.Countermarche),
        ("levers", ShedAction.Levers));

    public static WordList<YarnConstruction> Constructions { get; } = new(
        ("spun", YarnConstruction.Spun),
        ("singles", YarnConstruction.Singles),
        ("reeled", YarnConstruction.Reeled),
        ("filament", YarnConstruction.Filament),
        ("chenille", YarnConstruction.Chenille),
        ("ribbon", YarnConstruction.Ribbon),
        ("boucle", YarnConstruction.Boucle),
        ("monofilament", YarnConstruction.Monofilament),
        ("soft", YarnConstruction.Soft));

    public static WordList<PackageForm> PackageForms { get; } = new(
        ("ball", PackageForm.Ball), ("skein", PackageForm.Skein), ("cone", PackageForm.Cone), ("tube", PackageForm.Tube));

    public static WordList<MassBasis> MassBases { get; } = new(
        ("weighed", MassBasis.Weighed), ("usualSupport", MassBasis.UsualSupport), ("told", MassBasis.Told));

    public static WordList<ClothPurpose> Purposes { get; } = new(
        ("airy", ClothPurpose.Airy),
        ("drape", ClothPurpose.Drape),
        ("everyday", ClothPurpose.Everyday),
        ("firm", ClothPurpose.Firm),
        ("weftFaced", ClothPurpose.WeftFaced),
        ("warpFaced", ClothPurpose.WarpFaced));

    public static WordList<EndsFit> EndsFits { get; } = new(("wholeRepeats", EndsFit.WholeRepeats), ("width", EndsFit.Width));

    public static WordList<PieceKind> PieceKinds { get; } = new(
        ("scarf", PieceKind.Scarf),
        ("shawl", PieceKind.Shawl),
        ("cowl", PieceKind.Cowl),
        ("throw", PieceKind.Throw),
        ("towel", PieceKind.Towel),
        ("blanket", PieceKind.Blanket),
        ("bag", PieceKind.Bag),
        ("garmentPanel", PieceKind.GarmentPanel),
        ("yardage", PieceKind.Yardage),
        ("sample", PieceKind.Sample));

    public static WordList<PieceMake> Makes { get; } = new(
        ("flat", PieceMake.Flat), ("doubleWidth", PieceMake.DoubleWidth), ("tube", PieceMake.Tube));

    public static WordList<FringeStyle> Fringes { get; } = new(
        ("none", FringeStyle.None), ("loose", FringeStyle.Loose), ("twisted", FringeStyle.Twisted), ("knotted", FringeStyle.Knotted));

    public static WordList<RingJoin> Joins { get; } = new(
        ("none", RingJoin.None), ("plain", RingJoin.Plain), ("halfTwist", RingJoin.HalfTwist));

    public static WordList<Wearer> Wearers { get; } = new(
        ("adult", Wearer.Adult), ("child", Wearer.Child), ("baby", Wearer.Baby), ("household", Wearer.Household));
}
