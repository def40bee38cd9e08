namespace CalibrationApi.Storage;

/// <summary>The database file belongs to a newer version of the service than this one.</summary>
public sealed class NewerSchemaException(int found, int known)
    : Exception($"The database has schema {found}, this service knows schemas up to {known}. Start the newer service, or restore a backup from before its upgrade.");
