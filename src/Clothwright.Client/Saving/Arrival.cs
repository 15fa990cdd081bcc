namespace Clothwright.Client.Saving;

/// <summary>A change that came from elsewhere: steps kept before it do not know of it yet.</summary>
/// <param name="Before">The document before it.</param>
/// <param name="After">The document with it.</param>
/// <param name="UpTo">The last step that was kept before it.</param>
internal sealed record Arrival(string Before, string After, int UpTo);
