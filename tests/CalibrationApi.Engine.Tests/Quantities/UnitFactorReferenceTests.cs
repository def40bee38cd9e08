using CalibrationApi.Engine.Quantities;
using UN = UnitsNet;

namespace CalibrationApi.Engine.Tests.Quantities;

/// <summary>Every factor against a general-purpose unit library and against printed tables.</summary>
[Trait("Category", "Reference")]
public sealed class UnitFactorReferenceTests
{
    // The library keeps its factors as doubles or decimals of its own choosing; it is independent of our table.
    private const double LibraryAccuracy = 1e-14;

    private static readonly UN.Area Acre = UN.Area.FromAcres(1);
    private static readonly UN.Mass Pound = UN.Mass.FromPounds(1);

    // Source: UnitsNet (general-purpose open-source library), the value of one unit in the SI unit of its dimension.
    private static readonly Dictionary<string, double> Library = new(StringComparer.Ordinal)
    {
        ["kg"] = UN.Mass.FromKilograms(1).Kilograms,
        ["g"] = UN.Mass.FromGrams(1).Kilograms,
        ["t"] = UN.Mass.FromTonnes(1).Kilograms,
        ["lb"] = UN.Mass.FromPounds(1).Kilograms,
        ["oz"] = UN.Mass.FromOunces(1).Kilograms,
        ["ton-us"] = UN.Mass.FromShortTons(1).Kilograms,
        ["ton-uk"] = UN.Mass.FromLongTons(1).Kilograms,
        ["g/m2"] = UN.AreaDensity.FromGramsPerSquareMeter(1).KilogramsPerSquareMeter,
        ["/m2"] = UN.ReciprocalArea.FromInverseSquareMeters(1).InverseSquareMeters,
        ["rpm"] = UN.RotationalSpeed.FromRevolutionsPerMinute(1).RevolutionsPerSecond,
        ["rev/s"] = UN.RotationalSpeed.FromRevolutionsPerSecond(1).RevolutionsPerSecond,
        ["km/h"] = UN.Speed.FromKilometersPerHour(1).MetersPerSecond,
        ["m/s"] = UN.Speed.FromMetersPerSecond(1).MetersPerSecond,
        ["mi/h"] = UN.Speed.FromMilesPerHour(1).MetersPerSecond,
        ["m"] = UN.Length.FromMeters(1).Meters,
        ["cm"] = UN.Length.FromCentimeters(1).Meters,
        ["mm"] = UN.Length.FromMillimeters(1).Meters,
        ["ft"] = UN.Length.FromFeet(1).Meters,
        ["in"] = UN.Length.FromInches(1).Meters,
        ["ha"] = UN.Area.FromHectares(1).SquareMeters,
        ["m2"] = UN.Area.FromSquareMeters(1).SquareMeters,
        ["ac"] = UN.Area.FromAcres(1).SquareMeters,
        ["ft2"] = UN.Area.FromSquareFeet(1).SquareMeters,
        ["L"] = UN.Volume.FromLiters(1).CubicMeters,
        ["m3"] = UN.Volume.FromCubicMeters(1).CubicMeters,
        ["ft3"] = UN.Volume.FromCubicFeet(1).CubicMeters,
        ["kg/m3"] = UN.Density.FromKilogramsPerCubicMeter(1).KilogramsPerCubicMeter,
        ["kg/L"] = UN.Density.FromKilogramsPerLiter(1).KilogramsPerCubicMeter,
        ["/m"] = UN.ReciprocalLength.FromInverseMeters(1).InverseMeters,
        ["/ft"] = UN.ReciprocalLength.FromInverseFeet(1).InverseMeters,
        ["s"] = UN.Duration.FromSeconds(1).Seconds,
        ["min"] = UN.Duration.FromMinutes(1).Seconds,
        ["h"] = UN.Duration.FromHours(1).Seconds,
        ["kg/min"] = UN.MassFlow.FromKilogramsPerMinute(1).KilogramsPerSecond,
        ["g/s"] = UN.MassFlow.FromGramsPerSecond(1).KilogramsPerSecond,
        ["m3/h"] = UN.VolumeFlow.FromCubicMetersPerHour(1).CubicMetersPerSecond,
        ["m3/min"] = UN.VolumeFlow.FromCubicMetersPerMinute(1).CubicMetersPerSecond,
        ["L/s"] = UN.VolumeFlow.FromLitersPerSecond(1).CubicMetersPerSecond,
        ["%"] = UN.Ratio.FromPercent(1).DecimalFractions,
        ["1"] = UN.Ratio.FromDecimalFractions(1).DecimalFractions,
        ["ppm"] = UN.Ratio.FromPartsPerMillion(1).DecimalFractions,
        ["kPa"] = UN.Pressure.FromKilopascals(1).Pascals,
        ["mbar"] = UN.Pressure.FromMillibars(1).Pascals,
        ["psi"] = UN.Pressure.FromPoundsForcePerSquareInch(1).Pascals,
        ["degC"] = UN.Temperature.FromDegreesCelsius(1).Kelvins - UN.Temperature.FromDegreesCelsius(0).Kelvins,
    };

