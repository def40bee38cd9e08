using System.Text.Json.Serialization;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Batch;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Observability;
using CalibrationApi.Plumbing.Operations;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Calculations.Declaring;

/// <summary>One calculation, declared once: its routes, its part of the contract, its count and its types follow from here.</summary>
/// <remarks>
/// No parameter of the handler has the type of a question: how a handler with such a one is called could not be written before
/// the program runs.
/// </remarks>
internal abstract class Calculation
{
    private const string Folder = "/calculations/";

    /// <summary>The last part of its path, the name of its demo data and what its evaluations are counted under.</summary>
    public required string Name { get; init; }

    /// <summary>Name of the operation.</summary>
    public string OperationId
    {
        get => field ?? "evaluate" + string.Concat(Name.Split('-').Select(RequestPlan.Pascal));
        init;
    }

    /// <summary>Where it stands in the contract.</summary>
    public required string Tag { get; init; }

    /// <summary>What it is for, in one sentence.</summary>
    public required string Says { get; init; }

    /// <summary>How its types are written and read.</summary>
    public required JsonSerializerContext Json { get; init; }

    /// <summary>The codes with which the engine refuses a question, beside the rules of its members; often none.</summary>
    public required IReadOnlyList<RefusalCode> Refusals { get; init; }

    /// <summary>The list of a question that rows of a table can give, and most of its items; null where no table can be sent.</summary>
    public (string Items, int Most)? Rows { get; init; }

    /// <summary>The type of a question.</summary>
    public abstract Type RequestType { get; }

    /// <summary>The type of an answer.</summary>
    public abstract Type AnswerType { get; }

    /// <summary>The type whose comments describe the operation.</summary>
    public abstract Type DeclaredIn { get; }

    /// <summary>Maps the question alone, and many questions at once.</summary>
    public void MapTo(IEndpointRouteBuilder routes)
    {
        RequestPlan.MustSay(RequestType);
        routes
            .MapPost(Folder + Name, HandleAsync)
            .WithName(OperationId)
            .WithTags(Tag)
            .Needs(Scope.Calculate)
            .WithMetadata(new DescribedBy(DeclaredIn), new TagSentence(Tag, Says), new RefusedWith(Refusals))
            .WithMetadata(new AcceptsMetadata([JsonAnswer.MediaType], RequestType))
            .WithMetadata(new ProducesResponseTypeMetadata(StatusCodes.Status200OK, AnswerType, [JsonAnswer.MediaType]))
            .WithMetadata(Declared.Calculation);
        MapBatch(routes, Folder + Name).WithName(OperationId + "Batch").WithTags(Tag).Needs(Scope.Calculate);
    }

    /// <summary>Answers one question.</summary>
    public abstract Task<IResult> HandleAsync(HttpContext context, [FromQuery] string? units = null);

    /// <summary>Maps the batch beside the single question.</summary>
    protected abstract RouteHandlerBuilder MapBatch(IEndpointRouteBuilder routes, string path);
}

/// <inheritdoc/>
/// <param name="declaredIn">The type whose comments describe the operation: summary, remarks, request and response.</param>
/// <typeparam name="TRequest">A question of the contract.</typeparam>
/// <typeparam name="TQuestion">A question of the engine.</typeparam>
/// <typeparam name="TResult">What the engine answers.</typeparam>
/// <typeparam name="TAnswer">An answer of the contract.</typeparam>
internal sealed class Calculation<TRequest, TQuestion, TResult, TAnswer>(Type declaredIn) : Calculation
    where TRequest : class
    where TResult : class
    where TAnswer : class
{
    /// <summary>The units of an answer, from the question and the choice in the query.</summary>
    public required Func<TRequest, string?, AnswerUnits> Units { get; init; }

    /// <summary>From the contract to the engine.</summary>
    public required Func<TRequest, TQuestion> Question { get; init; }

    /// <summary>The engine.</summary>
    public required Func<TQuestion, Outcome<TResult>> Evaluate { get; init; }

    /// <summary>From the engine to the contract.</summary>
    public required Func<TRequest, TResult, AnswerUnits, TAnswer> Answer { get; init; }

    /// <summary>The verdict of an answer, under which it is counted.</summary>
    public required Func<TAnswer, string> Verdict { get; init; }

    /// <inheritdoc/>
    public override Type RequestType => typeof(TRequest);

    /// <inheritdoc/>
    public override Type AnswerType => typeof(TAnswer);

    /// <inheritdoc/>
    public override Type DeclaredIn => declaredIn;

    /// <summary>The answer to one question whose rules hold, sent by itself or among many.</summary>
    public Results<JsonAnswer<TAnswer>, ProblemResult> Ask(TRequest request, string? units)
    {
        var answerUnits = Units(request, units).PointingInto(typeof(TRequest));
        var outcome = Evaluate(Question(request));
        if (!outcome.IsAnswered)
        {
            Evaluations.Count(Name, Evaluations.Refused);
            return ProblemResult.Refused(outcome.Refusals, answerUnits.Display);
        }

        var answer = Answer(request, outcome.Result, answerUnits);
        Evaluations.Count(Name, Verdict(answer));
        return JsonAnswer.Of(answer);
    }

    /// <summary>Answers one question.</summary>
    /// <param name="context">The request, whose body is the question.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the question.</param>
    public override async Task<IResult> HandleAsync(HttpContext context, [FromQuery] string? units = null)
    {
        var body = await JsonBody<TRequest>.ReadAsync(context);
        var rules = context.RequestServices.GetRequiredService<IValidator<TRequest>>();
        return body.Problem ?? RequestFilter.Broken(rules, body.Value) ?? Ask(body.Value, units).Result;
    }

    /// <inheritdoc/>
    protected override RouteHandlerBuilder MapBatch(IEndpointRouteBuilder routes, string path) =>
        routes.MapBatch<TRequest, TAnswer>(path, Ask, Rows is { } rows ? new QuestionTable(typeof(TRequest), rows.Items, rows.Most) : null);
}
