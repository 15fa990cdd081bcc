using System.Numerics;
using Clothwright.Core.Photographs.Spectra;
using Clothwright.TestKit.Photographs;
using MathNet.Numerics.IntegralTransforms;

namespace Clothwright.Core.Tests.Photographs;

public class RadixTwoTransformTests
{
    [Theory]
    [InlineData(2)]
    [InlineData(8)]
    [InlineData(512)]
    public void A_row_is_transformed_as_Math_NET_does_it(int length)
    {
        var chance = new SeededChance((ulong)length);
        double[] real = [.. Enumerable.Range(0, length).Select(_ => chance.Normal())];
        double[] imaginary = [.. Enumerable.Range(0, length).Select(_ => chance.Normal())];
        Complex[] oracle = [.. real.Zip(imaginary, (re, im) => new Complex(re, im))];
        // MathNet.Numerics 5.0, forward transform without scaling, is another programme's reading of the same sum.
        Fourier.Forward(oracle, FourierOptions.NoScaling);

        new RadixTwoTransform(length).Row(real, imaginary);

        for (int i = 0; i < length; i++)
        {
            Assert.Equal(oracle[i].Real, real[i], 1e-9);
            Assert.Equal(oracle[i].Imaginary, imaginary[i], 1e-9);
        }
    }

    [Fact]
    public void A_square_is_transformed_along_rows_and_columns()
    {
        const int Side = 16;
        var chance = new SeededChance(3);
        double[] real = [.. Enumerable.Range(0, Side * Side).Select(_ => chance.Normal())];
        double[] imaginary = new double[Side * Side];
        Complex[][] rows = [.. Enumerable.Range(0, Side).Select(y => Enumerable.Range(0, Side).Select(x => new Complex(real[y * Side + x], 0)).ToArray())];
        foreach (Complex[] row in rows) Fourier.Forward(row, FourierOptions.NoScaling);
        for (int x = 0; x < Side; x++)
        {
            Complex[] column = [.. rows.Select(r => r[x])];
            Fourier.Forward(column, FourierOptions.NoScaling);
            for (int y = 0; y < Side; y++) rows[y][x] = column[y];
        }

        new RadixTwoTransform(Side).Square(real, imaginary);

        for (int i = 0; i < real.Length; i++)
        {
            Assert.Equal(rows[i / Side][i % Side].Real, real[i], 1e-9);
            Assert.Equal(rows[i / Side][i % Side].Imaginary, imaginary[i], 1e-9);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(12)]
    public void A_length_that_is_no_power_of_two_is_refused(int length) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new RadixTwoTransform(length));

    [Fact]
    public void Parts_of_another_length_are_refused()
    {
        var transform = new RadixTwoTransform(8);
        Assert.Throws<ArgumentException>(() => transform.Row(new double[8], new double[4]));
        Assert.Throws<ArgumentException>(() => transform.Square(new double[8], new double[8]));
    }
}
