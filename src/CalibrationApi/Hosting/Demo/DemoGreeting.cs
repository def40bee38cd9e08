namespace CalibrationApi.Hosting.Demo;

/// <summary>Tells a newcomer what to try, with the address the service really listens on.</summary>
internal static class DemoGreeting
{
    public static void Print(string address) =>
        Console.WriteLine(
            $"""

            An invented season is loaded. Try, from the top folder of the repository:
              curl --json @demo-data/catch-plan.json  {address}/v1/calculations/catch-plan
              curl --json @demo-data/catch-test.json  {address}/v1/calculations/catch-test
              curl --json @demo-data/meter-speed.json {address}/v1/calculations/meter-speed
              curl {address}/v1/machines
              curl {address}/v1/machines/019d0000-0001-7000-8000-000000000001/values-in-force
              curl -H 'Accept: text/csv' {address}/v1/history
            Reference page: {address}/reference   Contract: {address}/openapi/v1.json

            """
        );
}
