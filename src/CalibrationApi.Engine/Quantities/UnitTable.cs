using System.Collections.Frozen;

namespace CalibrationApi.Engine.Quantities;

/// <summary>The closed list of units, each with its exact factor. The only place where a factor is written down.</summary>
/// <remarks>
/// Source of the exact definitions: the international yard and pound agreement of 1959 (1 yd = 0.9144 m,
/// 1 lb = 0.453 592 37 kg) as tabulated in NIST SP 811, appendix B (SOURCES.md, key NIST-SP811); the US bushel of
/// 2150.42 cubic inches and the imperial gallon of 4.546 09 L from the same table. Acre and foot are the
/// international ones; UCUM only has the US survey acre, which is 4 parts in a million larger, so its code is nominal.
/// UN/ECE and ADAPT codes are given where a published list was read that has them.
/// </remarks>
public static class UnitTable
{
    private const string NominalAcre =
        "International acre (4046.8564224 m2); the UCUM code names the US survey acre, 4 parts in a million larger.";

    private static readonly ExactRatio Pound = new(45_359_237, 100_000_000);
    private static readonly ExactRatio Foot = new(3048, 10_000);
    private static readonly ExactRatio Inch = new(254, 10_000);
    private static readonly ExactRatio Mile = Foot * 5280;
    private static readonly ExactRatio SquareFoot = Foot * Foot;
    private static readonly ExactRatio CubicFoot = SquareFoot * Foot;
    private static readonly ExactRatio Acre = SquareFoot * 43_560;
    private static readonly ExactRatio Hectare = 10_000;
    private static readonly ExactRatio Litre = new(1, 1000);
    private static readonly ExactRatio Gram = new(1, 1000);
    private static readonly ExactRatio UsBushel = new ExactRatio(215_042, 100) * Inch * Inch * Inch;
    private static readonly ExactRatio ImperialBushel = new ExactRatio(454_609, 100_000) * Litre * 8;
    private static readonly ExactRatio Ounce = Pound / 16;
    private static readonly ExactRatio Minute = 60;
    private static readonly ExactRatio Hour = 3600;
    private static readonly ExactRatio One = 1;

