using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>In what two yarns of equal count but unlike fibre differ.</summary>
/// <param name="Topic">What is compared.</param>
/// <param name="Fibre">The fibre compared.</param>
/// <param name="Against">The fibre it is compared with.</param>
/// <param name="Value">The figure of <paramref name="Fibre"/>.</param>
/// <param name="AgainstValue">The figure of <paramref name="Against"/>.</param>
/// <param name="Matters">Whether the difference is larger than what the handbooks' ranges leave open.</param>
/// <param name="Sentence">The difference in words and figures.</param>
public sealed record FibreDifference(
    FibreTopic Topic,
    Fibre Fibre,
    Fibre Against,
    IDerived Value,
    IDerived AgainstValue,
    bool Matters,
    string Sentence);
