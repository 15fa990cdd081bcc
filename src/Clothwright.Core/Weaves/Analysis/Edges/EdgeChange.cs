namespace Clothwright.Core.Weaves.Analysis.Edges;

/// <summary>A change of one end at an edge.</summary>
public enum EdgeChange
{
    /// <summary>The ends as they are.</summary>
    None,

    /// <summary>Leave out end 1.</summary>
    DropFirst,

    /// <summary>Leave out the last end.</summary>
    DropLast,

    /// <summary>Add the end that would come next in the threading.</summary>
    AddLast,
}
