namespace Clothwright.Client.Drafting;

/// <summary>The colours of the threads in a picture of a draft, 0xRRGGBB.</summary>
internal sealed record ShownColours(ShownDraft For, int[] Ends, int[] Picks);
