namespace Clothwright.Core.Cloths.Puckering;

/// <summary>How a cloth lies whose threads draw in by unlike amounts. The bounds are our judgement; prove them on a sample.</summary>
public enum PuckerGrade
{
    /// <summary>Under 1 %: it lies flat.</summary>
    Flat,

    /// <summary>1 to 2.5 %: a slight ripple, which pressing lays.</summary>
    Ripple,

    /// <summary>2.5 to 6 %: it puckers.</summary>
    Puckers,

    /// <summary>6 % and more: it stands up in folds, as it does where that is wanted.</summary>
    Folds,
}
