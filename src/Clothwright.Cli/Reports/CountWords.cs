using Clothwright.Core.Photographs;
using Clothwright.Core.Quantities;

namespace Clothwright.Cli.Reports;

/// <summary>Certainty and questions of a count in words.</summary>
internal static class CountWords
{
    /// <summary>How sure.</summary>
    public static string Of(Certainty certainty) => certainty switch
    {
        Certainty.Sure => "sure",
        Certainty.FairlySure => "fairly sure",
        _ => "cannot tell",
    };

    /// <summary>A question as it is put to the weaver.</summary>
    /// <param name="question">The question.</param>
    /// <param name="of">What was counted, for example <c>ends</c>.</param>
    /// <param name="units">Metric or customary.</param>
    public static string Of(CountQuestion question, string of, UnitStyle units)
    {
        string instead = question.Instead is { } sett ? QuantityText.Format(Sett.Kind, sett.PerMetre, units) : "another number";
        return question.Kind switch
        {
            CountQuestionKind.ColoursInTurn => $"Do {of} of two colours alternate? If so there are {instead}.",
            CountQuestionKind.AnotherCount => $"Or are there {instead}? Both come near.",
            CountQuestionKind.EverySecondGap => $"Only every second gap is seen; if nothing lies between, there are {instead}.",
            CountQuestionKind.TooFine => "A thread is under 4 pixels wide: go nearer.",
            CountQuestionKind.TooFew => "Few threads are seen: go further away, or give a larger area.",
            CountQuestionKind.NoThreads => "Threads hardly stand out: light from the side, hold still, lay the swatch flat.",
            CountQuestionKind.Slanted => "Threads come closer to one side: hold the camera square on, or give --card.",
            CountQuestionKind.Uneven => "Counts differ from place to place: is the cloth flat, or unevenly woven?",
            CountQuestionKind.Turned => "Threads are turned far: turn the picture so that the warp runs up.",
            _ => throw new ArgumentOutOfRangeException(nameof(question), question.Kind, "A question without words."),
        };
    }
}
