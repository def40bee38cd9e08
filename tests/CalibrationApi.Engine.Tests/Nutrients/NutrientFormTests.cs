using CalibrationApi.Engine.Nutrients;

namespace CalibrationApi.Engine.Tests.Nutrients;

public sealed class NutrientFormTests
{
    public static TheoryData<string, string> Pairs
    {
        get
        {
            var pairs = new TheoryData<string, string>();
            foreach (var one in NutrientForm.All)
            {
                foreach (var other in NutrientForm.All.Where(other => other.Nutrient == one.Nutrient))
                    pairs.Add(one.Symbol, other.Symbol);
            }

            return pairs;
        }
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void To_ThereAndBack_IsWhatItWas(string one, string other) =>
        NearlyEqual.Assert(
            1,
            NutrientForm.Find(one)!.To(NutrientForm.Find(other)!) * NutrientForm.Find(other)!.To(NutrientForm.Find(one)!)
        );

    // Molar masses on paper: P2O5 141.943 for 61.948 of P, K2O 94.196 for 78.197 of K, SO3 80.057 and SO4 96.056 for 32.06 of S.
    [Theory]
    [InlineData("P", "P2O5", 141.942523996 / 61.947523996)]
    [InlineData("K", "K2O", 94.1956 / 78.1966)]
    [InlineData("S", "SO3", 80.057 / 32.06)]
    [InlineData("SO4-S", "SO4", 96.056 / 32.06)]
    [InlineData("SO4", "SO3", 80.057 / 96.056)]
    [InlineData("S", "SO4-S", 1)]
    [InlineData("N", "N", 1)]
    public void To_OtherForm_IsTheRatioOfMolarMasses(string from, string to, double ratio) =>
        NearlyEqual.Assert(ratio, NutrientForm.Find(from)!.To(NutrientForm.Find(to)!));

    [Fact]
    public void To_OtherNutrient_Throws() => Assert.Throws<ArgumentException>(() => NutrientForm.N.To(NutrientForm.S));

    [Theory]
    [InlineData("NO3")]
    [InlineData("p2o5")]
    [InlineData(null)]
    public void Find_WordThatIsNone_IsNull(string? word) => Assert.Null(NutrientForm.Find(word));

    // Sulfate sulfur and sulfur trioxide of one product, told as the element: 3 % and 5 % of 32.06 / 80.057.
    [Fact]
    public void Share_OfSeveralForms_IsTheirSumInTheFormAskedFor() =>
        NearlyEqual.Assert(
            0.03 + 0.05 * 32.06 / 80.057,
            NutrientShare.Of([new(NutrientForm.SulfateSulfur, 0.03), new(NutrientForm.SO3, 0.05), new(NutrientForm.N, 0.2)], NutrientForm.S)
        );
}
