using System.Reflection;
using System.Reflection.Emit;
using System.Runtime.CompilerServices;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Architecture.Tests;

/// <summary>Tells from compiled code which public members of the engine compute and which only hold or pass on.</summary>
/// <remarks>
/// A member computes if it does arithmetic itself, or in code that is not public and that it calls, or if it turns arguments
/// into a number, a quantity or a result (the reading of a table). What it calls of other public members is theirs to tell.
/// </remarks>
internal static class ComputingMembers
{
    private static readonly Dictionary<short, OpCode> Codes = typeof(OpCodes)
        .GetFields()
        .Select(field => (OpCode)field.GetValue(null)!)
        .ToDictionary(code => code.Value);

    private static readonly string[] Sums = ["Sum", "Average", "Aggregate", "SumOfSquares"];

    /// <summary>The members of a type that compute: methods, operators, and properties by their getter.</summary>
    public static IEnumerable<MethodInfo> Of(Type type) =>
        type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
            .Where(method => !method.IsAbstract && !IsGenerated(method) && method.GetBaseDefinition() == method)
            .Where(method => TurnsArgumentsIntoNumbers(method) || DoesArithmetic(method, []));

    private static bool IsGenerated(MemberInfo member) => member.IsDefined(typeof(CompilerGeneratedAttribute), false);

    private static bool TurnsArgumentsIntoNumbers(MethodInfo method) =>
        method.GetParameters().Length > 0 && !KeepsAPromise(method) && !method.IsSpecialName && IsNumber(method.ReturnType);

    // What an interface promises is told there.
    private static bool KeepsAPromise(MethodInfo method) =>
        method.DeclaringType is { IsInterface: false } type
        && type.GetInterfaces().Any(promise => type.GetInterfaceMap(promise).TargetMethods.Contains(method));

    private static bool IsNumber(Type type) =>
        type == typeof(double)
        || type == typeof(int)
        || typeof(IQuantity).IsAssignableFrom(type)
        || type.Name.EndsWith("Result", StringComparison.Ordinal)
        || (type.IsGenericType && type.GetGenericArguments().Any(IsNumber));

    private static bool DoesArithmetic(MethodBase method, HashSet<MethodBase> seen)
    {
        if (!seen.Add(method) || method.GetMethodBody()?.GetILAsByteArray() is not { } code)
            return false;
        var floating = method is MethodInfo { ReturnType: var answer } && IsNumber(answer);
        var before = OpCodes.Nop;
        foreach (var (instruction, called) in Instructions(method, code))
        {
            // A position in a list is no quantity.
            var isOfNumbers =
                before.Name?.StartsWith("ldc.i4", StringComparison.Ordinal) is false
                && (
                    instruction == OpCodes.Mul
                    || instruction == OpCodes.Div
                    || (floating && (instruction == OpCodes.Add || instruction == OpCodes.Sub))
                );
            if (isOfNumbers || (called is not null && (IsMathematics(called) || Behind(called).Any(next => DoesArithmetic(next, seen)))))
                return true;
            before = instruction;
        }

        return false;
    }

    private static bool IsMathematics(MethodBase called) =>
        (called.DeclaringType == typeof(Math) && called.Name is not ("Min" or "Max" or "Clamp" or "Abs"))
        || called.DeclaringType?.Namespace?.StartsWith("MathNet", StringComparison.Ordinal) == true
        || (called.DeclaringType == typeof(Enumerable) && Sums.Contains(called.Name));

    // Code that has no door of its own: what is not public, and what the compiler makes of lambdas and iterators.
    private static MethodBase[] Behind(MethodBase called)
    {
        // Comparing with an allowance for rounding is no computing.
        if (called.DeclaringType is not { Name: not "Threshold" } type || type.Assembly != typeof(IQuantity).Assembly)
            return [];
        if (called.IsConstructor && IsGenerated(type))
            return type.GetMethods(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.DeclaredOnly);
        return called.IsPublic && type.IsVisible ? [] : [called];
    }

    private static IEnumerable<(OpCode Code, MethodBase? Called)> Instructions(MethodBase method, byte[] code)
    {
        for (var at = 0; at < code.Length; )
        {
            var value = code[at++] is var first && first == 0xFE ? unchecked((short)(0xFE00 | code[at++])) : first;
            var instruction = Codes[value];
            var called = instruction.OperandType == OperandType.InlineMethod ? Resolve(method, BitConverter.ToInt32(code, at)) : null;
            yield return (instruction, called);
            at += instruction.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + 4 * BitConverter.ToInt32(code, at),
                _ => 4,
            };
        }
    }

    private static MethodBase? Resolve(MethodBase method, int token)
    {
        var resolved = method.Module.ResolveMethod(
            token,
            method.DeclaringType?.GetGenericArguments(),
            method.IsGenericMethod ? method.GetGenericArguments() : null
        );
        return resolved is MethodInfo { IsGenericMethod: true } generic ? generic.GetGenericMethodDefinition() : resolved;
    }
}
