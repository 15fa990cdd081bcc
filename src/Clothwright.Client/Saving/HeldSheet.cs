namespace Clothwright.Client.Saving;

/// <summary>A worksheet that this browser holds.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">Name of the work.</param>
/// <param name="Unsent">Whether something of it has not been sent to the studio.</param>
public sealed record HeldSheet(string Id, string Title, bool Unsent);
