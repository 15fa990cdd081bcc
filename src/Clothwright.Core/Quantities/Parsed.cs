using System.Diagnostics.CodeAnalysis;

namespace Clothwright.Core.Quantities;

/// <summary>The outcome of reading what a person wrote: a value, or the problem that kept it from being read.</summary>
/// <typeparam name="T">What was to be read.</typeparam>
public readonly record struct Parsed<T>
    where T : notnull
{
    private readonly T? _value;

    private Parsed(T? value, InputProblem? problem)
    {
        _value = value;
        Problem = problem;
    }

    /// <summary>The problem, or null when the text was read.</summary>
    public InputProblem? Problem { get; }

    /// <summary>Whether the text was read.</summary>
    [MemberNotNullWhen(false, nameof(Problem))]
    public bool Succeeded => Problem is null;

    /// <summary>The value.</summary>
    /// <exception cref="InputProblemException">The text was not read.</exception>
    public T Value => Problem is null ? _value! : throw new InputProblemException(Problem);

    /// <summary>A text that was read.</summary>
    public static implicit operator Parsed<T>(T value) => new(value, null);

    /// <summary>A text that could not be read.</summary>
    public static implicit operator Parsed<T>(InputProblem problem) => new(default, problem);

    /// <summary>Takes the value when there is one.</summary>
    /// <param name="value">The value, when this returns true.</param>
    /// <returns>Whether the text was read.</returns>
    public bool TryGet([MaybeNullWhen(false)] out T value)
    {
        value = _value;
        return Problem is null;
    }
}
