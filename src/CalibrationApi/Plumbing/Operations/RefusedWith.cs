using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Plumbing.Operations;

/// <summary>Says with which codes the engine refuses what an operation is asked, beside the rules of its members.</summary>
/// <param name="Codes">All of them.</param>
internal sealed record RefusedWith(IReadOnlyList<RefusalCode> Codes);
