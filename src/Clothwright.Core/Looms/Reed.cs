using Clothwright.Core.Quantities;

namespace Clothwright.Core.Looms;

/// <summary>A reed of a shaft loom.</summary>
/// <param name="Name">As she calls it, for example <c>10-dent</c> or <c>40/10</c>.</param>
/// <param name="Dents">Dents per width.</param>
public sealed record Reed(string Name, Sett Dents)
{
    /// <summary>Reads a reed: <c>10</c> and <c>10-dent</c> are dents per inch, <c>40/10</c> dents per 10 cm, <c>60 stockport</c> a number with its system.</summary>
    /// <param name="text">The text; case does not matter.</param>
    /// <returns>The reed, named as it was written.</returns>
    public static Parsed<Reed> Parse(string text)
    {
        Parsed<Sett> dents = DentText.Parse(text, "reed");
        return dents.TryGet(out Sett value) ? new Reed(text.Trim(), value) : dents.Problem!;
    }
}
