using Clothwright.Core.Quantities;
using Clothwright.Core.Weaves;
using Clothwright.Core.Weaves.Pictures;
using Clothwright.Drawing.Images;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Cli;

/// <summary>Drafts of cloths of which there is only a picture in two tones.</summary>
internal static class PictureDraft
{
    /// <summary>The draft with the fewest shafts and treadles that weaves the cloth of a picture; first pick at the bottom, dark for warp on top.</summary>
    /// <param name="bytes">The picture.</param>
    /// <param name="name">Name of the file, to speak of it.</param>
    /// <exception cref="InputProblemException">It shows no drawdown, or one that no draft can hold.</exception>
    public static DraftFileReading Read(byte[] bytes, string name)
    {
        DrawdownPictureReading picture = Under(name, DrawdownPicture.Read(bytes));
        Draft draft = Under(name, FewestDraft.Of(picture.Drawdown));
        string found = $"The picture shows {draft.Ends} ends and {draft.Picks} picks{(picture.HasGridLines ? " between grid lines" : "")}; see that this is so.";
        return new DraftFileReading(WovenDraft.Of(draft), DraftFileForm.Picture, [found]);
    }

    private static T Under<T>(string name, Parsed<T> parsed)
        where T : notnull => parsed.Problem is { } problem ? throw new InputProblemException(problem with { Where = name }) : parsed.Value;
}
