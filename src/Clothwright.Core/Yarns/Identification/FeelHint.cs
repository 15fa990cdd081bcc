namespace Clothwright.Core.Yarns;

/// <summary>How a yarn feels and looks.</summary>
public enum FeelHint
{
    /// <summary>Warm and springy, hairy: wool and like hair.</summary>
    Springy,

    /// <summary>Smooth, warm, with a deep lustre: silk.</summary>
    Silky,

    /// <summary>Soft and dull, cool: cotton.</summary>
    SoftDull,

    /// <summary>Cool, crisp and slubby: linen, hemp, ramie.</summary>
    Crisp,

    /// <summary>Heavy, slick and drapy, cool: viscose, lyocell, modal.</summary>
    Drapy,

    /// <summary>Light, slick, a little like plastic: nylon, polyester, acrylic.</summary>
    Plastic,

    /// <summary>Flat and glittering: metallised film.</summary>
    Glittering,
}
