namespace CalibrationApi.Plumbing.Keeping;

/// <summary>
/// Tells the operator once when the database cannot be used any more, and once when it can be again; requests in between fill no log.
/// </summary>
internal sealed partial class DatabaseLog(ILogger<DatabaseLog> log)
{
    public void Tell(string? why)
    {
        if (why is null)
            LogBack();
        else
            LogGone(why);
    }

    [LoggerMessage(Level = LogLevel.Critical, Message = "The database cannot be used. {Why}")]
    private partial void LogGone(string why);

    [LoggerMessage(Level = LogLevel.Warning, Message = "The database can be used again.")]
    private partial void LogBack();
}
