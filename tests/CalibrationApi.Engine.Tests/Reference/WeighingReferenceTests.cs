using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>
/// Limits of error of weighing instruments. Sources: OIML R 76-1:2006, table 6; UK SI 1995/1907, schedule 2; NIST Handbook 44, 2.20,
/// table 6, where its steps coincide. Details in the header of oiml-r76-limits.csv.
/// </summary>
[Trait("Category", "Reference")]
public sealed class OimlR76ReferenceTests
{
    public static TheoryData<string, AccuracyClass, double, string, string> Limits
    {
        get
        {
            var data = new TheoryData<string, AccuracyClass, double, string, string>();
            foreach (var row in ReferenceTable.Read("oiml-r76-limits.csv").Rows)
                data.Add(row["source"], Enum.Parse<AccuracyClass>(row["class"]), row.Number("load"), row["limit"], row["printed"]);
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Limits))]
    public void Limit_PublishedTable_IsThePrintedLimit(string source, AccuracyClass accuracyClass, double load, string limit, string printed)
    {
        var computed = limit == "service"
            ? OimlR76.LimitInService(accuracyClass, load)
            : OimlR76.LimitOnVerification(accuracyClass, load);

        Assert.Equal(new PrintedNumber(printed).Value, computed);
        Assert.Contains(source, (string[])["OIML", "HB44"]);
    }

    // Handbook 44 goes on to 5 e above 4000 e; an OIML scale does not, and ours is an OIML scale.
    [Fact]
    public void LimitInService_ClassThreeAboveFourThousandIntervals_StaysAtThree() =>
        Assert.Equal(3, OimlR76.LimitInService(AccuracyClass.III, 5000));
}

/// <summary>Standard uncertainty of rounded readings. Source: JCGM 100:2008 (GUM), 4.3.7 and F.2.2.1.</summary>
[Trait("Category", "Reference")]
public sealed class RoundingReferenceTests
{
    private static readonly Scale OneDivision = new() { Division = new Mass(1) };

    [Theory]
    [InlineData("one rounding", TareReading.Shared)]
    [InlineData("two roundings", TareReading.Each)]
    public void RandomUncertainty_OfADivision_RoundsToThePrintedFigure(string quantity, TareReading tare) =>
        ReferenceTable.Read("rounding-uncertainties.csv").Only("quantity", quantity).Printed("printed")
            .AssertReproducedBy(OneDivision.RandomUncertainty(tare));

    // GUM 4.3.7: half width over sqrt(3). 0.5 e, 1.0 e and 1.5 e on an interval of 1 kg, doubled in service.
    [Theory]
    [InlineData(100, 1.0)]
    [InlineData(1000, 2.0)]
    [InlineData(5000, 3.0)]
    public void RelativeSpanUncertainty_LimitInService_IsTakenAsARectangle(double load, double limit)
    {
        var scale = OneDivision with { AccuracyClass = AccuracyClass.III };

        NearlyEqual.Assert(limit / Math.Sqrt(3) / load, scale.RelativeSpanUncertainty(new Mass(load)));
    }

    // A 5 kg catch on divisions of 20 g: 0.00816 kg, 0.16 % (derived from F.2.2.1).
    [Fact]
    public void RandomUncertainty_FiveKilogramsOnTwentyGrams_IsSixteenHundredthsOfAPercent()
    {
        var u = Given.Platform.RandomUncertainty(TareReading.Each);

        new PrintedNumber("0.00816").AssertReproducedBy(u);
        new PrintedNumber("0.16").AssertReproducedBy(u / 5 * 100);
    }
}
