using System.Reflection;
using System.Reflection.Emit;
using System.Runtime.CompilerServices;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Contract;

namespace CalibrationApi.Architecture.Tests;

/// <summary>The codes that a method can put into what it returns: those that it reads itself or by any method that it leads to.</summary>
/// <remarks>
/// Read from what the compiler wrote, so lambdas, iterators and static tables are included. A virtual member counts when an
/// object of its type is made on the way; a static table counts with what makes it, not with its whole class; a code that is
/// only compared with does not count. An evaluation that another one asks for its numbers counts only where findings, cautions
/// or refusals of its result are read on the way. What one branch reads counts even where its condition can never hold.
/// </remarks>
internal sealed class ReachedCodes
{
    private static readonly Assembly[] Ours = [typeof(Code).Assembly, typeof(Program).Assembly];

    private static readonly Dictionary<MethodInfo, Code> ByGetter = CodesOf
        .Service()
        .ToDictionary(one => one.Place.GetMethod!, one => one.Code);

    private readonly HashSet<(Module, int)> visited = [];
    private readonly HashSet<FieldInfo> tables = [];
    private readonly HashSet<Type> made = [];
    private readonly Stack<MethodBase> open = new();
    private readonly Dictionary<Type, List<MethodBase>> asked = [];
    private readonly HashSet<Type> passedOn = [];
    private readonly HashSet<Code> codes = [];

    private ReachedCodes(IEnumerable<MethodBase> roots)
    {
        foreach (var root in roots)
            Follow(root);
        while (open.TryPop(out var method))
            Read([.. Instructions.Of(method)]);
    }

    /// <summary>Whether one method leads to another.</summary>
    public static bool Leads(MethodBase from, MethodBase to) => new ReachedCodes([from]).visited.Contains((to.Module, to.MetadataToken));

    public static IReadOnlySet<Code> From(params IEnumerable<MethodBase> roots) => new ReachedCodes(roots).codes;

    private void Read((OpCode Code, MemberInfo Member)[] instructions)
    {
        for (var i = 0; i < instructions.Length; i++)
        {
            var isCompared = i + 1 < instructions.Length && instructions[i + 1].Member.Name is "op_Equality" or "op_Inequality";
            switch (instructions[i].Member)
            {
                case MethodInfo getter when ByGetter.TryGetValue(getter, out var code):
                    if (!isCompared)
                        codes.Add(code);
                    break;
                case MethodBase method:
                    Open(method);
                    break;
                case FieldInfo { IsStatic: true } field:
                    ReadTable(field);
                    break;
            }
        }
    }

    private void Open(MethodBase method)
    {
        if (ResultOf(method) is { } result && !passedOn.Contains(result))
            (asked.TryGetValue(result, out var those) ? those : asked[result] = []).Add(method);
        else
            Follow(method);
        if (
            method is MethodInfo { IsSpecialName: true, DeclaringType: { } holder } getter
            && PassesOn(getter)
            && passedOn.Add(Inner(holder))
        )
            asked.GetValueOrDefault(Inner(holder))?.ForEach(Follow);
    }

    private static Type? ResultOf(MethodBase method) =>
        method is MethodInfo { Name: "Evaluate", ReturnType: var result }
        && method.DeclaringType!.Name.EndsWith("Evaluation", StringComparison.Ordinal)
            ? Inner(result)
            : null;

    private static Type Inner(Type type) => type is { IsGenericType: true, GenericTypeArguments: [var one] } ? one : type;

    private static bool PassesOn(MethodInfo getter) =>
        getter.ReturnType == typeof(IReadOnlyList<Finding>)
        || getter.ReturnType == typeof(IReadOnlyList<Caution>)
        || getter.ReturnType == typeof(IReadOnlyList<Refusal>);

    private void Follow(MethodBase method)
    {
        if (method.DeclaringType is not { } type || !Ours.Contains(method.Module.Assembly))
            return;
        if (visited.Add((method.Module, method.MetadataToken)))
            open.Push(method);
        // Whoever has an object may call all that its type offers to others, which is not seen where it is called.
        if (method is not ConstructorInfo || method.IsStatic)
            return;
        for (var one = type; one is not null && Ours.Contains(one.Assembly) && made.Add(one); one = one.BaseType)
        {
            // What the compiler adds to a record, to write and compare it, reads every member and sends none.
            foreach (var member in Instructions.MethodsOf(one).Where(member => member.IsVirtual))
                if (!member.IsDefined(typeof(CompilerGeneratedAttribute)))
                    Open(member);
        }
    }

    // Fields are initialised in the order of the source, each by what stands between the field before and itself.
    private void ReadTable(FieldInfo field)
    {
        if (field.DeclaringType?.TypeInitializer is not { } initializer || !Ours.Contains(field.Module.Assembly) || !tables.Add(field))
            return;
        var all = Instructions.Of(initializer).ToArray();
        var at = Array.FindIndex(all, one => Sets(one, field.DeclaringType) && one.Member.MetadataToken == field.MetadataToken);
        var from = Array.FindLastIndex(all, Math.Max(at - 1, 0), one => Sets(one, field.DeclaringType)) + 1;
        if (at > 0)
            Read(all[from..at]);
    }

    private static bool Sets((OpCode Code, MemberInfo Member) one, Type type) =>
        one.Code == OpCodes.Stsfld && one.Member.DeclaringType == type;
}
