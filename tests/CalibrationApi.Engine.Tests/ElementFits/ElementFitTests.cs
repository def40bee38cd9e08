using CalibrationApi.Engine.ElementFits;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.VolumeChecks;
using MathNet.Numerics.Distributions;
using static CalibrationApi.Engine.Tests.ElementFits.Fitted;

namespace CalibrationApi.Engine.Tests.ElementFits;

/// <summary>V = R W v / (rho eta n) at the corners of rates, ground speeds and meter speeds.</summary>
public sealed class ElementFitTests
{
    private static readonly IEnumerable<ElementFitQuestion> Random = Enumerable.Range(0, 200).Select(Draw);

    // 10 kg/ha x 9 m x 11 km/h is 1.65 kg/min, 6 kg/ha x 9 m x 7 km/h is 0.63 kg/min; a litre delivers 0.78 kg x 0.9 = 0.702 kg.
    [Fact]
    public void Window_OnPaper_EndsWhereTheMeterMeetsItsLimits()
    {
        var result = Of(Clover());

        NearlyEqual.Assert(1.65 / (0.702 * 90), Litres(result.Window.Lower));
        NearlyEqual.Assert(0.63 / (0.702 * 4), Litres(result.Window.Upper));
        NearlyEqual.Assert(Math.Sqrt(1.65 / 90 * 0.63 / 4) / 0.702, Litres(result.Window.Middle));
        NearlyEqual.Assert(Math.Sqrt(0.03 * 0.03 + 0.15 * 0.15), result.Window.Spread);
        NearlyEqual.Assert(1.65 / 60, result.HighestNeed.Flow.KilogramsPerSecond);
        NearlyEqual.Assert(0.63 / 60, result.LowestNeed.Flow.KilogramsPerSecond);
    }

    // A public examination item in agricultural engineering (its key was not seen, the rate is worked out from its data): a fluted roller
    // of 6500 mm3 a turn, bulk density 850 kg/m3, rows 200 mm apart, a ground wheel of 400 mm that turns twice for each turn of the roller:
    // 109.92 kg/ha. Asked the other way round, that rate needs that roller; figure printed to 5 digits.
    [Fact]
    [Trait("Category", "Reference")]
    public void Window_FlutedRollerOfAnExaminationItem_BeginsAtItsDisplacement()
    {
        const double GroundSpeed = 1.2;
        const double Roller = GroundSpeed / (Math.PI * 0.4) / 2;

        var window = Of(
            new ElementFitQuestion
            {
                CoveredWidth = new Length(0.2),
                Rates = [new MassPerArea(109.92 / 10_000)],
                GroundSpeeds = [new Speed(GroundSpeed)],
                SlowestMeter = new RotationalSpeed(Roller / 2),
                FastestMeter = new RotationalSpeed(Roller),
                Density = new(new BulkDensity(850)),
                Fill = new StatedFill(1, null),
            }
        ).Window;

        NearlyEqual.Assert(6500e-9, window.Lower.CubicMetres, 5e-5);
        NearlyEqual.Assert(13_000e-9, window.Upper.CubicMetres, 5e-5);
    }

    // JCGM 106:2012, clause 7 (figures from memory): a value of 13.6 with u = 1.8 is between 12.5 and 16.3 with probability 0.66.
    [Fact]
    [Trait("Category", "Reference")]
    public void Probability_Jcgm106TwoLimits_RoundsToThePrintedProbability()
    {
        static Volume Exp(double logarithm) => new(Math.Exp(logarithm));
        var window = new DisplacementWindow(Exp(12.5), Exp(16.3), 1.8);

        new PrintedNumber("0.66").AssertReproducedBy(window.Probability(new(Exp(13.6), 0)));
    }

    [Fact]
    public void Ends_AskedBackThroughMeterSpeed_AreExactlyAtTheLimits() => Assert.All(Random, question =>
        {
            var window = Of(question).Window;
            var slowest = Speeds(question, window.Upper).Min();
            var fastest = Speeds(question, window.Lower).Max();

            NearlyEqual.Assert(question.SlowestMeter.RevolutionsPerSecond, slowest, 1e-12);
            NearlyEqual.Assert(question.FastestMeter.RevolutionsPerSecond, fastest, 1e-12);
        });

