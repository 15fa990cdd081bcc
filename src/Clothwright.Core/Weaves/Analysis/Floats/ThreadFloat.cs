namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>One float: a thread that passes over, or under, several others without being held.</summary>
/// <param name="Kind">Which thread, on which face.</param>
/// <param name="Line">0-based end for warp floats, pick for weft floats.</param>
/// <param name="Start">0-based first thread passed: a pick for warp floats, an end for weft floats. In a repeat the float may run on past the last thread to the first.</param>
/// <param name="Length">Threads passed; 1 is a plain crossing. For an endless float, the threads of one repeat.</param>
/// <param name="Endless">In a repeat: the thread is never held at all.</param>
public readonly record struct ThreadFloat(FloatKind Kind, int Line, int Start, int Length, bool Endless)
{
    /// <summary>Whether an end floats, rather than a pick.</summary>
    public bool IsWarp => Kind is FloatKind.WarpFace or FloatKind.WarpBack;

    /// <summary>For people, counted from 1, for example <c>pick 3 over 5 ends from end 7</c>.</summary>
    public override string ToString()
    {
        string thread = IsWarp ? "end" : "pick";
        string crossed = IsWarp ? "pick" : "end";
        string side = Kind is FloatKind.WarpFace or FloatKind.WeftFace ? "over" : "under";
        return Endless
            ? $"{thread} {Line + 1} {side} every {crossed}"
            : $"{thread} {Line + 1} {side} {Length} {crossed}{(Length == 1 ? "" : "s")} from {crossed} {Start + 1}";
    }
}
