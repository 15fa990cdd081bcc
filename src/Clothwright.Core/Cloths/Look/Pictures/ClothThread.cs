namespace Clothwright.Core.Cloths.Look.Pictures;

/// <summary>One thread of a cloth as a picture reads it.</summary>
/// <param name="Look">Number of its look.</param>
/// <param name="Clasp">Number of the look that takes over at the clasp, or −1.</param>
/// <param name="ClaspMillimetres">Where it takes over.</param>
/// <param name="Phase">Where in its stretches it begins, 0 to 1.</param>
/// <param name="Way">1 where its stretches follow each other away from the edge, −1 where towards it.</param>
internal readonly record struct ClothThread(int Look, int Clasp, float ClaspMillimetres, float Phase, float Way)
{
    /// <summary>Every thread of a direction, one after the other.</summary>
    /// <param name="round">One round of them.</param>
    /// <param name="looks">Numbers of all looks.</param>
    /// <param name="count">Threads.</param>
    /// <param name="extent">How far each runs, millimetres.</param>
    public static ClothThread[] Every(ThreadRound round, float[] looks, int count, double extent)
    {
        var threads = new ClothThread[count];
        for (int i = 0; i < count; i++)
        {
            int at = i % round.Looks.Length;
            int look = round.Looks[at];
            double perMillimetre = looks[look * LookNumbers.PerLook + 10];
            bool alike = looks[look * LookNumbers.PerLook + 19] > 0;

            // A yarn runs to and fro: every second thread begins where it would end.
            bool back = !alike && i % 2 == 1;
            double along = alike ? 0 : (i + (back ? 1 : 0)) * extent * perMillimetre;
            threads[i] = new ClothThread(look, round.Clasps[at], round.ClaspMillimetres[at], (float)(along - Math.Floor(along)), back ? -1 : 1);
        }

        return threads;
    }
}