    [Fact]
    public void Inner_AtItsEnds_HasTheWantedProbability() => Assert.All(Random, question =>
        {
            var (window, inner) = (Of(question).Window, Of(question).Inner);
            var half = Math.Log(window.Upper.CubicMetres / window.Lower.CubicMetres) / 2;

            // Phi of the half width over the spread on both sides: what the middle, the best of all, has.
            Assert.Equal(2 * Normal.CDF(0, window.Spread, half) - 1 >= 0.9, inner is not null);
            foreach (var end in inner is var (lower, upper) ? new[] { lower, upper } : [])
            {
                var off = Math.Log(end.CubicMetres / window.Middle.CubicMetres);
                NearlyEqual.Assert(0.9, Normal.CDF(off, window.Spread, half) - Normal.CDF(off, window.Spread, -half), 1e-9);
                NearlyEqual.Assert(0.9, window.Probability(new(end, 0)), 1e-9);
            }
        });

    [Fact]
    public void Inner_NothingUncertain_IsTheWholeWindow()
    {
        var result = Of(
            Clover() with
            {
                Density = new(new BulkDensity(780), 0),
                Fill = new StatedFill(0.9, 0),
                Elements = [new("at the end", new(Of(Clover()).Window.Upper, 0)), new("beyond", new(new Volume(0.23e-3), 0))],
            }
        );

        Assert.Equal((result.Window.Lower, result.Window.Upper), result.Inner);
        Assert.Equal([1, 0], result.Elements.Select(element => element.Probability));
        Assert.Equal([true, false], result.Elements.Select(element => element.Fits));
    }

    // 4000 true densities and fill efficiencies, each asked through meter-speed; 0.026 is more than three standard deviations of a share.
    [Fact]
    public void Probability_ManyTrueDeliveries_IsTheShareThatStaysInside()
    {
        var question = Clover() with { Elements = [new("spare roller", new(new Volume(0.19e-3), 0.02))] };
        var random = new Random(1);
        var delivery = new Normal(0, Math.Sqrt(0.03 * 0.03 + 0.15 * 0.15 + 0.02 * 0.02), random);

        var inside = Enumerable
            .Range(0, 4000)
            .Count(_ =>
                Speeds(question, new Volume(0.19e-3 * Math.Exp(delivery.Sample()))).All(speed => speed is >= 4.0 / 60 and <= 90.0 / 60)
            );

        Assert.InRange(Of(question).Elements[0].Probability, 0.8, 0.9);
        Assert.Equal(inside / 4000.0, Of(question).Elements[0].Probability, 0.026);
    }

    [Fact]
    public void Elements_InAnyOrder_HaveTheSameAnswer() => Assert.All(Random, question =>
        {
            var (one, other) = (Of(question), Of(question with { Elements = [.. question.Elements.Reverse()] }));

            Assert.Equal(one.Elements, other.Elements);
            Assert.Equal(one.Headline.InMetric(), other.Headline.InMetric());
            Assert.Equal(
                one.Findings.Select(finding => finding.Detail.InMetric()),
                other.Findings.Select(finding => finding.Detail.InMetric())
            );
        });

    [Fact]
    public void Elements_BestFirst_AreNearestToTheMiddleAndFitInsideTheWindow() => Assert.All(Random, question =>
        {
            var result = Of(question);

            Assert.Equal(result.Elements.OrderBy(element => Math.Abs(element.Distance)), result.Elements);
            Assert.All(result.Elements, element =>
            {
                var volume = element.Element.Displacement.Value;
                Assert.Equal(
                    volume.CubicMetres >= result.Window.Lower.CubicMetres && volume.CubicMetres <= result.Window.Upper.CubicMetres,
                    element.Fits
                );
                Assert.Equal(element.Fits, element is { TooSlow: null, TooFast: null });
                NearlyEqual.Assert(Speeds(question, volume).Min(), element.LowestMeterSpeed.RevolutionsPerSecond);
                NearlyEqual.Assert(Speeds(question, volume).Max(), element.HighestMeterSpeed.RevolutionsPerSecond);
            });
        });

