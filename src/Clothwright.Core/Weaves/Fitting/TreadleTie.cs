namespace Clothwright.Core.Weaves.Fitting;

/// <summary>How one treadle is tied.</summary>
/// <param name="Up">Shafts it raises.</param>
/// <param name="Down">Shafts it sinks; with a countermarche every shaft is in one of the two or left to another treadle.</param>
public readonly record struct TreadleTie(ShaftSet Up, ShaftSet Down)
{
    /// <summary>The tie in words, for example <c>up 1 3, down 2 4</c>.</summary>
    public override string ToString() => (Up.Count, Down.Count) switch
    {
        (0, 0) => "not tied",
        (_, 0) => $"up {Up}",
        (0, _) => $"down {Down}",
        _ => $"up {Up}, down {Down}",
    };
}
