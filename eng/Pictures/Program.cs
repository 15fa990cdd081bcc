using Clothwright.Core.Cloths.Look;
using Clothwright.Core.Plans;
using Clothwright.Core.Publishing.Blocks;
using Clothwright.Core.Publishing;
using Clothwright.Core.Quantities;
using Clothwright.Core.Worksheets;
using Clothwright.Drawing.Drafts;
using Clothwright.Drawing.Faces;
using Clothwright.Interchange.WorksheetJson;

// Draws the pictures of the gallery from the program itself: front and back of each sample's first cloth, and its draft.
// dotnet run -c Release --project eng/Pictures -- samples docs/pictures
if (args is not [var samples, var pictures])
{
    Console.Error.WriteLine("Give the folder of the samples and the folder for the pictures, for example: samples docs/pictures");
    return 2;
}

const double DotsPerInch = 150;
Directory.CreateDirectory(pictures);
foreach (string file in Directory.GetFiles(samples, "*.json").Order(StringComparer.Ordinal))
{
    Worksheet worksheet = WorksheetReader.Read(File.ReadAllBytes(file)).Value;
    PlanResult plan = worksheet.Plan().Value;
    HandoutBlock[] blocks = [.. HandoutComposer.Compose(plan, HandoutOptions.Of(worksheet)).Sections.SelectMany(s => s.Blocks)];
    var cloth = blocks.OfType<ClothBlock>().First().Cloth;
    var frame = ClothFrame.Of(cloth, Length.FromCentimetres(6), Length.FromCentimetres(4));
    DraftBlock draft = blocks.OfType<DraftBlock>().First();
    string name = Path.Combine(pictures, Path.GetFileNameWithoutExtension(file));
    Write($"{name}-front.png", s => ClothPicture.Png(cloth, s, Face.Front, DotsPerInch, frame));
    Write($"{name}-back.png", s => ClothPicture.Png(cloth, s, Face.Back, DotsPerInch, frame));
    Write($"{name}-draft.svg", s => DraftSvg.Write(draft.Draft, s, new DraftColours(draft.EndColours, draft.PickColours)));
}

return 0;

static void Write(string path, Action<Stream> draw)
{
    using FileStream stream = File.Create(path);
    draw(stream);
    Console.WriteLine($"{path}: {stream.Length / 1024} KB");
}
