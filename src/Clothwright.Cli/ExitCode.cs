namespace Clothwright.Cli;

/// <summary>What the command tells the shell.</summary>
public static class ExitCode
{
    /// <summary>The work is done.</summary>
    public const int Done = 0;

    /// <summary>The work is done, and a check of it failed: the draft falls apart, the loom cannot weave it.</summary>
    public const int CheckFailed = 1;

    /// <summary>What was given cannot be used; nothing was written.</summary>
    public const int BadInput = 2;

    /// <summary>The program itself is at fault. As in sysexits.h of BSD: internal software error.</summary>
    public const int ProgramFault = 70;

    /// <summary>Stopped by Ctrl-C. As shells do: 128 and the number of the signal.</summary>
    public const int Stopped = 130;
}
