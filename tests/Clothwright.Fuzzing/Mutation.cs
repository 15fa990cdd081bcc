namespace Clothwright.Fuzzing;

/// <summary>One mutated file: one to eight changes to a sound one, small and large.</summary>
internal sealed class Mutation
{
    private static readonly byte[][] Numbers = [.. new[] { "0", "-1", "65", "255", "4294967296", "2000000000", "1e9", "0,5", "NaN", "1.5", "" }.Select(System.Text.Encoding.ASCII.GetBytes)];

    private readonly FuzzTarget _target;
    private readonly Random _random;
    private List<byte> _file;

    public Mutation(FuzzTarget target, int seed)
    {
        _target = target;
        _random = new Random(seed);
        _file = [.. Pick(target.Seeds)];
    }

    public byte[] File()
    {
        for (int changes = _random.Next(1, 9); changes > 0; changes--) Change();
        return [.. _file];
    }

    private void Change()
    {
        int at = _random.Next(_file.Count + 1);
        int length = Math.Min(_random.Next(1, 1 << _random.Next(1, 9)), _file.Count - at);
        switch (_random.Next(11))
        {
            case 0:
                if (at < _file.Count) _file[at] = (byte)_random.Next(256);
                break;
            case 1:
                _file.RemoveRange(at, length);
                break;
            case 2:
                _file.InsertRange(_random.Next(_file.Count + 1), _file.GetRange(at, length));
                break;
            case 3:
                _file.InsertRange(at, Pick(_target.Words));
                break;
            case 4:
                ReplaceNumber(at);
                break;
            case 5:
                MoveLine(at);
                break;
            case 6:
                _file.RemoveRange(at, _file.Count - at);
                break;
            case 7:
                _file.InsertRange(at, Pick(_target.Seeds).Take(_random.Next(2_000)));
                break;
            case 8:
                if (at < _file.Count) _file[at] ^= (byte)(1 << _random.Next(8));
                break;
            case 9:
                _file.InsertRange(at, Enumerable.Repeat(Pick(_target.Words), _random.Next(1, 200)).SelectMany(word => word).Take(20_000));
                break;
            default:
                if (_random.Next(20) == 0) _file = [.. System.Text.Encoding.Unicode.GetBytes(System.Text.Encoding.Latin1.GetString([.. _file]))];
                break;
        }
    }

    // The next run of digits becomes a number that is hard to digest.
    private void ReplaceNumber(int at)
    {
        int start = _file.FindIndex(at, b => b is >= (byte)'0' and <= (byte)'9');
        if (start < 0) return;
        int end = start;
        while (end < _file.Count && _file[end] is >= (byte)'0' and <= (byte)'9') end++;
        _file.RemoveRange(start, end - start);
        _file.InsertRange(start, _random.Next(3) == 0 ? System.Text.Encoding.ASCII.GetBytes($"{_random.Next(1 << _random.Next(1, 31))}") : Pick(Numbers));
    }

    private void MoveLine(int at)
    {
        int start = at == 0 ? 0 : _file.LastIndexOf((byte)'\n', at - 1) + 1;
        int end = at >= _file.Count ? -1 : _file.IndexOf((byte)'\n', at);
        int length = (end < 0 ? _file.Count : end + 1) - start;
        List<byte> line = _file.GetRange(start, length);
        if (_random.Next(2) == 0) _file.RemoveRange(start, length);
        _file.InsertRange(_random.Next(_file.Count + 1), line);
    }

    private T Pick<T>(IReadOnlyList<T> list) => list[_random.Next(list.Count)];
}
