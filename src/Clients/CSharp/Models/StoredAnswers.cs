namespace CalibrationApi.Client.Models;

/// <summary>What every described record has.</summary>
internal interface IStoredAnswer
{
    string? Id { get; }
}

public partial class ContainerAnswer : IStoredAnswer;

public partial class LotAnswer : IStoredAnswer;

public partial class MachineAnswer : IStoredAnswer;

public partial class PlanAnswer : IStoredAnswer;

public partial class ProductAnswer : IStoredAnswer;

public partial class ScaleAnswer : IStoredAnswer;

public partial class WorkspaceAnswer : IStoredAnswer;
