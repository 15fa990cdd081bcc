namespace Clothwright.Interchange.Wif;

/// <summary>One line <c>key=value</c>, as places in the text of the file; blanks round key and value are left out.</summary>
internal readonly record struct WifEntry(int KeyStart, int KeyLength, int ValueStart, int ValueLength, int Line)
{
    public ReadOnlySpan<char> Key(string text) => text.AsSpan(KeyStart, KeyLength);

    public ReadOnlySpan<char> Value(string text) => text.AsSpan(ValueStart, ValueLength);
}
