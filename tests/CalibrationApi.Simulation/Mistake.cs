using CalibrationApi.Engine.Catches;

namespace CalibrationApi.Simulation;

/// <summary>Something that people or machines get wrong in a catch test.</summary>
public abstract record Mistake
{
    /// <summary>Position of the one catch in which it happens, from 0; null when it happens in all.</summary>
    public int? OnlyIn { get; init; }

    /// <summary>
    /// The mass per revolution that it makes of an honest one, relative to that: what would be found over what is so, or for
    /// a wrong value in force, over what is expected.
    /// </summary>
    /// <param name="honest">The same catch without it.</param>
    public abstract double Ratio(OneCatch honest);

    /// <summary>True when it happens in the catch at this position.</summary>
    public virtual bool HappensIn(int position) => OnlyIn is not { } only || only == position;

    /// <summary>What it changes while the meter turns.</summary>
    internal virtual void AtTheMachine(OneCatch one) { }

    /// <summary>What it changes in the numbers written down.</summary>
    internal virtual void OnPaper(OneCatch one) { }

    /// <summary>What it changes in the question beyond its catches.</summary>
    internal virtual CatchTestQuestion InTheQuestion(CatchTestQuestion question) => question;
}
