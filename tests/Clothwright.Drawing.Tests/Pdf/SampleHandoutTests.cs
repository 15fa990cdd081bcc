using System.Collections.Concurrent;
using Clothwright.Core.Plans;
using Clothwright.Core.Publishing;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;
using Clothwright.Core.Worksheets;
using Clothwright.Drawing.Pdf;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.TestKit;
using UglyToad.PdfPig;
using PageSize = Clothwright.Drawing.Pdf.PageSize;

namespace Clothwright.Drawing.Tests.Pdf;

/// <summary>The handouts of all samples on both papers.</summary>
public class SampleHandoutTests
{
    public static TheoryData<string, string> Printed
    {
        get
        {
            var all = new TheoryData<string, string>();
            foreach (string file in Directory.GetFiles(Repository.PathOf("samples"), "*.json").Order(StringComparer.Ordinal))
            {
                all.Add(Path.GetFileNameWithoutExtension(file), "a4");
                all.Add(Path.GetFileNameWithoutExtension(file), "letter");
            }

            return all;
        }
    }

    private static readonly ConcurrentDictionary<string, PlanResult> Plans = new();

    private static readonly ConcurrentDictionary<(string Sample, string Paper), byte[]> Printouts = new();

    private static PlanResult Planned(string sample) => Plans.GetOrAdd(sample, static sample =>
    {
        Worksheet worksheet = WorksheetReader.Read(File.ReadAllBytes(Repository.PathOf("samples", $"{sample}.json")), _ => new InputProblem("no file", "draft", "")).Value;
        return worksheet.Plan().Value;
    });

    private static PdfDocument Print(string sample, string paper) => PdfDocument.Open(Printouts.GetOrAdd((sample, paper), static key =>
    {
        using var stream = new MemoryStream();
        HandoutPdf.Write(HandoutComposer.Compose(Planned(key.Sample)), stream, PageSize.Parse(key.Paper).Value);
        return stream.ToArray();
    }));

    // Blanks differ with the lines; words do not.
    private static string Words(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    private static string Words(PdfDocument document) => Words(string.Concat(document.GetPages().Select(p => p.Text)));

    [Theory]
    [MemberData(nameof(Printed))]
    public void No_letter_stands_outside_the_margins(string sample, string paper)
    {
        using PdfDocument document = Print(sample, paper);

        Assert.InRange(document.NumberOfPages, 5, 12);
        Assert.All(document.GetPages(), page => Assert.All(page.Letters.Where(l => l.Value != " "), l => Assert.True(
            l.StartBaseLine.X >= 56 && l.EndBaseLine.X <= page.Width - 56 && l.StartBaseLine.Y >= 28 && l.StartBaseLine.Y <= page.Height - 28,
            $"'{l.Value}' on page {page.Number} at {l.StartBaseLine} to {l.EndBaseLine}")));
    }

    [Theory]
    [MemberData(nameof(Printed))]
    public void Every_figure_of_the_plan_and_all_that_went_into_it_is_in_the_appendix(string sample, string paper)
    {
        PlanResult plan = Planned(sample);
        using PdfDocument document = Print(sample, paper);
        string all = Words(document);
        string appendix = all[all.LastIndexOf("Howeveryfigurecametobe", StringComparison.Ordinal)..];

        foreach (Working working in plan.Figures.All.SelectMany(f => Tree(f.Value.Working)).Distinct())
        {
            string value = Words(working.Format(UnitStyle.Metric));
            string label = Words(working.Label);
            Assert.True(
                appendix.Contains($"{label}={value}", StringComparison.Ordinal) || appendix.Contains($"{label}{value}", StringComparison.Ordinal),
                $"{working} is not in the appendix.");
        }
    }

    [Theory]
    [MemberData(nameof(Printed))]
    public void The_figures_to_work_by_stand_on_the_pages(string sample, string paper)
    {
        PlanResult plan = Planned(sample);
        using PdfDocument document = Print(sample, paper);
        string all = Words(document);
        string steps = all[all.IndexOf("Stepbystep", StringComparison.Ordinal)..all.IndexOf("Measureandwritedown", StringComparison.Ordinal)];

        string[] wanted =
        [
            plan.Ends.Total.Working.Format(), plan.WarpLength.Working.Format(), plan.ReedWidth.Working.Format(),
            .. plan.Pieces.SelectMany(p => new[] { p.LengthUnderTension.Working.Format(), p.Picks.Working.Format(), p.OffLoomLength.Working.Format() }),
            .. plan.Yarns.Where(y => y.Ends.Value.Count > 0).Select(y => y.Warp.Working.Format()),
        ];
        Assert.All(wanted, w => Assert.Contains(Words(w), steps, StringComparison.Ordinal));
        Assert.All(plan.Yarns, y => Assert.Contains(Words(QuantityText.Format(QuantityKind.Mass, y.Mass.Upper95.Kilograms, UnitStyle.Metric)), all, StringComparison.Ordinal));
        Assert.All(plan.Cautions, c => Assert.Contains(Words(c.Text), all, StringComparison.Ordinal));
    }

    private static IEnumerable<Working> Tree(Working working) => working.Inputs.SelectMany(Tree).Append(working);
}
