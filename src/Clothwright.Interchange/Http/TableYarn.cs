namespace Clothwright.Interchange.Http;

/// <summary>A yarn as it would come onto the shelf from a table.</summary>
/// <param name="Line">The line of its first row.</param>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Tex">How fine it is.</param>
/// <param name="Size">Count or label as it was understood.</param>
/// <param name="Fibres">What it is made of.</param>
/// <param name="Colour">Its colour in sRGB.</param>
/// <param name="Packages">How many packages.</param>
/// <param name="Grams">Yarn on all of them, in grams.</param>
/// <param name="OnShelf">Whether a yarn of this id stands on the shelf already.</param>
public sealed record TableYarn(int Line, string Id, string Name, double Tex, string Size, string Fibres, string Colour, int Packages, double Grams, bool OnShelf);
