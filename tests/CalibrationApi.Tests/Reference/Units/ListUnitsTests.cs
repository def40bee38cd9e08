using System.Globalization;
using System.Numerics;
using System.Text.Json.Nodes;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Tests.Reference.Units;

public sealed class ListUnitsTests
{
    // What the contract promised first; units may be added, never taken away.
    private static readonly Dictionary<string, string> Contract = new()
    {
        ["mass"] = "kg g t lb oz ton-us ton-uk",
        ["massPerArea"] = "kg/ha g/m2 lb/ac",
        ["countPerArea"] = "/m2 /ha /ft2 /ac",
        ["massPerRevolution"] = "kg/rev g/rev lb/rev oz/rev",
        ["revolutions"] = "rev",
        ["rotation"] = "rpm rev/s",
        ["speed"] = "km/h m/s mi/h",
        ["length"] = "m cm mm ft in",
        ["area"] = "ha m2 ac ft2",
        ["volume"] = "L m3 bu-us bu-imp ft3",
        ["bulkDensity"] = "kg/hL kg/m3 kg/L lb/ft3 lb/bu-us lb/bu-imp",
        ["massPerThousand"] = "g/1000",
        ["countPerMass"] = "/kg /lb",
        ["countPerLength"] = "/m /ft",
        ["time"] = "s min h",
        ["massPerTime"] = "kg/min g/s lb/min",
        ["ratio"] = "% 1 ppm",
        ["pulsesPerRevolution"] = "pulses/rev",
        ["pulsesPerDistance"] = "pulses/100m",
        ["pressure"] = "kPa mbar psi inH2O",
        ["temperature"] = "degC degF",
    };

    [Fact]
    public async Task Answer_EveryUnitOfTheContract_IsThereInItsDimension()
    {
        var units = (await GetAsync()).List("/units").Select(unit => $"{unit!["dimension"]} {unit["symbol"]}").ToHashSet();

        Assert.Superset(
            Contract.SelectMany(dimension => dimension.Value.Split(' ').Select(symbol => $"{dimension.Key} {symbol}")).ToHashSet(),
            units
        );
    }

    [Fact]
    public async Task Answer_EveryUnitThatPayloadsTake_IsThereOnce()
    {
        var symbols = (await GetAsync()).List("/units").Select(unit => unit!["symbol"]!.GetValue<string>());

        Assert.Equal(UnitTable.All.Select(unit => unit.Symbol).Order(StringComparer.Ordinal), symbols.Order(StringComparer.Ordinal));
    }

    // Exact factors: NIST SP 811 (2008), appendix B; imperial bushel and long ton: UK Weights and Measures Act 1985, schedule 1.
    [Theory]
    [InlineData("lb", "45359237", "100000000")]
    [InlineData("oz", "45359237", "1600000000")]
    [InlineData("ton-us", "90718474", "100000")]
    [InlineData("ton-uk", "10160469088", "10000000")]
    [InlineData("ac", "40468564224", "10000000")]
    [InlineData("ft", "3048", "10000")]
    [InlineData("in", "254", "10000")]
    [InlineData("mi/h", "1609344", "3600000")]
    [InlineData("km/h", "1000", "3600")]
    [InlineData("bu-us", "3523907016688", "100000000000000")]
    [InlineData("bu-imp", "3636872", "100000000")]
    [InlineData("ft3", "28316846592", "1000000000000")]
    [InlineData("lb/ac", "453592370000000", "4046856422400000000")]
    [InlineData("kg/hL", "10", "1")]
    [InlineData("%", "1", "100")]
    [InlineData("rpm", "1", "60")]
    public async Task Answer_Factor_IsTheExactRatio(string symbol, string numerator, string denominator)
    {
        var unit = (await GetAsync()).List("/units").Single(unit => unit!["symbol"]!.GetValue<string>() == symbol)!;

        var (over, under) = (unit["toSi"]!["numerator"]!.GetValue<long>(), unit["toSi"]!["denominator"]!.GetValue<long>());
        Assert.Equal(
            BigInteger.Parse(numerator, CultureInfo.InvariantCulture) * under,
            BigInteger.Parse(denominator, CultureInfo.InvariantCulture) * over
        );
    }

    [Fact]
    public async Task Answer_EveryFactor_IsReducedAndExactInADouble()
    {
        foreach (var unit in (await GetAsync()).List("/units"))
        {
            var (over, under) = (unit!["toSi"]!["numerator"]!.GetValue<long>(), unit["toSi"]!["denominator"]!.GetValue<long>());
            Assert.True(over > 0 && under > 0);
            Assert.True(over < 1L << 53 && under < 1L << 53, unit.ToJsonString());
            Assert.Equal(BigInteger.One, BigInteger.GreatestCommonDivisor(over, under));
        }
    }

    // NIST SP 811 (2008), B.9, temperature: T/K = t/degC + 273.15 and T/K = (t/degF + 459.67)/1.8.
    [Fact]
    public async Task Answer_Temperatures_SayWhatIsAddedAfterTheFactor()
    {
        var units = (await GetAsync())
            .List("/units")
            .Where(unit => unit!["dimension"]!.GetValue<string>() == "temperature")
            .ToDictionary(unit => unit!["symbol"]!.GetValue<string>(), unit => unit!);

        Assert.Equal(273.15, ToSi(units["degC"], 0), 1e-12);
        Assert.Equal(459.67 / 1.8, ToSi(units["degF"], 0), 1e-12);
        Assert.Equal(373.15, ToSi(units["degF"], 212), 1e-12);

        static double ToSi(JsonNode unit, double value) =>
            value * unit["toSi"]!["numerator"]!.GetValue<long>() / unit["toSi"]!["denominator"]!.GetValue<long>()
            + unit["offsetInSi"]!.GetValue<double>();
    }

    [Fact]
    public async Task Answer_EveryOtherUnit_HasNoOffset()
    {
        var others = (await GetAsync()).List("/units").Where(unit => unit!["dimension"]!.GetValue<string>() != "temperature").ToArray();

        Assert.NotEmpty(others);
        Assert.All(others, unit => Assert.Null(unit!["offsetInSi"]));
    }

    [Fact]
    public async Task Answer_MayBeKeptForAnHour()
    {
        using var response = await ApiHost.Client.GetAsync(new Uri("/v1/units", UriKind.Relative));

        Assert.Equal(TimeSpan.FromHours(1), response.Headers.CacheControl?.MaxAge);
        Assert.True(response.Headers.CacheControl?.Public);
    }

    private static async Task<Answer> GetAsync()
    {
        using var response = await ApiHost.Client.GetAsync(new Uri("/v1/units", UriKind.Relative));
        return await Answer.ReadAsync(response);
    }
}
