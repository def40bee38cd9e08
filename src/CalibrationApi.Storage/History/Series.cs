namespace CalibrationApi.Storage.History;

/// <summary>What makes tests comparable: the same meter with the same element, setting and product.</summary>
/// <param name="Machine">Id of the machine.</param>
/// <param name="Meter">Position of the meter.</param>
/// <param name="Element">Metering element.</param>
/// <param name="Setting">Setting of the meter; empty for none.</param>
/// <param name="Product">Id of the product.</param>
public sealed record Series(string Machine, string Meter, string Element, string Setting, string Product);
