// Runs every study in full and writes its tables into README.md. Fails when a figure is outside its bounds.
// With the argument "demo-data" it only writes the table of planted mistakes; with "try", a study's title and a number it only
// prints that study with so many tests for each figure.
using System.Diagnostics;
using System.Globalization;
using System.Text;
using CalibrationApi.Simulation;
using CalibrationApi.Simulation.Studies;
using CalibrationApi.Testing;

if (args is ["demo-data"])
{
    await File.WriteAllTextAsync(Repository.PathOf("demo-data", PlantedMistakes.File), PlantedMistakes.Table());
    return 0;
}

if (args is ["try", NumberInUseStudy.Title, var some])
{
    Console.WriteLine(NumberInUseStudy.Table(int.Parse(some, CultureInfo.InvariantCulture)).Table);
    return 0;
}

if (args is ["try", var title, var few])
{
    var study = Study.All.Single(each => each.Title == title) with { Trials = int.Parse(few, CultureInfo.InvariantCulture) };
    Console.WriteLine(StudyTables.Of(study, Rates(study)));
    return 0;
}

var clock = Stopwatch.StartNew();
var tables = new StringBuilder();
var broken = 0;
foreach (var study in Study.All)
{
    var rates = Rates(study);
    broken += rates.Values.Count(rate => !rate.Holds);
    var table = StudyTables.Of(study, rates);
    Console.WriteLine(table);
    tables.Append('\n').Append(table);
}

var (numbers, outside) = NumberInUseStudy.Table(NumberInUseStudy.Trials);
Console.WriteLine(numbers);
tables.Append('\n').Append(numbers);
broken += outside;
var document = Repository.PathOf(StudyTables.Document);
await File.WriteAllTextAsync(document, StudyTables.Into(await File.ReadAllTextAsync(document), tables.Append('\n').ToString()));
Console.WriteLine($"{broken} figures outside their bounds; {clock.Elapsed.TotalSeconds:0} s. The tables are in README.md.");
return broken == 0 ? 0 : 1;

static Dictionary<(StudyCase Case, int Catches), Rate> Rates(Study study) =>
    study
        .Cases.SelectMany(one => one.Catches.Select(catches => (one, catches)))
        .ToDictionary(cell => cell, cell => cell.one.Run(Study.Seed, study.Trials, cell.catches));
