using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves.Analysis.Edges;
using Clothwright.Core.Weaves.Analysis.Floats;
using Clothwright.Core.Weaves.Analysis.Layers;
using Clothwright.Core.Weaves.Analysis.Threads;

namespace Clothwright.Core.Weaves.Analysis;

/// <summary>Everything a drawdown tells about a cloth before a thread is wound.</summary>
/// <remarks>What takes long on a large cloth (symmetry, edge advice) is found when it is first asked for.</remarks>
public sealed class ClothAnalysis
{
    private const int FewestEndsOfFolds = 16;

    private readonly ClothLines _lines;
    private readonly ThreadOrder _shuttles;
    private readonly Lazy<ClothFloats> _floatsAsCut;
    private readonly Lazy<ClothSymmetries> _symmetries;
    private readonly Lazy<SelvedgeAdvice> _selvedgeAdvice;
    private readonly Lazy<FoldAdvice> _foldAdvice;
    private readonly Lazy<ImmutableArray<InputProblem>> _problems;

    private ClothAnalysis(Drawdown cloth, Draft? draft, ThreadOrder shuttles, int layersMeant)
    {
        _lines = draft is null ? new ClothLines(cloth) : ClothLines.Of(draft, cloth);
        _shuttles = shuttles;
        Drawdown = cloth;
        Draft = draft;
        LayersMeant = layersMeant;
        Outline = ClothOutline.Of(_lines);
        Joins = LayerJoins.Of(cloth, Layers, ClothSide.Left, shuttles);
        SelvedgeFromLeft = SelvedgeReport.Of(cloth, ClothSide.Left, shuttles);
        SelvedgeFromRight = SelvedgeReport.Of(cloth, ClothSide.Right, shuttles);
        Repeat = ClothRepeat.Of(_lines.Ends, _lines.Picks);
        TabbySheds = draft is null ? null : TabbySheds.On(draft.Threading);
        EndsPerShaft = draft is null ? null : EndsPerShaft.Of(draft);
        TakeUp = EndTakeUp.Of(Counts);
        _floatsAsCut = new(() => ClothFloats.Of(_lines, ClothReading.Cut));
        _symmetries = new(() => ClothSymmetry.Of(Drawdown));
        _selvedgeAdvice = new(() => SelvedgeAdvice.For(Drawdown, _shuttles, Draft is null ? Repeat.RunningEnds : ClothRepeat.Of(Draft).RunningEnds));
        _foldAdvice = new(() => FoldAdvice.For(WideEnough(Drawdown), _shuttles));
        _problems = new(() => ClothFaults.Of(this));
    }

    /// <summary>The drawdown.</summary>
    public Drawdown Drawdown { get; }

    /// <summary>The draft it came from; null if only the drawdown is known.</summary>
    public Draft? Draft { get; }

    /// <summary>Cloths that are meant to lie one above the other; 1 for a single cloth.</summary>
    public int LayersMeant { get; }

    /// <summary>Whether it weaves as so many layers as are meant, more than one.</summary>
    public bool HasLayersMeant => LayersMeant > 1 && Layers.Layers.Length == LayersMeant;

    /// <summary>Floats, layers and changes of face together.</summary>
    public ClothOutline Outline { get; }

    /// <summary>Ends.</summary>
    public int Ends => Drawdown.Ends;

    /// <summary>Picks.</summary>
    public int Picks => Drawdown.Picks;

    /// <summary>Floats, as an endless repeat.</summary>
    public ClothFloats Floats => Outline.Floats;

    /// <summary>Floats, as cut at the edges.</summary>
    public ClothFloats FloatsAsCut => _floatsAsCut.Value;

    /// <summary>Changes of face of each thread, mean floats and firmness.</summary>
    public WeaveCounts Counts => Outline.Counts;

    /// <summary>Whether the cloth hangs together, and its layers.</summary>
    public ClothLayers Layers => Outline.Layers;

    /// <summary>How shuttles started from the left join the layers.</summary>
    public LayerJoins Joins { get; }

