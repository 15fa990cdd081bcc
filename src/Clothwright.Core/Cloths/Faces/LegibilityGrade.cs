namespace Clothwright.Core.Cloths.Faces;

/// <summary>How well a pattern is seen. The bounds, in noticed differences, are our judgement.</summary>
public enum LegibilityGrade
{
    /// <summary>Under 1: the pattern is lost.</summary>
    Lost,

    /// <summary>1 to 2: a subtle pattern.</summary>
    Subtle,

    /// <summary>2 to 4: it reads.</summary>
    Readable,

    /// <summary>4 and more: bold.</summary>
    Bold,
}
