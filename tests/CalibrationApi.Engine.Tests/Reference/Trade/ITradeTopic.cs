namespace CalibrationApi.Engine.Tests.Reference.Trade;

/// <summary>The published worked examples of one topic, and how the engine computes each of their figures.</summary>
public interface ITradeTopic
{
    /// <summary>
    /// File in <c>ReferenceData/</c> with the columns id; source; quantity; printed; lastDigits; status; by; reason, publishers in its
    /// header. status: reproduced (rounds to the printed figure), shortcut (exact units do not give the printed figure of a rule of
    /// thumb), misprint (neither exact units nor a rule of thumb give it), not-applicable (with the reason). by: who computes the figure,
    /// the engine, the test (the sum stands there, the engine lends its units at most), or nobody, because it is the copy of an
    /// entry of the engine's own table. Only the first kind is a check of the engine. An id can have several rows.
    /// </summary>
    static abstract string File { get; }

    /// <summary>The figures, by "id quantity"; the engine's own members wherever there is one for it.</summary>
    static abstract IReadOnlyDictionary<string, Func<double>> Computed { get; }
}
