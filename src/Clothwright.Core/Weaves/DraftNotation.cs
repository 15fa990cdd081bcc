using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Clothwright.Core.Weaves;

/// <summary>Writes a draft in one line: <c>threading | tie-up | treadling</c>, for example <c>1234 | 1:12 2:23 3:34 4:14 | 1234</c>.</summary>
/// <remarks>
/// One character a thread: 1 to 9, then a = 10 to z = 35; higher numbers stand in square brackets, <c>[36]</c>.
/// <c>(13)</c> is one end on two shafts or one pick on two treadles; <c>0</c> is none.
/// A lift plan takes the place of tie-up and treadling: <c>1234 | lift 12 23 34 14</c>.
/// <c>sinking</c> and <c>8 shafts</c> follow where they are needed. Name and yarn orders are not part of it.
/// </remarks>
public static partial class DraftNotation
{
    private const int HighestLetter = 35;

    /// <summary>Writes a draft in one line.</summary>
    /// <param name="draft">A draft; if it holds tie-up, treadling and lift plan, the lift plan is written.</param>
    public static string Format(Draft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var text = new StringBuilder();
        foreach (ShaftSet end in draft.Threading) AppendThread(text, end);
        if (draft.LiftPlan.IsEmpty)
        {
            text.Append(" |");
            for (int treadle = 0; treadle < draft.TieUp.Length; treadle++)
            {
                text.Append(' ');
                AppendNumber(text, treadle + 1);
                text.Append(':');
                AppendMembers(text, draft.TieUp[treadle]);
            }

            text.Append(" | ");
            foreach (ShaftSet pick in draft.Treadling) AppendThread(text, pick);
        }
        else
        {
            text.Append(" | lift");
            foreach (ShaftSet pick in draft.LiftPlan)
            {
                text.Append(' ');
                AppendMembers(text, pick);
            }
        }

        if (!draft.RisingShed) text.Append(" | sinking");
        if (draft.Shafts != ShaftsInUse(draft.Threading, draft.TieUp, draft.LiftPlan))
        {
            text.Append(" | ").Append(draft.Shafts.ToString(CultureInfo.InvariantCulture)).Append(" shafts");
        }

        return text.ToString();
    }

    private static int ShaftsInUse(params ReadOnlySpan<ImmutableArray<ShaftSet>> lists)
    {
        int highest = 0;
        foreach (ImmutableArray<ShaftSet> list in lists)
        {
            foreach (ShaftSet set in list) highest = Math.Max(highest, set.Max);
        }

        return highest;
    }

    private static void AppendThread(StringBuilder text, ShaftSet thread)
    {
        if (thread.Count < 2)
        {
            AppendMembers(text, thread);
            return;
        }

        text.Append('(');
        AppendMembers(text, thread);
        text.Append(')');
    }

    private static void AppendMembers(StringBuilder text, ShaftSet set)
    {
        if (set.Count == 0) text.Append('0');
        foreach (int number in set.Members()) AppendNumber(text, number);
    }

    private static void AppendNumber(StringBuilder text, int number)
    {
        if (number > HighestLetter) text.Append('[').Append(number.ToString(CultureInfo.InvariantCulture)).Append(']');
        else text.Append((char)(number < 10 ? '0' + number : 'a' + number - 10));
    }
}
