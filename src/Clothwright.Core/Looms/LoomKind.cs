namespace Clothwright.Core.Looms;

/// <summary>The kinds of loom a handweaver works on.</summary>
public enum LoomKind
{
    /// <summary>A frame with one to three rigid heddles, which also hold the sett.</summary>
    RigidHeddle,

    /// <summary>A loom on a table, shafts lifted by levers.</summary>
    Table,

    /// <summary>A loom on the floor, shafts moved by treadles.</summary>
    Floor,
}
