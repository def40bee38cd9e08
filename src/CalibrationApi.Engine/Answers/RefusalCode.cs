namespace CalibrationApi.Engine.Answers;

/// <summary>The codes with which the engine refuses a well-formed question.</summary>
public static class RefusalCode
{
    /// <summary>Two members exclude each other, or settings cannot all be met.</summary>
    [Remedy("The sentence names the members. Leave one of them out, or change the one that is wrong.")]
    public const string SettingsAtOdds = "settings-at-odds";

    /// <summary>
    /// A number typed into a controller differs by a factor of ten, a hundred or a thousand from its test, from the value before, or from
    /// what is to be expected.
    /// </summary>
    [Remedy(
        "Look at the decimal point in the controller and send the number that it shows. If it is right all the same, say why in despite with this code."
    )]
    public const string TypedDecimalSlip = "typed-decimal-slip";

    /// <summary>
    /// A number typed into a controller is twice or half of what its test, the value before or other products on the element say.
    /// </summary>
    [Remedy("Look at the controller and send the number that it shows. If it is right all the same, say why in despite with this code.")]
    public const string TypedTwiceOrHalf = "typed-twice-or-half";

    /// <summary>
    /// A number typed into a controller differs from its test, from the value before or from what other products on the element say as
    /// pounds do from kilograms.
    /// </summary>
    [Remedy(
        "Look at which unit the controller shows, and send number and unit as shown. If both are right all the same, say why in despite with this code."
    )]
    public const string TypedInOtherUnit = "typed-in-other-unit";

    /// <summary>A number typed into a controller is further from its test than uncertainty and last digit explain.</summary>
    [Remedy(
        "Look at the controller: digits may have been swapped. Send the number that it shows, or type in the one that the test gave. If it is right all the same, say why in despite with this code."
    )]
    public const string TypedOffTest = "typed-off-test";

    /// <summary>A number typed into a controller without a test is 10 % or more from the value in force before.</summary>
    [Remedy("Name the test that it comes from, or make one. If the number is right all the same, say why in despite with this code.")]
    public const string TypedOffValueInForce = "typed-off-value-in-force";

    /// <summary>
    /// A number typed into a controller without a test, where nothing was in force before, is far from what the last test there measured.
    /// </summary>
    [Remedy(
        "Name that test if the number comes from it; otherwise look at the controller and send the number that it shows. If it is right all the same, say why in despite with this code."
    )]
    public const string TypedOffLastTest = "typed-off-last-test";

    /// <summary>A number typed into a controller is more than the metering element can hold of the product.</summary>
    [Remedy(
        "Check the number, its unit, the element that is fitted, its displacement and the bulk density of the product. If all are right, say why in despite with this code."
    )]
    public const string TypedMoreThanElementHolds = "typed-more-than-element-holds";
}
