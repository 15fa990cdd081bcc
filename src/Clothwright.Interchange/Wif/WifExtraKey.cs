namespace Clothwright.Interchange.Wif;

/// <summary>A key the standard does not know, in a section it does; written back as it was.</summary>
/// <param name="Section">Standard name of the section, in capitals.</param>
/// <param name="Key">The key as written.</param>
/// <param name="Value">What stood behind it.</param>
public sealed record WifExtraKey(string Section, string Key, string Value);