    // The same mass in a revolution: the same meter speeds, and a window that shrinks as much as the density grows.
    [Fact]
    public void Density_TimesThreeAndDisplacementsOverThree_ChangeNoMeterSpeed() => Assert.All(Random, question =>
        {
            var (one, scaled) = (
                Of(question),
                Of(
                    question with
                    {
                        Density = question.Density with { Value = new BulkDensity(3 * question.Density.Value.KilogramsPerCubicMetre) },
                        Elements = [.. question.Elements.Select(element => element with { Displacement = Third(element.Displacement) })],
                    }
                )
            );

            NearlyEqual.Assert(one.Window.Lower.CubicMetres / 3, scaled.Window.Lower.CubicMetres);
            NearlyEqual.Assert(one.Window.Upper.CubicMetres / 3, scaled.Window.Upper.CubicMetres);
            Assert.All(one.Elements.Zip(scaled.Elements), pair =>
            {
                NearlyEqual.Assert(pair.First.LowestMeterSpeed.Canonical, pair.Second.LowestMeterSpeed.Canonical);
                NearlyEqual.Assert(pair.First.HighestMeterSpeed.Canonical, pair.Second.HighestMeterSpeed.Canonical);
                Assert.Equal(pair.First.Probability, pair.Second.Probability, 1e-12);
            });
        });

    [Fact]
    public void Delivery_OfAnElement_IsThatOfAVolumeCheck()
    {
        var question = Clover();
        var element = Of(question).Elements[0];
        var check = VolumeCheckEvaluation.Evaluate(
            new VolumeCheckQuestion { Displacement = element.Element.Displacement, Density = question.Density }
        );

        Assert.Equal(check.Expected, element.Delivery);
        Assert.Equal(check.FillEfficiency, Of(question).FillEfficiency);
        Assert.Equal(check.Parts.Where(part => part.Source != "displacement"), Of(question).Parts);
    }

    // 60 times the rate, twice the speed: 120 times as much product; from 4 to 90 rpm the meter has 22.5 times.
    [Fact]
    public void WaysOut_RatesTooFarApart_EachOpenTheWindowJustSo()
    {
        var question = Clover() with { Rates = [Rate(3), Rate(180)], GroundSpeeds = [Kmh(6), Kmh(12)], Elements = [] };
        var ways = Of(question).WaysOut!;

        Assert.True(Of(question).Window.IsEmpty);
        Assert.Null(ways.HighestGroundSpeed);
        Assert.Null(ways.LowestGroundSpeed);
        NearlyEqual.Assert(180 * 22.5 / 120, ways.HighestRate!.Value.KilogramsPerSquareMetre * 10_000);
        NearlyEqual.Assert(3 * 120 / 22.5, ways.LowestRate!.Value.KilogramsPerSquareMetre * 10_000);
        AssertJustOpen(question with { Rates = [Rate(3), ways.HighestRate.Value] });
        AssertJustOpen(question with { Rates = [ways.LowestRate.Value, Rate(180)] });
        // One element has room for 11.25 times the rate at all speeds, so two take over from each other at 3 x sqrt(60).
        Assert.Equal(2, ways.Shares.Count);
        NearlyEqual.Assert(3 * Math.Sqrt(60), ways.Shares[0].HighestRate.KilogramsPerSquareMetre * 10_000);
        Assert.All(ways.Shares, share =>
            Assert.Equal(share.Window, Of(question with { Rates = [share.LowestRate, share.HighestRate] }).Window)
        );
    }

