using System.Collections.Immutable;
using Clothwright.Core.Quantities;

namespace Clothwright.Core.Weaves.Structures;

/// <summary>Every weave that can be made by name.</summary>
public static partial class WeaveCatalogue
{
    /// <summary>All weaves, family by family.</summary>
    public static ImmutableArray<WeaveEntry> All { get; } =
    [
        .. PlainWeaves(), .. Twills(), .. BrokenTwills(), .. Satins(), .. UnitWeaves(), .. FloatWeaves(), .. Laces(),
        .. DoubleWeaves(), .. ColourEffects(), .. LineDrafts(), .. SecondYarns(),
    ];

    /// <summary>Makes one repeat of a weave named in words.</summary>
    /// <param name="text">For example <c>2/2 twill</c>, <c>pointed 2/2 twill</c> or <c>8-end satin step 3</c>; case does not matter.</param>
    public static Parsed<Weave> Make(string text) => Make(text, null, null);

    /// <summary>Makes a weave named in words.</summary>
    /// <param name="text">For example <c>2/2 twill</c>, <c>pointed 2/2 twill</c> or <c>8-end satin step 3</c>; case does not matter.</param>
    /// <param name="size">Ends and picks; one repeat if null.</param>
    /// <param name="parameters">Further choices by parameter name; they go before those in the text.</param>
    public static Parsed<Weave> Make(string text, WeaveSize? size, IReadOnlyDictionary<string, string>? parameters = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        try
        {
            WeaveChoices choices = WeaveWords.Read(text, All, out WeaveEntry entry);
            foreach ((string name, string value) in parameters ?? ImmutableDictionary<string, string>.Empty) choices.Set(name, value);
            if (size is not { } wanted) return entry.Repeat(choices);
            if (wanted.Problem is { } problem) return problem;
            return entry.AtSize is { } atSize ? atSize(choices, wanted) : entry.Repeat(choices).Sized(wanted);
        }
        catch (InputProblemException exception)
        {
            return exception.Problem;
        }
    }

    /// <summary>Finds a weave by one of its names.</summary>
    /// <param name="name">A trade name without figures; case does not matter.</param>
    public static WeaveEntry? Find(string name) => All.FirstOrDefault(e =>
        string.Equals(e.Name, name, StringComparison.OrdinalIgnoreCase) || e.OtherNames.Contains(name, StringComparer.OrdinalIgnoreCase));
}
