using Clothwright.Core.Quantities;

namespace Clothwright.Core.Setts;

/// <summary>The setts within which a cloth serves its purpose.</summary>
/// <param name="Low">The most open.</param>
/// <param name="High">The closest.</param>
public readonly record struct SettRange(Sett Low, Sett High)
{
    /// <summary>Whether a sett lies within, edges included.</summary>
    /// <param name="sett">The sett.</param>
    public bool Holds(Sett sett) => sett >= Low && sett <= High;

    /// <inheritdoc />
    public override string ToString() => $"{Low} to {High}";
}
