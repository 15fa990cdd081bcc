using Clothwright.Core.Quantities;
using Clothwright.Core.Setts.Limits;
using Clothwright.Core.Weaves.Analysis;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Setts;

/// <summary>Ends and picks for a purpose.</summary>
internal sealed record PurposeSetts(Derived<Sett> Ends, SettRange EndsRange, Derived<Sett> Picks, SettRange PicksRange)
{
    private static readonly Length Wide = Length.FromCentimetres(90);

    internal static PurposeSetts For(SettQuestion question, WeaveCounts counts, SettLimit ashenhurst, Derived<Length> warp, Derived<Length> weft)
    {
        Derived<Ratio> room = Room(question);
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

    private static PurposeSetts Both(Derived<Sett> ends, PurposeShare endShare, Derived<Sett> picks, PurposeShare pickShare, Derived<Ratio> room)
    {
        (Derived<Sett> e, SettRange eRange) = Of("ends", ends, endShare.Middle("share for the purpose, ends"), endShare.Low, endShare.High, room);
        (Derived<Sett> p, SettRange pRange) = Of("picks", picks, pickShare.Middle("share for the purpose, picks"), pickShare.Low, pickShare.High, room);
        return new PurposeSetts(e, eRange, p, pRange);
    }

    private static PurposeSetts Learned(SettLimit limit, Derived<Ratio> share, Derived<Ratio> room)
    {
        double low = Math.Max(share.Working.Lower95, 0.05);
        (Derived<Sett> e, SettRange eRange) = Of("ends", limit.Ends, share, low, share.Working.Upper95, room);
        (Derived<Sett> p, SettRange pRange) = Of("picks", limit.Picks, share, low, share.Working.Upper95, room);
        return new PurposeSetts(e, eRange, p, pRange);
    }

    private static (Derived<Sett> Value, SettRange Range) Of(string label, Derived<Sett> limit, Derived<Ratio> share, double low, double high, Derived<Ratio> room)
    {
        Derived<Sett> value = Derived.From<Sett>(
            label,
            new Rule("sett for the purpose", "limit × share for the purpose × room for width and fulling", share.Working.Rule.Source),
            limit,
            share,
            room,
            (n, s, r) => n * s * r);
        double middle = limit.Value.PerMetre * room.Value.Value;
        double unsure = Math.Min(0.5, Math.Sqrt(Square(limit.StandardDeviation / limit.Value.PerMetre) + Square(room.StandardDeviation / room.Value.Value)));
        return (value, new SettRange(Sett.FromPerMetre(middle * low * (1 - unsure)), Sett.FromPerMetre(middle * high * (1 + unsure))));
    }

    private static Derived<Ratio> Room(SettQuestion question)
    {
        Derived<Ratio> wide = question.Width is { } width && width >= Wide
            ? Derived.FromRange("a wide cloth is set more open", Ratio.FromValue(0.90), Ratio.FromValue(0.95), Source.Published("Osterkamp, Weaving and Drafting Your Own Cloth, author's notes (direction only); size common practice"))
            : Derived.Given("usual width", Ratio.FromValue(1), Source.CommonPractice);
        Derived<Ratio> fulled = question.ToBeFulled
            ? Derived.FromRange("room to full", Ratio.FromValue(0.75), Ratio.FromValue(0.85), Source.CommonPractice)
            : Derived.Given("not fulled", Ratio.FromValue(1), Source.CommonPractice);
        return Derived.From<Ratio>("room for width and fulling", new Rule("room", "for width × for fulling", Source.CommonPractice), wide, fulled, (w, f) => w * f);
    }

    private static Derived<Sett> Touching(string label, Derived<Length> own) =>
        Derived.From<Sett>(label, new Rule("threads touching", "1 ÷ diameter", Source.Derivation), own, d => 1 / d);

    private static Derived<Sett> Plain(string label, Derived<Length> own, Derived<Length> other) =>
        AshenhurstIntersections.Threads(label, own, other, 1);

    private static double Square(double value) => value * value;
}
