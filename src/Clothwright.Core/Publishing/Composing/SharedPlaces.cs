using System.Collections.Immutable;
using Clothwright.Core.Weaves.Structures;

namespace Clothwright.Core.Publishing.Composing;

/// <summary>Which threads of a weave lie above or below each other at one place: pattern threads over their ground, layers over each other.</summary>
internal static class SharedPlaces
{
    private const int MostAtOnePlace = 4;

    /// <summary>For each thread whether it shares the place of the one before it; empty where none does.</summary>
    /// <param name="weave">The weave.</param>
    /// <param name="roles">What its ends, or its picks, do.</param>
    public static ImmutableArray<bool> Of(Weave weave, ImmutableArray<ThreadRole> roles)
    {
        int layers = weave.Rule == LayeredWeave.Rule ? weave.Layers : weave.Rule == ExchangedLayers.Rule ? 2 : 1;
        if (layers > 1) return [.. Enumerable.Range(0, layers).Select(i => i > 0)];
        if (!roles.Contains(ThreadRole.Pattern) || !roles.Contains(ThreadRole.Ground)) return [];
        var shared = ImmutableArray.CreateBuilder<bool>(roles.Length);
        int here = 0;
        foreach (ThreadRole role in roles)
        {
            here = role == ThreadRole.Pattern && here < MostAtOnePlace ? here + 1 : 1;
            shared.Add(here > 1);
        }

        return shared.MoveToImmutable();
    }
}
