using System.Buffers.Binary;
using System.Reflection;
using System.Reflection.Emit;

namespace CalibrationApi.Architecture.Tests;

/// <summary>Reads what compiled methods use.</summary>
internal static class Instructions
{
    private const byte TwoBytes = 0xFE;

    private static readonly Dictionary<short, OpCode> OpCodesByValue = typeof(OpCodes)
        .GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(field => (OpCode)field.GetValue(null)!)
        .ToDictionary(code => code.Value);

    /// <summary>Everything that a type declares and that has a body, its nested types left out.</summary>
    public static IEnumerable<MethodBase> MethodsOf(Type type)
    {
        const BindingFlags Own =
            BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;
        return type.GetMethods(Own).Concat<MethodBase>(type.GetConstructors(Own));
    }

    /// <summary>The methods, fields and types that a method names.</summary>
    public static IEnumerable<MemberInfo> UsedBy(MethodBase method) => Of(method).Select(one => one.Member);

    /// <summary>The same in their order, each with what is done with it.</summary>
    public static IEnumerable<(OpCode Code, MemberInfo Member)> Of(MethodBase method)
    {
        if (method.GetMethodBody()?.GetILAsByteArray() is not { } body)
            yield break;
        var ofType = method.DeclaringType is { IsGenericType: true } type ? type.GetGenericArguments() : null;
        var ofMethod = method.IsGenericMethod ? method.GetGenericArguments() : null;
        for (var at = 0; at < body.Length; )
        {
            var code = OpCodesByValue[body[at] == TwoBytes ? (short)(body[at] << 8 | body[at + 1]) : body[at]];
            at += code.Size;
            if (code.OperandType is OperandType.InlineMethod or OperandType.InlineField or OperandType.InlineTok or OperandType.InlineType)
                yield return (code, method.Module.ResolveMember(Read(body, at), ofType, ofMethod)!);
            at += code.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + 4 * Read(body, at),
                _ => 4,
            };
        }
    }

    private static int Read(byte[] body, int at) => BinaryPrimitives.ReadInt32LittleEndian(body.AsSpan(at));
}