    /// <summary>Edges when the shuttles start from the left.</summary>
    public SelvedgeReport SelvedgeFromLeft { get; }

    /// <summary>Edges when the shuttles start from the right.</summary>
    public SelvedgeReport SelvedgeFromRight { get; }

    /// <summary>How to get edges that hold.</summary>
    public SelvedgeAdvice SelvedgeAdvice => _selvedgeAdvice.Value;

    /// <summary>How to get folds without doubled ends.</summary>
    public FoldAdvice FoldAdvice => _foldAdvice.Value;

    /// <summary>The repeat of the cloth.</summary>
    public ClothRepeat Repeat { get; }

    /// <summary>Symmetries of the repeat.</summary>
    public ClothSymmetries Symmetries => _symmetries.Value;

    /// <summary>The sheds of plain weave on the draft's threading; null if there are none or the draft is not known.</summary>
    public TabbySheds? TabbySheds { get; }

    /// <summary>Whether plain weave can be woven on the same threading; without a draft, on the threading with the fewest shafts.</summary>
    public bool TabbyAvailable => Draft is null ? TabbySheds.AvailableOn(_lines.Ends) : TabbySheds is not null;

    /// <summary>Ends on each shaft; null if the draft is not known.</summary>
    public EndsPerShaft? EndsPerShaft { get; }

    /// <summary>How evenly the ends take up.</summary>
    public EndTakeUp TakeUp { get; }

    /// <summary>Fewest shafts with one shaft an end.</summary>
    public int FewestShafts => _lines.Ends.Count;

    /// <summary>Fewest treadles with one treadle a pick.</summary>
    public int FewestTreadles => _lines.Picks.Count;

    /// <summary>Share of the face that is warp, 0 to 1.</summary>
    public double WarpFaceFraction => Drawdown.WarpFaceFraction;

    /// <summary>What is wrong with the cloth: threads that nothing holds, layers that come apart, picks that pull out.</summary>
    public ImmutableArray<InputProblem> Problems => _problems.Value;

    /// <summary>What the weaver should know, though nothing is wrong: layers that are meant, edges, folds, take-up.</summary>
    public ImmutableArray<string> Notes =>
        [.. new[]
        {
            HasLayersMeant ? $"As meant, it weaves as {LayersMeant} layers that lie on each other: {ClothFaults.Form(this)}." : "",
            Layers.Layers.Length < 2 && !SelvedgeFromLeft.IsClean ? SelvedgeAdvice.Text : "",
            FoldAdvice.Text,
            TakeUp.Text,
        }.Where(t => t.Length > 0)];

    // An end more or less must leave layers that are cloth: of a narrow repeat several stand side by side.
    private static Drawdown WideEnough(Drawdown cloth) => cloth.Ends >= FewestEndsOfFolds
        ? cloth
        : cloth.Repeated(cloth.Ends * ((FewestEndsOfFolds + cloth.Ends - 1) / cloth.Ends), cloth.Picks);

    /// <summary>Looks at the cloth of a draft; each weft yarn has a shuttle of its own.</summary>
    /// <param name="draft">A draft that can be woven.</param>
    /// <param name="layersMeant">Cloths that are meant to lie one above the other: then as many are no fault.</param>
    /// <exception cref="InputProblemException">The draft cannot be woven.</exception>
    public static ClothAnalysis Of(Draft draft, int layersMeant = 1)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentOutOfRangeException.ThrowIfLessThan(layersMeant, 1);
        Draft woven = DraftCheck.Checked(draft).Value;
        return new ClothAnalysis(woven.Drawdown(), woven, woven.WeftOrder, layersMeant);
    }

    /// <summary>Looks at a drawdown.</summary>
    /// <param name="cloth">The drawdown.</param>
    /// <param name="shuttles">Which shuttle throws each pick; one for all if left out.</param>
    public static ClothAnalysis Of(Drawdown cloth, ThreadOrder? shuttles = null)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        return new ClothAnalysis(cloth, draft: null, shuttles ?? ThreadOrder.OneYarn, layersMeant: 1);
    }
}
