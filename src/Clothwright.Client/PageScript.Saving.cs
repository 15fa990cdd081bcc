using System.Runtime.InteropServices.JavaScript;

namespace Clothwright.Client;

public static partial class PageScript
{
    [JSImport("readCopy", Module)]
    internal static partial Task<string> ReadCopyAsync(string sheet);

    [JSImport("keepCopy", Module)]
    internal static partial Task KeepCopyAsync(string sheet, string json);

    [JSImport("listCopies", Module)]
    internal static partial Task<string> ListCopiesAsync();

    [JSImport("lastSheet", Module)]
    internal static partial string LastSheet();

    [JSImport("useSheet", Module)]
    internal static partial void UseSheet(string sheet);

    [JSImport("ask", Module)]
    internal static partial Task<string> AskAsync(string method, string address, string body, string version);

    [JSImport("tellTabs", Module)]
    internal static partial void TellTabs(string sheet);

    [JSImport("listen", Module)]
    internal static partial void Listen([JSMarshalAs<JSType.Function<JSType.String>>] Action<string> heard);

    [JSImport("momentText", Module)]
    internal static partial string MomentText(string moment);

    [JSImport("speak", Module)]
    internal static partial void Speak(string language);

    [JSImport("askWithFile", Module)]
    internal static partial Task<string> AskWithFileAsync(string address, string file);

    [JSImport("takeFiles", Module)]
    internal static partial void TakeFiles([JSMarshalAs<JSType.Function<JSType.String, JSType.String>>] Action<string, string> take);

    [JSImport("takeChosen", Module)]
    internal static partial void TakeChosen(string id);

    [JSImport("keepPage", Module)]
    internal static partial void KeepPage();

    [JSImport("isFirstVisit", Module)]
    internal static partial bool IsFirstVisit();

    [JSImport("endFirstVisit", Module)]
    internal static partial void EndFirstVisit();
}
