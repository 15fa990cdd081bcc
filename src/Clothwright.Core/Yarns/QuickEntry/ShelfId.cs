using System.Globalization;

namespace Clothwright.Core.Yarns;

/// <summary>Makes the short name under which a yarn or tool is kept from its name.</summary>
public static class ShelfId
{
    private const int Longest = 60;

    /// <summary>Letters and digits of the name with hyphens between, and a number behind where that is taken.</summary>
    /// <param name="name">Name for people.</param>
    /// <param name="isTaken">Whether an id is used already.</param>
    /// <param name="otherwise">What stands for a name without letters and digits.</param>
    public static string Of(string name, Func<string, bool> isTaken, string otherwise = "yarn")
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(isTaken);
        string letters = string.Concat(name.ToLowerInvariant().Select(c => char.IsLetterOrDigit(c) ? c : '-'));
        string plain = string.Join('-', letters.Split('-', StringSplitOptions.RemoveEmptyEntries));
        if (plain.Length > Longest) plain = plain[..Longest].TrimEnd('-');
        if (plain.Length == 0) plain = otherwise;
        string id = plain;
        for (int number = 2; isTaken(id); number++) id = $"{plain}-{number.ToString(CultureInfo.InvariantCulture)}";
        return id;
    }
}
