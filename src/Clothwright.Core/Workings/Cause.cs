namespace Clothwright.Core.Workings;

/// <summary>One independent reason why a number is not certain, for example the take-up of a cloth not yet sampled.</summary>
/// <remarks>Two numbers that depend on the same cause move together; the name is the identity.</remarks>
/// <param name="Name">The cause, unique within a worksheet, for example <c>shrinkage of 8/2 bamboo in length</c>.</param>
/// <param name="Source">Where its spread comes from.</param>
public sealed record Cause(string Name, Source Source)
{
    private readonly int _hash = StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>The cause.</summary>
    public string Name { get; } = Name;

    /// <summary>Where its spread comes from.</summary>
    public Source Source { get; } = Source;

    /// <inheritdoc />
    public bool Equals(Cause? other) =>
        ReferenceEquals(this, other) || (other is not null && _hash == other._hash && Name == other.Name && Source == other.Source);

    /// <inheritdoc />
    public override int GetHashCode() => _hash;
}
