namespace CalibrationApi.Engine.Answers;

/// <summary>Says beside a code what to do about it. The list of codes that vendors read is made of it.</summary>
/// <param name="text">Short sentences for the person at the machine or the programmer of the client.</param>
[AttributeUsage(AttributeTargets.Field)]
public sealed class RemedyAttribute(string text) : Attribute
{
    /// <summary>What to do.</summary>
    public string Text => text;
}
