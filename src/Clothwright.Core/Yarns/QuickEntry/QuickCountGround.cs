namespace Clothwright.Core.Yarns;

/// <summary>Why a count was read in one system, or that it was not.</summary>
public enum QuickCountGround
{
    /// <summary>The words name the system.</summary>
    Named,

    /// <summary>Only one system has such numbers.</summary>
    OnlyReading,

    /// <summary>Yarn of this fibre is sold in this system.</summary>
    CustomOfTheFibre,

    /// <summary>Several systems are as likely: the weaver has to say which.</summary>
    ToBeAsked,
}
