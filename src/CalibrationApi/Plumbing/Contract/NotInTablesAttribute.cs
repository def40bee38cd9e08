namespace CalibrationApi.Plumbing.Contract;

/// <summary>A table has no column for members of this type: they are for programs, which read JSON.</summary>
[AttributeUsage(AttributeTargets.Class)]
internal sealed class NotInTablesAttribute : Attribute;
