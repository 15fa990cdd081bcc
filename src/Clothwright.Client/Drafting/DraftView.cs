namespace Clothwright.Client.Drafting;

/// <summary>How a draft is drawn.</summary>
/// <param name="Way">Which way round.</param>
/// <param name="InNumbers">Whether cells hold the numbers of shafts and treadles.</param>
/// <param name="InYarns">Whether the cloth is in the colours of its yarns.</param>
public sealed record DraftView(DraftWay Way, bool InNumbers, bool InYarns);
