namespace Clothwright.Core.Quantities;

/// <summary>Something a person gave that cannot be used: what is wrong, where it stands, and how to mend it.</summary>
/// <param name="What">What is wrong, as a sentence with the offending value in it.</param>
/// <param name="Where">The field or place, for example <c>pieces[1].width</c> or <c>line 12, key 5</c>.</param>
/// <param name="Mend">What would put it right, as an instruction, with an example.</param>
public sealed record InputProblem(string What, string Where, string Mend)
{
    /// <summary>The text as it was given, where the problem is inside a piece of text.</summary>
    public string? Text { get; init; }

    /// <summary>Index of the first character in <see cref="Text"/> that cannot be read; 0-based.</summary>
    public int? Position { get; init; }

    /// <summary>The same problem, seen from a place further out.</summary>
    /// <param name="place">The outer place, put in front of <see cref="Where"/>.</param>
    public InputProblem Under(string place) =>
        this with { Where = Where.Length == 0 ? place : Where[0] == '[' ? place + Where : $"{place}.{Where}" };

    /// <inheritdoc />
    public override string ToString() => $"{Where}: {What} {Mend}";
}