    /// <summary>Every unit, ordered by dimension; the first of each dimension is its usual metric unit.</summary>
    public static IReadOnlyList<Unit> All { get; } =
    [
        new("kg", Dimension.Mass, One, "kg", "KGM", "kg"),
        new("g", Dimension.Mass, Gram, "g", "GRM", "g"),
        new("t", Dimension.Mass, 1000, "t", "TNE", "t", "Metric tonne, 1000 kg."),
        new("lb", Dimension.Mass, Pound, "[lb_av]", "LBR", "lb"),
        new("oz", Dimension.Mass, Ounce, "[oz_av]", "ONZ", "ozm", "Avoirdupois ounce, 1/16 lb."),
        new("ton-us", Dimension.Mass, Pound * 2000, "[ston_av]", "STN", "ton", "Short ton, 2000 lb."),
        new("ton-uk", Dimension.Mass, Pound * 2240, "[lton_av]", Note: "Long ton, 2240 lb."),
        new("kg/ha", Dimension.MassPerArea, One / Hectare, "kg/har", Adapt: "kg1ha-1"),
        new("g/m2", Dimension.MassPerArea, Gram, "g/m2", "GM"),
        new("lb/ac", Dimension.MassPerArea, Pound / Acre, "[lb_av]/[acr_us]", Adapt: "lb1ac-1", Note: NominalAcre),
        new("/m2", Dimension.CountPerArea, One, "/m2"),
        new("/ha", Dimension.CountPerArea, One / Hectare, "/har", Adapt: "count1ha-1"),
        new("/ft2", Dimension.CountPerArea, One / SquareFoot, "/[sft_i]"),
        new("/ac", Dimension.CountPerArea, One / Acre, "/[acr_us]", Note: NominalAcre),
        new("kg/rev", Dimension.MassPerRevolution, One, "kg/{rev}"),
        new("g/rev", Dimension.MassPerRevolution, Gram, "g/{rev}"),
        new("lb/rev", Dimension.MassPerRevolution, Pound, "[lb_av]/{rev}"),
        new("oz/rev", Dimension.MassPerRevolution, Ounce, "[oz_av]/{rev}"),
        new("rev", Dimension.Revolutions, One, "{rev}", "M44"),
        new("rpm", Dimension.Rotation, One / Minute, "{rev}/min", "RPM"),
        new("rev/s", Dimension.Rotation, One, "{rev}/s"),
        new("km/h", Dimension.Speed, new ExactRatio(1000, 1) / Hour, "km/h", "KMH", "km1hr-1"),
        new("m/s", Dimension.Speed, One, "m/s", Adapt: "m1sec-1"),
        new("mi/h", Dimension.Speed, Mile / Hour, "[mi_i]/h", "HM", "mi1hr-1"),
        new("m", Dimension.Length, One, "m", "MTR", "m"),
        new("cm", Dimension.Length, new(1, 100), "cm", Adapt: "cm"),
        new("mm", Dimension.Length, new(1, 1000), "mm", "MMT", "mm"),
        new("ft", Dimension.Length, Foot, "[ft_i]", "FOT", "ft", "International foot, 0.3048 m."),
        new("in", Dimension.Length, Inch, "[in_i]", "INH", "in"),
        new("ha", Dimension.Area, Hectare, "har", "HAR", "ha"),
        new("m2", Dimension.Area, One, "m2", "MTK"),
        new("ac", Dimension.Area, Acre, "[acr_us]", "ACR", "ac", NominalAcre),
        new("ft2", Dimension.Area, SquareFoot, "[sft_i]"),
        new("L", Dimension.Volume, Litre, "L", Adapt: "l"),
        new("m3", Dimension.Volume, One, "m3"),
        new("bu-us", Dimension.Volume, UsBushel, "[bu_us]", "BUA", Note: "US (Winchester) bushel, 2150.42 in3; a volume, never a mass."),
        new(
            "bu-imp",
            Dimension.Volume,
            ImperialBushel,
            "[bu_br]",
            "BUI",
            Note: "Imperial bushel, 8 imperial gallons; a volume, never a mass."
        ),
        new("ft3", Dimension.Volume, CubicFoot, "[cft_i]"),
        new("kg/hL", Dimension.BulkDensity, 10, "kg/hL"),
        new("kg/m3", Dimension.BulkDensity, One, "kg/m3"),
        new("kg/L", Dimension.BulkDensity, One / Litre, "kg/L"),
        new("lb/ft3", Dimension.BulkDensity, Pound / CubicFoot, "[lb_av]/[cft_i]"),
        new("lb/bu-us", Dimension.BulkDensity, Pound / UsBushel, "[lb_av]/[bu_us]", Note: "Test weight by the US bushel."),
        new("lb/bu-imp", Dimension.BulkDensity, Pound / ImperialBushel, "[lb_av]/[bu_br]", Note: "Test weight by the imperial bushel."),
        new("g/1000", Dimension.MassPerThousand, new(1, 1_000_000), "g/10*3", Note: "Thousand-kernel mass; the SI value is kg per kernel."),
        new("/kg", Dimension.CountPerMass, One, "/kg"),
        new("/lb", Dimension.CountPerMass, One / Pound, "/[lb_av]"),
        new("/m", Dimension.CountPerLength, One, "/m"),
        new("/ft", Dimension.CountPerLength, One / Foot, "/[ft_i]"),
        new("s", Dimension.Time, One, "s", "SEC", "sec"),
        new("min", Dimension.Time, Minute, "min", "MIN", "min"),
        new("h", Dimension.Time, Hour, "h", "HUR", "hr"),
        new("kg/min", Dimension.MassPerTime, One / Minute, "kg/min"),
        new("g/s", Dimension.MassPerTime, Gram, "g/s"),
        new("lb/min", Dimension.MassPerTime, Pound / Minute, "[lb_av]/min"),
        new("m3/h", Dimension.VolumePerTime, One / Hour, "m3/h"),
        new("m3/min", Dimension.VolumePerTime, One / Minute, "m3/min"),
        new("L/s", Dimension.VolumePerTime, Litre, "L/s"),
        new("ft3/min", Dimension.VolumePerTime, CubicFoot / Minute, "[cft_i]/min"),
        new("%", Dimension.Ratio, new(1, 100), "%", "P1", "prcnt"),
        new("1", Dimension.Ratio, One, "1", "C62", "ratio"),
        new("ppm", Dimension.Ratio, new(1, 1_000_000), "[ppm]", "59", "ppm"),
        new("pulses/rev", Dimension.PulsesPerRevolution, One, "{pulses}/{rev}"),
        new("pulses/100m", Dimension.PulsesPerDistance, new(1, 100), "{pulses}/hm"),
        new("kPa", Dimension.Pressure, 1000, "kPa"),
        new("mbar", Dimension.Pressure, 100, "mbar"),
        // Standard gravity, 9.806 65 m/s2, is exact; an inch of water is that of the conventional 1000 kg/m3.
        new("psi", Dimension.Pressure, Pound * new ExactRatio(980_665, 100_000) / (Inch * Inch), "[psi]"),
        new(
            "inH2O",
            Dimension.Pressure,
            new ExactRatio(980_665, 100) * Inch,
            "[in_i'H2O]",
            Note: "Conventional inch of water, 249.08891 Pa."
        ),
        new("degC", Dimension.Temperature, One, "Cel", Note: "Kelvin less 273.15.", OffsetInSi: 273.15),
        new("degF", Dimension.Temperature, new(5, 9), "[degF]", Note: "Kelvin is (value + 459.67) 5/9.", OffsetInSi: 273.15 - 32.0 * 5 / 9),
    ];

