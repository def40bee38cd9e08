using System.Net;
using CalibrationApi.Plumbing.Limits;

namespace CalibrationApi.Tests.Plumbing.Limits;

public sealed class AddressBlockTests
{
    [Theory]
    [InlineData("192.0.2.1", "192.0.2.1", true)]
    [InlineData("192.0.2.1", "::ffff:192.0.2.1", true)]
    [InlineData("192.0.2.1", "192.0.2.2", false)]
    [InlineData("2001:db8:1:2::1", "2001:db8:1:2:ffff:ffff:ffff:ffff", true)]
    [InlineData("2001:db8:1:2::1", "2001:db8:1:3::1", false)]
    // The bits of the IPv4 address, as the beginning of an IPv6 one.
    [InlineData("192.0.2.1", "0:0:c000:201::", false)]
    public void Of_TwoAddresses_AreTheSameWhenOneSubscriberHasThem(string one, string other, bool isSame)
    {
        Assert.Equal(isSame, AddressBlock.Of(IPAddress.Parse(one)) == AddressBlock.Of(IPAddress.Parse(other)));
    }
}
