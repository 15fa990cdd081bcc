namespace Clothwright.Core.Weaves.Faults;

/// <summary>One slip of a reading.</summary>
/// <param name="Slip">The slip.</param>
/// <param name="What">What happened, in words.</param>
/// <param name="Mend">How to put it right.</param>
/// <param name="Oddity">How unlikely it is among its like, 0 for the likeliest: a judgement of our own, no source.</param>
public sealed record FaultStep(Slip Slip, string What, SlipMend Mend, int Oddity);
