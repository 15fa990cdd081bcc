namespace Clothwright.Core.Photographs;

/// <summary>What a photograph can leave open.</summary>
public enum CountQuestionKind
{
    /// <summary>Do threads of two colours alternate? Then there are twice as many.</summary>
    ColoursInTurn,

    /// <summary>Another count is nearly as likely; does the grid lie on every thread?</summary>
    AnotherCount,

    /// <summary>Only every second gap is seen and a thread was put between; does the grid lie on every thread?</summary>
    EverySecondGap,

    /// <summary>Threads are only a few pixels wide: go nearer.</summary>
    TooFine,

    /// <summary>Few threads are in the picture: go further away, or choose a larger area.</summary>
    TooFew,

    /// <summary>No threads stand out: light from the side, hold the camera still, keep the swatch flat.</summary>
    NoThreads,

    /// <summary>Threads come closer towards one side: hold the camera square on, or mark the corners of a card.</summary>
    Slanted,

    /// <summary>Counts differ from strip to strip: is the cloth flat and evenly woven?</summary>
    Uneven,

    /// <summary>Threads are turned almost as far as is looked: turn the picture so that the warp runs up.</summary>
    Turned,
}
