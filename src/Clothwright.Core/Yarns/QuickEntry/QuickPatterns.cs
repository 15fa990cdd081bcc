using System.Text.RegularExpressions;

namespace Clothwright.Core.Yarns;

/// <summary>Patterns of what stands in free words about a yarn.</summary>
internal static partial class QuickPatterns
{
    private const string N = @"\d+(?:\.\d+)?";
    private const string LengthUnit = @"(?:metres|meters|meter|metre|yards|yard|yds|yd|m)";
    private const string MassUnit = @"(?:kilograms?|grams|gramm|gram|g|kg|ounces|ounce|oz|lbs?|pounds?)\b";
    private const string Form = @"(?:cones?|balls?|skeins?|hanks?|tubes?|spools?|bobbins?|packages?|konen?|konus|knäuel|stränge|strang|spulen?|hülsen?)";
    private const string Left = @"(?:left|remaining|on the shelf|in stock|übrig|da|vorrätig|rest)";
    private const RegexOptions Options = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture;

    // Far more than any text of the length that is read needs.
    private const int MostMilliseconds = 2000;

    [GeneratedRegex(N, Options, MostMilliseconds)]
    public static partial Regex Number();

    [GeneratedRegex(@"#[0-9a-f]{6}\b", Options, MostMilliseconds)]
    public static partial Regex Hex();

    [GeneratedRegex(@"\b(dye ?lot|lot|batch|partie|charge|farbpartie)\b[\s.:#]*(no\.?|nr\.?)?\s*(?<lot>[\p{L}\d][\p{L}\d\-/_.]*)", Options, MostMilliseconds)]
    public static partial Regex Lot();

    [GeneratedRegex(@"(\b(at|for|price|preis|zu|für)\s*:?\s*)?((€|\$|£|\b(EUR|USD|GBP|CHF)\b)\s*(?<price>" + N + @")|(?<price>" + N + @")\s*(€|\$|£|(EUR|USD|GBP|CHF|euros?|dollars?)\b))(\s*(each|apiece|(a|an|per|the|je|pro|/)\s*" + Form + @"|je|/)\b)?", Options, MostMilliseconds)]
    public static partial Regex Price();

    [GeneratedRegex(N + @"\s*" + LengthUnit + @"\s*(/|=|:|per\b|in\b|to\b|zu\b|auf\b)\s*" + N + @"\s*" + MassUnit + "|" + N + @"\s*" + MassUnit + @"\s*(/|=|:|per\b|in\b|to\b|zu\b|auf\b)\s*" + N + @"\s*" + LengthUnit + @"\b", Options, MostMilliseconds)]
    public static partial Regex Label();

    [GeneratedRegex(N + @"\s*(m\s*/\s*kg|m\s*/\s*100\s*g|m\s*/\s*50\s*g|yds?\s*/\s*lbs?|ypp|yd\s*/\s*50\s*g|yd\s*/\s*oz|yards per pound|metres per kilogram)\b", Options, MostMilliseconds)]
    public static partial Regex LengthPerMass();

    [GeneratedRegex(@"((?<begun>\d+|a|an|one)?\s*(?<part>1\s*/\s*2|½|half|halb[e]?)\s*(an?\s+)?|(?<whole>" + N + @"|\b(one|two|three|four|five|six|seven|eight|nine|ten|twelve|ein|eine|zwei|drei|vier|fünf|sechs)\b)\s*)((?<form>" + Form + @")\b\s*)?\b(" + Left + @")\b", Options, MostMilliseconds)]
    public static partial Regex CountLeft();

    [GeneratedRegex(@"(?<mass>(\d+\s+\d+\s*/\s*\d+|\d+\s*/\s*\d+|" + N + @")\s*" + MassUnit + @")\s*(of it\s*|net\s*|netto\s*)?(?<left>" + Left + @"\b)", Options, MostMilliseconds)]
    public static partial Regex MassLeft();

    [GeneratedRegex(@"(?<mass>(\d+\s+\d+\s*/\s*\d+|\d+\s*/\s*\d+|" + N + @")\s*" + MassUnit + ")", Options, MostMilliseconds)]
    public static partial Regex Mass();

    [GeneratedRegex(@"(?<whole>" + N + @")\s*[x×]\s*(?=[\u0001\d])", Options, MostMilliseconds)]
    public static partial Regex Times();

    [GeneratedRegex(@"(?<whole>" + N + @"|\b(one|two|three|four|five|six|seven|eight|nine|ten|twelve|ein|eine|zwei|drei|vier|fünf|sechs)\b)\s*(?=\u0001*\s*" + Form + @"\b)", Options, MostMilliseconds)]
    public static partial Regex CountOfForms();

    [GeneratedRegex(@"(?<one>" + N + @")\s*%?\s*/\s*(?<other>" + N + @")\s*%?", Options, MostMilliseconds)]
    public static partial Regex SharePair();

    [GeneratedRegex(@"(?<share>" + N + @")\s*%\s*$", Options, MostMilliseconds)]
    public static partial Regex ShareBefore();

    [GeneratedRegex(@"^\s*(?<share>" + N + @")\s*%", Options, MostMilliseconds)]
    public static partial Regex ShareAfter();

    [GeneratedRegex(@"\b(R\s*)?((Nm|NeC|NeW|NeL|NeS|Ne|Nf)\s*" + N + @"(\s*/\s*" + N + @")?|" + N + @"\s*/\s*" + N + @"\s*(Nm|NeC|NeW|NeL|NeS|Ne|Nf)\b|" + N + @"\s*(tex|dtex|denier|den)\b(\s*[/x×]\s*\d+)?|" + N + @"('?s)?\s*[/×]\s*" + N + @"('?s\b)?|\d+\s*-\s*\d+'?s\b|\d+\s*/\s*\d+)", Options, MostMilliseconds)]
    public static partial Regex Count();

    [GeneratedRegex(@"\b(?<system>cotton|worsted|linen|metric|woollen|english silk|baumwoll|kammgarn|leinen|metrische?)[\s-]*(count|nummer|numerierung|nummerierung)\b|\b(?<system>lea|nm|nec|new|nel|run|cut)\b", Options, MostMilliseconds)]
    public static partial Regex System();

    [GeneratedRegex(@"\b(yarns?|garn|garne|in|of|a|an|the|and|with|per|each|on|from|made|count|colou?r|farbe|und|mit|aus|von|je|ply|zwirn|left|net|netto|cone|size|about|ca|some|pure|100)\b\.?", Options, MostMilliseconds)]
    public static partial Regex Filler();

    [GeneratedRegex(@"[\s\-–:.()%/+&]*(?<core>.*?)[\s\-–:.(%/+&]*$", Options, MostMilliseconds)]
    public static partial Regex Trimmed();
}
