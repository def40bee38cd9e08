using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Quantities;

public sealed class UnitTableTests
{
    // The closed lists of the contract, in its order. Pulses stand in two dimensions because a count per revolution
    // and a count per distance measure different things.
    private static readonly Dictionary<Dimension, string> ClosedLists = new()
    {
        [Dimension.Mass] = "kg g t lb oz ton-us ton-uk",
        [Dimension.MassPerArea] = "kg/ha g/m2 lb/ac",
        [Dimension.CountPerArea] = "/m2 /ha /ft2 /ac",
        [Dimension.MassPerRevolution] = "kg/rev g/rev lb/rev oz/rev",
        [Dimension.Revolutions] = "rev",
        [Dimension.Rotation] = "rpm rev/s",
        [Dimension.Speed] = "km/h m/s mi/h",
        [Dimension.Length] = "m cm mm ft in",
        [Dimension.Area] = "ha m2 ac ft2",
        [Dimension.Volume] = "L m3 bu-us bu-imp ft3",
        [Dimension.BulkDensity] = "kg/hL kg/m3 kg/L lb/ft3 lb/bu-us lb/bu-imp",
        [Dimension.MassPerThousand] = "g/1000",
        [Dimension.CountPerMass] = "/kg /lb",
        [Dimension.CountPerLength] = "/m /ft",
        [Dimension.Time] = "s min h",
        [Dimension.MassPerTime] = "kg/min g/s lb/min",
        [Dimension.VolumePerTime] = "m3/h m3/min L/s ft3/min",
        [Dimension.Ratio] = "% 1 ppm",
        [Dimension.PulsesPerRevolution] = "pulses/rev",
        [Dimension.PulsesPerDistance] = "pulses/100m",
        [Dimension.Pressure] = "kPa mbar psi inH2O",
        [Dimension.Temperature] = "degC degF",
    };

    public static TheoryData<string> Symbols => [.. UnitTable.All.Select(unit => unit.Symbol)];

    public static TheoryData<Dimension> Dimensions => [.. Enum.GetValues<Dimension>()];

    [Theory]
    [MemberData(nameof(Dimensions))]
    public void Of_EachDimension_HoldsExactlyTheClosedListInItsOrder(Dimension dimension) =>
        Assert.Equal(ClosedLists[dimension].Split(' '), UnitTable.Of(dimension).Select(unit => unit.Symbol));

    [Fact]
    public void All_Symbols_AreUniqueOverAllDimensions() =>
        Assert.Equal(UnitTable.All.Count, UnitTable.All.Select(unit => unit.Symbol).Distinct(StringComparer.Ordinal).Count());

    [Fact]
    public void All_Units_StandInTheListOfTheirOwnDimensionOnly() =>
        Assert.Equal(UnitTable.All, Enum.GetValues<Dimension>().SelectMany(UnitTable.Of));

    [Fact]
    public void Spellings_OfPeople_AreNoSymbolsThemselvesAndLeadToOne() => Assert.All(UnitTable.Spellings, spelling =>
        {
            Assert.Null(UnitTable.Find(spelling.Key));
            Assert.False(UnitTable.Ambiguous.ContainsKey(spelling.Key));
            Assert.Equal(spelling.Value, UnitTable.Meant(spelling.Key)?.Symbol);
        });

    [Theory]
    [InlineData("MPH", "mi/h")]
    [InlineData(" kg", "kg")]
    [InlineData("KG", "kg")]
    [InlineData("degc", "degC")]
    [InlineData("bu", null)]
    [InlineData("stone", null)]
    [InlineData("", null)]
    public void Meant_WhatPeopleWrite_IsTheUnitWhereItIsClear(string text, string? symbol) =>
        Assert.Equal(symbol, UnitTable.Meant(text)?.Symbol);

    [Fact]
    public void All_UcumCodes_AreUniqueWithinADimension() =>
        Assert.All(Enum.GetValues<Dimension>(), dimension =>
            Assert.Distinct(UnitTable.Of(dimension).Select(unit => unit.Ucum ?? unit.Symbol))
        );

    [Fact]
    public void All_EveryAcre_SaysThatItIsTheInternationalOne()
    {
        var acres = UnitTable.All.Where(unit => unit.Symbol is "ac" or "lb/ac" or "/ac").ToArray();

        Assert.Equal(3, acres.Length);
        Assert.All(acres, unit => Assert.Contains("International acre", unit.Note, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Symbols))]
    public void ToSi_BothParts_AreExactAsDoubles(string symbol)
    {
        var factor = UnitTable.Get(symbol).ToSi;

        Assert.InRange(factor.Numerator, 1, (1L << 53) - 1);
        Assert.InRange(factor.Denominator, 1, (1L << 53) - 1);
    }

