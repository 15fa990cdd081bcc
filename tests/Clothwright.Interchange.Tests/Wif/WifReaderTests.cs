using Clothwright.Interchange.Wif;

namespace Clothwright.Interchange.Tests.Wif;

public sealed class WifReaderTests
{
    [Fact]
    public void A_sound_file_is_read_without_a_warning()
    {
        WifReading reading = WifSample.Read(WifSample.Twill);
        Assert.Empty(reading.Warnings);
        Assert.Equal(WifSample.TwillDrawdown, WifSample.Drawdown(WifSample.Twill));
        Assert.Equal("Saltings", reading.Document.Source.Program);
    }

    [Fact]
    public void What_is_written_reads_as_the_same_document()
    {
        WifDocument document = WifSample.Read(WifSample.Twill).Document;
        string written = WifWriter.Write(document);
        Assert.Equal(WifSample.Twill.ReplaceLineEndings("\r\n"), written);
    }
}
