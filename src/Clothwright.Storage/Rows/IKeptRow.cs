namespace Clothwright.Storage.Rows;

/// <summary>A row that is saved as a whole and numbers its saves.</summary>
internal interface IKeptRow
{
    string Id { get; set; }

    int Version { get; set; }

    bool IsDemo { get; set; }
}
