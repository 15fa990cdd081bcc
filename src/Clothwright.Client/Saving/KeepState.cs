namespace Clothwright.Client.Saving;

/// <summary>Whether the last step is safe, and where.</summary>
public enum KeepState
{
    /// <summary>The studio has it.</summary>
    Saved,

    /// <summary>It is being kept in the browser.</summary>
    Keeping,

    /// <summary>The browser has it; the studio is about to.</summary>
    Sending,

    /// <summary>The browser has it; the studio does not answer.</summary>
    Away,

    /// <summary>The same part was changed here and elsewhere; she is asked which is to hold.</summary>
    Asking,

    /// <summary>The browser refused to keep it.</summary>
    Refused,

    /// <summary>The studio refused it.</summary>
    Declined,
}
