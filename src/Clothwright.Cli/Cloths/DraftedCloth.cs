using System.Collections.Immutable;
using Clothwright.Core.Cloths;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Cloths.Stages;
using Clothwright.Core.Colours;
using Clothwright.Core.Publishing;
using Clothwright.Core.Quantities;
using Clothwright.Core.Setts;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Analysis.Layers;
using Clothwright.Core.Workings;
using Clothwright.Core.Yarns;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Cli.Cloths;

/// <summary>The cloth that a draft makes of given yarns at given setts.</summary>
/// <param name="Woven">The draft, with the colours of its threads if its file tells them.</param>
/// <param name="Warp">Warp yarn.</param>
/// <param name="Weft">Weft yarn.</param>
internal sealed record DraftedCloth(WovenDraft Woven, Yarn Warp, Yarn Weft)
{
    /// <summary>Ends per width, all layers; null takes the advice for the purpose.</summary>
    public Sett? Ends { get; init; }

    /// <summary>Picks per length, all layers; null takes the advice for the purpose.</summary>
    public Sett? Picks { get; init; }

    /// <summary>What the cloth is for, where a sett is left out.</summary>
    public ClothPurpose Purpose { get; init; } = ClothPurpose.Everyday;

    /// <summary>Whether the setts are those of reed and loom, so that the cloth has to be followed through the wash.</summary>
    public bool CountedOnLoom { get; init; }

    /// <summary>Whether the colours are those of the options even where the file tells others.</summary>
    public bool OwnColours { get; init; }

    /// <summary>The cloth.</summary>
    /// <exception cref="InputProblemException">The draft makes no cloth.</exception>
    public ForeseenCloth Foresee()
    {
        var notes = ImmutableArray.CreateBuilder<string>();
        Drawdown weave = Layer(notes, out double endsShare, out double picksShare);
        ThreadSystem warp = Threads(Warp, endsShare < 1 ? [] : Woven.Warp.Colours);
        ThreadSystem weft = Threads(Weft, picksShare < 1 ? [] : Woven.Weft.Colours);
        (Derived<Sett> ends, Derived<Sett> picks) = Setts(warp, weft, weave, endsShare, picksShare, notes);
        string name = $"{(Woven.Draft.Name.Length > 0 ? Woven.Draft.Name : "the draft")} in {Warp.Name}{(Weft.Name == Warp.Name ? "" : $" and {Weft.Name}")}";
        if (CountedOnLoom)
        {
            var stages = ClothStages.Of(new StagesQuestion { Warp = warp, Weft = weft, Weave = weave, EndsInReed = ends, Picks = picks });
            notes.Add($"From reed to cloth off the loom it draws in {stages.DrawIn.Working.Format()}, in the wash it shrinks {stages.WidthShrinkage.Working.Format()} in width and {stages.LengthShrinkage.Working.Format()} in length.");
            return new ForeseenCloth(name + ", washed", stages.Washed, stages.WashedMass, LookDescription.Of(stages.Washed)) { Notes = notes.ToImmutable() };
        }

        var cloth = ClothGeometry.Of(new ClothQuestion { Warp = warp, Weft = weft, Weave = weave, Ends = ends, Picks = picks });
        return new ForeseenCloth(name, cloth, cloth.Mass, LookDescription.Of(cloth)) { Notes = notes.ToImmutable() };
    }

    // A cloth in layers is reckoned as one of them; each has its share of the threads.
    private Drawdown Layer(ImmutableArray<string>.Builder notes, out double endsShare, out double picksShare)
    {
        Drawdown whole = Woven.Draft.Drawdown();
        ImmutableArray<ClothLayer> layers = ClothLayers.Of(whole).Layers;
        (endsShare, picksShare) = (1, 1);
        if (layers.Length < 2) return whole;
        ClothLayer first = layers[0];
        (endsShare, picksShare) = ((double)first.Ends.Length / whole.Ends, (double)first.Picks.Length / whole.Picks);
        notes.Add($"The draft weaves {layers.Length} layers; the figures are for one of them, with {first.Ends.Length} of {whole.Ends} ends and {first.Picks.Length} of {whole.Picks} picks.");
        return Drawdown.From(first.Ends.Length, first.Picks.Length, (pick, end) => whole[first.Picks[pick], first.Ends[end]]);
    }

    private ThreadSystem Threads(Yarn yarn, ImmutableArray<SrgbColour> colours)
    {
        if (OwnColours || colours.IsDefaultOrEmpty) return ThreadSystem.Of(yarn);
        ImmutableArray<SrgbColour> distinct = [.. colours.Distinct()];
        return new ThreadSystem(
            [.. distinct.Select(c => yarn with { Colour = c })],
            ThreadOrder.Of([.. colours.Select(c => distinct.IndexOf(c))]));
    }

    private (Derived<Sett> Ends, Derived<Sett> Picks) Setts(
        ThreadSystem warp, ThreadSystem weft, Drawdown weave, double endsShare, double picksShare, ImmutableArray<string>.Builder notes)
    {
        Derived<Sett>? ends = Ends is { } e ? Derived.Decision("ends", Sett.FromPerMetre(e.PerMetre * endsShare)) : null;
        Derived<Sett>? picks = Picks is { } p ? Derived.Decision("picks", Sett.FromPerMetre(p.PerMetre * picksShare)) : null;
        if (ends is not null && picks is not null) return (ends, picks);
        var advice = SettAdvice.For(new SettQuestion { Warp = warp, Weft = weft, Weave = weave, Purpose = Purpose });
        if (ends is null)
        {
            ends = advice.Ends;
            notes.Add($"No --ends given: reckoned with {ends.Value.PerInch:0.#} per inch ({ends.Value.PerCentimetre:0.0#} per cm), the sett advised for {ClothPurposeText.Word(Purpose)}.");
        }

        if (picks is null)
        {
            picks = advice.PicksBeside(ends);
            notes.Add($"No --picks given: reckoned with {picks.Value.PerInch:0.#} per inch ({picks.Value.PerCentimetre:0.0#} per cm), which suits these ends.");
        }

        return (ends, picks);
    }
}
