namespace Clothwright.Core.Publishing;

/// <summary>Something that stands in a section of a handout: a paragraph, a table, a picture, steps.</summary>
public abstract record HandoutBlock
{
    private protected HandoutBlock()
    {
    }
}
