namespace Clothwright.Core.Workings;

/// <summary>A number that can show its working, whatever it measures.</summary>
public interface IDerived
{
    /// <summary>How the number came to be.</summary>
    Working Working { get; }
}