    // The library has no such unit; its constituents are the library's (or, for the bushels, those of NIST SP 811:
    // 2150.42 cubic inches and eight imperial gallons).
    private static readonly Dictionary<string, double> Constituents = new(StringComparer.Ordinal)
    {
        ["kg/ha"] = 1 / UN.Area.FromHectares(1).SquareMeters,
        ["lb/ac"] = Pound.Kilograms / Acre.SquareMeters,
        ["/ha"] = 1 / UN.Area.FromHectares(1).SquareMeters,
        ["/ac"] = 1 / Acre.SquareMeters,
        ["kg/rev"] = 1,
        ["g/rev"] = UN.Mass.FromGrams(1).Kilograms,
        ["lb/rev"] = Pound.Kilograms,
        ["oz/rev"] = UN.Mass.FromOunces(1).Kilograms,
        ["rev"] = 1,
        ["bu-us"] = UN.Volume.FromCubicInches(2150.42).CubicMeters,
        ["bu-imp"] = UN.Volume.FromImperialGallons(8).CubicMeters,
        ["kg/hL"] = 1 / UN.Volume.FromHectoliters(1).CubicMeters,
        ["lb/bu-us"] = Pound.Kilograms / UN.Volume.FromCubicInches(2150.42).CubicMeters,
        ["lb/bu-imp"] = Pound.Kilograms / UN.Volume.FromImperialGallons(8).CubicMeters,
        ["g/1000"] = UN.Mass.FromGrams(1).Kilograms / 1000,
        ["/kg"] = 1,
        ["/lb"] = 1 / Pound.Kilograms,
        ["pulses/rev"] = 1,
        ["pulses/100m"] = 1 / UN.Length.FromHectometers(1).Meters,
        // The library has these five, but with factors that are themselves rounded (by 4e-7, 7e-9, 3e-6, 7e-9 and 2e-14).
        ["/ft2"] = 1 / UN.Area.FromSquareFeet(1).SquareMeters,
        ["lb/ft3"] = Pound.Kilograms / UN.Volume.FromCubicFeet(1).CubicMeters,
        ["lb/min"] = Pound.Kilograms / UN.Duration.FromMinutes(1).Seconds,
        ["ft3/min"] = UN.Volume.FromCubicFeet(1).CubicMeters / UN.Duration.FromMinutes(1).Seconds,
        ["inH2O"] = 1000 * 9.80665 * UN.Length.FromInches(1).Meters,
        ["degF"] = 5.0 / 9,
    };

    public static TheoryData<string, double> LibraryFactors => Pairs(Library);

    public static TheoryData<string, double> ConstituentFactors => Pairs(Constituents);

    public static TheoryData<string, string, string, string> PrintedFactors
    {
        get
        {
            var data = new TheoryData<string, string, string, string>();
            foreach (var row in ReferenceTable.Read("units-nist-sp811.csv").Rows)
                data.Add(row["symbol"], row["printed"], row["in"], $"NIST SP 811, {row["entry"]} ({row["tag"]})");
            foreach (var row in ReferenceTable.Read("units-handbook.csv").Rows)
                data.Add(row["symbol"], row["printed"], row["in"], $"{row["source"]} ({row["tag"]})");
            return data;
        }
    }

    [Fact]
    public void All_EveryUnit_IsCheckedOnceAgainstTheLibraryOrItsConstituents() =>
        Assert.Equal(
            UnitTable.All.Select(unit => unit.Symbol).Order(StringComparer.Ordinal),
            Library.Keys.Concat(Constituents.Keys).Order(StringComparer.Ordinal)
        );

    [Theory]
    [MemberData(nameof(LibraryFactors))]
    public void ToSi_UnitOfTheLibrary_HasTheSameFactor(string symbol, double factor) =>
        NearlyEqual.Assert(factor, UnitTable.Get(symbol).ToSi.Value, LibraryAccuracy, symbol);

    [Theory]
    [MemberData(nameof(ConstituentFactors))]
    public void ToSi_UnitWithoutCounterpart_IsMadeOfItsConstituents(string symbol, double factor) =>
        NearlyEqual.Assert(factor, UnitTable.Get(symbol).ToSi.Value, LibraryAccuracy, symbol);

    [Theory]
    [MemberData(nameof(PrintedFactors))]
    public void FromCanonical_OfOneUnit_RoundsToThePrintedFigure(string symbol, string printed, string target, string source)
    {
        var unit = UnitTable.Get(symbol);
        var other = UnitTable.Get(target);

        Assert.Equal(other.Dimension, unit.Dimension);
        new PrintedNumber(printed).AssertReproducedBy(other.FromCanonical(unit.Canonical(1)), what: source);
    }

    // Source: NIST SP 811, B.9: acre (based on U.S. survey foot) 4.046 873 E+03 m2. Ours is the international acre.
    [Fact]
    public void ToSi_Acre_LiesFourPartsPerMillionBelowTheSurveyAcre()
    {
        var survey = new PrintedNumber("4.046873E+03");
        var difference = survey.Value / UnitTable.Get("ac").ToSi.Value - 1;

        Assert.InRange(difference, 3.9e-6, 4.2e-6);
    }

    private static TheoryData<string, double> Pairs(Dictionary<string, double> factors)
    {
        var data = new TheoryData<string, double>();
        foreach (var (symbol, factor) in factors)
            data.Add(symbol, factor);
        return data;
    }
}
