namespace Clothwright.Core.Weaves.Analysis.Floats;

/// <summary>Finds the places of all floats above a length, to mark them in the cloth.</summary>
public static class LongFloats
{
    /// <summary>All floats of one kind that pass more than a number of threads, line by line.</summary>
    /// <param name="cloth">The drawdown.</param>
    /// <param name="kind">Which thread, on which face.</param>
    /// <param name="reading">As an endless repeat, or as cut at the edges.</param>
    /// <param name="moreThan">Threads a float may pass without being reported; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="moreThan"/> is below 0.</exception>
    public static IEnumerable<ThreadFloat> Of(Drawdown cloth, FloatKind kind, ClothReading reading, int moreThan)
    {
        ArgumentNullException.ThrowIfNull(cloth);
        ArgumentOutOfRangeException.ThrowIfNegative(moreThan);
        bool warp = kind is FloatKind.WarpFace or FloatKind.WarpBack;
        bool value = kind is FloatKind.WarpFace or FloatKind.WeftBack;
        return Walk(warp ? cloth.Transposed() : cloth, kind, value, reading, moreThan);
    }

    private static IEnumerable<ThreadFloat> Walk(Drawdown rows, FloatKind kind, bool value, ClothReading reading, int moreThan)
    {
        for (int line = 0; line < rows.Picks; line++)
        {
            foreach (ThreadFloat found in AlongLine(rows, line, kind, value, reading))
            {
                if (found.Length > moreThan || found.Endless) yield return found;
            }
        }
    }

    private static IEnumerable<ThreadFloat> AlongLine(Drawdown rows, int line, FloatKind kind, bool value, ClothReading reading)
    {
        int threads = rows.Ends;
        int first = 0;
        if (reading == ClothReading.Repeat)
        {
            // Start where the value changes, so that no float is cut in two.
            while (first < threads && rows[line, first] == rows[line, (first + threads - 1) % threads]) first++;
            if (first == threads)
            {
                if (rows[line, 0] == value) yield return new ThreadFloat(kind, line, 0, threads, Endless: true);
                yield break;
            }
        }

        for (int at = 0; at < threads;)
        {
            int next = at + 1;
            while (next < threads && rows[line, (first + next) % threads] == rows[line, (first + at) % threads]) next++;
            if (rows[line, (first + at) % threads] == value) yield return new ThreadFloat(kind, line, (first + at) % threads, next - at, Endless: false);
            at = next;
        }
    }
}
