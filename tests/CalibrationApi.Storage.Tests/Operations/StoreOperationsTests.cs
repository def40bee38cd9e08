using System.Reflection;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests.Operations;

public sealed class StoreOperationsTests
{
    private static MethodInfo[] TouchingRows =>
        [
            .. typeof(CalibrationDatabase)
                .Assembly.GetExportedTypes()
                .SelectMany(type =>
                    type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly)
                )
                .Where(method => method.GetParameters().Any(parameter => parameter.ParameterType == typeof(SqliteConnection)))
                .Except(StoreOperations.OfTheInstallation),
        ];

    [Fact]
    public void All_HasEveryPublicMethodThatTakesAConnection()
    {
        Assert.NotEmpty(TouchingRows);
        var missing = TouchingRows
            .Except(StoreOperations.All.Select(operation => operation.Method))
            .Select(method => $"{method.DeclaringType!.Name}.{method.Name}");

        Assert.Empty(missing);
    }

    [Fact]
    public void EveryMethodThatTakesAConnection_TakesTheWorkspaceNext()
    {
        foreach (var method in TouchingRows)
        {
            var parameters = method.GetParameters();

            Assert.Equal(typeof(SqliteConnection), parameters[0].ParameterType);
            Assert.Equal(typeof(string), parameters[1].ParameterType);
            Assert.Equal("workspace", parameters[1].Name);
        }
    }
}
