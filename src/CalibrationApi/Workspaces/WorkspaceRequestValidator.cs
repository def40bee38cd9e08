using CalibrationApi.Http;
using CalibrationApi.Storing;

namespace CalibrationApi.Workspaces;

/// <summary>Rules of a workspace.</summary>
internal sealed class WorkspaceRequestValidator : RequestValidator<WorkspaceRequest>
{
    public WorkspaceRequestValidator()
    {
        RuleFor(workspace => workspace.Id).NewId();
        RuleFor(workspace => workspace.Name).Needed();
        RuleFor(workspace => workspace.Name).Text(WorkspaceRequest.LongestName);
    }
}
