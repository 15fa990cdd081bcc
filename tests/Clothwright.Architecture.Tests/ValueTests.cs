using System.Reflection;

namespace Clothwright.Architecture.Tests;

public class ValueTests
{
    private static readonly Type[] CoreTypes = [.. typeof(Clothwright.Core.Quantities.Length).Assembly.GetExportedTypes()];

    [Fact]
    public void Public_types_of_core_cannot_be_changed_once_made()
    {
        string[] mutable =
        [
            .. CoreTypes.SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.Instance)
                .Where(f => !f.IsInitOnly && !t.IsEnum)
                .Select(f => $"{t.FullName}.{f.Name}")),
            .. CoreTypes.SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Instance)
                .Where(p => p.DeclaringType!.Assembly == t.Assembly && p.SetMethod is { IsPublic: true } setter && !IsInit(setter))
                .Select(p => $"{t.FullName}.{p.Name}")),
        ];
        Assert.Empty(mutable);
    }

    [Fact]
    public void The_check_for_change_sees_a_plain_setter()
    {
        PropertyInfo property = typeof(Changeable).GetProperty(nameof(Changeable.Ends))!;
        Assert.False(IsInit(property.SetMethod!));
    }

    private static bool IsInit(MethodInfo setter) =>
        setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(System.Runtime.CompilerServices.IsExternalInit));

    private sealed class Changeable
    {
        public int Ends { get; set; }
    }
}
