namespace Clothwright.Core.Yarns;

/// <summary>One thing that free words told about a yarn.</summary>
/// <typeparam name="T">What it is.</typeparam>
/// <param name="Value">What was understood.</param>
/// <param name="From">The words it was read from; empty where it was assumed.</param>
public sealed record QuickFound<T>(T Value, string From)
{
    /// <summary>Whether nothing said it, and what is usual was taken.</summary>
    public bool IsAssumed => From.Length == 0;
}
