using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.History;
using CalibrationApi.Engine.MeteringElements;

namespace CalibrationApi.Engine.Adoptions;

/// <summary>The codes of numbers typed into a controller.</summary>
public static class TypedValueCodes
{
    /// <summary>A number that nobody measured is the one that is in force for another product on the same element.</summary>
    public static NoteOrWarningCode FitsOtherProduct { get; } =
        new("fits-other-product", "Check which product was meant. If the number is right for this one too, a catch test shows it.");

    /// <summary>
    /// A value in force stated beside a test is far from what the records have: the value adopted, the last test, or other products.
    /// </summary>
    public static WarningCode StatedUnlikeRecords { get; } =
        new(
            "stated-unlike-records",
            "Look at what the controller shows. If it is the number stated, adopt it, so that the record says so; otherwise enter the test once more with the right number, superseding this record."
        );

    /// <summary>A number was adopted although something spoke against it, with a reason.</summary>
    public static WarningOrStopCode AdoptedDespite { get; } =
        new("adopted-despite", "Read the reason. If it does not hold, test again and adopt the right number, superseding this record.");

    /// <summary>
    /// A number typed into a controller differs by a factor of ten, a hundred or a thousand from its test, from the value before, or from
    /// what is to be expected.
    /// </summary>
    public static RefusalCode TypedDecimalSlip { get; } =
        new(
            "typed-decimal-slip",
            "Look at the decimal point in the controller and send the number that it shows. If it is right all the same, say why in despite with this code."
        );

    /// <summary>
    /// A number typed into a controller is twice or half of what its test, the value before or other products on the element say.
    /// </summary>
    public static RefusalCode TypedTwiceOrHalf { get; } =
        new(
            "typed-twice-or-half",
            "Look at the controller and send the number that it shows. If it is right all the same, say why in despite with this code."
        );

    /// <summary>
    /// A number typed into a controller differs from its test, from the value before or from what other products on the element say as
    /// pounds do from kilograms.
    /// </summary>
    public static RefusalCode TypedInOtherUnit { get; } =
        new(
            "typed-in-other-unit",
            "Look at which unit the controller shows, and send number and unit as shown. If both are right all the same, say why in despite with this code."
        );

    /// <summary>A number typed into a controller is further from its test than uncertainty and last digit explain.</summary>
    public static RefusalCode TypedOffTest { get; } =
        new(
            "typed-off-test",
            "Look at the controller: digits may have been swapped. Send the number that it shows, or type in the one that the test gave. If it is right all the same, say why in despite with this code."
        );

    /// <summary>A number typed into a controller without a test is 10 % or more from the value in force before.</summary>
    public static RefusalCode TypedOffValueInForce { get; } =
        new(
            "typed-off-value-in-force",
            "Name the test that it comes from, or make one. If the number is right all the same, say why in despite with this code."
        );

    /// <summary>
    /// A number typed into a controller without a test, where nothing was in force before, is far from what the last test there measured.
    /// </summary>
    public static RefusalCode TypedOffLastTest { get; } =
        new(
            "typed-off-last-test",
            "Name that test if the number comes from it; otherwise look at the controller and send the number that it shows. If it is right all the same, say why in despite with this code."
        );

    /// <summary>A number typed into a controller is more than the metering element can hold of the product.</summary>
    public static RefusalCode TypedMoreThanElementHolds { get; } =
        new(
            "typed-more-than-element-holds",
            "Check the number, its unit, the element that is fitted, its displacement and the bulk density of the product. If all are right, say why in despite with this code."
        );

    /// <summary>The number adopted is not the one that the test gave.</summary>
    public static WarningCode AdoptedOtherwise { get; } =
        new(
            "adopted-otherwise",
            "Check the number in the controller. If it was typed in wrongly, correct it and adopt again, superseding this record."
        );

    /// <summary>What can be noticed about a value that was adopted.</summary>
    public static IReadOnlyList<FindingCode> Findings { get; } =
    [
        AdoptedDespite,
        FitsOtherProduct,
        AdoptedOtherwise,
        HistoryCodes.BasisSuperseded,
        HistoryCodes.ScaleCheckFailedLater,
        .. ElementCodes.Findings,
        ElementCodes.UnlikeOtherProducts,
    ];
}
