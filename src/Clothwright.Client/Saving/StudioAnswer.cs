using System.Text.Json;
using Clothwright.Interchange.Http;

namespace Clothwright.Client.Saving;

/// <summary>What the studio's server answered.</summary>
/// <param name="Status">The HTTP status; 0 where it did not answer.</param>
/// <param name="Version">The version it named; 0 for none.</param>
/// <param name="Text">The body.</param>
public sealed record StudioAnswer(int Status, int Version, string Text)
{
    /// <summary>Whether the server is away, or too unwell to answer.</summary>
    public bool IsAway => Status is 0 or >= 500;

    /// <summary>Whether it did what was asked.</summary>
    public bool IsDone => Status is >= 200 and < 300;

    /// <summary>The problem that it reported; null where the body is none.</summary>
    public ProblemReport? Report
    {
        get
        {
            try
            {
                return JsonSerializer.Deserialize(Text, StudioJson.Default.ProblemReport);
            }
            catch (JsonException)
            {
                return null;
            }
        }
    }
}
