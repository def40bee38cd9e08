using System.Reflection;
using CalibrationApi.Calculations.Declaring;
using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.FieldSetUps;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Evidence.Adoptions;
using CalibrationApi.Evidence.CatchTests;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Operations;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Plans;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace CalibrationApi.Architecture.Tests;

/// <summary>What an answer says that it can send is what its code can send, no code more and none less.</summary>
public sealed class SentCodesTests(RunningHost host) : IClassFixture<RunningHost>
{
    private const BindingFlags Any =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;

    private static readonly string[] CarriesCodes =
    [
        nameof(FindingAnswer),
        nameof(CautionAnswer),
        "ReasonAnswer",
        "LotReason",
        "LikelyMistakeAnswer",
    ];

    private static readonly string[] Steps = ["Question", "Evaluate", "Answer"];

    // What the compiled code does not show: an element fit asks for the speeds of elements alone. Without a fan nothing is said of
    // it, with the usual field efficiency and one value for all meter speeds nothing of them.
    private static readonly Dictionary<string, Code[]> CannotBeSent = new()
    {
        ["element-fit"] =
        [
            MeterSpeedCodes.NoCommonFanWindow,
            MeterSpeedCodes.FanLimitNotChecked,
            MeterSpeedCodes.OutsideFanWindow,
            MeterSpeedCodes.NearFanLimit,
            CautionCodes.StoredPressure,
            MeterSpeedCodes.UnusualFieldEfficiency,
            MeterSpeedCodes.OutsideMeasuredSpeeds,
        ],
    };

    public static TheoryData<string> Calculations => [.. CalculationList.All.Select(one => one.Name)];

    /// <summary>Where an answer has more lists of findings than one, or is made by no calculation: what makes each.</summary>
    public static TheoryData<Type, string, string[]> Lists =>
        new()
        {
            { Calculation("catch-test").AnswerType, "Findings", ["CatchTests.CatchTestFindings.Of", "CatchTests.PhysicalLimits.Of"] },
            { Calculation("distance-sensor").AnswerType, "Reasons", ["DistanceSensors.DistanceSensorSentences.Reason"] },
            { Calculation("distance-sensor").AnswerType, "Findings", ["DistanceSensors.DistanceSensorFindings.Of"] },
            { Calculation("drive-wheel-turns").AnswerType, "Reasons", ["DriveWheelTurns.DriveWheelSentences.Reasons"] },
            { Calculation("drive-wheel-turns").AnswerType, "Findings", ["DriveWheelTurns.DriveWheelSentences.Findings"] },
            { Calculation("new-lot").AnswerType, "Reasons", ["NewLots.NewLotEvaluation.Reasons"] },
            { Calculation("new-lot").AnswerType, "Findings", ["NewLots.NewLotEvaluation.Findings"] },
            { typeof(CatchTestRecordAnswer), nameof(CatchTestRecordAnswer.SinceThen), ["History.KnownSince.Findings"] },
        };

    [Theory]
    [MemberData(nameof(Calculations))]
    public void Calculation_Each_DeclaresTheCodesThatItCanSend(string name)
    {
        var calculation = Calculation(name);
        // The question is where objects are made whose virtual members the engine calls.
        var reached = ReachedCodes.From(Steps.Select(step => MethodOf(calculation, step)));

        var apart = CannotBeSent.GetValueOrDefault(name, []);
        Assert.Empty(apart.Where(code => !reached.Contains(code)).Select(code => $"Nothing reaches {code} any more: take it off here."));

        Same(reached.Where(code => code is not RefusalCode).Except(apart), SentBy(calculation.AnswerType).SelectMany(list => list.Codes));
        Same(reached.OfType<RefusalCode>(), calculation.Refusals);
    }

    private static Calculation Calculation(string name) => CalculationList.All.Single(one => one.Name == name);

    private static MethodInfo MethodOf(Calculation calculation, string step) =>
        ((Delegate)calculation.GetType().GetProperty(step)!.GetValue(calculation)!).Method;

    [Theory]
    [MemberData(nameof(Lists))]
    public void List_OfSeveral_DeclaresWhatItsOwnSentencesCanSend(Type answer, string list, string[] madeBy)
    {
        var reached = ReachedCodes.From(madeBy.SelectMany(Methods)).Where(code => code is FindingCode);

        Same(reached, SentBy(answer).Single(one => one.Name == list).Codes);
    }

    [Fact]
    public void ReasonsOfACatchTest_AreItsOwnAndWhatForbidsUsingIt()
    {
        var own = ReachedCodes.From(
            ((string[])["CatchTests.CatchTestSentences.Reason", "CatchTests.CatchTestEvaluation.OldScale"]).SelectMany(Methods)
        );
        // Of what is compared with physical limits, a stop becomes the reason; a finding that never stops cannot.
        var forbids = ReachedCodes.From(Methods("CatchTests.PhysicalLimits.Of")).Where(code => code is IMayStop);

        Same(own.Concat(forbids), SentBy(Calculation("catch-test").AnswerType).Single(one => one.Name == "Reasons").Codes);
    }

