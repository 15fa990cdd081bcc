namespace Clothwright.Interchange.Http;

/// <summary>What the server says of itself.</summary>
/// <param name="Program">Name of the program.</param>
/// <param name="ProgramVersion">Its version.</param>
/// <param name="Worksheets">How many worksheets are kept, those put away left out.</param>
/// <param name="Yarns">How many yarns stand on the shelf.</param>
/// <param name="OnlyDemo">Whether nothing is kept but the demo studio as it came: another studio may then be brought in.</param>
public sealed record StudioFacts(string Program, string ProgramVersion, int Worksheets, int Yarns, bool OnlyDemo);
