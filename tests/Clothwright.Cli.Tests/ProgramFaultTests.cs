namespace Clothwright.Cli.Tests;

public class ProgramFaultTests
{
    [Fact]
    public void A_fault_of_the_program_is_one_line_that_says_how_to_report_it()
    {
        using var error = new StringWriter();
        int exitCode = ProgramFault.Guard(() => throw new InvalidOperationException("a shaft\nfell off"), error, traced: false);

        Assert.Equal(70, exitCode);
        string line = Assert.Single(error.ToString().Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("a fault of the program, not of your input", line, StringComparison.Ordinal);
        Assert.Contains("InvalidOperationException: a shaft fell off", line, StringComparison.Ordinal);
        Assert.Contains("CLOTHWRIGHT_TRACE=1", line, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_details_are_told_when_asked_for()
    {
        using var error = new StringWriter();
        ProgramFault.Guard(() => throw new InvalidOperationException("a shaft fell off"), error, traced: true);

        Assert.Contains("   at ", error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_stopped_half_way_leaves_nothing_behind()
    {
        // A folder where the second file should go: the set cannot be completed, so none of it stays.
        using var folder = new PassingFolder();
        Directory.CreateDirectory(folder.File("handout.pdf"));
        Assert.Throws<Core.Quantities.InputProblemException>(() => OutputFolder.Write(folder.Path, [("handout.pdf", [1, 2, 3])]));

        Assert.Empty(Directory.GetFiles(folder.Path));
    }
}
