namespace Clothwright.Drawing.Drafts;

/// <summary>Neighbouring ends or picks that are worked once or several times over.</summary>
/// <param name="First">0-based first thread.</param>
/// <param name="Period">Threads in one repeat.</param>
/// <param name="Times">How often it is worked; 1 or more.</param>
internal readonly record struct ThreadGroup(int First, int Period, int Times)
{
    /// <summary>Threads in all.</summary>
    public int Count => Period * Times;
}