    [Fact]
    public void WaysOut_SpeedsTooFarApart_NameTheSpeedsThatOpenIt()
    {
        var question = Clover() with { Rates = [Rate(6)], GroundSpeeds = [Kmh(1), Kmh(30)], Elements = [] };
        var ways = Of(question).WaysOut!;

        NearlyEqual.Assert(22.5, ways.HighestGroundSpeed!.Value.MetresPerSecond * 3.6);
        AssertJustOpen(question with { GroundSpeeds = [Kmh(1), ways.HighestGroundSpeed.Value] });
        AssertJustOpen(question with { GroundSpeeds = [ways.LowestGroundSpeed!.Value, Kmh(30)] });
        Assert.Null(ways.HighestRate);
        Assert.Empty(ways.Shares);
    }

    [Fact]
    public void Shares_MoreThanFourElements_AreNotProposed()
    {
        var four = Clover() with { Rates = [Rate(0.1), Rate(0.1 * Math.Pow(22.5, 4))], GroundSpeeds = [Kmh(8)], Elements = [] };

        Assert.Equal(4, Of(four).WaysOut!.Shares.Count);
        Assert.Empty(Of(four with { Rates = [four.Rates[0], new(four.Rates[1].KilogramsPerSquareMetre * 1.01)] }).WaysOut!.Shares);
    }

    private static void AssertJustOpen(ElementFitQuestion question)
    {
        var window = Of(question).Window;

        Assert.False(window.IsEmpty);
        NearlyEqual.Assert(window.Lower.CubicMetres, window.Upper.CubicMetres);
        Assert.Equal(0, window.BestProbability, 1e-12);
    }

    // Each meter speed that a displacement needs, by the formulas of volume-check and meter-speed.
    private static IEnumerable<double> Speeds(ElementFitQuestion question, Volume displacement)
    {
        var delivery = VolumeCheckEvaluation
            .Evaluate(
                new VolumeCheckQuestion
                {
                    Displacement = new(displacement),
                    Density = question.Density,
                    Fill = question.Fill,
                }
            )
            .Expected.Median;
        return MeterSpeedEvaluation
            .Evaluate(
                new MeterSpeedQuestion
                {
                    CoveredWidth = question.CoveredWidth,
                    Rates = question.Rates,
                    GroundSpeeds = question.GroundSpeeds,
                    Elements = [new("element", DeliveryCurve.Constant(delivery), MeterSpeedLimits.None)],
                }
            )
            .Elements[0]
            .Corners.Select(corner => corner.MeterSpeed.RevolutionsPerSecond);
    }

    // Windows of every width, empty ones too, with elements around them.
    private static ElementFitQuestion Draw(int seed)
    {
        var random = new Random(seed);
        double Between(double least, double most) => least * Math.Pow(most / least, random.NextDouble());
        var (rate, speed, slowest) = (Between(2, 200), Between(3, 9), Between(2, 20));
        var question = new ElementFitQuestion
        {
            CoveredWidth = new Length(Between(0.5, 12)),
            Rates = [Rate(rate), Rate(rate * Between(1, 4))],
            GroundSpeeds = [Kmh(speed), Kmh(speed * Between(1, 3))],
            SlowestMeter = Planned.Rpm(slowest),
            FastestMeter = Planned.Rpm(slowest * Between(2, 40)),
            Density = new(new BulkDensity(Between(300, 1200)), Between(0.005, 0.05)),
            Fill = new StatedFill(Between(0.6, 1.05), Between(0.01, 0.2)),
            CoverageProbability = 0.9,
        };
        var middle = Of(question).Window.Middle.CubicMetres;
        return question with
        {
            Elements = [.. Enumerable.Range(1, 6).Select(i => new ElementAtHand($"{i}", new(new Volume(middle * Between(0.1, 10)), 0.02)))],
        };
    }

    private static ElementFitResult Of(ElementFitQuestion question) => ElementFitEvaluation.Evaluate(question).Result!;

    private static Uncertain<Volume> Third(Uncertain<Volume> volume) => volume with { Value = new(volume.Value.CubicMetres / 3) };

    private static double Litres(Volume volume) => volume.CubicMetres * 1000;
}
