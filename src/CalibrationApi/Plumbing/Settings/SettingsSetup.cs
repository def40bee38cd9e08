namespace CalibrationApi.Plumbing.Settings;

/// <summary>Reads the settings before anything is set up by them.</summary>
internal static class SettingsSetup
{
    /// <summary>Adds the settings; false when some are wrong, which is told to whoever starts the service, a sentence for each.</summary>
    public static bool TryAddSettings(this WebApplicationBuilder builder, bool isDemo, out CalibrationSettings settings)
    {
        var faults = new List<string>();
        settings = CalibrationSettings.Read(builder.Configuration, isDemo || builder.Environment.IsDevelopment(), faults);
        List<string> refusals = [.. faults.Select(fault => $"Refusing to start: {fault}")];
        foreach (var refusal in refusals)
            Console.Error.WriteLine(refusal);
        builder.Services.AddSingleton(settings);
        return refusals.Count == 0;
    }
}
