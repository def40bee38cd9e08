using System.Reflection;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests.Operations;

/// <summary>One public method of a store, called with arguments that <see cref="StoredWorkspace"/> has rows for.</summary>
internal sealed record StoreOperation
{
    private StoreOperation(Type store, string method, string? variant)
    {
        Method = store.GetMethod(method)!;
        Name = $"{store.Name}.{method}" + (variant is null ? "" : $" {variant}");
    }

    public MethodInfo Method { get; }

    public string Name { get; }

    /// <summary>What was found, item by item; null for an operation that writes.</summary>
    public Func<SqliteConnection, string, IReadOnlyList<object>>? Read { get; private init; }

    /// <summary>Null for an operation that reads.</summary>
    public Action<SqliteConnection, string>? Write { get; private init; }

    /// <summary>Why its statement may sort instead of reading in the order of an index; null when it may not.</summary>
    public string? SortsBecause { get; init; }

    public static StoreOperation Finding(Type store, string method, Func<SqliteConnection, string, object?> find, string? variant = null) =>
        new(store, method, variant) { Read = (connection, workspace) => find(connection, workspace) is { } found ? [found] : [] };

    public static StoreOperation Listing(
        Type store,
        string method,
        Func<SqliteConnection, string, IEnumerable<object>> list,
        string? variant = null
    ) => new(store, method, variant) { Read = (connection, workspace) => [.. list(connection, workspace)] };

    public static StoreOperation Writing(Type store, string method, Action<SqliteConnection, string> write, string? variant = null) =>
        new(store, method, variant) { Write = write };

    public override string ToString() => Name;
}
