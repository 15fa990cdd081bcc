using Clothwright.Core.Quantities;

namespace Clothwright.Core.Photographs;

/// <summary>Something the weaver is asked, because the photograph leaves it open.</summary>
/// <param name="Kind">What is asked.</param>
/// <param name="Instead">The count it would be instead, where there is one.</param>
public sealed record CountQuestion(CountQuestionKind Kind, Sett? Instead = null);
