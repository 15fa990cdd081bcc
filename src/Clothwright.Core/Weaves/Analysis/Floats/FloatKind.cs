namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>Which thread floats, and on which face it shows.</summary>
public enum FloatKind
{
    /// <summary>An end lies over several picks and shows on the face.</summary>
    WarpFace,

    /// <summary>An end lies under several picks and shows on the back.</summary>
    WarpBack,

    /// <summary>A pick lies over several ends and shows on the face.</summary>
    WeftFace,

    /// <summary>A pick lies under several ends and shows on the back.</summary>
    WeftBack,
}
