using ArchUnitNET.Loader;

namespace Clothwright.Architecture.Tests;

public class FolderArrowTests
{
    private static readonly ArchUnitNET.Domain.Architecture Core =
        new ArchLoader().LoadAssemblies(typeof(Clothwright.Core.Quantities.Length).Assembly).Build();

    private static readonly ArchUnitNET.Domain.Architecture Planted =
        new ArchLoader().LoadAssemblies(typeof(FolderArrowTests).Assembly).Build();

    [Fact]
    public void Folders_of_core_use_only_folders_before_them() =>
        Assert.Empty(FolderArrows.Breaches(Core, "Clothwright.Core"));

    [Fact]
    public void Every_folder_of_core_has_its_place_in_the_order() =>
        Assert.Empty(FolderArrows.Unplaced(Core, "Clothwright.Core"));

    [Fact]
    public void A_planted_breach_is_found() =>
        Assert.Equal(
            ["Clothwright.Architecture.Tests.Planted.Yarns.YarnThatKnowsItsPlan -> Clothwright.Architecture.Tests.Planted.Plans.PlantedPlan"],
            FolderArrows.Breaches(Planted, "Clothwright.Architecture.Tests.Planted"));
}
