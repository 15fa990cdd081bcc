namespace Clothwright.Core.Weaves.Structures;

/// <summary>Which way a twill line runs as picks go up.</summary>
public enum TwillHand
{
    /// <summary>To the right.</summary>
    Z,

    /// <summary>To the left.</summary>
    S,
}
