using Clothwright.Core.Quantities;

namespace Clothwright.Core.Looms;

/// <summary>A rigid heddle: eyes and slots in turn.</summary>
/// <param name="Name">As she calls it, for example <c>7.5-dent</c>.</param>
/// <param name="Spaces">Eyes and slots per width together: the sett at one end in each.</param>
/// <param name="Count">How many of these she owns.</param>
public sealed record RigidHeddle(string Name, Sett Spaces, int Count)
{
    /// <summary>Reads a rigid heddle, written as a reed is: <c>7.5</c>, <c>7.5-dent</c>, <c>30/10</c>.</summary>
    /// <param name="text">The text; case does not matter.</param>
    /// <param name="count">How many of these she owns, at least 1.</param>
    public static Parsed<RigidHeddle> Parse(string text, int count = 1)
    {
        if (count < 1)
        {
            return new InputProblem($"{count} heddles of {text} cannot be used.", "heddle", "Say how many of this heddle there are, at least 1, for example 2.");
        }

        Parsed<Sett> spaces = DentText.Parse(text, "heddle");
        return spaces.TryGet(out Sett value) ? new RigidHeddle(text.Trim(), value, count) : spaces.Problem!;
    }
}