    private static readonly FrozenDictionary<string, Unit> BySymbol = All.ToFrozenDictionary(unit => unit.Symbol, StringComparer.Ordinal);

    private static readonly Unit[][] ByDimension =
    [
        .. Enum.GetValues<Dimension>().Select(dimension => All.Where(unit => unit.Dimension == dimension).ToArray()),
    ];

    /// <summary>Symbols that people write but that name more than one unit, with the units to choose from.</summary>
    public static IReadOnlyDictionary<string, string[]> Ambiguous { get; } =
        new Dictionary<string, string[]>(StringComparer.Ordinal)
        {
            ["bu"] = ["bu-us", "bu-imp"],
            ["lb/bu"] = ["lb/bu-us", "lb/bu-imp"],
            ["ton"] = ["t", "ton-us", "ton-uk"],
        };

    /// <summary>
    /// What people write for a unit, in any case, and the symbol that it has here. Only where it cannot mean another unit.
    /// </summary>
    public static IReadOnlyDictionary<string, string> Spellings { get; } =
        new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase)
        {
            ["mph"] = "mi/h",
            ["kph"] = "km/h",
            ["kmh"] = "km/h",
            ["lbs"] = "lb",
            ["pounds"] = "lb",
            ["lbs/ac"] = "lb/ac",
            ["lb/acre"] = "lb/ac",
            ["lbs/acre"] = "lb/ac",
            ["lbs/rev"] = "lb/rev",
            ["kgs"] = "kg",
            ["kilo"] = "kg",
            ["gram"] = "g",
            ["grams"] = "g",
            ["tonne"] = "t",
            ["tonnes"] = "t",
            ["ounces"] = "oz",
            ["revs"] = "rev",
            ["revolutions"] = "rev",
            ["turns"] = "rev",
            ["r/min"] = "rpm",
            ["rev/min"] = "rpm",
            ["plants/ft2"] = "/ft2",
            ["seeds/ft2"] = "/ft2",
            ["plants/m2"] = "/m2",
            ["seeds/m2"] = "/m2",
            ["plants/ac"] = "/ac",
            ["seeds/ac"] = "/ac",
            ["plants/ha"] = "/ha",
            ["seeds/ha"] = "/ha",
            ["seeds/lb"] = "/lb",
            ["seeds/kg"] = "/kg",
            ["seeds/ft"] = "/ft",
            ["seeds/m"] = "/m",
            ["acre"] = "ac",
            ["acres"] = "ac",
            ["hectare"] = "ha",
            ["hectares"] = "ha",
            ["feet"] = "ft",
            ["inch"] = "in",
            ["inches"] = "in",
            ["metres"] = "m",
            ["meters"] = "m",
            ["litre"] = "L",
            ["liter"] = "L",
            ["litres"] = "L",
            ["liters"] = "L",
            ["sec"] = "s",
            ["hr"] = "h",
            ["percent"] = "%",
        };

    /// <summary>
    /// The unit that somebody meant who wrote no symbol: a usual spelling, or a symbol in another case; null where none is clear.
    /// </summary>
    public static Unit? Meant(string text)
    {
        var trimmed = text.Trim();
        if (Spellings.TryGetValue(trimmed, out var symbol))
            return Find(symbol);
        var near = All.Where(unit => string.Equals(unit.Symbol, trimmed, StringComparison.OrdinalIgnoreCase)).ToArray();
        return near.Length == 1 ? near[0] : null;
    }

    /// <summary>The unit with exactly this symbol (case counts), or null.</summary>
    public static Unit? Find(string symbol) => BySymbol.GetValueOrDefault(symbol);

    /// <summary>The unit with exactly this symbol.</summary>
    /// <exception cref="ArgumentException">No unit has this symbol.</exception>
    public static Unit Get(string symbol) =>
        Find(symbol) ?? throw new ArgumentException($"No unit has the symbol '{symbol}'.", nameof(symbol));

    /// <summary>The units of <paramref name="dimension"/>, usual metric unit first.</summary>
    public static IReadOnlyList<Unit> Of(Dimension dimension) => ByDimension[(int)dimension];
}
