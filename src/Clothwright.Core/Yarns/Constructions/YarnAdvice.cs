using Clothwright.Core.Workings;

namespace Clothwright.Core.Yarns;

/// <summary>Something to know about a yarn before using it; never a refusal.</summary>
/// <param name="IsWarning">Whether it can spoil the work if it is not minded.</param>
/// <param name="Says">What is so, as a sentence.</param>
/// <param name="Advice">What to do, as an instruction.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record YarnAdvice(bool IsWarning, string Says, string Advice, Source Source);
