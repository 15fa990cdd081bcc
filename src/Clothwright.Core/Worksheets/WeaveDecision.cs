using Clothwright.Core.Weaves;

namespace Clothwright.Core.Worksheets;

/// <summary>How the weave was chosen: by name, drawn thread by thread, or from a file.</summary>
public abstract record WeaveDecision
{
    private protected WeaveDecision()
    {
    }

    /// <summary>A weave by its name and numbers, for example <c>2/2 twill</c>.</summary>
    /// <param name="Name">The name.</param>
    public sealed record Named(string Name) : WeaveDecision;

    /// <summary>A draft drawn on the worksheet.</summary>
    /// <param name="Draft">One repeat.</param>
    public sealed record Drawn(Draft Draft) : WeaveDecision;

    /// <summary>A draft kept in a file beside the worksheet.</summary>
    /// <param name="Path">The file's path as written on the worksheet.</param>
    /// <param name="Draft">What the file held when the worksheet was read.</param>
    public sealed record FromFile(string Path, Draft Draft) : WeaveDecision;
}
