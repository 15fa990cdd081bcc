using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Looms;

/// <summary>A way of numbering reeds: what the number on a reed counts, and over which width.</summary>
/// <param name="Id">Short name as it is typed after a number, for example <c>stockport</c>.</param>
/// <param name="Name">Name for people.</param>
/// <param name="Meaning">What the number counts, in words.</param>
/// <param name="DentsPerNumber">Dents that the number 1 stands for.</param>
/// <param name="Over">The width in which they lie.</param>
/// <param name="Source">Where the definition comes from.</param>
public sealed record ReedSystem(string Id, string Name, string Meaning, double DentsPerNumber, Length Over, Source Source)
{
    private static readonly Source Calculation = Source.Published("textile calculation notes on reed and heald counts, 2015");
    private static readonly Source Taylor = Source.Published("Taylor, Cotton Weaving and Designing, 6th ed., p. 243-244");

    /// <summary>Dents in one inch; the Radcliffe and Huddersfield numbers say the same.</summary>
    public static ReedSystem DentsPerInch { get; } = Inches("dents-per-inch", "dents per inch", "dents in 1 inch", 1, 1, Calculation);

    /// <summary>Dents in ten centimetres, written 40/10.</summary>
    public static ReedSystem Metric { get; } = new("metric", "metric", "dents in 10 centimetres", 1, Length.FromCentimetres(10), Calculation);

    /// <summary>Dents in two inches, which is ends per inch at two in a dent.</summary>
    public static ReedSystem Stockport { get; } = Inches("stockport", "Stockport (Manchester)", "dents in 2 inches", 1, 2, Taylor);

    /// <summary>Every system known here.</summary>
    public static ImmutableArray<ReedSystem> All { get; } =
    [
        DentsPerInch,
        Metric,
        new("dents-per-centimetre", "dents per centimetre", "dents in 1 centimetre", 1, Length.FromCentimetres(1), Source.Definition),
        Inches("radcliffe", "Radcliffe", "dents in 1 inch", 1, 1, Calculation),
        Inches("huddersfield", "Huddersfield", "dents in 1 inch", 1, 1, Calculation),
        Stockport,
        Inches("bolton", "Bolton", "beers of 20 dents in 24 1/4 inches", 20, 24.25, Source.Published("Brooks, Cotton Manufacturing, Reed Counting")),
        Inches("blackburn", "Blackburn", "beers of 20 dents in 45 inches", 20, 45, Taylor),
        Inches("bradford", "Bradford", "beers of 40 ends, 20 dents, in 36 inches", 20, 36, Taylor),
        Inches("scotch", "Scotch", "dents in 37 inches", 1, 37, Taylor),
        Inches("irish", "Irish", "hundreds of dents in 40 inches", 100, 40, Calculation),
        Inches("leeds", "Leeds", "porties of 19 dents in 9 inches", 19, 9, Calculation),
        Inches("macclesfield", "Macclesfield", "hundreds of dents in 36 inches", 100, 36, Calculation),
    ];

    /// <summary>Dents of a reed with this number on it.</summary>
    /// <param name="number">The number; finite, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is 0 or less, or not finite.</exception>
    public Sett Dents(double number) => Sett.FromPerMetre(number * DentsPerNumber / Over.Metres);

    /// <summary>The number this system would write on a reed.</summary>
    /// <param name="dents">Dents per width.</param>
    public double NumberOf(Sett dents) => dents * Over / DentsPerNumber;

    /// <summary>Finds a system by its short name or its name.</summary>
    /// <param name="text">The name; case does not matter.</param>
    public static Parsed<ReedSystem> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string wanted = text.Trim();
        ReedSystem? found = All.FirstOrDefault(s =>
            wanted.Equals(s.Id, StringComparison.OrdinalIgnoreCase) || wanted.Equals(s.Name, StringComparison.OrdinalIgnoreCase));
        return found is not null
            ? found
            : new InputProblem(
                $"\"{wanted}\" is not a way of numbering reeds.",
                "reed system",
                $"Use one of {string.Join(", ", All.Select(s => s.Id))}, for example \"60 stockport\".")
            { Text = text, Position = 0 };
    }

    private static ReedSystem Inches(string id, string name, string meaning, double dents, double inches, Source source) =>
        new(id, name, meaning, dents, Length.FromInches(inches), source);
}
