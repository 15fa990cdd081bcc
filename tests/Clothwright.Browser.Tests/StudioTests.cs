namespace Clothwright.Browser.Tests;

/// <summary>Shares the studio between all classes of tests.</summary>
[CollectionDefinition(Name)]
public sealed class StudioTests : ICollectionFixture<Studio>
{
    /// <summary>Name of the collection.</summary>
    public const string Name = "studio";
}
