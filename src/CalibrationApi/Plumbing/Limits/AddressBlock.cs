using System.Buffers.Binary;
using System.Net;
using System.Net.Sockets;

namespace CalibrationApi.Plumbing.Limits;

/// <summary>Whom an address stands for: an IPv4 address for itself, an IPv6 address for its network of 64 bits.</summary>
/// <remarks>One subscriber has a whole IPv6 network and can send from any address in it.</remarks>
internal readonly record struct AddressBlock(bool IsIPv6, ulong Bits)
{
    /// <summary>The block of an address; an IPv4 address written as an IPv6 one is an IPv4 address.</summary>
    public static AddressBlock Of(IPAddress address)
    {
        Span<byte> bytes = stackalloc byte[16];
        if (address.AddressFamily == AddressFamily.InterNetworkV6 && !address.IsIPv4MappedToIPv6)
        {
            address.TryWriteBytes(bytes, out _);
            return new AddressBlock(true, BinaryPrimitives.ReadUInt64BigEndian(bytes));
        }

        address.MapToIPv4().TryWriteBytes(bytes, out _);
        return new AddressBlock(false, BinaryPrimitives.ReadUInt32BigEndian(bytes));
    }
}
