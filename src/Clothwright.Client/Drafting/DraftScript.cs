using System.Runtime.InteropServices.JavaScript;

namespace Clothwright.Client.Drafting;

/// <summary>What the script of the draft does: paper, hand, files.</summary>
internal static partial class DraftScript
{
    private const string Module = "draft";

    private static Task? _loaded;

    /// <summary>Loads the script once; before anything else here is called.</summary>
    public static Task LoadAsync() => _loaded ??= JSHost.ImportAsync(Module, "../js/draft.js");

    [JSImport("openDraft", Module)]
    internal static partial void Open(string canvas, string field, [JSMarshalAs<JSType.Function<JSType.String>>] Action<string> tell);

    [JSImport("showDraft", Module)]
    internal static partial void Show(
        string canvas,
        [JSMarshalAs<JSType.MemoryView>] Span<byte> rows,
        [JSMarshalAs<JSType.MemoryView>] Span<int> sizes,
        [JSMarshalAs<JSType.MemoryView>] Span<byte> threading,
        [JSMarshalAs<JSType.MemoryView>] Span<byte> tieUp,
        [JSMarshalAs<JSType.MemoryView>] Span<byte> treads,
        [JSMarshalAs<JSType.MemoryView>] Span<int> endColours,
        [JSMarshalAs<JSType.MemoryView>] Span<int> pickColours);

    [JSImport("markDraft", Module)]
    internal static partial void Mark(
        string canvas,
        [JSMarshalAs<JSType.MemoryView>] Span<int> cursor,
        [JSMarshalAs<JSType.MemoryView>] Span<int> marked,
        [JSMarshalAs<JSType.MemoryView>] Span<int> spots,
        bool reveal);

    [JSImport("handDraft", Module)]
    internal static partial void Hand(string canvas, string mode, bool wide);

    [JSImport("nearDraft", Module)]
    internal static partial void Near(string canvas, double times);

    [JSImport("lookAt", Module)]
    internal static partial void LookAt(string canvas, int end, int pick);

    [JSImport("pageOf", Module)]
    internal static partial int PageOf(string canvas);

    [JSImport("timePainting", Module)]
    internal static partial string TimePainting(string canvas, int times);

    [JSImport("takenName", Module)]
    internal static partial string TakenName();

    [JSImport("takenBytes", Module)]
    internal static partial byte[] TakenBytes();

    [JSImport("pictureWidth", Module)]
    internal static partial int PictureWidth();

    [JSImport("pictureTones", Module)]
    internal static partial byte[] PictureTones();

    [JSImport("saveText", Module)]
    internal static partial void SaveText(string name, string type, string text);
}