    [Fact]
    public void CautionsOfASetUp_AreThoseOfItsParts() =>
        Same(
            ReachedCodes.From(typeof(FieldSetUpEvaluation).GetMethod(nameof(FieldSetUpEvaluation.Evaluate))!).OfType<CautionCode>(),
            SentBy(typeof(PlanSetUpAnswer)).Single().Codes
        );

    [Fact]
    public void FindingsOfAStoredTest_AreThoseOfItsRecords() =>
        Same(
            ReachedCodes.From(typeof(JoinedTest).GetMethods(Any)).OfType<FindingCode>(),
            SentBy(typeof(CatchTestRecordAnswer)).Single(one => one.Name == nameof(CatchTestRecordAnswer.Findings)).Codes
        );

    [Theory]
    [InlineData(typeof(AdoptionAnswer))]
    [InlineData(typeof(ValueInForceAnswer))]
    public void FindingsOfAnAdoption_AreThoseOfTypedValues(Type answer) =>
        Same(
            ReachedCodes.From(typeof(AdoptionFindings).GetMethod(nameof(AdoptionFindings.Of))!).OfType<FindingCode>(),
            SentBy(answer).Single().Codes
        );

    [Fact]
    public void RefusalsOfAnAdoption_AreAllObjections() =>
        Same(
            ReachedCodes.From(typeof(TypedValueCheck).GetMethod(nameof(TypedValueCheck.ObjectionsTo))!).OfType<RefusalCode>(),
            TypedValueCheck.Codes
        );

    [Fact]
    public void Operations_ThatAnswerWhatTheEngineRefuses_SayWithWhichCodes()
    {
        var told = typeof(ProblemResult).GetMethods(Any).Single(method => method.Name == "Told" && method.ReturnType.IsGenericType);
        var answering = host
            .Services.GetRequiredService<EndpointDataSource>()
            .Endpoints.Where(endpoint => endpoint.Metadata.GetMetadata<MethodInfo>() is { } handler && ReachedCodes.Leads(handler, told))
            .ToArray();

        Assert.True(answering.Length > CalculationList.All.Count);
        Assert.Empty(
            answering
                .Where(endpoint => endpoint.Metadata.GetMetadata<RefusedWith>() is null)
                .Select(endpoint => $"{endpoint.DisplayName} answers what the engine refuses. Add RefusedWith to its metadata.")
        );
    }

    [Fact]
    public void Lists_OfWhatCarriesCodes_AllNameThem()
    {
        var lists = typeof(Program)
            .Assembly.GetTypes()
            .SelectMany(type => type.GetProperties())
            .Where(property => property.PropertyType.Name.StartsWith(nameof(IReadOnlyList<>), StringComparison.Ordinal))
            .Where(property => property.PropertyType.GenericTypeArguments is [{ Name: var item }] && CarriesCodes.Contains(item))
            .Where(property => property.DeclaringType != typeof(CatchTestContext))
            .ToArray();

        Assert.True(lists.Length > 25);
        Assert.Empty(
            lists
                .Where(list => list.GetCustomAttribute<SentCodesAttribute>() is null)
                .Select(list => $"{list.DeclaringType!.Name}.{list.Name} does not say which codes it sends. Use [SentCodes].")
        );
    }

    private static IEnumerable<(string Name, IReadOnlyList<Code> Codes)> SentBy(Type answer) =>
        answer
            .GetProperties()
            .Select(property => (property.Name, Sent: property.GetCustomAttribute<SentCodesAttribute>()))
            .Where(list => list.Sent is not null)
            .Select(list => (list.Name, list.Sent!.All));

    private static IEnumerable<MethodBase> Methods(string name)
    {
        var parts = name.Split('.');
        var type = typeof(Code).Assembly.GetType($"CalibrationApi.Engine.{parts[0]}.{parts[1]}", throwOnError: true)!;
        MethodBase[] found = [.. type.GetMethods(Any).Where(method => method.Name == parts[2])];
        return found.Length > 0 ? found : throw new ArgumentException($"There is no {name}.");
    }

    private static void Same(IEnumerable<Code> reached, IEnumerable<Code> declared)
    {
        var (can, says) = (reached.ToHashSet(), declared.ToHashSet());
        Assert.Empty(can.Except(says).Select(code => $"{code} can be sent, but is not in the list."));
        Assert.Empty(says.Except(can).Select(code => $"{code} is in the list, but nothing sends it."));
    }
}
