namespace Clothwright.Interchange.Wif;

/// <summary>Title and author: section TEXT. Each is one line, empty if not said.</summary>
public sealed record WifText
{
    /// <summary>Name of the draft.</summary>
    public string Title { get; init; } = "";

    /// <summary>Who designed it.</summary>
    public string Author { get; init; } = "";

    /// <summary>The author's address.</summary>
    public string Address { get; init; } = "";

    /// <summary>The author's electronic mail.</summary>
    public string EMail { get; init; } = "";

    /// <summary>The author's telephone.</summary>
    public string Telephone { get; init; } = "";

    /// <summary>The author's facsimile.</summary>
    public string Fax { get; init; } = "";
}
