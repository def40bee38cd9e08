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
    public void Limit_PublishedTable_IsThePrintedLimit(
        string source,
        AccuracyClass accuracyClass,
        double load,
        string limit,
        string printed
    )
    {
        var computed = limit == "service" ? OimlR76.LimitInService(accuracyClass, load) : OimlR76.LimitOnVerification(accuracyClass, load);

        Assert.True(
            new PrintedNumber(printed).Value == computed,
            $"{source}, class {accuracyClass}, {load} e, {limit}: printed {printed} e, computed {computed} e."
        );
    }

    // Handbook 44 goes on to 5 e above 4000 e; an OIML scale does not, and ours is an OIML scale.
    [Fact]
    public void LimitInService_ClassThreeAboveFourThousandIntervals_StaysAtThree() =>
        Assert.Equal(3, OimlR76.LimitInService(AccuracyClass.III, 5000));
}
