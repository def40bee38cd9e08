using System.Reflection;
using System.Text;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;
using FluentValidation.Results;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Plumbing.Bodies;

/// <summary>Turns away requests that cannot be read or that break a rule, before a handler sees them.</summary>
internal static class RequestFilter
{
    /// <summary>
    /// Adds the checks to every route of a group; a body type with a member that has no rule fails the start of the host.
    /// </summary>
    public static TBuilder WithRequestChecks<TBuilder>(this TBuilder builder)
        where TBuilder : IEndpointConventionBuilder =>
        builder.AddEndpointFilterFactory(
            (route, next) =>
            {
                var parameters = route.MethodInfo.GetParameters();
                var allowed = parameters.SelectMany(QueryNames).ToHashSet(StringComparer.Ordinal);
                var body = Array.FindIndex(parameters, parameter => IsBody(parameter.ParameterType));
                var check =
                    body < 0 ? null : BodyCheck.For(parameters[body].ParameterType.GenericTypeArguments[0], route.ApplicationServices);
                return context =>
                {
                    if (QueryProblem(context.HttpContext.Request, allowed) is { } problem)
                        return ValueTask.FromResult<object?>(problem);
                    if (check?.Invoke(context.Arguments[body]!) is { } broken)
                        return ValueTask.FromResult<object?>(broken);
                    return next(context);
                };
            }
        );

    /// <summary>The pointer of a validation path: <c>Catches[0].Gross</c> becomes <c>#/catches/0/gross</c>.</summary>
    public static string Pointer(string path)
    {
        var pointer = new StringBuilder("#");
        foreach (var part in path.Split(['.', '[', ']'], StringSplitOptions.RemoveEmptyEntries))
            pointer.Append('/').Append(char.ToLowerInvariant(part[0])).Append(part, 1, part.Length - 1);
        return pointer.ToString();
    }

    // A parameter of the query, or the parameters that a class groups.
    private static IEnumerable<string> QueryNames(ParameterInfo parameter)
    {
        if (parameter.GetCustomAttribute<FromQueryAttribute>() is { } own)
            return [own.Name ?? parameter.Name!];
        return parameter.IsDefined(typeof(AsParametersAttribute))
            ? parameter
                .ParameterType.GetProperties()
                .Select(property => property.GetCustomAttribute<FromQueryAttribute>()?.Name)
                .OfType<string>()
            : [];
    }

    /// <summary>The rules that a request breaks; null when it breaks none.</summary>
    public static ProblemResult? Broken<T>(IValidator<T> validator, T request)
    {
        var result = validator.Validate(request);
        return result.IsValid ? null : ProblemResult.Invalid(Errors(result));
    }

    /// <summary>The errors of a validation, each place and code once.</summary>
    public static ProblemError[] Errors(ValidationResult result) =>
        [
            .. result
                .Errors.Select(failure => new ProblemError
                {
                    Pointer = Pointer(failure.PropertyName),
                    Code = Faults.CodeOf(failure),
                    Detail = failure.ErrorMessage,
                })
                .DistinctBy(error => (error.Pointer, error.Code)),
        ];

    private static bool IsBody(Type type) => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(JsonBody<>);

    private static ProblemResult? QueryProblem(HttpRequest request, HashSet<string> allowed)
    {
        if (!request.QueryString.HasValue)
            return null;
        var errors = new List<ProblemError>();
        foreach (var (name, values) in request.Query)
        {
            // The first that cannot be read is told alone.
            if (!allowed.Contains(name))
                return ProblemResult.Unreadable(
                    new ProblemError
                    {
                        Parameter = name,
                        Code = ErrorCodes.MemberUnknown,
                        Detail =
                            allowed.Count == 0
                                ? "This operation takes no query parameters. Leave it out."
                                : $"There is no such query parameter. Use: {string.Join(", ", allowed)}.",
                    }
                );
            else if (values.Count > 1)
                return ProblemResult.Unreadable(
                    new ProblemError
                    {
                        Parameter = name,
                        Code = ErrorCodes.MemberDuplicate,
                        Detail = "This query parameter is given twice. Give it once.",
                    }
                );
            else if (name == UnitsParameter && !UnitsWord.All.Contains(values[0]))
                errors.Add(
                    new ProblemError
                    {
                        Parameter = name,
                        Code = ErrorCodes.WordUnknown,
                        Detail = $"Use one of: {string.Join(", ", UnitsWord.All)}.",
                    }
                );
            // A cursor that is too long is no cursor, and told so by its list.
            else if (values[0]!.Length > LongestParameter && name != CursorParameter)
                errors.Add(
                    new ProblemError
                    {
                        Parameter = name,
                        Code = ErrorCodes.TextTooLong,
                        Detail = $"This parameter is longer than {LongestParameter} characters. Shorten it.",
                    }
                );
        }

        return errors.Count == 0 ? null : ProblemResult.Invalid(errors);
    }

    /// <summary>Most characters of a query parameter.</summary>
    public const int LongestParameter = 500;

    private const string CursorParameter = "cursor";

    /// <summary>The query parameter that chooses the units of an answer.</summary>
    public const string UnitsParameter = "units";

    private static class BodyCheck
    {
        public static Func<object, ProblemResult?> For(Type request, IServiceProvider services) =>
            (Func<object, ProblemResult?>)
                typeof(BodyCheck)
                    .GetMethod(nameof(Make), BindingFlags.NonPublic | BindingFlags.Static)!
                    .MakeGenericMethod(request)
                    .Invoke(null, BindingFlags.DoNotWrapExceptions, null, [services], null)!;

        private static Func<object, ProblemResult?> Make<T>(IServiceProvider services)
            where T : class
        {
            RequestPlan.MustSay(typeof(T));
            // Made when the first body comes; a start would wait for all of them.
            var validator = new Lazy<IValidator<T>>(services.GetRequiredService<IValidator<T>>);
            return argument =>
            {
                var body = (JsonBody<T>)argument;
                return body.Problem ?? Broken(validator.Value, body.Value);
            };
        }
    }
}
