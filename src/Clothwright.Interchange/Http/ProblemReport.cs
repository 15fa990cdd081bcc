using System.Text.Json.Serialization;
using Clothwright.Core.Quantities;

namespace Clothwright.Interchange.Http;

/// <summary>What was wrong with a request: problem details of RFC 9457, with what, where and mend beside them.</summary>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Skip)]
public sealed record ProblemReport
{
    /// <summary>Media type of a report.</summary>
    public const string MediaType = "application/problem+json";

    /// <summary>Short name of the kind of problem.</summary>
    public required string Title { get; init; }

    /// <summary>The HTTP status.</summary>
    public required int Status { get; init; }

    /// <summary>What is wrong and how to mend it, as sentences.</summary>
    public required string Detail { get; init; }

    /// <summary>What is wrong, with the offending value.</summary>
    public string? What { get; init; }

    /// <summary>The field or place.</summary>
    public string? Where { get; init; }

    /// <summary>What would put it right.</summary>
    public string? Mend { get; init; }

    /// <summary>The text as it was given, where the problem is inside a piece of text.</summary>
    public string? Text { get; init; }

    /// <summary>Index of the first character of the text that cannot be read; 0-based.</summary>
    public int? Position { get; init; }

    /// <summary>The version that stands on the server, when a save was based on another.</summary>
    public int? CurrentVersion { get; init; }

    /// <summary>The worksheet that stands on the server, when a save was based on another.</summary>
    public WorksheetState? Current { get; init; }

    /// <summary>The report of one problem.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="status">The HTTP status, from 400 up.</param>
    /// <param name="title">Short name of the kind of problem.</param>
    public static ProblemReport Of(InputProblem problem, int status, string title)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return new ProblemReport
        {
            Title = title,
            Status = status,
            Detail = $"{problem.What} {problem.Mend}",
            What = problem.What,
            Where = problem.Where,
            Mend = problem.Mend,
            Text = problem.Text,
            Position = problem.Position,
        };
    }
}
