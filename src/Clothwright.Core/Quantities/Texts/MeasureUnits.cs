namespace Clothwright.Core.Quantities;

/// <summary>The units in which one kind of measure is typed.</summary>
/// <param name="Noun">What is measured, for messages, for example <c>length</c>.</param>
/// <param name="Examples">How to write it right, for example <c>12 cm or 12 in</c>.</param>
/// <param name="FactorByWord">Base units in one of each unit, by lower-case word.</param>
internal sealed record MeasureUnits(string Noun, string Examples, IReadOnlyDictionary<string, double> FactorByWord);
