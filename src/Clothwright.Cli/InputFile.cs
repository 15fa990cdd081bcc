using Clothwright.Core.Quantities;

namespace Clothwright.Cli;

/// <summary>Reads the files a person names, within a limit.</summary>
internal static class InputFile
{
    /// <summary>The largest file read, in bytes: a draft or a worksheet of any sensible size is far below.</summary>
    public const long LargestBytes = 64L * 1024 * 1024;

    /// <summary>The bytes of a file.</summary>
    /// <param name="path">As the person typed it.</param>
    /// <exception cref="InputProblemException">There is no such file, it cannot be read, or it is too large.</exception>
    public static byte[] Read(string path)
    {
        try
        {
            var file = new FileInfo(path);
            if (!file.Exists)
            {
                string what = Directory.Exists(path) ? $"\"{path}\" is a folder, not a file." : $"There is no file \"{path}\".";
                throw new InputProblemException(new InputProblem(what, "file", "Give the path of a file that exists, for example samples/reedbed-scarves.json."));
            }

            if (file.Length > LargestBytes)
            {
                throw new InputProblemException(new InputProblem($"\"{path}\" holds {file.Length} bytes.", "file", $"Files up to {LargestBytes} bytes are read; is this the right file?"));
            }

            return File.ReadAllBytes(path);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new InputProblemException(new InputProblem($"\"{path}\" cannot be read: {exception.Message.TrimEnd('.')}.", "file", "Give the path of a file that you may read."));
        }
    }
}
