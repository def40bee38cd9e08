using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Plumbing.Contract;

/// <summary>Names the value that is used when a member is left out; the contract tells it with its origin.</summary>
/// <remarks>
/// The value stays where the engine keeps it, so the two cannot differ. It is told in words: as <c>default</c> in the schema,
/// generators of clients would take the member for one that is always there, or send it.
/// </remarks>
/// <param name="home">The class that holds it.</param>
/// <param name="name">Its static property, a <see cref="DefaultValue"/>.</param>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class DefaultAttribute(Type home, string name) : Attribute
{
    public DefaultValue Used => (DefaultValue)home.GetProperty(name)!.GetValue(null)!;
}

/// <summary>Tells where a request takes a member from that it inherits and that is left out, before any common default.</summary>
/// <param name="member">The C# name of the member.</param>
/// <param name="sentence">The sentence for the contract.</param>
[AttributeUsage(AttributeTargets.Class, AllowMultiple = true)]
internal sealed class TakenFromAttribute(string member, string sentence) : Attribute
{
    public string Member => member;

    public string Sentence => sentence;
}
