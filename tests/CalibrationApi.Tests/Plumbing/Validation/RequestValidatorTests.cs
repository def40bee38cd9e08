using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using CalibrationApi.Records.Containers;
using CalibrationApi.Records.Products;
using FluentValidation;
using FluentValidation.Results;

namespace CalibrationApi.Tests.Plumbing.Validation;

/// <summary>What stands on the members of a request is checked, and where it is checked costs little.</summary>
public sealed class RequestValidatorTests
{
    private static readonly MassQuantity Wrong = new() { Value = -1, Unit = "kg" };

    [Fact]
    public void Validate_Members_AreToldAsTheyAreDeclaredThoseOfTheBaseFirst()
    {
        var faults = Check(
            new ContainerRequest
            {
                Note = " ",
                Tare = Wrong,
                Fill = new RatioQuantity { Value = 50 },
            }
        );

        Assert.Equal(["Name", "Note", "Tare", "Fill"], faults.Select(fault => fault.PropertyName));
    }

    [Fact]
    public void Validate_RulesBetweenMembers_ComeAfterTheMembersOfTheirType()
    {
        var faults = Check(
            new CatchTestRequest
            {
                Meter = " ",
                Catches =
                [
                    new CatchOfTest
                    {
                        Net = Wrong,
                        Gross = Wrong,
                        Excluded = new Exclusion(),
                    },
                ],
                ControllerEntry = new ControllerEntryOfTest { Form = "mass-per-time", Unit = "kg" },
            }
        );

        Assert.Equal(
            [
                "Catches[0].Gross",
                "Catches[0].Excluded.Reason",
                "Catches",
                "Catches[0].Net",
                "Catches[0].Revolutions",
                "Meter",
                "Scale",
                "ControllerEntry.Decimals",
                "ControllerEntry.Unit",
                "MeterSpeed",
            ],
            faults.Select(fault => fault.PropertyName)
        );
    }

    [Fact]
    public void Validate_QuantityWithMembersOfItsOwn_ChecksBoth()
    {
        var faults = Check(
            new CatchTestRequest
            {
                Scale = new ScaleOfTest
                {
                    Division = new MassQuantity { Value = 1, Unit = "g" },
                },
                Catches =
                [
                    new CatchOfTest
                    {
                        Net = new MassQuantity { Value = 1, Unit = "kg" },
                        Pulses = 0,
                    },
                ],
                ValueInForce = new ReferenceOfTest
                {
                    Value = 1,
                    Unit = "kg",
                    RelativeUncertainty = new RatioQuantity { Value = 101, Unit = "%" },
                },
            }
        );

        Assert.Equal(["ValueInForce", "ValueInForce.RelativeUncertainty"], faults.Select(fault => fault.PropertyName).Take(2));
        Assert.Equal(["unit-wrong-dimension", "number-out-of-range"], faults.Select(fault => Faults.CodeOf(fault).Word).Take(2));
    }

    [Fact]
    public async Task Validate_EveryWayIn_ChecksTheSame()
    {
        var request = new CatchPlanRequest { Meters = [null] };
        var validator = new RequestValidator<CatchPlanRequest>(TimeProvider.System);

        var told = Check(request).Select(fault => (fault.PropertyName, Faults.CodeOf(fault).Word)).ToArray();

        Assert.NotEmpty(told);
        Assert.Equal(told, Told(validator.Validate(request)));
        Assert.Equal(told, Told(await validator.ValidateAsync(request)));
        Assert.Equal(told, Told(((IValidator)validator).Validate(new ValidationContext<CatchPlanRequest>(request))));

        static (string, string)[] Told(ValidationResult result) =>
            [.. result.Errors.Select(fault => (fault.PropertyName, Faults.CodeOf(fault).Word))];
    }

    [Fact]
    public void Validate_SoundRequestWithoutRulesBetweenMembers_MakesNothingButItsResult()
    {
        IValidator<ContainerRequest> validator = new RequestValidator<ContainerRequest>(TimeProvider.System);
        var request = new ContainerRequest
        {
            Name = "Bucket",
            Volume = new VolumeQuantity { Value = 20, Unit = "L" },
            Tare = new MassQuantity { Value = 0.8, Unit = "kg" },
            Fill = new RatioQuantity { Value = 90, Unit = "%" },
        };
        validator.Validate(request);

        var before = GC.GetAllocatedBytesForCurrentThread();
        var result = validator.Validate(request);
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;

        Assert.True(result.IsValid);
        // A result of the library holds a list; that is all.
        Assert.InRange(allocated, 0, 128);
    }

    [Fact]
    public void Validate_PartsBeyondAHundredFaults_AreNotLookedAt()
    {
        var faults = Check(
            new ProductRequest { Analysis = [.. Enumerable.Repeat(new CalibrationApi.Calculations.Nutrients.ShareOfNutrient(), 200)] }
        );

        Assert.InRange(faults.Count, ProblemResult.MostErrors, ProblemResult.MostErrors + 5);
    }

    private static List<ValidationFailure> Check<T>(T request)
        where T : class => ((IValidator<T>)new RequestValidator<T>(TimeProvider.System)).Validate(request).Errors;
}
