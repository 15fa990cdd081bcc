namespace Clothwright.Core.Quantities;

/// <summary>Reads measures such as <c>12 cm</c>, <c>1 1/2 in</c>, <c>2 lb 4 oz</c> from typed text.</summary>
internal static class MeasureReader
{
    /// <summary>Reads a text that holds one measure and nothing else.</summary>
    public static Parsed<double> ReadAll(string text, string where, MeasureUnits units)
    {
        var cursor = new TextCursor(text, where);
        Parsed<double> measure = Read(cursor, units);
        if (!measure.Succeeded || cursor.AtEnd) return measure;
        return cursor.Problem(
            $"The {units.Noun} {cursor.Quoted()} is followed by something that is not part of it.",
            $"Write one {units.Noun}, for example {units.Examples}.");
    }

    /// <summary>Reads a measure and leaves the cursor behind it.</summary>
    public static Parsed<double> Read(TextCursor cursor, MeasureUnits units)
    {
        if (cursor.IsTooLong) return cursor.Problem($"The {units.Noun} {cursor.Quoted()} is too long to be one.", Mend(units), 0);
        if (cursor.CommaProblem() is { } comma) return comma;
        if (cursor.Next is '-' or '−') return cursor.Problem($"The {units.Noun} {cursor.Quoted()} is below 0.", $"Give a {units.Noun} of 0 or more, for example {units.Examples}.");

        double sum = 0;
        bool any = false;
        while (char.IsAsciiDigit(cursor.Next))
        {
            int start = cursor.Position;
            Parsed<double> amount = ReadAmount(cursor, units);
            if (!amount.TryGet(out double number)) return amount;
            int unitAt = cursor.AtEnd ? cursor.Text.Length : cursor.Position;
            string unit = cursor.TakeWord();
            if (unit.Length == 0)
            {
                if (number == 0 && !any && cursor.AtEnd) return 0.0;
                return cursor.Problem(
                    $"The {units.Noun} {cursor.Quoted()} has no unit after {cursor.Text[start..unitAt].Trim()}.",
                    $"Write the unit too, for example {units.Examples}.",
                    unitAt);
            }

            if (!units.FactorByWord.TryGetValue(Spelling(unit), out double factor))
            {
                return cursor.Problem(
                    $"{TextCursor.Quote(unit)} is not a unit of {units.Noun}.",
                    $"Use one of {string.Join(", ", units.FactorByWord.Keys.Take(8))}, for example {units.Examples}.",
                    unitAt);
            }

            sum += Scaled(number, factor);
            any = true;
        }

        if (!any) return cursor.Problem($"{cursor.Quoted()} is not a {units.Noun}: it does not start with a number.", Mend(units));
        return double.IsFinite(sum) ? sum : cursor.Problem($"The {units.Noun} {cursor.Quoted()} is too large.", Mend(units), 0);
    }

    private static Parsed<double> ReadAmount(TextCursor cursor, MeasureUnits units)
    {
        cursor.TryTakeNumber(out double number);
        int back = cursor.Position;
        if (cursor.TryTake('/'))
        {
            if (!char.IsAsciiDigit(cursor.Next))
            {
                cursor.Position = back;
                return number;
            }

            return Divide(cursor, number, units);
        }

        if (char.IsAsciiDigit(cursor.Next))
        {
            int at = cursor.Position;
            cursor.TryTakeNumber(out double over);
            if (!cursor.TryTake('/')) return cursor.Problem($"{cursor.Quoted()} holds two numbers without a unit between them.", Mend(units), at);
            Parsed<double> fraction = Divide(cursor, over, units);
            return fraction.TryGet(out double part) ? number + part : fraction;
        }

        return number;
    }

    private static Parsed<double> Divide(TextCursor cursor, double over, MeasureUnits units) =>
        cursor.TryTakeNumber(out double under) && under > 0
            ? over / under
            : cursor.Problem($"The fraction in {cursor.Quoted()} has no number above 0 under its stroke.", Mend(units));

    private static string Mend(MeasureUnits units) => $"Write a number and a unit, for example {units.Examples}.";

    private static string Spelling(string unit) => unit.TrimEnd('.').ToLowerInvariant();

    // A part of a decimal unit is divided, not multiplied by a rounded fraction: "70 cm" is then 0.7 m to the last place.
    private static double Scaled(double number, double factor)
    {
        double divisor = Math.Round(1 / factor);
        return factor < 1 && divisor * factor == 1 ? number / divisor : number * factor;
    }
}
