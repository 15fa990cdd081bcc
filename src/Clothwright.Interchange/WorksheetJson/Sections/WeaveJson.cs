using System.Text.Json;
using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Worksheets;
using Clothwright.Interchange.WorksheetJson.Fields;

namespace Clothwright.Interchange.WorksheetJson.Sections;

/// <summary>The field <c>weave</c>: a name, a draft in one line, or a file.</summary>
internal static class WeaveJson
{
    private const string Example = "\"weave\": \"2/2 twill\"";

    public static string[] Fields { get; } = ["name", "draft", "file", "patternPicks"];

    public static WordList<PatternPicks> PatternWords { get; } = new(
        ("none", PatternPicks.None), ("odd", PatternPicks.Odd), ("even", PatternPicks.Even));

    /// <summary>Reads a weave; null if the field is not there.</summary>
    /// <param name="owner">The object that holds the field.</param>
    /// <param name="draftFile">Reads a draft file by its path as written; null where files cannot be read.</param>
    public static WeaveDecision? Read(JsonSection owner, Func<string, Parsed<Draft>>? draftFile)
    {
        if (!owner.TryGet("weave", out JsonElement value)) return null;
        if (value.ValueKind == JsonValueKind.String) return new WeaveDecision.Named(owner.Text("weave", "2/2 twill"));
        var weave = new JsonSection(value, owner.At("weave"), Fields);
        PatternPicks patternPicks = weave.Word<PatternPicks>("patternPicks", PatternWords, PatternPicks.None);
        if (weave.OptionalText("file") is { } path)
        {
            if (weave.Has("draft")) throw weave.Problem("draft", "\"file\" and \"draft\" both give a draft.", "Keep one of them.");
            return new WeaveDecision.FromFile(path, DraftOf(weave, path, draftFile)) { PatternPicks = patternPicks };
        }

        if (weave.OptionalText("draft", WorksheetReader.LargestBytes) is { } notation)
        {
            Draft draft = JsonSection.Read(DraftNotation.Parse(notation, weave.At("draft")));
            return new WeaveDecision.Drawn(draft with { Name = weave.OptionalText("name") ?? "" }) { PatternPicks = patternPicks };
        }

        if (patternPicks != PatternPicks.None) throw weave.Problem("patternPicks", "A weave by name knows its pattern picks.", "Take the field out.");
        return new WeaveDecision.Named(weave.Text("name", "2/2 twill"));
    }

    /// <summary>Reads a weave that has to be there.</summary>
    public static WeaveDecision ReadRequired(JsonSection owner, Func<string, Parsed<Draft>>? draftFile) =>
        Read(owner, draftFile) ?? throw owner.Missing("weave", Example);

    public static void Write(Utf8JsonWriter writer, WeaveDecision decision)
    {
        switch (decision)
        {
            case WeaveDecision.Named named:
                writer.WriteString("weave", named.Name);
                break;
            case WeaveDecision.Drawn drawn:
                writer.WriteStartObject("weave");
                if (drawn.Draft.Name.Length > 0) writer.WriteString("name", drawn.Draft.Name);
                writer.WriteString("draft", DraftNotation.Format(drawn.Draft));
                WritePatternPicks(writer, drawn.PatternPicks);
                writer.WriteEndObject();
                break;
            case WeaveDecision.FromFile file:
                writer.WriteStartObject("weave");
                writer.WriteString("file", file.Path);
                WritePatternPicks(writer, file.PatternPicks);
                writer.WriteEndObject();
                break;
        }
    }

    private static void WritePatternPicks(Utf8JsonWriter writer, PatternPicks patternPicks)
    {
        if (patternPicks != PatternPicks.None) writer.WriteString("patternPicks", PatternWords.Of(patternPicks));
    }

    private static Draft DraftOf(JsonSection weave, string path, Func<string, Parsed<Draft>>? draftFile)
    {
        if (draftFile is null) throw weave.Problem("file", $"\"{path}\" cannot be read here.", "Put the draft itself on the worksheet: \"draft\": \"1234 | 1:12 2:23 3:34 4:14 | 1234\".");
        Parsed<Draft> draft = draftFile(path);
        return draft.TryGet(out Draft? value)
            ? value
            : throw new InputProblemException(draft.Problem! with { Where = $"{weave.At("file")} ({path}), {draft.Problem!.Where}" });
    }
}
