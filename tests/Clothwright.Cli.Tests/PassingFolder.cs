namespace Clothwright.Cli.Tests;

/// <summary>A folder for one test, gone after it.</summary>
internal sealed class PassingFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("clothwright-").FullName;

    public string File(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
