using Clothwright.Core.Quantities;
using Clothwright.Drawing.Drafts;
using Clothwright.Interchange.Drafts;

namespace Clothwright.Cli;

/// <summary>Drafts kept in files.</summary>
internal static class DraftFile
{
    /// <summary>File-name endings that hold a draft.</summary>
    public static readonly string[] Endings = [".wif", ".txt", ".csv", ".png"];

    /// <summary>Reads a draft from a file; of a picture or grid of the cloth, the draft with the fewest shafts and treadles.</summary>
    /// <param name="path">Path as typed.</param>
    /// <exception cref="InputProblemException">The file holds no draft.</exception>
    public static DraftFileReading Read(string path)
    {
        byte[] bytes = InputFile.Read(path);
        string name = Path.GetFileName(path);
        return DraftFiles.FormOf(bytes) == DraftFileForm.Picture ? PictureDraft.Read(bytes, name) : DraftFiles.Read(bytes, name).Value;
    }

    /// <summary>A draft as the bytes of a file.</summary>
    /// <param name="woven">The draft.</param>
    /// <param name="name">File name; its ending says which form.</param>
    /// <param name="style">How a picture is drawn; as usual if left out.</param>
    /// <exception cref="InputProblemException">The ending stands for no form.</exception>
    public static byte[] Bytes(WovenDraft woven, string name, DraftStyle? style = null)
    {
        using var stream = new MemoryStream();
        switch (Path.GetExtension(name).ToLowerInvariant())
        {
            case ".svg":
                DraftSvg.Write(woven.Draft, stream, Colours(woven), style);
                return stream.ToArray();
            case ".png":
                DraftPng.Write(woven.Draft, stream, Colours(woven), style);
                return stream.ToArray();
            default:
                Parsed<byte[]> bytes = DraftFiles.Write(woven, name);
                return bytes.Succeeded
                    ? bytes.Value
                    : throw new InputProblemException(bytes.Problem with { Mend = "Give the file one of these endings: .wif, .txt, .csv, .svg, .png." });
        }
    }

    private static DraftColours Colours(WovenDraft woven) => new(woven.Warp.Colours, woven.Weft.Colours);
}
