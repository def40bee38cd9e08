using System.Globalization;
using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.Tests.Hosting.Demo;

/// <summary>The file of the season: its ids, its times, and what its README says of both.</summary>
public sealed partial class SeasonFileTests
{
    private static readonly string Readme = File.ReadAllText(Repository.PathOf("demo-data", "README.md"));

    [Fact]
    public void Ids_OfTheReadme_AreThoseOfTheFileEachAtItsPath()
    {
        var rows = IdRow().Matches(Readme).Select(row => (row.Groups["path"].Value, row.Groups["id"].Value)).ToArray();

        Assert.NotEmpty(rows);
        Assert.Equal(SeasonFile.Requests.Select(request => (request.Path, SeasonFile.Id(request.Body))).Order(), rows.Order());
    }

    [Fact]
    public void Names_OfTheReadme_AreThoseOfTheFile()
    {
        var names = SeasonFile.Requests.Where(request => request.Body.ContainsKey("name")).ToArray();

        Assert.NotEmpty(names);
        Assert.All(names, request =>
            Assert.Contains(
                $"`{SeasonFile.Id(request.Body)}` | `{request.Path}` | {request.Body["name"]!.GetValue<string>()}",
                Readme,
                StringComparison.Ordinal
            )
        );
    }

    [Fact]
    public void Ids_OfTheFile_AreEachUsedOnce() =>
        Assert.Equal(SeasonFile.Requests.Count, SeasonFile.Requests.Select(request => SeasonFile.Id(request.Body)).Distinct().Count());

    [Fact]
    public void Times_OfTheFile_CarryTheOffsetOfTheMachinesZoneAndLieInOneSpring()
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById(SeasonFile.Requests[0].Body["timeZone"]!.GetValue<string>());
        DateTimeOffset[] times =
        [
            .. SeasonFile.Evidence.Select(body =>
                DateTimeOffset.Parse(body["occurredAt"]!.GetValue<string>(), CultureInfo.InvariantCulture)
            ),
        ];

        Assert.All(times, time => Assert.Equal(zone.GetUtcOffset(time.UtcDateTime), time.Offset));
        Assert.Equal(2, times.Select(time => time.Offset).Distinct().Count());
        Assert.All(times, time =>
            Assert.InRange(
                time,
                new DateTimeOffset(2026, 3, 1, 0, 0, 0, TimeSpan.Zero),
                new DateTimeOffset(2026, 6, 1, 0, 0, 0, TimeSpan.Zero)
            )
        );
        Assert.Equal(times.Order(), times);
    }

    [GeneratedRegex(@"^\| `(?<id>[0-9a-f-]{36})` \| `(?<path>/v1/[a-z-]+)` \| [^|]+ \|$", RegexOptions.Multiline)]
    private static partial Regex IdRow();
}
