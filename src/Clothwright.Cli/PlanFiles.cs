using System.Collections.Immutable;
using System.Text;
using Clothwright.Cli.Reports;
using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Colours;
using Clothwright.Core.Plans;
using Clothwright.Core.Publishing;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Quantities;
using Clothwright.Core.Wordings;
using Clothwright.Core.Worksheets;
using Clothwright.Drawing.Drafts;
using Clothwright.Drawing.Faces;
using Clothwright.Drawing.Pdf;
using Clothwright.Interchange.Drafts;
using Clothwright.Interchange.Http;

namespace Clothwright.Cli;

/// <summary>The files a plan is written to: handout, cloth faces (numbered from the second cloth on), draft and figures.</summary>
internal static class PlanFiles
{
    // Enough to see each ply in print at true size; finer pictures are made by the cloth command.
    private const double FaceDotsPerInch = 200;
    private const double FaceCentimetres = 10;

    /// <summary>All files, complete in memory.</summary>
    /// <param name="worksheet">The decisions.</param>
    /// <param name="plan">What follows from them.</param>
    /// <param name="paper">Size of its pages.</param>
    /// <param name="wording">Language of the handout.</param>
    public static IReadOnlyList<(string Name, byte[] Contents)> Of(Worksheet worksheet, PlanResult plan, PageSize paper, Wording wording)
    {
        Handout handout = HandoutComposer.Compose(plan, HandoutOptions.Of(worksheet) with { Wording = wording });
        HandoutBlock[] blocks = [.. handout.Sections.SelectMany(s => s.Blocks)];
        DraftBlock draft = blocks.OfType<DraftBlock>().First();
        LookDescription[] cloths = [.. blocks.OfType<ClothBlock>().Select(b => b.Cloth)];
        var woven = new WovenDraft(
            draft.Draft,
            Threads(draft.EndColours, draft.Draft.Ends),
            Threads(draft.PickColours, draft.Draft.Picks));
        // Independent of each other, so made side by side; the order of the files stays.
        var files = new List<(string Name, Func<byte[]> Make)> { ("handout.pdf", () => Bytes(s => HandoutPdf.Write(handout, s, paper))) };
        for (int i = 0; i < cloths.Length; i++)
        {
            LookDescription cloth = cloths[i];
            string suffix = i == 0 ? "" : $"-{i + 1}";
            files.Add(($"face{suffix}.png", () => Picture(cloth, Face.Front)));
            files.Add(($"back{suffix}.png", () => Picture(cloth, Face.Back)));
        }

        files.Add(("draft.svg", () => Bytes(s => DraftSvg.Write(draft.Draft, s, new DraftColours(draft.EndColours, draft.PickColours)))));
        files.Add(("draft.wif", () => DraftFile.Bytes(woven, "draft.wif")));
        files.Add(("plan.json", () => Encoding.UTF8.GetBytes(PrettyJson.Write(PlanReport.Of(plan, worksheet.Currency, withWorkings: true)))));
        var made = new (string, byte[])[files.Count];
        Parallel.For(0, made.Length, i => made[i] = (files[i].Name, files[i].Make()));
        return made;
    }

    private static byte[] Picture(LookDescription cloth, Face face)
    {
        Length side = Length.FromCentimetres(FaceCentimetres);
        return Bytes(s => ClothPicture.Png(cloth, s, face, FaceDotsPerInch, ClothFrame.Of(cloth, side, side)));
    }

    // Colours that come round again, written out for every thread.
    private static WovenThreads Threads(ImmutableArray<SrgbColour> colours, int count) => colours.IsEmpty
        ? WovenThreads.Plain
        : new WovenThreads { Colours = [.. Enumerable.Range(0, count).Select(i => colours[i % colours.Length])] };

    private static byte[] Bytes(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return stream.ToArray();
    }
}
