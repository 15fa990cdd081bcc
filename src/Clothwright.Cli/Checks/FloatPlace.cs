using Clothwright.Core.Weaves.Analysis.Floats;

namespace Clothwright.Cli.Checks;

/// <summary>Where a float is, in words.</summary>
internal static class FloatPlace
{
    /// <summary>For example <c>end 5, over picks 7 to 9</c>; threads counted from 1.</summary>
    /// <param name="found">The float.</param>
    /// <param name="ends">Ends of the draft.</param>
    /// <param name="picks">Picks of the draft.</param>
    public static string Of(ThreadFloat found, int ends, int picks)
    {
        string thread = found.IsWarp ? "end" : "pick";
        string crossed = found.IsWarp ? "pick" : "end";
        string side = found.Kind is FloatKind.WarpFace or FloatKind.WeftFace ? "over" : "under";
        int threads = found.IsWarp ? picks : ends;
        if (found.Endless) return $"{thread} {found.Line + 1}, {side} every {crossed}";
        int first = found.Start + 1;
        int last = found.Start + found.Length;
        if (last <= threads) return found.Length == 1 ? $"{thread} {found.Line + 1}, {side} {crossed} {first}" : $"{thread} {found.Line + 1}, {side} {crossed}s {first} to {last}";
        return $"{thread} {found.Line + 1}, {side} {crossed}s {first} to {last - threads} of the next repeat";
    }

    /// <summary>For example <c>warp on the face</c>.</summary>
    public static string Kind(FloatKind kind) => kind switch
    {
        FloatKind.WarpFace => "warp on the face",
        FloatKind.WarpBack => "warp on the back",
        FloatKind.WeftFace => "weft on the face",
        _ => "weft on the back",
    };
}
