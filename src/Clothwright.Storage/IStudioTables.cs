using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Clothwright.Storage;

/// <summary>Opens the tables in one kind of database, and begins what is read and written there.</summary>
public interface IStudioTables : IDbContextFactory<StudioContext>
{
    /// <summary>Begins reading: everything that is read belongs together, whatever is written meanwhile.</summary>
    /// <param name="studio">The tables.</param>
    /// <param name="cancel">Calls it off.</param>
    Task<IDbContextTransaction> BeginReadingAsync(StudioContext studio, CancellationToken cancel);

    /// <summary>Begins writing: no other writing is under way until it ends, and what it commits is on the disk.</summary>
    /// <param name="studio">The tables.</param>
    /// <param name="cancel">Calls it off.</param>
    Task<IDbContextTransaction> BeginWritingAsync(StudioContext studio, CancellationToken cancel);
}
