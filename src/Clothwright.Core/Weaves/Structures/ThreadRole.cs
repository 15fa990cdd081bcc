namespace Clothwright.Core.Weaves.Structures;

/// <summary>What a thread does in the cloth.</summary>
public enum ThreadRole
{
    /// <summary>It makes the cloth; without it the cloth falls apart.</summary>
    Ground,

    /// <summary>It makes the figure; without it a sound ground is left.</summary>
    Pattern,
}
