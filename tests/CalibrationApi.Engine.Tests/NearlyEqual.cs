using System.Globalization;

namespace CalibrationApi.Engine.Tests;

/// <summary>Comparison by relative difference, which does not depend on the unit of a quantity.</summary>
public static class NearlyEqual
{
    public static void Assert(double expected, double actual, double relative = 1e-12, string what = "value") =>
        Xunit.Assert.True(
            Holds(expected, actual, relative),
            string.Create(
                CultureInfo.InvariantCulture,
                $"{what}: expected {expected:R}, actual {actual:R}, relative difference {(actual - expected) / expected:G3}, allowed {relative:G3}."
            )
        );

    public static bool Holds(double expected, double actual, double relative) =>
        expected.Equals(actual) || Math.Abs(actual - expected) <= relative * Math.Max(Math.Abs(expected), Math.Abs(actual));
}
