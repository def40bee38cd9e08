using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Adoptions;

/// <summary>A number by hand beside what is in force for other products on its element. Our own rules, invented numbers.</summary>
public sealed class TypedValueAgainstProductsTests
{
    private static readonly ValueOfOtherProduct Peas = new("peas", new(new MassPerRevolution(0.450), 0.005), null);

    // 2 u of the peas are 1 %; 0.42 before is 7 % away.
    [Theory]
    [InlineData(0.450, true)]
    [InlineData(0.4545, true)]
    [InlineData(0.4555, false)]
    [InlineData(0.425, false)]
    public void FindingsOf_NumberOfAnotherProductAndNotOfItsOwn_NamesThatProduct(double typed, bool warns)
    {
        var findings = TypedValueAgainstProducts.FindingsOf(Typed(typed) with { Before = new(0.42), OtherProducts = [Peas] });

        Assert.Equal(warns ? [(TypedValueCodes.FitsOtherProduct, Severity.Warning)] : [], findings.Select(one => (one.Code, one.Severity)));
        if (warns)
            Assert.Contains(
                "fits peas, for which 0.45 kg/rev is in force on this element",
                findings[0].Detail.InMetric(),
                StringComparison.Ordinal
            );
    }

    [Fact]
    public void FindingsOf_NumberOfBothProducts_AreNone() =>
        Assert.Empty(TypedValueAgainstProducts.FindingsOf(Typed(0.450) with { Before = new(0.44), OtherProducts = [Peas] }));

    // Within U of the last test, and beyond it.
    [Theory]
    [InlineData(0.06, false)]
    [InlineData(0.03, true)]
    public void FindingsOf_NumberAboutWhichALastTestSpeaks_CountItsUncertainty(double relativeU, bool warns) =>
        Assert.Equal(
            warns,
            TypedValueAgainstProducts
                .FindingsOf(
                    Typed(0.450) with
                    {
                        LastMeasured = new(new(0.426), relativeU * 0.426, "the last test"),
                        OtherProducts = [Peas],
                    }
                )
                .Count > 0
        );

    [Fact]
    public void FindingsOf_NumberOfAnotherProductAndNothingElseKnown_IsANote() =>
        Assert.Equal(
            (TypedValueCodes.FitsOtherProduct, Severity.Note),
            TypedValueAgainstProducts
                .FindingsOf(Typed(0.451) with { OtherProducts = [Peas] })
                .Select(one => (one.Code, one.Severity))
                .Single()
        );

    // 0.45 kg of peas at 800 kg/m3 let 0.3488 kg be expected at 620; sd about 0.084.
    [Theory]
    [InlineData(0.450, new[] { "fits-other-product", "unlike-other-products" })]
    [InlineData(0.360, new string[0])]
    [InlineData(0.270, new[] { "unlike-other-products" })]
    public void FindingsOf_FirstNumberBesideDensities_AreThoseOfAMeasuredOne(double typed, string[] codes) =>
        Assert.Equal(
            codes,
            TypedValueAgainstProducts
                .FindingsOf(Typed(typed) with { Density = new(new BulkDensity(620)), OtherProducts = [Dense] })
                .Select(one => one.Code.Word)
        );

    [Fact]
    public void FindingsOf_NumberThatItsTestExplains_AreNone() =>
        Assert.Empty(
            TypedValueAgainstProducts.FindingsOf(
                Typed(0.450) with
                {
                    Test = new(new(0.45), 0.01),
                    Before = new(0.42),
                    OtherProducts = [Peas],
                }
            )
        );

    [Theory]
    [InlineData(3.488, "typed-decimal-slip")]
    [InlineData(0.03488, "typed-decimal-slip")]
    [InlineData(0.6976, "typed-twice-or-half")]
    [InlineData(0.3488 * 2.2046, "typed-in-other-unit")]
    [InlineData(0.3488 / 2.2046, "typed-in-other-unit")]
    // 1.5 times is far, but no factor: a finding, no refusal.
    [InlineData(0.523, null)]
    [InlineData(0.36, null)]
    public void ObjectionsTo_FirstNumberAFactorFromWhatOtherProductsLetExpect_NameTheFactor(double typed, string? code) =>
        Assert.Equal(code is null ? [] : [code], Codes(Typed(typed) with { Density = new(new BulkDensity(620)), OtherProducts = [Dense] }));

    // 0.6 L of 0.62 kg/L at a fill of 0.9 are 0.335 kg. Half of it is a fill that can be; a tenth is not.
    [Theory]
    [InlineData(0.0335, "typed-decimal-slip")]
    [InlineData(0.1674, null)]
    public void ObjectionsTo_FirstNumberBesideDisplacement_NameOnlyASlippedPoint(double typed, string? code) =>
        Assert.Equal(
            code is null ? [] : [code],
            Codes(
                Typed(typed) with
                {
                    Content = new ElementContent(new(new Volume(0.6e-3)), new(new BulkDensity(620)), ElementKind.OpenFlutes),
                }
            )
        );

    // 10 % and its U of 4 %.
    [Theory]
    [InlineData(0.4095, null)]
    [InlineData(0.4105, "typed-off-last-test")]
    [InlineData(0.3090, "typed-off-last-test")]
    [InlineData(3.6, "typed-decimal-slip")]
    [InlineData(0.72, "typed-twice-or-half")]
    public void ObjectionsTo_FirstNumberFarFromTheLastTest_SayIt(double typed, string? code) =>
        Assert.Equal(
            code is null ? [] : [code],
            Codes(Typed(typed) with { LastMeasured = new(new(0.36), 0.0144, "the test of 2026-04-18") })
        );

    [Fact]
    public void ObjectionsTo_NumberOfAnotherProductFarFromTheValueBefore_SayWhoseItIs() =>
        Assert.Contains(
            "It fits peas, for which 0.45 kg/rev is in force on this element.",
            TypedValueCheck.ObjectionsTo(Typed(0.450) with { Before = new(0.38), OtherProducts = [Peas] }).Single().Detail.InMetric(),
            StringComparison.Ordinal
        );

    [Fact]
    public void DoubtsAbout_StatedValue_AreFindingsAndNoRefusal()
    {
        var doubts = TypedValueCheck.DoubtsAbout(Typed(3.8) with { Before = new(0.38) });

        Assert.Equal([(TypedValueCodes.StatedUnlikeRecords, Severity.Warning)], doubts.Select(one => (one.Code, one.Severity)));
        Assert.DoesNotContain("despite", doubts[0].Detail.InMetric(), StringComparison.Ordinal);
    }

    private static ValueOfOtherProduct Dense => Peas with { Density = new(new BulkDensity(800)) };

    private static TypedValue Typed(double value) => new() { Value = new(value), InWords = FormattableString.Invariant($"{value} kg/rev") };

    private static IEnumerable<string> Codes(TypedValue typed) =>
        TypedValueCheck.ObjectionsTo(typed).Select(objection => objection.Code.Word);
}
