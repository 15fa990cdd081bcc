using System.Collections.Immutable;
using System.Text;
using Clothwright.Core.Plans.Briefs;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson;
using Clothwright.Interchange.WorksheetJson.Joining;
using Clothwright.TestKit;
using CsCheck;

namespace Clothwright.Interchange.Tests.WorksheetJson.Joining;

public class WorksheetJoinTests
{
    private static readonly ImmutableArray<Worksheet> Samples =
        [.. Directory.EnumerateFiles(Repository.PathOf("samples"), "*.json").Order(StringComparer.Ordinal).Select(f => WorksheetReader.Read(File.ReadAllBytes(f)).Value)];

    private static readonly Worksheet Origin = Samples.First(s => s.Pieces.Length == 2);

    private static readonly Gen<Worksheet> Sheets = Gen.Select(Gen.Int[0, Samples.Length - 1], Gen.Int[0, Samples.Length - 1], Gen.Bool.Array[WorksheetParts.All.Length])
        .Select((one, other, from) => WorksheetParts.All.Where((_, i) => from[i]).Aggregate(Samples[one], (sheet, part) => WorksheetParts.Take(sheet, part, Samples[other])));

    [Fact]
    public void Every_field_of_a_worksheet_belongs_to_a_part()
    {
        foreach (Worksheet from in Samples)
        {
            Worksheet all = WorksheetParts.All.Aggregate(Samples[0], (sheet, part) => WorksheetParts.Take(sheet, part, from));
            // The record compares every field, those too that a writer might leave out.
            Assert.Equal(from, all);
        }
    }

    [Fact]
    public void Every_property_of_the_document_is_given_by_a_part()
    {
        string parts = File.ReadAllText(Repository.PathOf("src", "Clothwright.Interchange", "WorksheetJson", "Joining", "WorksheetParts.cs"));
        Assert.All(
            typeof(Worksheet).GetProperties().Where(p => p.SetMethod is not null),
            property => Assert.Contains($"{property.Name} = from.{property.Name}", parts, StringComparison.Ordinal));
    }

    [Fact]
    public void Where_one_side_changed_nothing_the_other_side_stands() => Gen.Select(Sheets, Sheets).Sample((origin, changed) =>
    {
        Assert.Equal(Text(changed), Text(WorksheetJoin.Of(origin, origin, changed).Joined));
        Assert.Equal(Text(changed), Text(WorksheetJoin.Of(origin, changed, origin).Joined));
    });

    [Fact]
    public void Both_sides_come_to_the_same_worksheet_and_the_same_questions() => Gen.Select(Sheets, Sheets, Sheets).Sample((origin, mine, theirs) =>
    {
        WorksheetJoin here = WorksheetJoin.Of(origin, mine, theirs);
        WorksheetJoin there = WorksheetJoin.Of(origin, theirs, mine);
        Assert.Equal(here.Questions.ToArray(), there.Questions.ToArray());
        // Each side answers for the same one.
        Assert.Equal(Text(here.Answered(here.Questions)), Text(there.Answered([])));
    });

    [Fact]
    public void No_change_of_either_side_is_lost_without_a_question() => Gen.Select(Sheets, Sheets, Sheets).Sample((origin, mine, theirs) =>
    {
        WorksheetJoin join = WorksheetJoin.Of(origin, mine, theirs);
        foreach (WorksheetPart part in WorksheetParts.All.Except(join.Questions))
        {
            if (!WorksheetParts.Alike(part, origin, mine)) Assert.True(WorksheetParts.Alike(part, join.Joined, mine));
            if (!WorksheetParts.Alike(part, origin, theirs)) Assert.True(WorksheetParts.Alike(part, join.Joined, theirs));
        }
    });

    [Fact]
    public void Another_title_here_and_another_length_there_both_hold()
    {
        Worksheet mine = Origin with { Title = "Ebb scarves" };
        Worksheet theirs = Origin with { Pieces = Longer(Origin) };
        WorksheetJoin join = WorksheetJoin.Of(Origin, mine, theirs);
        Assert.Empty(join.Questions);
        Assert.Equal([WorksheetPart.Pieces], join.Taken.ToArray());
        Assert.Equal("Ebb scarves", join.Joined.Title);
        Assert.Equal(Text(theirs with { Title = "Ebb scarves" }), Text(join.Joined));
    }

    [Fact]
    public void Two_titles_are_a_question_that_either_can_answer()
    {
        Worksheet mine = Origin with { Title = "Ebb scarves", Pieces = Longer(Origin) };
        Worksheet theirs = Origin with { Title = "Flood scarves" };
        WorksheetJoin join = WorksheetJoin.Of(Origin, mine, theirs);
        Assert.Equal([WorksheetPart.Title], join.Questions.ToArray());
        Assert.Equal("Ebb scarves", join.Answered([]).Title);
        Assert.Equal("Flood scarves", join.Answered([WorksheetPart.Title]).Title);
        Assert.Equal(Text(mine with { Title = "Flood scarves" }), Text(join.Answered([WorksheetPart.Title])));
    }

    [Fact]
    public void The_same_change_on_both_sides_is_no_question()
    {
        Worksheet changed = Origin with { Pieces = Longer(Origin) };
        Assert.Empty(WorksheetJoin.Of(Origin, changed, changed with { Pieces = [.. changed.Pieces] }).Questions);
    }

    [Fact]
    public void Without_a_known_origin_every_difference_is_a_question()
    {
        WorksheetJoin join = WorksheetJoin.Of(null, Origin, Origin with { Title = "Flood scarves", Sample = Length.FromCentimetres(31) });
        Assert.Equal([WorksheetPart.Title, WorksheetPart.Warp], join.Questions.ToArray());
    }

    private static ImmutableArray<PieceEntry> Longer(Worksheet sheet) =>
        [.. sheet.Pieces.Select(p => p with { Piece = p.Piece with { Length = p.Piece.Length + Length.FromCentimetres(20) } })];

    private static string Text(Worksheet sheet) => Encoding.UTF8.GetString(WorksheetWriter.Write(sheet));
}
