namespace Clothwright.Core.Photographs.Threads;

/// <summary>The mean thread: what lies between one gap and the next, averaged over all threads of some strips.</summary>
internal sealed class GapFold
{
    private const int Places = 24;

    private readonly double[] _light = new double[Places];
    private readonly double[] _valleys = new double[Places];
    private readonly double[] _hue = new double[Places];
    private int _threads;

    /// <summary>Takes in a strip.</summary>
    /// <param name="strip">The strip.</param>
    /// <param name="gaps">Places of its gaps, in samples.</param>
    public void Add(ThreadStrip strip, double[] gaps)
    {
        for (int i = 1; i < gaps.Length; i++, _threads++)
        {
            for (int j = 0; j < Places; j++)
            {
                double place = Math.Clamp(gaps[i - 1] + (gaps[i] - gaps[i - 1]) * j / Places, 0, strip.Light.Length - 1.001);
                int left = (int)place;
                double share = place - left;
                _light[j] += strip.Light[left] * (1 - share) + strip.Light[left + 1] * share;
                _valleys[j] += strip.Valleys[left] * (1 - share) + strip.Valleys[left + 1] * share;
                _hue[j] += strip.Hue[left] * (1 - share) + strip.Hue[left + 1] * share;
            }
        }
    }

    /// <summary>How deep another gap lies inside the mean thread, as a share of its edge: near 1 where two threads were taken for one.</summary>
    public double InnerGap()
    {
        double deepest = 0;
        for (int j = 2; j < Places - 1; j++)
        {
            if (_valleys[j] < _valleys[j - 1] || _valleys[j] < _valleys[j + 1]) continue;
            double rise = _valleys[j] - Math.Max(_valleys.AsSpan(0, j + 1).ToArray().Min(), _valleys.AsSpan(j).ToArray().Min());
            deepest = Math.Max(deepest, rise);
        }

        double whole = _valleys[0] - _valleys.Min();
        return whole > 1e-9 ? Math.Min(1, deepest / whole) : 1;
    }

    /// <summary>Difference of the lightest and the darkest place of the mean thread, in nepers.</summary>
    public double LightSwing => _threads == 0 ? 0 : (_light.Max() - _light.Min()) / _threads;

    /// <summary>Difference of the reddest and the bluest place of the mean thread, in nepers.</summary>
    public double HueSwing => _threads == 0 ? 0 : (_hue.Max() - _hue.Min()) / _threads;
}
