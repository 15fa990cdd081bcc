using Clothwright.Core.Workings;

namespace Clothwright.Client.Workings;

/// <summary>The place of a section where the working of one of its figures is opened, beneath the sentences and never over them.</summary>
public sealed class WorkingOutlet(Action refresh)
{
    /// <summary>Id of the figure that is open; null for none.</summary>
    public string? OpenId { get; private set; }

    /// <summary>Its working.</summary>
    public Working? Working { get; private set; }

    /// <summary>Opens a figure, or closes it if it is open.</summary>
    /// <param name="id">Id of the figure's button.</param>
    /// <param name="working">How it came to be.</param>
    public void Toggle(string id, Working working)
    {
        bool close = OpenId == id;
        OpenId = close ? null : id;
        Working = close ? null : working;
        refresh();
    }

    /// <summary>Tells the outlet that a figure was reckoned anew.</summary>
    /// <param name="id">Id of the figure's button.</param>
    /// <param name="working">How it came to be now.</param>
    public void Renew(string id, Working working)
    {
        if (OpenId != id || ReferenceEquals(Working, working)) return;
        Working = working;
        refresh();
    }

    /// <summary>Closes what is open.</summary>
    public void Close()
    {
        OpenId = null;
        Working = null;
        refresh();
    }
}
