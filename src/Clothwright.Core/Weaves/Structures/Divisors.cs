namespace Clothwright.Core.Weaves.Structures;

internal static class Divisors
{
    /// <summary>Greatest common divisor of two whole numbers, not both 0.</summary>
    public static int Greatest(int a, int b) => b == 0 ? Math.Abs(a) : Greatest(b, a % b);
}
