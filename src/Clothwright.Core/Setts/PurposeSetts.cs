using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Limits;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Setts;

/// <summary>Ends and picks for a purpose.</summary>
internal sealed record PurposeSetts(Derived<Sett> Ends, SettRange EndsRange, Derived<Sett> Picks, SettRange PicksRange)
{
    private static readonly Length Wide = Length.FromCentimetres(90);

    private static readonly Derived<Ratio> WideRoom = Derived.FromRange(
        "a wide cloth is set more open",
        Ratio.FromValue(0.90),
        Ratio.FromValue(0.95),
        Source.Published("Osterkamp, Weaving and Drafting Your Own Cloth, author's notes (direction only); size common practice"));

    private static readonly Derived<Ratio> FullingRoom =
        Derived.FromRange("room to full", Ratio.FromValue(0.75), Ratio.FromValue(0.85), Source.CommonPractice);

    internal static PurposeSetts For(SettQuestion question, WeaveCounts counts, SettLimit ashenhurst, Derived<Length> warp, Derived<Length> weft)
    {
        Derived<Ratio>? room = Room(question);
        PurposeShare hidden = PurposeShare.Hidden;
        PurposeShare covering = PurposeShare.Covering;
        switch (question.Purpose)
        {
            case ClothPurpose.WarpFaced:
                return Both(Touching("ends touching", warp), covering, Plain("closest plain picks", weft, warp), hidden, room);
            case ClothPurpose.WeftFaced:
                return Both(Plain("closest plain ends", warp, weft), hidden, Touching("picks touching", weft), covering, room);
            default:
                PurposeShare share = PurposeShare.Balanced(question.Purpose);
                if (question.LearnedShare is { } learned) return Learned(ashenhurst, learned.Value, room);
                return Both(ashenhurst.Ends, share.InWeave(counts.MeanEndFloat), ashenhurst.Picks, share.InWeave(counts.MeanPickFloat), room);
        }
    }

    private static PurposeSetts Both(Derived<Sett> ends, PurposeShare endShare, Derived<Sett> picks, PurposeShare pickShare, Derived<Ratio>? room)
    {
        (Derived<Sett> e, SettRange eRange) = Of("ends", ends, endShare.Middle("share for the purpose, ends"), endShare.Low, endShare.High, room);
        (Derived<Sett> p, SettRange pRange) = Of("picks", picks, pickShare.Middle("share for the purpose, picks"), pickShare.Low, pickShare.High, room);
        return new PurposeSetts(e, eRange, p, pRange);
    }

    private static PurposeSetts Learned(SettLimit limit, Derived<Ratio> share, Derived<Ratio>? room)
    {
        double low = Math.Max(share.Working.Lower95, 0.05);
        (Derived<Sett> e, SettRange eRange) = Of("ends", limit.Ends, share, low, share.Working.Upper95, room);
        (Derived<Sett> p, SettRange pRange) = Of("picks", limit.Picks, share, low, share.Working.Upper95, room);
        return new PurposeSetts(e, eRange, p, pRange);
    }

    private static (Derived<Sett> Value, SettRange Range) Of(string label, Derived<Sett> limit, Derived<Ratio> share, double low, double high, Derived<Ratio>? room)
    {
        Derived<Sett> roomy = room is null
            ? limit
            : Derived.From<Sett>("limit with room", new Rule("room for width and fulling", "limit × room", Source.CommonPractice), limit, room, (n, r) => n * r);
        Derived<Sett> value = Derived.From<Sett>(
            label,
            new Rule("sett for the purpose", "limit × share for the purpose", share.Working.Rule.Source),
            roomy,
            share,
            (n, s) => n * s);
        double middle = roomy.Value.PerMetre;
        double unsure = Math.Min(0.5, roomy.StandardDeviation / middle);
        return (value, new SettRange(Sett.FromPerMetre(middle * low * (1 - unsure)), Sett.FromPerMetre(middle * high * (1 + unsure))));
    }

    private static Derived<Ratio>? Room(SettQuestion question)
    {
        Derived<Ratio>? wide = question.Width is { } width && width >= Wide ? WideRoom : null;
        if (!question.ToBeFulled) return wide;
        return wide is null ? FullingRoom : Derived.From<Ratio>(
            "room for width and fulling", new Rule("room", "for width × for fulling", Source.CommonPractice), wide, FullingRoom, (w, f) => w * f);
    }

    private static Derived<Sett> Touching(string label, Derived<Length> own) =>
        Derived.From<Sett>(label, new Rule("threads touching", "1 ÷ diameter", Source.Derivation), own, d => 1 / d);

    private static Derived<Sett> Plain(string label, Derived<Length> own, Derived<Length> other) =>
        AshenhurstIntersections.Threads(label, own, other, 1);
}
