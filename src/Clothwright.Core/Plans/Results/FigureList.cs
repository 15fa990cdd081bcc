using System.Collections.Immutable;
using Clothwright.Core.Quantities;
using Clothwright.Core.Workings;

namespace Clothwright.Core.Plans.Results;

/// <summary>Names every figure of a plan.</summary>
internal static class FigureList
{
    /// <summary>The figures of a plan, the most looked for first.</summary>
    public static FigureBook Of(PlanResult plan)
    {
        var all = ImmutableArray.CreateBuilder<Figure>();
        Add("ends", plan.Ends.Total);
        Add("endsWanted", plan.Ends.Wanted);
        Add("endsPerCentimetre", plan.Sett);
        Add("advisedEndsPerCentimetre", plan.SettAdvice.Ends);
        Add("reedWidth", plan.ReedWidth);
        Add("warpLength", plan.WarpLength);
        Add("warpTakeUp", plan.WarpTakeUp);
        Add("weftTakeUp", plan.WeftTakeUp);
        Add("picks", plan.Picks);
        Add("gramsPerSquareMetre", plan.MassPerArea);
        Add("grams", plan.Mass);
        Add("hours", plan.Work.Total);
        AddIfKnown("cost", plan.Cost);
        AddIfKnown("purchase", plan.Purchase);
        foreach (Derived<WorkTime> step in plan.Work.Steps) Add($"hours[{step.Working.Label}]", step);
        foreach (PiecePlan piece in plan.Pieces) AddPiece(piece, $"pieces[{piece.Index}]");
        foreach (YarnNeed yarn in plan.Yarns) AddYarn(yarn, $"yarns[{yarn.Yarn.Id}]");
        for (int i = 0; i < plan.Sections.Length; i++) Add($"sections[{i}].warp", plan.Sections[i].Warp);
        return new FigureBook(all.ToImmutable());

        void Add(string name, IDerived value) => all.Add(new Figure(name, value));

        void AddIfKnown(string name, IDerived? value)
        {
            if (value is not null) Add(name, value);
        }

        void AddPiece(PiecePlan piece, string at)
        {
            Add($"{at}.finishedWidth", piece.FinishedWidth);
            Add($"{at}.finishedLength", piece.FinishedLength);
            Add($"{at}.ends", piece.Ends);
            Add($"{at}.reedWidth", piece.ReedWidth);
            Add($"{at}.wantedReedWidth", piece.WantedReedWidth);
            Add($"{at}.clothLength", piece.ClothLength);
            Add($"{at}.offLoomLength", piece.OffLoomLength);
            Add($"{at}.lengthUnderTension", piece.LengthUnderTension);
            Add($"{at}.wovenWarp", piece.WovenWarp);
            Add($"{at}.fringeWarp", piece.FringeWarp);
            Add($"{at}.picks", piece.Picks);
            Add($"{at}.picksPerCentimetre", piece.GroundPicks);
            Add($"{at}.picksPerCentimetreUnderTension", piece.GroundPicksUnderTension);
            Add($"{at}.warpTakeUp", piece.WarpTakeUp);
            Add($"{at}.weftTakeUp", piece.WeftTakeUp);
            Add($"{at}.drawIn", piece.DrawIn);
            Add($"{at}.shrinkageInLength", piece.ShrinkageInLength);
            Add($"{at}.shrinkageInWidth", piece.ShrinkageInWidth);
            Add($"{at}.grams", piece.ClothMass);
            Add($"{at}.gramsPerSquareMetre", piece.MassPerArea);
            foreach (WeftNeed weft in piece.Weft)
            {
                Add($"{at}.weft[{weft.YarnId}].inCloth", weft.InCloth);
                Add($"{at}.weft[{weft.YarnId}].waste", weft.Waste);
            }
        }

        void AddYarn(YarnNeed yarn, string at)
        {
            Add($"{at}.tex", yarn.Yarn.LinearDensity);
            Add($"{at}.ends", yarn.Ends);
            Add($"{at}.warpMetres", yarn.Warp);
            Add($"{at}.weftMetres", yarn.Weft);
            Add($"{at}.metres", yarn.Total);
            Add($"{at}.grams", yarn.Mass);
            Add($"{at}.gramsInPieces", yarn.InPieces);
            Add($"{at}.gramsWasted", yarn.Waste);
            Add($"{at}.packages", yarn.Packages.NewPackages);
            AddIfKnown($"{at}.purchase", yarn.Packages.Cost);
            AddIfKnown($"{at}.cost", yarn.Cost);
        }
    }
}
