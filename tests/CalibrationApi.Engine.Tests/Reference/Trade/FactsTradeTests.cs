namespace CalibrationApi.Engine.Tests.Reference.Trade;

/// <summary>Published facts on what moves a meter's output, on even outlets and on safety.</summary>
public sealed class FactsTradeTests : TradeFigures<FactsTradeTests>, ITradeTopic
{
    public static string File => "trade-facts.csv";

    public static IReadOnlyDictionary<string, Func<double>> Computed { get; } =
        new Dictionary<string, Func<double>>(StringComparer.Ordinal)
        {
            ["SF-01 time to be buried at 3000 ft3/h / s"] = () => Si(7, "ft3") / (Si(3000, "ft3") / Si(1, "h")),
            ["SF-01 time to be buried at 52 ft3/min / s"] = () => Si(7, "ft3") / (Si(52, "ft3") / Si(1, "min")),
        };
}
