using System.Collections;
using System.Reflection;

namespace Clothwright.Architecture.Tests;

/// <summary>Finds public numbers that say neither their unit nor what pure number they are.</summary>
/// <remarks>
/// A measured number is a quantity type or carries its unit in the name of the member, of the parameter, or of the method that takes or
/// gives it. A pure number carries a word of <see cref="PureWords"/>, or its type one of <see cref="PureTypes"/>. A whole number counts things and is named after them, so of whole
/// numbers only those named after a measure are held to the rule.
/// </remarks>
internal static class NakedNumbers
{
    private static readonly string[] UnitWords =
    [
        "Metre", "Centimetre", "Millimetre", "Micrometre", "Inch", "Yard", "Point", "Pixel", "Gram", "Kilogram", "Ounce", "Pound", "Momme",
        "Tex", "Denier", "Newton", "Pascal", "Megapascal", "Hour", "Minute", "Second", "Degree", "Radian", "Percent", "Byte", "Character",
    ];

    // Reviewed: each is a number without unit in the trade, in textile science or in algebra.
    private static readonly string[] PureWords =
    [
        "Fraction", "Ratio", "Share", "Factor", "Times", "Coefficient", "Count", "Number", "Exponent", "Multiplier", "Severity", "Probability",
        "Float", // threads for each change of face
        "Flattening", "Tightness", "Cover", "Crimp", "Firmness", "K", "Phi", "Allowance", "Stiffness",
        "Evenness", "RefractiveIndex",
        "PerEnd", "PerPick", "PerDent", "PerGroundPick", "PerLength", // like over like
    ];

    // Reviewed: a type named so holds nothing but pure numbers.
    private static readonly string[] PureTypes = ["Share", "Ratio", "Factor", "Coefficient", "Number"];

    private static readonly string[] MeasureWords =
        ["Length", "Width", "Height", "Thickness", "Distance", "Diameter", "Mass", "Weight", "Area", "Duration", "Time", "Speed", "Temperature", "Angle", "Price"];

    /// <summary>Every breach as <c>Type.Member</c> or <c>Type.Method(parameter)</c>, in order.</summary>
    /// <param name="types">Types to look at; their public members count.</param>
    public static IReadOnlyList<string> In(IEnumerable<Type> types) =>
        [.. types.Where(t => !t.IsEnum).SelectMany(Of).Distinct().Order(StringComparer.Ordinal)];

    private static IEnumerable<string> Of(Type type)
    {
        const BindingFlags Public = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        if (Says(type.Name.Split('`')[0], PureTypes)) yield break;
        string name = type.FullName!.Split('`')[0].Split('.', 2)[1];
        foreach (PropertyInfo property in type.GetProperties(Public).Where(p => IsNaked(p.PropertyType, p.Name))) yield return $"{name}.{property.Name}";
        foreach (FieldInfo field in type.GetFields(Public).Where(f => IsNaked(f.FieldType, f.Name))) yield return $"{name}.{field.Name}";
        foreach (MethodInfo method in type.GetMethods(Public).Where(m => !m.IsSpecialName && !IsOfEveryObject(m)))
        {
            if (IsNaked(method.ReturnType, method.Name)) yield return $"{name}.{method.Name}()";
            foreach (ParameterInfo parameter in method.GetParameters().Where(p => IsNaked(p.ParameterType, p.Name!, method.Name))) yield return $"{name}.{method.Name}({parameter.Name})";
        }
    }

    private static bool IsOfEveryObject(MethodInfo method) => method.Name is "GetHashCode" or "CompareTo" or "Deconstruct";

    private static bool IsNaked(Type type, params string[] names)
    {
        Type number = NumberIn(type);
        if (number == typeof(double) || number == typeof(float) || number == typeof(decimal)) return !names.Any(n => Says(n, UnitWords) || Says(n, PureWords));
        return (number == typeof(int) || number == typeof(long)) && Says(names[0], MeasureWords) && !names.Any(n => Says(n, UnitWords) || Says(n, PureWords));
    }

    // double?, double[], ImmutableArray<double>, Derived<double> and the like hold numbers too.
    private static Type NumberIn(Type type)
    {
        Type inner = Nullable.GetUnderlyingType(type) ?? type;
        if (inner.IsByRef || inner.IsArray) inner = inner.GetElementType()!;
        bool holds = inner.IsGenericType && inner.GetGenericArguments() is [_] && (typeof(IEnumerable).IsAssignableFrom(inner) || inner.Name.Contains("Span", StringComparison.Ordinal));
        return holds ? inner.GetGenericArguments()[0] : inner;
    }

    // A word of the name, whole: it starts the name or with a capital, and another word or the end follows, or a plural.
    private static bool Says(string name, string[] words) => words.Any(word => At(name, word) >= 0);

    private static int At(string name, string word)
    {
        for (int from = 0; from <= name.Length - word.Length; from++)
        {
            bool begins = char.IsUpper(name[from]) || from == 0;
            if (!begins || string.Compare(name, from, word, 0, word.Length, StringComparison.OrdinalIgnoreCase) != 0) continue;
            string rest = name[(from + word.Length)..];
            if (rest is "" or "s" or "es" || char.IsUpper(rest[0]) || char.IsDigit(rest[0]) || (rest[0] == 's' && char.IsUpper(rest[1])) || (rest.StartsWith("es", StringComparison.Ordinal) && rest.Length > 2 && char.IsUpper(rest[2]))) return from;
        }

        return -1;
    }
}
