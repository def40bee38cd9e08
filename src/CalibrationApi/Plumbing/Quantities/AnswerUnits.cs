using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Uncertainty;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Quantities;

/// <summary>Writes the engine's values in the units of an answer.</summary>
internal sealed class AnswerUnits
{
    // Powers of ten up to 10^22 are exact in a double.
    private const int MostExactDecimals = 22;
    private static readonly double[] PowersOfTen =
    [
        .. Enumerable.Range(0, MostExactDecimals + 1).Select(exponent => Math.Pow(10, exponent)),
    ];

    private readonly Type? question;
    private Sentence? lastAsked;
    private WrittenSentence? lastWritten;

    private AnswerUnits(DisplayUnits units, Type? question = null) => (Display, this.question) = (units, question);

    public DisplayUnits Display { get; }

    /// <summary>The units for an answer.</summary>
    /// <param name="choice">The word of the query, already checked; null is as asked.</param>
    /// <param name="asked">Units of the question; later ones go before earlier ones, absent ones are passed over.</param>
    public static AnswerUnits For(string? choice, params ReadOnlySpan<Unit?> asked) =>
        choice switch
        {
            UnitsWord.Metric => new AnswerUnits(DisplayUnits.Metric),
            UnitsWord.UnitedStates => new AnswerUnits(DisplayUnits.UnitedStates),
            _ => new AnswerUnits(AsAsked(asked)),
        };

    /// <summary>The same with units in which something special to one calculation is usually told.</summary>
    public AnswerUnits With(params ReadOnlySpan<Unit> units) => new(Display.With(units), question);

    /// <summary>The same for an answer to a body of a type, into which assumptions point.</summary>
    public AnswerUnits PointingInto(Type body) => new(Display, body);

    private static DisplayUnits AsAsked(ReadOnlySpan<Unit?> asked)
    {
        var known = new List<Unit>(asked.Length);
        foreach (var unit in asked)
        {
            if (unit is not null)
                known.Add(unit);
        }

        return DisplayUnits.Metric.With([.. known]);
    }

    public MassQuantity Mass(Mass value) => Write<MassQuantity, Mass>(value);

    public MassPerAreaQuantity Rate(MassPerArea value) => Write<MassPerAreaQuantity, MassPerArea>(value);

    public MassPerRevolutionQuantity MassPerRevolution(MassPerRevolution value) =>
        Write<MassPerRevolutionQuantity, MassPerRevolution>(value);

    public RevolutionsQuantity Revolutions(Revolutions value) => Write<RevolutionsQuantity, Revolutions>(value);

    public RotationQuantity Rotation(RotationalSpeed value) => Write<RotationQuantity, RotationalSpeed>(value);

    public SpeedQuantity Speed(Speed value) => Write<SpeedQuantity, Speed>(value);

    public LengthQuantity Length(Length value) => Write<LengthQuantity, Length>(value);

    public AreaQuantity Area(Area value) => Write<AreaQuantity, Area>(value);

    public TimeQuantity Time(Duration value) => Write<TimeQuantity, Duration>(value);

    public VolumeQuantity Volume(Volume value) => Write<VolumeQuantity, Volume>(value);

    public MassPerTimeQuantity MassFlow(MassFlow value) => Write<MassPerTimeQuantity, MassFlow>(value);

    public VolumePerTimeQuantity VolumeFlow(VolumeFlow value) => Write<VolumePerTimeQuantity, VolumeFlow>(value);

    public BulkDensityQuantity BulkDensity(BulkDensity value) => Write<BulkDensityQuantity, BulkDensity>(value);

    public CountPerAreaQuantity CountPerArea(CountPerArea value) => Write<CountPerAreaQuantity, CountPerArea>(value);

    public CountPerLengthQuantity CountPerLength(CountPerLength value) => Write<CountPerLengthQuantity, CountPerLength>(value);

    public CountPerMassQuantity CountPerMass(CountPerMass value) => Write<CountPerMassQuantity, CountPerMass>(value);

    public MassPerThousandQuantity MassPerThousand(MassPerThousand value) => Write<MassPerThousandQuantity, MassPerThousand>(value);

    public PulsesPerDistanceQuantity PulsesPerDistance(PulsesPerDistance value) =>
        Write<PulsesPerDistanceQuantity, PulsesPerDistance>(value);

    public RatioQuantity Ratio(double fraction) => Write<RatioQuantity, Ratio>(new Ratio(fraction));

    public MeasuredMassPerRevolution Measured(MeasuredValue value) => Write<MeasuredMassPerRevolution, MassPerRevolution>(value);

