namespace CalibrationApi.Client.Models;

/// <summary>What every page of a list has.</summary>
/// <typeparam name="T">What is listed.</typeparam>
internal interface IPage<T>
{
    List<T>? Items { get; }

    /// <summary>Address of the next page; null on the last one.</summary>
    string? Next { get; }
}

public partial class AuditItemPage : IPage<AuditItem>;

public partial class ContainerAnswerPage : IPage<ContainerAnswer>;

public partial class HistoryItemPage : IPage<HistoryItem>;

public partial class KeyAnswerPage : IPage<KeyAnswer>;

public partial class LotAnswerPage : IPage<LotAnswer>;

public partial class MachineAnswerPage : IPage<MachineAnswer>;

public partial class PlanAnswerPage : IPage<PlanAnswer>;

public partial class ProductAnswerPage : IPage<ProductAnswer>;

public partial class RefusalItemPage : IPage<RefusalItem>;

public partial class ScaleAnswerPage : IPage<ScaleAnswer>;

public partial class ValueInForceAnswerPage : IPage<ValueInForceAnswer>;

public partial class WorkspaceAnswerPage : IPage<WorkspaceAnswer>;
