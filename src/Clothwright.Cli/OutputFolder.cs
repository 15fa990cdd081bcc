using Clothwright.Core.Quantities;

namespace Clothwright.Cli;

/// <summary>Writes a set of files so that either all of them are there or none is.</summary>
internal static class OutputFolder
{
    private static readonly Lock Gate = new();
    private static readonly HashSet<string> UnderWay = [];
    private static bool _abandoned;

    /// <summary>Writes files whose contents are complete in memory: each under a passing name first, then all renamed.</summary>
    /// <param name="folder">The folder; made if it is not there.</param>
    /// <param name="files">File name and contents.</param>
    /// <exception cref="InputProblemException">The folder cannot be written; no file of the set was left behind.</exception>
    public static void Write(string folder, IReadOnlyList<(string Name, byte[] Contents)> files)
    {
        var passing = new List<(string From, string To)>();
        try
        {
            Directory.CreateDirectory(folder);
            foreach ((string name, byte[] contents) in files)
            {
                string to = Path.Combine(folder, name);
                string from = Path.Combine(folder, $".{name}.{Environment.ProcessId}.part");
                passing.Add((from, to));
                WritePassing(from, contents);
            }

            Rename(passing);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            foreach ((string from, _) in passing) Discard(from);
            throw new InputProblemException(new InputProblem($"\"{folder}\" cannot be written: {exception.Message.TrimEnd('.')}.", "--out", "Name a folder in which you may write."));
        }
    }

    /// <summary>The program is being stopped: takes away what is half written, and writes nothing more.</summary>
    public static void Abandon()
    {
        lock (Gate)
        {
            _abandoned = true;
            foreach (string passing in UnderWay.ToList()) Discard(passing);
        }
    }

    private static void WritePassing(string path, byte[] contents)
    {
        lock (Gate)
        {
            if (_abandoned) return;
            UnderWay.Add(path);
            File.WriteAllBytes(path, contents);
        }
    }

    private static void Rename(List<(string From, string To)> passing)
    {
        lock (Gate)
        {
            if (_abandoned) return;
            foreach ((string from, string to) in passing)
            {
                File.Move(from, to, overwrite: true);
                UnderWay.Remove(from);
            }
        }
    }

    private static void Discard(string passing)
    {
        lock (Gate)
        {
            if (File.Exists(passing)) File.Delete(passing);
            UnderWay.Remove(passing);
        }
    }

    /// <summary>Writes one file.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="contents">Its contents.</param>
    /// <exception cref="InputProblemException">The file cannot be written.</exception>
    public static void WriteFile(string path, byte[] contents)
    {
        string name = Path.GetFileName(path);
        if (name.Length == 0)
        {
            throw new InputProblemException(new InputProblem($"\"{path}\" names no file.", "--out", "Name a file, for example draft.wif."));
        }

        Write(Path.GetDirectoryName(path) is { Length: > 0 } folder ? folder : ".", [(name, contents)]);
    }
}
