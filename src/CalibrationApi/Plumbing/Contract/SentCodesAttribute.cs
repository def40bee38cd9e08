using System.Reflection;
using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Plumbing.Contract;

/// <summary>
/// Names the codes that the items of a list of an answer can carry. What carries a code is of one type in all answers; which codes one
/// answer can send stands at its list.
/// </summary>
/// <param name="home">The class of codes that has the list.</param>
/// <param name="list">Its static property.</param>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class SentCodesAttribute(Type home, string list) : Attribute
{
    public IReadOnlyList<Code> All =>
        (IReadOnlyList<Code>)home.GetProperty(list, BindingFlags.Public | BindingFlags.Static)!.GetValue(null)!;
}