    public MeasuredRatio MeasuredRatio(MeasuredValue value) => Write<MeasuredRatio, Ratio>(value);

    public MeasuredMassPerArea MeasuredRate(MeasuredValue value) => Write<MeasuredMassPerArea, MassPerArea>(value);

    public MeasuredPulsesPerDistance MeasuredPulses(MeasuredValue value) => Write<MeasuredPulsesPerDistance, PulsesPerDistance>(value);

    public MeasuredLength MeasuredLength(MeasuredValue value) => Write<MeasuredLength, Length>(value);

    public AnyQuantity Any(IQuantity value) => new() { Value = Shown(Display.Value(value)), Unit = Display[value.Dimension].Symbol };

    /// <summary>A sentence as it can be shown.</summary>
    public string Text(Sentence sentence) => Written(sentence).Text;

    /// <summary>What a sentence is made of; null where it holds no values and is its own template.</summary>
    public SentenceParts? Parts(Sentence sentence)
    {
        var written = Written(sentence);
        return written.Values.Count == 0
            ? null
            : new SentenceParts
            {
                Template = written.Template,
                Values =
                [
                    .. written.Values.Select(value => new SentenceValue
                    {
                        Name = value.Name,
                        Text = value.Text,
                        Value = value.Number is { } number && double.IsFinite(number) ? Shown(number) : null,
                        Unit = value.Unit?.Symbol,
                    }),
                ],
            };
    }

    // Whoever asks for the text of a sentence asks for its parts next.
    private WrittenSentence Written(Sentence sentence)
    {
        if (!ReferenceEquals(lastAsked, sentence))
            (lastAsked, lastWritten) = (sentence, Display.WriteParts(sentence));
        return lastWritten!;
    }

    public FindingAnswer[] Findings(IReadOnlyList<Finding> findings) =>
        [
            .. findings.Select(finding => new FindingAnswer
            {
                Code = finding.Code.Word,
                Severity = Words.Of(finding.Severity),
                Detail = Text(finding.Detail),
                Parts = Parts(finding.Detail),
                Meter = finding.Meter,
            }),
        ];

    public CautionAnswer[] Cautions(IReadOnlyList<Caution> cautions) =>
        [
            .. cautions.Select(caution => new CautionAnswer
            {
                Code = caution.Code.Word,
                Detail = Text(caution.Detail),
                Parts = Parts(caution.Detail),
            }),
        ];

    public AssumptionAnswer[] Assumptions(IReadOnlyList<Assumption> assumptions) =>
        [
            .. assumptions.Select(assumption => new AssumptionAnswer
            {
                Name = assumption.Name,
                Pointer = question is null ? null : MemberPaths.Pointer(question, assumption.Member),
                Value = assumption.Value is { } value ? Any(value) : null,
                Number = assumption.Number,
                Word = assumption.Word,
                Flag = assumption.Flag,
                Origin = assumption.Origin,
                Meter = assumption.Meter,
            }),
        ];

    private TQuantity Write<TQuantity, T>(T value)
        where TQuantity : Quantity<T>, new()
        where T : struct, IQuantity<T>
    {
        var unit = Display[T.Of];
        return new TQuantity { Value = Shown(unit.FromCanonical(value.Canonical)), Unit = unit.Symbol };
    }

    private TMeasured Write<TMeasured, T>(MeasuredValue value)
        where TMeasured : MeasuredQuantity<T>, new()
        where T : struct, IQuantity<T>
    {
        var unit = Display[T.Of];
        return new TMeasured
        {
            Value = Shown(unit.FromCanonical(value.Value)),
            Unit = unit.Symbol,
            ExpandedUncertainty = Shown(unit.FromCanonical(value.ExpandedUncertainty)),
            CoverageFactor = value.CoverageFactor,
            CoverageProbability = value.CoverageProbability,
            DegreesOfFreedom = double.IsFinite(value.DegreesOfFreedom) ? value.DegreesOfFreedom : null,
        };
    }

    // Fifteen significant digits: every decimal that a person typed comes back as typed, not as 5.999999999999999.
    // What is lost is below the rounding of the conversion itself.
    public static double Shown(double value)
    {
        if (value == 0)
            return 0;
        var decimals = 14 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        if (decimals is < 0 or > MostExactDecimals)
            return value;
        return decimals <= 15 ? Math.Round(value, decimals) : Math.Round(value * PowersOfTen[decimals]) / PowersOfTen[decimals];
    }

    /// <summary>A fraction as a quantity in percent.</summary>
    public static RatioQuantity Percent(double fraction) => new() { Value = Shown(fraction * 100), Unit = "%" };
}
