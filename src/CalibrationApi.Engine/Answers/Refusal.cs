using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Answers;

/// <summary>Why a well-formed question cannot be answered. Expected failures are values; exceptions are for mistakes in code.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Member">
/// The input it is about, as a path of camelCase member names and indexes from the input record, for example <c>catches/0</c>.
/// </param>
/// <param name="Detail">What is wrong and what to do.</param>
public sealed record Refusal(RefusalCode Code, string Member, Sentence Detail);
