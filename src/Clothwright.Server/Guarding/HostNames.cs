using System.Collections.Frozen;
using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Clothwright.Server.Guarding;

/// <summary>The names under which the server may be called.</summary>
internal sealed class HostNames
{
    private static readonly string[] Loopback = ["localhost", "127.0.0.1", "[::1]"];

    private readonly FrozenSet<string> _names;

    private HostNames(IEnumerable<string> names) => _names = names.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>The names of this machine for itself, and, where others in the network may call, those by which they know it.</summary>
    public static HostNames Of(bool lan) => new(lan ? [.. Loopback, .. NetworkNames()] : Loopback);

    /// <summary>The machine's addresses in its networks, IPv4 first; those by which it speaks to itself left out.</summary>
    public static IPAddress[] Addresses() =>
    [
        .. NetworkInterface.GetAllNetworkInterfaces()
            .Where(i => i.OperationalStatus == OperationalStatus.Up && i.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .SelectMany(i => i.GetIPProperties().UnicastAddresses)
            .Select(a => a.Address)
            .Where(a => !IPAddress.IsLoopback(a) && !a.IsIPv6LinkLocal)
            .OrderBy(a => a.AddressFamily != AddressFamily.InterNetwork),
    ];

    public bool Include(string host) => _names.Contains(host);

    // "name.local" is how a machine is called in a house without a name server (RFC 6762).
    private static IEnumerable<string> NetworkNames() =>
    [
        Dns.GetHostName(), $"{Dns.GetHostName()}.local",
        .. Addresses().Select(a => a.AddressFamily == AddressFamily.InterNetworkV6 ? $"[{new IPAddress(a.GetAddressBytes())}]" : a.ToString()),
    ];
}
