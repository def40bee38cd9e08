namespace CalibrationApi.Storage.History;

/// <summary>What asks for the records of one series: the condition, and the parameters that it and the rest of a statement take.</summary>
internal sealed class OneSeries(string workspace, Series series)
{
    public string Workspace => workspace;

    public string Machine => series.Machine;

    public string Meter => series.Meter;

    public string Element => series.Element;

    public string Setting => series.Setting;

    public string Product => series.Product;

    /// <summary>An instant as stored.</summary>
    public string At { get; private init; } = "";

    /// <summary>Another instant as stored; empty is before all.</summary>
    public string After { get; init; } = "";

    public string? Lot { get; init; }

    public string? Except { get; init; }

    public int Most { get; init; }

    public OneSeries(string workspace, Series series, DateTimeOffset at)
        : this(workspace, series) => At = Instants.Text(at);

    /// <summary>The condition on a table that has the columns of a series.</summary>
    public static string Condition(string table) => $"{WhateverProduct(table)} and {table}.product = @Product";

    /// <summary>The same whatever the product.</summary>
    public static string WhateverProduct(string table) =>
        $"{table}.workspace = @Workspace and {table}.machine = @Machine and {table}.meter = @Meter and {table}.element = @Element and {table}.setting = @Setting";

    /// <summary>The condition that nothing took the place of a record of a kind.</summary>
    public static string Standing(string table, string kind) =>
        $"not exists (select 1 from supersessions s where s.workspace = {table}.workspace and s.kind = '{kind}' and s.superseded = {table}.id)";
}
