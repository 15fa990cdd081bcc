using System.Collections.Immutable;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Setts;

/// <summary>One property of several yarns.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Values">The value for each yarn, with its working.</param>
/// <param name="Differences">How far each is from the first, as a fraction of the first; 0 for the first.</param>
public sealed record ComparedProperty(string Name, ImmutableArray<Working> Values, ImmutableArray<double> Differences);