    [Theory]
    [MemberData(nameof(Symbols))]
    public void FromCanonical_AfterCanonical_GivesTheValueBack(string symbol)
    {
        var unit = UnitTable.Get(symbol);

        // 1/3 has no finite binary expansion; the others are magnitudes that occur.
        foreach (var value in (double[])[1.0 / 3, 1, 17.08, 0.342, 5000, -2.5, 1e-9, 1e12])
        {
            // A temperature loses what its offset rounds away: some 273 in the last bit.
            var offset = Math.Abs(unit.OffsetInSi / unit.ToSi.Value);
            Assert.Equal(value, unit.FromCanonical(unit.Canonical(value)), 4.5e-16 * (Math.Abs(value) + offset));
        }
    }

    [Theory]
    [MemberData(nameof(Symbols))]
    public void Canonical_OfOne_IsTheFactorAboveZero(string symbol)
    {
        var unit = UnitTable.Get(symbol);

        Assert.Equal(unit.OffsetInSi, unit.Canonical(0));
        Assert.Equal(unit.ToSi.Value + unit.OffsetInSi, unit.Canonical(1));
    }

    [Fact]
    public void OffsetInSi_EveryUnitButThoseOfTemperature_IsZero() =>
        Assert.Equal(UnitTable.Of(Dimension.Temperature), UnitTable.All.Where(unit => unit.OffsetInSi != 0));

    // Source: NIST SP 811, B.9, temperature: T/K = t/degC + 273.15 and t/degC = (t/degF - 32) / 1.8.
    [Theory]
    [InlineData("degC", 0, 273.15)]
    [InlineData("degC", -40, 233.15)]
    [InlineData("degF", -40, 233.15)]
    [InlineData("degF", 32, 273.15)]
    [InlineData("degF", 212, 373.15)]
    public void Canonical_Temperature_IsInKelvin(string symbol, double value, double kelvin) =>
        Assert.Equal(kelvin, UnitTable.Get(symbol).Canonical(value), 1e-12);

    [Theory]
    [InlineData(90, "kg/ha")]
    [InlineData(200, "kg/ha")]
    [InlineData(9, "km/h")]
    [InlineData(62, "kg/hL")]
    [InlineData(35, "rpm")]
    public void FromCanonical_AfterCanonicalOfARoundNumber_StaysRound(double value, string symbol)
    {
        var unit = UnitTable.Get(symbol);

        Assert.Equal(value, unit.FromCanonical(unit.Canonical(value)));
    }

    [Fact]
    public void Canonical_PulsesPerHundredMetres_ArePulsesPerMetre() =>
        Assert.Equal(3.65, UnitTable.Get("pulses/100m").Canonical(365), 1e-15);

    [Fact]
    public void Find_PulsesPerRevolutionAndPerDistance_CannotBeConvertedIntoOneAnother() =>
        Assert.NotEqual(UnitTable.Get("pulses/rev").Dimension, UnitTable.Get("pulses/100m").Dimension);

    [Theory]
    [InlineData("Kg")]
    [InlineData("KG")]
    [InlineData("lbs")]
    [InlineData("")]
    [InlineData(" kg")]
    public void Find_SymbolThatIsNotExactlyListed_GivesNothing(string symbol)
    {
        Assert.Null(UnitTable.Find(symbol));
        Assert.Throws<ArgumentException>(() => UnitTable.Get(symbol));
    }

    [Fact]
    public void Ambiguous_EverySymbol_IsNoUnitItselfAndOffersSeveralOfOneDimension()
    {
        Assert.Contains("bu", UnitTable.Ambiguous.Keys);
        Assert.Contains("lb/bu", UnitTable.Ambiguous.Keys);
        Assert.All(UnitTable.Ambiguous, pair =>
        {
            Assert.Null(UnitTable.Find(pair.Key));
            Assert.True(pair.Value.Length >= 2);
            Assert.Single(pair.Value.Select(symbol => UnitTable.Get(symbol).Dimension).Distinct());
        });
    }

    [Fact]
    public void Ambiguous_TheTwoBushels_DifferByMoreThanThreePercent() =>
        Assert.Equal(1.0321, UnitTable.Get("bu-imp").ToSi.Value / UnitTable.Get("bu-us").ToSi.Value, 0.0001);
}
