"""Made from openapi/v1.json by scripts/generate.py. Never edit it by hand."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING, Literal, TypedDict

if TYPE_CHECKING:
    from typing_extensions import NotRequired
elif sys.version_info >= (3, 11):
    from typing import NotRequired

AreaUnit = Literal["ha", "m2", "ac", "ft2"]
BulkDensityUnit = Literal["kg/hL", "kg/m3", "kg/L", "lb/ft3", "lb/bu-us", "lb/bu-imp"]
CountPerAreaUnit = Literal["/m2", "/ha", "/ft2", "/ac"]
CountPerLengthUnit = Literal["/m", "/ft"]
CountPerMassUnit = Literal["/kg", "/lb"]
LengthUnit = Literal["m", "cm", "mm", "ft", "in"]
MassPerAreaUnit = Literal["kg/ha", "g/m2", "lb/ac"]
MassPerRevolutionUnit = Literal["kg/rev", "g/rev", "lb/rev", "oz/rev"]
MassPerThousandUnit = Literal["g/1000"]
MassPerTimeUnit = Literal["kg/min", "g/s", "lb/min"]
MassUnit = Literal["kg", "g", "t", "lb", "oz", "ton-us", "ton-uk"]
PressureUnit = Literal["kPa", "mbar", "psi", "inH2O"]
PulsesPerDistanceUnit = Literal["pulses/100m"]
PulsesPerRevolutionUnit = Literal["pulses/rev"]
RatioUnit = Literal["%", "1", "ppm"]
RevolutionsUnit = Literal["rev"]
RotationUnit = Literal["rpm", "rev/s"]
SpeedUnit = Literal["km/h", "m/s", "mi/h"]
TemperatureUnit = Literal["degC", "degF"]
TimeUnit = Literal["s", "min", "h"]
VolumePerTimeUnit = Literal["m3/h", "m3/min", "L/s", "ft3/min"]
VolumeUnit = Literal["L", "m3", "bu-us", "bu-imp", "ft3"]


class AdoptionAnswer(TypedDict):
    """A stored adoption."""

    id: str
    """Id, a UUID of version 7."""

    occurredAt: str
    """When it was typed in, with the offset it was entered with."""

    localDate: str
    """The date of that in the machine's time zone."""

    receivedAt: str
    """When the service received it."""

    headline: str
    """The value, and the gravest of what was noticed about it, in sentences that can be shown as they are."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """What it is good for: `usable`, `check-first` (a finding warns) or `do-not-use` (one stops)."""

    massPerRevolution: MassPerRevolutionQuantity
    """The mass per revolution that the controller uses since then."""

    entered: AdoptionRequest
    """The request exactly as entered."""

    findings: list[FindingAnswer]
    """What was noticed. Codes known today: `adopted-despite`, `fits-other-product`, `adopted-otherwise`,
    `basis-superseded`, `scale-check-failed-later`, `more-than-the-element-holds`, `fill-unlike-expected`,
    `unlike-other-products`.
    """

    supersededBy: NotRequired[Supersedes]
    """The record that took its place, with the reason; absent while it stands."""


class AdoptionRequest(TypedDict):
    """A value that was typed into a controller: who, why, from which test or stated by hand."""

    id: NotRequired[str]
    """The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at
    any time. Default: the service makes one.
    """

    machine: str
    """Id of the machine."""

    meter: str
    """Position of the meter on the machine."""

    element: str
    """Metering element fitted."""

    setting: NotRequired[str]
    """Setting of the meter; none when absent."""

    product: str
    """Id of the product."""

    lot: NotRequired[str]
    """Id of the lot in the tank."""

    test: NotRequired[str]
    """Id of the catch test that the value rests on; absent when it is stated by hand."""

    typedIn: TypedNumber
    """The number that was typed in, in the unit of the controller's form."""

    meterSpeed: NotRequired[RotationQuantity]
    """The meter speed at which a mass per time applies; needed for that form only. No default. Range: above 0 and up to
    10000 rpm.
    """

    reason: str
    """Why it was adopted."""

    despite: NotRequired[list[Despite]]
    """Why the number is right although something speaks against it: one answer for each code of the refusal, which names
    them all. Only after a request without it was refused; the record and every later answer show them.
    """

    occurredAt: str
    """When it was typed in, RFC 3339 with offset."""

    recordedBy: str
    """Who typed it in."""

    supersedes: NotRequired[Supersedes]
    """The wrong adoption that this one takes the place of."""


class AgreementAnswer(TypedDict):
    """How catches agree."""

    spread: RatioQuantity
    """Standard deviation of the mass per revolution of the catches, relative; zero for one catch."""

    q: float
    """Sum of squared deviations over the variances expected of them."""

    qProbability: float
    """How often chance alone gives at least this Q."""

    agree: bool
    """No test speaks against the catches; all tests together err in 5 of 100 honest cases."""

    grubbs: NotRequired[float]
    """Grubbs' statistic of the farthest catch, for information from six catches on."""


class AirFlowLimits(TypedDict):
    """Air flows between which a product is carried and not damaged."""

    minimum: NotRequired[VolumePerTimeQuantity]
    """Least. No default. Range: above 0 and up to 1000000 m3/h."""

    maximum: NotRequired[VolumePerTimeQuantity]
    """Most. No default. Range: above 0 and up to 1000000 m3/h."""


class AirFlowWindow(TypedDict):
    """The air flows that the limits of all products leave."""

    exists: bool
    """At least one air flow suits all products; when false, the minimum of one lies above the maximum of another."""

    minimum: NotRequired[VolumePerTimeQuantity]
    """Least: the highest of the minima; absent without any."""

    minimumOf: NotRequired[str]
    """The product that sets it."""

    maximum: NotRequired[VolumePerTimeQuantity]
    """Most: the lowest of the maxima; absent without any."""

    maximumOf: NotRequired[str]
    """The product that sets it."""


class AirLoadAnswer(TypedDict):
    """What the air carries at one ground speed."""

    groundSpeed: SpeedQuantity
    """The ground speed."""

    rates: str
    """Which of its rates each product has: the `lowest` above zero or the `highest`."""

    massFlow: MassPerTimeQuantity
    """Mass flow of all products together."""

    massPerAir: NotRequired[BulkDensityQuantity]
    """Mass of all products in a volume of air; absent without a planned air flow."""

    products: list[ProductLoadAnswer]
    """Each product."""


class AmountOfNutrient(TypedDict):
    """An amount of a nutrient per area."""

    nutrient: Literal["N", "P2O5", "P", "K2O", "K", "S", "SO4-S", "SO3", "SO4"]
    """The nutrient in the form that the amount is stated in: N, P2O5, P, K2O, K, S, SO4-S, SO3 or SO4."""

    amount: MassPerAreaQuantity
    """Amount per area. Range: 0 to 10000 kg/ha."""


class AnyQuantity(TypedDict):
    """A value of any dimension, in an answer."""

    value: float
    """The number, in the unit beside it."""

    unit: str
    """The unit, one of those in `GET /v1/units`."""


class AreaQuantity(TypedDict):
    """An area."""

    value: float
    """The number, in the unit beside it."""

    unit: AreaUnit
    """The unit, written exactly as in `GET /v1/units`."""


class AssumptionAnswer(TypedDict):
    """A value that was used although the question did not state it."""

    name: str
    """What it is called."""

    pointer: NotRequired[str]
    """The member that overrides it, as a JSON pointer into the question (of a stored test, into its resolved question).
    Absent where nothing overrides it. Without a `value`, `number`, `word` or `flag` here, what goes there has more than
    one part, or was found from the question.
    """

    value: NotRequired[AnyQuantity]
    """The value, where it is a quantity."""

    number: NotRequired[float]
    """The value, where it is a number without a unit."""

    word: NotRequired[str]
    """The value, where it is a word."""

    flag: NotRequired[bool]
    """The value, where it is yes or no."""

    origin: str
    """Published source, common practice or judgement, in words."""

    meter: NotRequired[str]
    """The meter it is about, where the question held several."""


class AuditItem(TypedDict):
    """One thing that was done."""

    at: str
    """When (UTC)."""

    actor: str
    """Who: `key`; `local`, somebody at the machine of the service while there were no keys; `command`, the command of the
    service.
    """

    key: NotRequired[str]
    """Id of the key; absent for the other actors."""

    action: str
    """What: the name of the operation, as this contract has it; of a list, that it was exported."""

    target: NotRequired[str]
    """Path of what was made, changed or exported."""

    traceId: NotRequired[str]
    """Identifier under which the service's operator finds the request in the logs."""


class AuditItemPage(TypedDict):
    """A page of a list."""

    items: list[AuditItem]
    """The records of this page."""

    next: NotRequired[str]
    """Address of the next page; absent on the last one."""


class BlendShare(TypedDict):
    """Share of a nutrient in a blend."""

    nutrient: str
    """The nutrient in the form that the share is stated in. Known today: `N`, `P2O5`, `P`, `K2O`, `K`, `S`, `SO4-S`,
    `SO3`, `SO4`.
    """

    share: RatioQuantity
    """The share of the mass."""


class BothRotationLimits(TypedDict):
    """Meter speeds between which an element turns evenly and its drive keeps up; both are needed."""

    minimum: RotationQuantity
    """Slowest. Range: above 0 and up to 10000 rpm."""

    maximum: RotationQuantity
    """Fastest. Range: above 0 and up to 10000 rpm."""


class BoundAnswer(TypedDict):
    """One bound on a catch."""

    bound: str
    """What bounds it. Known today: `container`, `scale-capacity`, `lift-limit`, `maximum-run-time`, `shared-shaft`."""

    mass: MassQuantity
    """Largest net mass that it allows; for the container with its overflow margin."""


class BulkDensityAnswer(TypedDict):
    """A bulk density with its interval, beside what is published."""

    headline: str
    """The outcome in one or two sentences that can be shown as they are."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """What it is good for: `usable`, `check-first` (a finding warns) or `do-not-use` (one stops)."""

    bulkDensity: MeasuredBulkDensity
    """The bulk density with its uncertainty."""

    basis: str
    """What it is known from. Known today: `weighed`, `filled-tank`, `test-weight`, `stated`, `published`."""

    inOtherUnits: list[BulkDensityQuantity]
    """The same density in every unit."""

    uncertaintyParts: list[DensityUncertaintyPart]
    """Parts of the relative standard uncertainty."""

    weighings: NotRequired[list[WeighingAnswer]]
    """Each weighing; absent where nothing was weighed."""

    reference: NotRequired[ReferenceAnswer]
    """What is published for the material; absent when none was named."""

    looseDensity: NotRequired[BulkDensityQuantity]
    """The density of the same grain poured loosely, if the test weight is an official Canadian one, which allows for
    settling; absent where that does not apply.
    """

    tank: NotRequired[TankAnswer]
    """What the tank holds; absent when none was named."""

    cautions: list[CautionAnswer]
    """What can hurt somebody on the way. Codes known today: `product-dust`, `tank-entry`."""

    assumptions: list[AssumptionAnswer]
    """Values used that the question did not state."""

    findings: list[FindingAnswer]
    """What was noticed. Codes known today: `density-unlike-reference`, `density-not-compared`, `published-density-only`,
    `weighings-scatter`, `small-volume`, `other-bushel`, `test-weight-settled`.
    """

    engineVersion: str
    """Version of the engine that answered."""


class BulkDensityAnswerBatchLine(TypedDict):
    """One line of the answer to many questions: the result of one of them, or the problem that it has."""

    line: int
    """The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the
    header being row 1.
    """

    test: NotRequired[str]
    """What the table calls the test; absent when no table was sent."""

    given: NotRequired[list[GivenCell]]
    """What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing
    there or no table was sent.
    """

    result: NotRequired[BulkDensityAnswer]
    """What the question would be answered alone; absent when there is a problem."""

    problem: NotRequired[Problem]
    """What the question would be refused with alone; absent when there is a result."""


class BulkDensityQuantity(TypedDict):
    """The mass of a product per bulk volume. A bushel is always named."""

    value: float
    """The number, in the unit beside it."""

    unit: BulkDensityUnit
    """The unit, written exactly as in `GET /v1/units`."""


class BulkDensityRequest(TypedDict):
    """A product whose bulk density is wanted. At most one of weighed, testWeight, filledTank and statedDensity; without
    any, a reference gives a value to start from.
    """

    product: NotRequired[str]
    """What the owner calls the product."""

    reference: NotRequired[Literal["alfalfa", "ammonium-nitrate-low-density", "ammonium-nitrate-prilled", "ammonium-sulfate-crystal", "ammonium-sulfate-granular", "barley", "birdsfoot-trefoil", "bluegrass", "brome-grass", "canary-seed", "canola", "chickpea", "clover", "cowpea", "diammonium-phosphate", "faba-bean", "flax", "lupin", "corn", "millet", "monoammonium-phosphate", "oat", "orchard-grass", "pea", "potassium-chloride-granular", "potassium-chloride-soluble", "potassium-magnesium-sulfate", "rice", "rye", "safflower", "sorghum", "soybean", "sudan-grass", "sugar-beet", "sunflower", "tall-fescue", "timothy", "triple-superphosphate", "triticale", "urea-granular", "vetch", "wheat"]]
    """The material whose published densities are compared; needed where nothing else is given."""

    weighed: NotRequired[WeighedVolumeOfProduct]
    """Weighings of a container of known volume; the best evidence."""

    testWeight: NotRequired[TestWeightOfProduct | BulkDensityQuantity]
    """A test weight, for example from the elevator. A bushel is always named. No default. Range: 10 to 10000 kg/m3."""

    filledTank: NotRequired[FilledTankOfProduct]
    """A tank that was filled with a known mass."""

    statedDensity: NotRequired[StatedDensityOfProduct | BulkDensityQuantity]
    """A density that somebody stated; it is challenged when it is far from what is published for the reference. No
    default. Range: 10 to 10000 kg/m3.
    """

    lotToLot: NotRequired[RatioQuantity]
    """Standard uncertainty of one lot about a published value, where nothing but the reference is given. Default 5 %: one
    lot about a published value; judgement, no published source. Range: 0 to 50 %.
    """

    tank: NotRequired[TankOfProduct]
    """A tank to be filled with the product: what does it hold, and how far does that go?"""

    coverageProbability: NotRequired[float]
    """Coverage probability of the intervals. Default 0.95: common practice for expanded uncertainties, as in the examples
    of JCGM 100:2008.
    """


class CapacityAnswer(TypedDict):
    """Area worked at one ground speed."""

    groundSpeed: SpeedQuantity
    """The ground speed."""

    areaPerHour: AreaQuantity
    """Area worked in one hour."""

    fieldEfficiency: RatioQuantity
    """Share of the time in the field that is spent working."""

    areaPerDay: NotRequired[AreaQuantity]
    """Area worked in a day of the stated time; absent without one."""

    timeForArea: NotRequired[TimeQuantity]
    """Time in the field for the stated area; absent without one."""


class CatchAnswer(TypedDict):
    """One catch as evaluated."""

    net: MassQuantity
    """Net mass as the scale showed it."""

    metered: NotRequired[MassQuantity]
    """Mass metered: corrected for the known error of the scale and scaled to all points; absent when it equals the net
    mass.
    """

    revolutions: RevolutionsQuantity
    """Revolutions of the meter."""

    massPerRevolution: MassPerRevolutionQuantity
    """Mass per revolution of this catch alone."""

    excludedBecause: NotRequired[str]
    """Why the sender left it out; absent when it counts."""


class CatchOfTest(TypedDict):
    """One catch: what was weighed, as gross and tare (or the sharedTare of the test) or as net; and how far the meter
    turned, as exactly one of revolutions, pulses, turns, indicatedMass and runTime.
    """

    gross: NotRequired[MassQuantity]
    """Mass with the container. No default. Range: above 0 and up to 1000 t."""

    tare: NotRequired[MassQuantity]
    """Mass of the empty container. No default. Range: 0 to 1000 t."""

    net: NotRequired[MassQuantity]
    """Net mass, in place of gross and tare. No default. Range: above 0 and up to 1000 t."""

    revolutions: NotRequired[RevolutionsQuantity]
    """Revolutions of the meter. No default. Range: above 0 and up to 1000000 rev."""

    pulses: NotRequired[float]
    """Sensor pulses, a plain count. No default."""

    turns: NotRequired[RevolutionsQuantity]
    """Turns of a crank or wheel. No default. Range: above 0 and up to 1000000 rev."""

    indicatedMass: NotRequired[MassQuantity]
    """Mass that the machine believes to have metered. No default. Range: above 0 and up to 1000 t."""

    runTime: NotRequired[TimeQuantity]
    """Run time at the steady meter speed. No default. Range: above 0 and up to 24 h."""

    excluded: NotRequired[Exclusion]
    """Leaves the catch out of the evaluation but in the answer."""


class CatchPlanAnswer(TypedDict):
    """A planned catch test."""

    headline: str
    """The plan in one sentence that can be shown as it is."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """What it is good for: `usable`, `check-first` (a finding warns) or `do-not-use` (one stops)."""

    meters: list[MeterPlanAnswer]
    """The meters in the order given."""

    oneAfterTheOther: bool
    """No simulated speed keeps all meters within their limits, so they run one after the other, each at its own."""

    containersNeeded: int
    """Containers that stand under the meters at the same time."""

    stopOrder: list[StopAnswer]
    """When to stop which meter, first stop first; stops closer than ten seconds share a group. Where the meters run one
    after the other, each from its own start.
    """

    steps: list[StepAnswer]
    """What to do, as a set: a step may begin when every step it comes after is done."""

    cautions: list[CautionAnswer]
    """What can hurt somebody; show them with the steps. Codes known today: `manual-first`, `unexpected-start`,
    `rotating-parts`, `stored-pressure`, `product-dust`, `tank-entry`, `heavy-container`.
    """

    assumptions: list[AssumptionAnswer]
    """Values used that the question did not state."""

    findings: list[FindingAnswer]
    """What was noticed. Codes known today: `container-nearly-full`, `bounds-cross`, `wide-speed-range`, `short-run`,
    `simulated-speed-moved`, `meters-run-apart`, `too-few-containers`, `stops-close-together`, `coarse-scale`,
    `small-catch`, `precision-out-of-reach`, `outside-meter-window`, `more-than-the-element-holds`,
    `fill-unlike-expected`.
    """

    engineVersion: str
    """Version of the engine that answered."""


class CatchPlanAnswerBatchLine(TypedDict):
    """One line of the answer to many questions: the result of one of them, or the problem that it has."""

    line: int
    """The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the
    header being row 1.
    """

    test: NotRequired[str]
    """What the table calls the test; absent when no table was sent."""

    given: NotRequired[list[GivenCell]]
    """What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing
    there or no table was sent.
    """

    result: NotRequired[CatchPlanAnswer]
    """What the question would be answered alone; absent when there is a problem."""

    problem: NotRequired[Problem]
    """What the question would be refused with alone; absent when there is a result."""


class CatchPlanRequest(TypedDict):
    """A catch test to be planned: one or several meters in one run."""

    groundSpeed: SpeedQuantity
    """Ground speed that the controller is to be made to believe in during the run; usually the planned one. Where it takes
    a meter beyond its limits or leaves too short a run, the answer plans with another. Range: above 0 and up to 100
    km/h.
    """

    workingSpeeds: NotRequired[SpeedRange]
    """Ground speeds between which the field will be worked; the meter speeds at both ends are checked."""

    drive: NotRequired[Literal["separate", "shared-shaft"]]
    """How the meters are driven: `separate` drives that may stop one by one (the default), or a `shared-shaft`."""

    wantedPrecision: NotRequired[RatioQuantity]
    """Largest acceptable expanded uncertainty of the result. Default 3 %: default; judgement, no published source. Range:
    0.1 to 50 %.
    """

    precisionProbability: NotRequired[RatioQuantity]
    """Probability with which the number of catches reaches it. Default 80 %: probability with which the number of catches
    asked for is enough; judgement, no published source. Range: 50 to 99 %.
    """

    coverageProbability: NotRequired[float]
    """Coverage probability of expanded uncertainties. Default 0.95: common practice for expanded uncertainties, as in the
    examples of JCGM 100:2008.
    """

    maximumRunTime: NotRequired[TimeQuantity]
    """Longest run of one catch. Default 300 s: default; judgement, no published source. Range: above 0 and up to 24 h."""

    minimumRunTime: NotRequired[TimeQuantity]
    """Shortest run of one catch, not above the longest. A drive takes some seconds to settle. Default 20 s: a drive takes
    some seconds to settle; judgement, no published source. Range: above 0 and up to 24 h.
    """

    containersAtHand: NotRequired[int]
    """How many of the container are at hand. With fewer than meters that share it, the answer says so. No default."""

    liftLimit: NotRequired[MassQuantity]
    """Mass that one person lifts, container included. Default 25 kg: mass one person lifts, container included; judgement,
    local rules first. Range: above 0 and up to 1000 t.
    """

    scale: ScaleOfTest
    """The scale that will weigh the catches."""

    tareReading: NotRequired[Literal["each", "shared", "zeroed"]]
    """How the empty container will be taken into account: `each` (the default), `shared` or `zeroed`."""

    counterResolution: NotRequired[RevolutionsQuantity]
    """Smallest step of the revolution counter. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10
    rev.
    """

    countStart: NotRequired[Literal["free", "on-edge"]]
    """Where a count begins within its smallest step: `free` (the default) or `on-edge` of the sensor."""

    container: NotRequired[ContainerOfPlan]
    """The container under each meter that does not name its own."""

    meters: list[MeterOfPlan]
    """The meters of the run."""

    restorePoints: NotRequired[list[RestorePoint]]
    """What the test disturbs on this machine and has to be put back, in the owner's words."""


class CatchTestAnswer(TypedDict):
    """The evaluation of a catch test."""

    headline: str
    """The outcome in one or two sentences that can be shown as they are."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """What to do: `investigate` (something is wrong with the test), `repeat` (not sure enough yet), `keep` (the value in
    force is good enough) or `adopt` (type in the new value).
    """

    moreCatches: NotRequired[int]
    """How many more catches a repeat takes; absent for other verdicts and when no number of catches would help. Where
    precision is missing, so many are enough with the probability precisionProbability.
    """

    expectedPrecision: NotRequired[RatioQuantity]
    """The relative expanded uncertainty to expect after moreCatches, where precision is what is missing."""

    reasons: list[ReasonAnswer]
    """Why. Codes known today: `likely-mistake`, `more-than-the-container-holds`, `load-beyond-capacity`,
    `more-than-the-element-holds`, `scale-check-failed`, `cannot-be-told-apart`, `stray-catch`,
    `catches-scatter-more-than-expected`, `precision-not-reached`, `precision-out-of-reach`, `second-test-needed`,
    `tests-disagree`, `change-confirmed`, `catch-apart`, `exclusion-decides`, `within-tolerance`, `no-practical-change`,
    `no-value-in-force`, `change-detected`, `within-tolerance-not-shown`, `old-scale-explains-change`.
    """

    massPerRevolution: MeasuredMassPerRevolution
    """The mass per revolution found, with its uncertainty."""

    totalMassOverTotalRevolutions: MassPerRevolutionQuantity
    """Total mass over total revolutions: can be redone on paper."""

    meanOfRatios: MassPerRevolutionQuantity
    """Plain mean of the ratios of the catches: can be redone on paper."""

    uncertaintyParts: list[UncertaintyPart]
    """Where the uncertainty comes from: standard uncertainties, relative; their squares add up."""

    catches: list[CatchAnswer]
    """Every catch in the order given."""

    agreement: AgreementAnswer
    """How the catches that count agree."""

    change: NotRequired[MeasuredRatio]
    """Change against the value in force or the start value, with its interval; absent without either."""

    changeFrom: NotRequired[str]
    """What the change is measured from: `value-in-force` or `start-value`."""

    probabilityWithinTolerance: NotRequired[float]
    """Probability that the true mass per revolution is within the tolerance of the value compared with."""

    combinedWithPrevious: NotRequired[MeasuredMassPerRevolution]
    """Old and new value combined; offered when the uncertainty of the old one is known and no change was detected."""

    secondTest: NotRequired[SecondTestAnswer]
    """How the earlierTest of the question bears this one out; absent without one, or without a value to compare both with.
    An earlier test is combined with this one only when it is later than the last adoption.
    """

    likelyMistakes: list[LikelyMistakeAnswer]
    """Mistakes that would explain the test, the most probable first, each with its one check. Those under a probability of
    10 % are left out, except where the change is so large that a second test is asked for: then everything that could
    explain it is listed, however improbable. Of a smaller change, what fits it exactly is listed where it is not
    negligible; the verdict never changes by that. Empty when none stands out. Codes known today: `pounds-as-kilograms`,
    `kilograms-as-pounds`, `tare-not-taken-off`, `tare-taken-off-twice`, `tare-of-another-container`, `decimal-slip`,
    `digit-wrong`, `count-doubled`, `count-halved`, `meter-not-primed`, `container-overflowed`, `tank-bridged-or-empty`,
    `meter-isolated`, `catch-point-missed`, `half-of-points-as-whole`, `container-not-emptied`, `counter-not-reset`,
    `residue-in-container`, `wind-or-hand`, `ounces-as-decimals`, `pulses-per-revolution-wrong`,
    `turns-of-another-shaft`, `another-element`, `another-product`, `value-in-another-unit`, `value-in-force-wrong`,
    `start-value-wrong`, `something-else`.
    """

    valueToUse: NotRequired[MassPerRevolutionQuantity]
    """The mass per revolution that serves best from now on, with the verdict adopt: what the test found, what it and an
    earlier test found together, or between it and a value in force whose relativeUncertainty is known. What the test
    alone found stays in massPerRevolution.
    """

    enter: NotRequired[EntryAnswer]
    """What to type in for valueToUse; given with the verdict adopt when the controller's form is known."""

    measuredEntry: NotRequired[EntryAnswer]
    """The measured value in the controller's form; given with the verdicts keep and adopt when that form is known."""

    valueInForceEntry: NotRequired[EntryAnswer]
    """The value in force in the controller's form, with what its rounding makes of it; given with the verdicts keep and
    adopt when that form is known.
    """

    effectIfValueInForceStays: NotRequired[EffectAnswer]
    """What happens if the value in force stays although the meter delivers something else."""

    assumptions: list[AssumptionAnswer]
    """Values used that the question did not state."""

    findings: list[FindingAnswer]
    """What was noticed beyond the verdict. Codes known today: `more-than-the-container-holds`, `load-beyond-capacity`,
    `scale-check-failed`, `conditions-differ`, `possible-mistakes`, `cannot-be-told-apart`, `likely-mistake`,
    `first-catch-low`, `stray-catch`, `catches-scatter-more-than-expected`, `trend-over-catches`, `additive-offset`,
    `small-catch`, `coarse-scale`, `load-beyond-class`, `scale-dominates`, `default-repeatability-used`,
    `drawn-towards-old-number`, `change-confirmed`, `entry-resolution-matters`, `mixed-mass-units`, `catch-typed-twice`,
    `excluded-catch-agrees`, `catch-excluded`, `more-than-the-element-holds`, `fill-unlike-expected`,
    `unlike-other-products`.
    """

    engineVersion: str
    """Version of the engine that answered."""


class CatchTestAnswerBatchLine(TypedDict):
    """One line of the answer to many questions: the result of one of them, or the problem that it has."""

    line: int
    """The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the
    header being row 1.
    """

    test: NotRequired[str]
    """What the table calls the test; absent when no table was sent."""

    given: NotRequired[list[GivenCell]]
    """What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing
    there or no table was sent.
    """

    result: NotRequired[CatchTestAnswer]
    """What the question would be answered alone; absent when there is a problem."""

    problem: NotRequired[Problem]
    """What the question would be refused with alone; absent when there is a result."""


class CatchTestRecordAnswer(TypedDict):
    """A stored catch test."""

    id: str
    """Id, a UUID of version 7."""

    occurredAt: str
    """When the test was made, with the offset it was entered with."""

    localDate: str
    """The date of that in the machine's time zone."""

    receivedAt: str
    """When the service received it."""

    engineVersion: str
    """Version of the engine that evaluated it."""

    entered: RecordCatchTestRequest
    """The request exactly as entered."""

    resolved: CatchTestRequest
    """The complete question that was evaluated: the request joined with its records and its history."""

    evaluation: CatchTestAnswer
    """The evaluation."""

    usedHistory: UsedHistory
    """What was taken from the history."""

    findings: list[FindingAnswer]
    """What was noticed about the records the test refers to. Codes known today: `differs-from-plan`, `other-lot`,
    `scale-check-overdue`, `varies-from-day-to-day`, `basis-superseded`, `fits-other-product`, `stated-unlike-records`,
    `unlike-other-products`.
    """

    sinceThen: NotRequired[list[FindingAnswer]]
    """What came to light after the test; absent when nothing did. Codes known today: `scale-check-failed-later`,
    `scale-check-changed`, `basis-superseded`, `value-in-force-changed`.
    """

    supersededBy: NotRequired[Supersedes]
    """The record that took its place, with the reason; absent while the test stands."""


class CatchTestRequest(TypedDict):
    """A catch test of one meter with one product."""

    tareReading: NotRequired[Literal["each", "shared", "zeroed"]]
    """How the empty container was taken into account: `each` catch has its own tare reading, one reading is `shared` by
    all, or the scale was `zeroed` with the empty container on it. Default: each, or shared when sharedTare is given.
    """

    sharedTare: NotRequired[MassQuantity]
    """The one tare reading that serves all catches. No default. Range: above 0 and up to 1000 t."""

    countStart: NotRequired[Literal["free", "on-edge"]]
    """Where a count begins within its smallest step: `free` (anywhere, the default) or `on-edge` of the sensor."""

    turnResolution: NotRequired[RevolutionsQuantity]
    """Smallest step of the count of turns. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10 rev."""

    meterSpeed: NotRequired[RotationQuantity]
    """Steady meter speed; needed when catches give a run time or the controller takes a mass per time. No default. Range:
    above 0 and up to 10000 rpm.
    """

    timeResolution: NotRequired[TimeQuantity]
    """Smallest step of the run time. Default 0.5 s: default; judgement, no published source. Range: 0 to 60 s."""

    valueTypedIn: NotRequired[MassPerRevolutionQuantity]
    """The value that was typed into the controller while it indicated a mass; default the value in force. Range: above 0
    and up to 1000 kg/rev.
    """

    indicatedMassResolution: NotRequired[MassQuantity]
    """Smallest step of the indicated mass. Default 0.1 kg: default; judgement, no published source. Range: 0 to 100 kg."""

    caughtPoints: NotRequired[CaughtPointsOfTest]
    """Only some of the points that the meter feeds were caught, the same ones each time."""

    valueInForce: NotRequired[ReferenceOfTest | MassPerRevolutionQuantity]
    """The mass per revolution that the controller uses now: the number typed in. No default. Range: above 0 and up to 1000
    kg/rev.
    """

    startValue: NotRequired[ReferenceOfTest | MassPerRevolutionQuantity]
    """A predicted value to compare with where none is in force yet. No default. Range: above 0 and up to 1000 kg/rev."""

    predictedValue: NotRequired[PredictedValueOfTest | MassPerRevolutionQuantity]
    """What another lot is expected to give where that is not the value in force, for example the prediction for a new lot:
    the limit secondTestChange then counts from it, and mistakes are judged against it. No default. Range: above 0 and
    up to 1000 kg/rev.
    """

    earlierTest: NotRequired[EarlierTestOfTest]
    """An earlier test of the same meter, element, setting, product and lot, set up apart from this one since the value in
    force was adopted. A change of at least secondTestChange is adopted when the two agree. A test before the last
    adoption is not combined. No default. Range: above 0 and up to 1000 kg/rev.
    """

    targetRate: NotRequired[MassPerAreaQuantity]
    """The rate to be applied; gives the effect of a wrong value. No default. Range: above 0 and up to 100000 kg/ha."""

    area: NotRequired[AreaQuantity]
    """The area still to be seeded; gives mass and cost. No default. Range: above 0 and up to 1000000 ha."""

    catches: list[CatchOfTest]
    """The catches in the order in which they were made."""

    newLot: NotRequired[bool]
    """The product is of another lot than the one behind the value compared with: a larger change is then ordinary. Default
    false.
    """

    catchPoints: NotRequired[int]
    """Points or outlets whose product is meant to fall into the container; tells what one missed point would look like. No
    default.
    """

    ruledOutMistakes: NotRequired[list[Literal["pounds-as-kilograms", "kilograms-as-pounds", "tare-not-taken-off", "tare-taken-off-twice", "tare-of-another-container", "decimal-slip", "digit-wrong", "count-doubled", "count-halved", "meter-not-primed", "container-overflowed", "tank-bridged-or-empty", "meter-isolated", "catch-point-missed", "half-of-points-as-whole", "container-not-emptied", "counter-not-reset", "residue-in-container", "wind-or-hand", "ounces-as-decimals", "pulses-per-revolution-wrong", "turns-of-another-shaft", "another-element", "another-product", "value-in-another-unit", "value-in-force-wrong", "start-value-wrong", "something-else"]]]
    """Codes of likely mistakes that somebody has checked and that did not happen; they are left out of the judgement."""

    repeatability: NotRequired[RatioQuantity]
    """Repeatability of one catch (standard deviation), scale and counter parts removed. Default by the size of the catch,
    s^2 = (0.93 %)^2 + (14.3 % rev / turns)^2 + (0.49 % kg / mass)^2: 1 % at 14 kg and 40 rev, 2 % at 0.3 kg and 20 rev,
    3 % at 5 rev; with 2.9 % in place of 0.93 % for dusty or caking products: judgement, 4 degrees of freedom, no
    published source. Range: 0.01 to 30 %.
    """

    repeatabilityDegreesOfFreedom: NotRequired[float]
    """Degrees of freedom of the repeatability. Default 4: judgement, no published source; the stated deviation is then
    uncertain by about 35 % (JCGM 100:2008, G.4.2).
    """

    dayToDay: NotRequired[RatioQuantity]
    """Standard deviation from day to day beyond the scatter of catches. Default 1 %: default until the series has five
    tests; judgement, no published source. Range: 0 to 20 %.
    """

    tolerance: NotRequired[RatioQuantity]
    """Largest acceptable deviation of the value in force from the truth. Default 5 %: published acceptance limit: within 5
    % of the target rate (Field and Solie 2007; University of Georgia Extension). Range: 0.1 to 50 %.
    """

    wantedPrecision: NotRequired[RatioQuantity]
    """Largest acceptable expanded uncertainty of the result. Default 3 %: default; judgement, no published source. Range:
    0.1 to 50 %.
    """

    precisionProbability: NotRequired[RatioQuantity]
    """Probability with which the number of further catches that a repeat asks for reaches the wanted precision. Default 80
    %: probability with which the number of catches asked for is enough; judgement, no published source. Range: 50 to 99
    %.
    """

    secondTestChange: NotRequired[RatioQuantity]
    """Change from what was expected, from which a second test, set up anew, has to agree before anything is adopted.
    Default twice the tolerance. Default 10 %: twice the tolerance, by default twice the published 5 %: less can be one
    tolerance each of the old value and the new; judgement. Range: 0.1 to 100 %.
    """

    coverageProbability: NotRequired[float]
    """Coverage probability of expanded uncertainties. Default 0.95: common practice for expanded uncertainties, as in the
    examples of JCGM 100:2008.
    """

    meter: NotRequired[str]
    """What the owner calls the meter."""

    product: NotRequired[ProductOfTest]
    """The product."""

    scale: ScaleOfTest
    """The scale that weighed the catches."""

    counterResolution: NotRequired[RevolutionsQuantity]
    """Smallest step of the revolution counter. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10
    rev.
    """

    fittedElement: NotRequired[FittedElement]
    """The metering element that is fitted. With the bulk density of the product it says what a value can be; where neither
    valueInForce nor startValue is given, the start value comes from both.
    """

    conditions: NotRequired[Conditions]
    """Conditions during the test."""

    sowingConditions: NotRequired[Conditions]
    """Conditions that are expected in sowing; conditions far from them are said in the headline."""

    pocketsPerRevolution: NotRequired[int]
    """Pockets or flutes of the metering element that discharge one after the other in one revolution, where known. No
    default.
    """

    pulsesPerRevolution: NotRequired[PulsesPerRevolutionQuantity]
    """Sensor pulses per meter revolution; needed when catches give pulses or the controller takes a mass per pulse. No
    default. Range: above 0 and up to 1000000 pulses/rev.
    """

    meterRevolutionsPerTurn: NotRequired[RatioQuantity]
    """Meter revolutions per turn of the crank or wheel; needed when catches give turns. No default. Range: 0.0001 to
    10000.
    """

    controllerEntry: NotRequired[ControllerEntryOfTest]
    """The form in which the controller takes the value."""

    container: NotRequired[ContainerOfTest]
    """The container of the catches, where known; makes overflow and a forgotten tare easier to tell."""

    otherContainers: NotRequired[list[OtherContainerOfTest]]
    """Other containers at hand, whose tare may have been taken by mistake."""

    otherElements: NotRequired[list[OtherDeliveryOfTest]]
    """Other metering elements or settings of this meter and what they would give of this product."""

    otherProducts: NotRequired[list[OtherDeliveryOfTest]]
    """Other products of this machine and what the fitted element would give of them."""


class CaughtPointsOfTest(TypedDict):
    """A partial catch."""

    caught: int
    """Points that were caught."""

    total: int
    """Points that the meter feeds."""

    spread: NotRequired[RatioQuantity]
    """Standard deviation between points, relative. Default 2.887 %: published limit of 5 % for each outlet (University of
    Georgia Extension; Field and Solie 2007), taken as rectangular. Range: 0 to 100 %.
    """


class CautionAnswer(TypedDict):
    """Something that can hurt a person."""

    code: str
    """Stable code. Which ones can come stands at the list that holds it; `GET /v1/codes` explains each."""

    detail: str
    """A sentence that should be shown as it is."""

    parts: NotRequired[SentenceParts]
    """What the sentence is made of, for showing it in another language."""


class ChangeItem(TypedDict):
    """One stored change."""

    sequence: int
    """Its number: 1 for the first change of the workspace, one more with each, and none is left out."""

    kind: str
    """Kind of the record; read it under the path of its kind. Known today: `machine`, `product`, `lot`, `scale`,
    `container`, `plan`, `catch-test`, `adoption`, `scale-check`.
    """

    id: str
    """Id of the record."""

    revision: int
    """1 when the record was stored first, one more with each change of it. That of a described record is the one in its
    ETag: `"r3"` for 3.
    """

    what: str
    """What happened: `created`, `changed`, `retired` or `reinstated` (no longer retired) for what is described, `recorded`
    or `superseded` for evidence.
    """

    receivedAt: str
    """When the service received it (UTC). Changes stand in the order in which they were stored, not in that of any times."""

    occurredAt: NotRequired[str]
    """When that happened which the evidence tells of, with the offset it was entered with, long before it was received
    perhaps; absent for what is described.
    """

    machine: NotRequired[str]
    """Id of the machine that it is about, where it is about one."""

    machineBefore: NotRequired[str]
    """Id of the machine that a plan was for until then, where that was another."""

    supersededBy: NotRequired[str]
    """Id of the record that took its place; only with `superseded`."""

    cursor: str
    """The cursor behind this change: give it as `after` to go on with the next one, at any time."""


class ChangePage(TypedDict):
    """A page of the changes."""

    items: list[ChangeItem]
    """The changes of this page, oldest first."""

    next: NotRequired[str]
    """Address of the next page; absent when there is nothing more yet."""

    after: str
    """The cursor behind everything that this page looked at. Keep it: given as `after`, it lists what was stored since,
    however much later.
    """


class CheckedAnswer(TypedDict):
    """A value beside the expected one."""

    ratio: RatioQuantity
    """The value divided by the expected one."""

    deviations: NotRequired[float]
    """How many standard deviations it is away, on a logarithmic scale: above zero more than expected, below zero less.
    Absent when no spread was left to measure with.
    """

    fillEfficiency: ExpectedRatio
    """The fill efficiency that the value implies."""


class CodeAnswer(TypedDict):
    """One code, what it comes from and what to do."""

    code: str
    """The code as answers carry it. It never changes its meaning."""

    kind: str
    """Where it comes: an `error` in a problem, because the request has to be put right; a `refusal` in a problem, because
    a well-formed question has no sound answer; a `finding` among the findings and reasons of an answer; a `caution`
    where work can hurt somebody; a `mistake` among the likely mistakes of a catch test.
    """

    statuses: NotRequired[list[int]]
    """The HTTP statuses that it comes with; absent when it comes with an answer."""

    severities: NotRequired[list[str]]
    """The severities that it comes with, as findings name them; absent when it is no finding. Known today: `note`,
    `warning`, `stop`.
    """

    cause: str
    """What it comes from, in a sentence."""

    remedy: str
    """What to do, in short sentences."""


class CodesAnswer(TypedDict):
    """Every code that answers carry."""

    codes: list[CodeAnswer]
    """The codes, by kind and then in the order of the alphabet."""


class Conditions(TypedDict):
    """Conditions of a test or of sowing."""

    tankLevel: NotRequired[RatioQuantity]
    """Fill of the tank. No default. Range: 0 to 100 %."""

    tankPressure: NotRequired[PressureQuantity]
    """Pressure in the tank above that of the air around. No default. Range: 0 to 100 kPa."""

    slope: NotRequired[RatioQuantity]
    """Slope of the machine along its travel, uphill positive. No default. Range: -100 to 100 %."""

    productMoisture: NotRequired[RatioQuantity]
    """Moisture of the product by mass. No default. Range: 0 to 100 %."""

    airTemperature: NotRequired[TemperatureQuantity]
    """Temperature of the air. No default. Range: -60 to 70 degC."""

    fanSpeed: NotRequired[RotationQuantity]
    """Speed of the fan. No default. Range: 0 to 10000 rpm."""


class ContainerAnswer(TypedDict):
    """A container as stored."""

    name: str
    """What the owner calls it."""

    retired: bool
    """No longer in use: takes no new evidence, and lists leave it out unless asked. Default false."""

    note: NotRequired[str]
    """A remark in the owner's words."""

    volume: NotRequired[VolumeQuantity]
    """Volume."""

    tare: MassQuantity
    """Mass of the empty container."""

    fill: NotRequired[RatioQuantity]
    """Share of the volume that may be filled. Default 90 %: share of the volume that is filled; judgement, no published
    source.
    """

    id: str
    """Id, a UUID of version 7."""

    revision: int
    """1 when created, one more with each change."""

    createdAt: str
    """When it was created (UTC)."""

    updatedAt: str
    """When it was changed last (UTC)."""


class ContainerAnswerPage(TypedDict):
    """A page of a list."""

    items: list[ContainerAnswer]
    """The records of this page."""

    next: NotRequired[str]
    """Address of the next page; absent on the last one."""


class ContainerOfPlan(TypedDict):
    """A container for one catch."""

    volume: NotRequired[VolumeQuantity]
    """Volume; without it the container bounds nothing. With it, every meter needs the bulk density of its product. No
    default. Range: above 0 and up to 10 m3.
    """

    tare: MassQuantity
    """Mass of the empty container. Range: 0 to 10 t."""

    fill: NotRequired[RatioQuantity]
    """Share of the volume that may be filled. Default 90 %: share of the volume that is filled; judgement, no published
    source. Range: 1 to 100 %.
    """


class ContainerOfTest(TypedDict):
    """The container of the catches."""

    volume: NotRequired[VolumeQuantity]
    """Volume; with the bulk density of the product it says when the container runs over. No default. Range: above 0 and up
    to 10 m3.
    """

    tare: NotRequired[MassQuantity]
    """Mass of the empty container, for catches that give a net mass or no tare above zero. It is never taken off: it only
    tells what a forgotten tare would look like. No default. Range: 0 to 10 t.
    """


class ContainerRequest(TypedDict):
    """A container for catches."""

    id: NotRequired[str]
    """The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at
    any time. Default: the service makes one. May be repeated, unchanged, when replacing.
    """

    name: str
    """What the owner calls it."""

    retired: NotRequired[bool]
    """No longer in use: takes no new evidence, and lists leave it out unless asked. Default false."""

    note: NotRequired[str]
    """A remark in the owner's words."""

    volume: NotRequired[VolumeQuantity]
    """Volume. No default. Range: above 0 and up to 10 m3."""

    tare: MassQuantity
    """Mass of the empty container. Range: 0 to 10 t."""

    fill: NotRequired[RatioQuantity]
    """Share of the volume that may be filled. Default 90 %: share of the volume that is filled; judgement, no published
    source. Range: 1 to 100 %.
    """


class ControllerEntryOfTest(TypedDict):
    """How a controller takes the value."""

    form: Literal["mass-per-revolution", "mass-per-revolutions", "mass-per-pulse", "volume-per-revolution", "mass-per-time"]
    """The form: mass-per-revolution, mass-per-revolutions, mass-per-pulse, volume-per-revolution or mass-per-time."""

    unit: Literal["kg/rev", "g/rev", "lb/rev", "oz/rev", "kg", "g", "t", "lb", "oz", "ton-us", "ton-uk", "L", "m3", "bu-us", "bu-imp", "ft3", "kg/min", "g/s", "lb/min"]
    """Unit of the number: one of mass per revolution; of mass, for stated revolutions or a pulse; of volume; or of mass
    per time, as the form asks.
    """

    decimals: int
    """Decimals that the controller takes."""

    revolutions: NotRequired[int]
    """Revolutions that the number stands for: needed with the form mass-per-revolutions, and only with it. No default."""


class CornerAnswer(TypedDict):
    """One combination of rate and ground speed."""

    rate: MassPerAreaQuantity
    """The rate."""

    groundSpeed: SpeedQuantity
    """The ground speed."""

    meterSpeed: RotationQuantity
    """The meter speed that it takes."""

    withinLimits: bool
    """Inside the limits."""

    dischargeSpacing: NotRequired[LengthQuantity]
    """Ground between two discharges; absent when the pockets are unknown."""


class CorrectionAnswer(TypedDict):
    """A correction in proportion."""

    factor: RatioQuantity
    """Target over rate found: what to multiply the setting by."""

    setting: NotRequired[float]
    """The setting times that factor, as a plain number on the machine's own marks; absent when no setting was stated."""

    meterRevolutionsPerTurn: NotRequired[RatioQuantity]
    """Meter revolutions per turn times that factor, for a machine that is set by its gears; absent when no gearing was
    stated.
    """


class CostOfNutrient(TypedDict):
    """An amount of money for one mass unit of a nutrient."""

    value: float
    """The amount."""

    currency: str
    """ISO 4217 currency code."""

    per: str
    """The unit that it is for, one of those in `GET /v1/units`."""

    nutrient: str
    """The nutrient in the form that the cost is for. Known today: `N`, `P2O5`, `P`, `K2O`, `K`, `S`, `SO4-S`, `SO3`,
    `SO4`.
    """


class CostPerUnit(TypedDict):
    """An amount of money for one unit of area or mass."""

    value: float
    """The amount."""

    currency: str
    """ISO 4217 currency code."""

    per: str
    """The unit that it is for, one of those in `GET /v1/units`."""


class CountAnswer(TypedDict):
    """One count."""

    plants: int
    """Plants counted."""

    area: AreaQuantity
    """Ground counted."""

    stand: CountPerAreaQuantity
    """Plants per area of this spot."""


class CountOfPlants(TypedDict):
    """The plants of one spot."""

    plants: int
    """Plants counted; none is a count too."""

    ground: NotRequired[GroundOfCount]
    """The ground of this count, where it differs from that of the others."""

    row: NotRequired[str]
    """The row or opener where it was counted, in the words of the counter; counts of one row say less."""


class CountPerAreaQuantity(TypedDict):
    """Plants or seeds per area."""

    value: float
    """The number, in the unit beside it."""

    unit: CountPerAreaUnit
    """The unit, written exactly as in `GET /v1/units`."""


class CountPerLengthQuantity(TypedDict):
    """Plants or seeds per length of row."""

    value: float
    """The number, in the unit beside it."""

    unit: CountPerLengthUnit
    """The unit, written exactly as in `GET /v1/units`."""


class CountPerMassQuantity(TypedDict):
    """Seeds per mass."""

    value: float
    """The number, in the unit beside it."""

    unit: CountPerMassUnit
    """The unit, written exactly as in `GET /v1/units`."""


class CountedShare(TypedDict):
    """A share of the seeds that was counted in a stand."""

    estimate: RatioQuantity
    """The estimate. Range: 0.1 to 100 %."""

    lower: RatioQuantity
    """Lower end of its interval. Range: 0 to 1000 %."""

    upper: RatioQuantity
    """Upper end of its interval. Range: 0 to 1000 %."""

    coverageProbability: float
    """Coverage probability of the interval."""


class CreditedNutrient(TypedDict):
    """A nutrient that is there already."""

    nutrient: Literal["N", "P2O5", "P", "K2O", "K", "S", "SO4-S", "SO3", "SO4"]
    """The nutrient in the form that the amount is stated in: N, P2O5, P, K2O, K, S, SO4-S, SO3 or SO4."""

    amount: MassPerAreaQuantity
    """Amount per area. Range: 0 to 10000 kg/ha."""

    origin: NotRequired[str]
    """Where it comes from, in your words."""


class DeliveryPoint(TypedDict):
    """A mass per revolution at one meter speed."""

    meterSpeed: RotationQuantity
    """The meter speed. Range: above 0 and up to 10000 rpm."""

    massPerRevolution: MassPerRevolutionQuantity
    """The mass per revolution there. Range: above 0 and up to 1000 kg/rev."""


class DensityOfLot(TypedDict):
    """A bulk density of a lot."""

    value: float
    """The number, in the unit beside it. No default."""

    unit: BulkDensityUnit
    """The unit, written exactly as in `GET /v1/units`."""

    relativeUncertainty: NotRequired[RatioQuantity]
    """Its standard uncertainty, relative. Default 1 %: a weighed litre, or a test weight, repeats to about this;
    judgement, no published source. Range: above 0 and up to 50 %.
    """


class DensityOfProduct(TypedDict):
    """A bulk density."""

    value: float
    """The number, in the unit beside it. No default."""

    unit: BulkDensityUnit
    """The unit, written exactly as in `GET /v1/units`."""

    relativeUncertainty: NotRequired[RatioQuantity]
    """Its standard uncertainty. Default 3 %: standard uncertainty of a bulk density; judgement, no published source.
    Range: 0 to 100 %.
    """


class DensityUncertaintyPart(TypedDict):
    """A part of the uncertainty."""

    source: str
    """Where it comes from: scatter of the `weighings`, `scale`, `volume`, the `mass` filled in, `test-weight`, `stated`,
    `published-range` or the `lot`.
    """

    relative: RatioQuantity
    """Standard uncertainty, relative."""


class Despite(TypedDict):
    """What spoke against a typed number, and why it is right all the same."""

    code: Literal["typed-decimal-slip", "typed-twice-or-half", "typed-in-other-unit", "typed-off-test", "typed-off-value-in-force", "typed-off-last-test", "typed-more-than-element-holds"]
    """The code that the refusal gave. Known today: `typed-decimal-slip`, `typed-twice-or-half`, `typed-in-other-unit`,
    `typed-off-test`, `typed-off-value-in-force`, `typed-off-last-test`, `typed-more-than-element-holds`.
    """

    reason: str
    """Why the number is right, in the words of the person who typed it in."""


class DifferenceAnswer(TypedDict):
    """One value that differs."""

    pointer: str
    """Where in the evaluation, as a JSON pointer."""

    stored: NotRequired[str]
    """The stored value as JSON text; absent when there was none."""

    recomputed: NotRequired[str]
    """The value now as JSON text; absent when there is none."""


class DisplacementOfElement(TypedDict):
    """The volume that one revolution sweeps."""

    value: float
    """The number, in the unit beside it. No default."""

    unit: VolumeUnit
    """The unit, written exactly as in `GET /v1/units`."""

    relativeUncertainty: NotRequired[RatioQuantity]
    """Its standard uncertainty. Default 2 %: standard uncertainty of a displacement; judgement, no published source.
    Range: 0 to 100 %.
    """


class DisplacementWindowAnswer(TypedDict):
    """The displacements with which the meter stays inside its speeds."""

    lower: VolumeQuantity
    """Smallest: below it the meter would have to turn too fast."""

    upper: VolumeQuantity
    """Largest: above it the meter would turn too slowly. Less than the smallest where the window is empty."""

    middle: VolumeQuantity
    """Geometric middle of the two: as far from too slow as from too fast."""

    isEmpty: bool
    """No displacement serves."""

    spread: RatioQuantity
    """Standard deviation of the natural logarithm of both ends, which move together: the relative standard uncertainty."""

    bestProbability: float
    """Probability that a displacement in the middle serves: no other has a higher one."""


class DistanceEffectAnswer(TypedDict):
    """The effect of wrong numbers."""

    rateChange: MeasuredRatio
    """Rate applied over rate set, less 1, with the interval of the runs: positive when the field gets too much."""

    distanceCounted: NotRequired[RatioQuantity]
    """Distance counted over distance driven; absent without a value in force."""

    widthCounted: NotRequired[RatioQuantity]
    """Width in the controller over width covered anew; absent without a width."""

    areaCounted: RatioQuantity
    """Area counted over area covered: the product of the two. Without a value in force the distance counts as right."""

    appliedRate: NotRequired[MassPerAreaQuantity]
    """The rate that is really applied; absent without a target rate."""

    massOverArea: NotRequired[MassQuantity]
    """Product too much over the stated area; negative when too little."""

    totalCost: NotRequired[Money]
    """Money for that product; negative when the crop gets too little."""


class DistanceSensorAnswer(TypedDict):
    """What runs over a measured course say of a distance sensor."""

    headline: str
    """The outcome in one or two sentences that can be shown as they are."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """What to do: `investigate` (something is wrong with the runs), `repeat` (not sure enough yet), `keep` (the value in
    force is good enough) or `adopt` (type in the new value).
    """

    moreRuns: NotRequired[int]
    """How many more runs a repeat takes; absent for other verdicts and when no number of runs would help."""

    reasons: list[ReasonAnswer]
    """Why. Codes known today: `runs-scatter-more-than-expected`, `more-runs-needed`, `runs-out-of-reach`, `large-change`,
    `within-tolerance`, `no-practical-change`, `no-value-in-force`, `distance-changed`, `within-tolerance-not-shown`.
    """

    pulsesPerDistance: NotRequired[MeasuredPulsesPerDistance]
    """Pulses per distance with their uncertainty; absent when turns were counted and the pulses of a turn are unknown."""

    pulsesPerLength: NotRequired[CountPerLengthQuantity]
    """Pulses per metre or foot."""

    distancePerPulse: NotRequired[LengthQuantity]
    """Distance driven from one pulse to the next."""

    rollingCircumference: NotRequired[MeasuredLength]
    """Rolling circumference of the wheel under the load and on the ground of the runs; absent when its turns are unknown."""

    totalPulsesOverTotalDistance: NotRequired[PulsesPerDistanceQuantity]
    """All pulses over all distances: can be redone on paper."""

    uncertaintyParts: list[RunUncertaintyPart]
    """Where the uncertainty comes from: standard uncertainties, relative; their squares add up."""

    runs: list[RunAnswer]
    """Every run in the order given."""

    agreement: RunAgreementAnswer
    """How the runs agree."""

    runsForWantedPrecision: NotRequired[int]
    """Runs like these that the wanted precision takes in all; absent when no practical number reaches it."""

    skid: NotRequired[MeasuredRatio]
    """Skid against the reference runs, 1 - (turns per distance at work) / (turns per distance on the reference): positive
    when the wheel turns less often at work (it skids), negative when it turns more often (it slips). The sign is that
    of `skid` of a drive wheel.
    """

    width: NotRequired[WidthAnswer]
    """Width of the machine, as asked."""

    change: NotRequired[MeasuredRatio]
    """Pulses per distance found over those in force, less 1, with its interval: positive when the sensor gives more than
    the controller believes. Absent without a value in force.
    """

    probabilityWithinTolerance: NotRequired[float]
    """Probability that the truth is within the tolerance of the value in force."""

    enter: NotRequired[SensorEntryAnswer]
    """What to type in; given with the verdict adopt when the controller's form is known."""

    effectIfNumbersStay: NotRequired[DistanceEffectAnswer]
    """What happens if the numbers in the controller stay; absent when none of them is known."""

    assumptions: list[AssumptionAnswer]
    """Values used that the question did not state."""

    findings: list[FindingAnswer]
    """What was noticed beyond the verdict. Codes known today: `runs-scatter-more-than-expected`, `directions-differ`,
    `large-change`, `short-course`, `single-reading`, `tape-dominates`, `wheel-slips`, `width-differs`,
    `entry-resolution-matters`.
    """

    cautions: list[CautionAnswer]
    """What can hurt somebody on the course. Codes known today: `manual-first`, `moving-machine`."""

    engineVersion: str
    """Version of the engine that answered."""


class DistanceSensorAnswerBatchLine(TypedDict):
    """One line of the answer to many questions: the result of one of them, or the problem that it has."""

    line: int
    """The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the
    header being row 1.
    """

    test: NotRequired[str]
    """What the table calls the test; absent when no table was sent."""

    given: NotRequired[list[GivenCell]]
    """What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing
    there or no table was sent.
    """

    result: NotRequired[DistanceSensorAnswer]
    """What the question would be answered alone; absent when there is a problem."""

    problem: NotRequired[Problem]
    """What the question would be refused with alone; absent when there is a result."""


class DistanceSensorRequest(TypedDict):
    """Runs over a measured course, and what the controller holds."""

    runs: list[RunOfSensor]
    """The runs at work, on the ground that is seeded: one or more, each with pulses or each with wheel turns."""

    referenceRuns: NotRequired[list[RunOfSensor]]
    """Runs to compare skid with, unloaded or on a hard road, counted like the others."""

    pulsesPerTurn: NotRequired[PulsesPerRevolutionQuantity]
    """Sensor pulses in one turn of the wheel. With it, pulses and the rolling circumference follow from one another. No
    default. Range: above 0 and up to 1000000 pulses/rev.
    """

    distanceResolution: NotRequired[LengthQuantity]
    """Smallest step to which a distance between two marks is known: how closely the machine is lined up with each of them.
    Default 0.1 m: the machine is lined up with each mark to 5 cm either way; judgement, no published source. Range: 0
    to 10 m.
    """

    turnResolution: NotRequired[RevolutionsQuantity]
    """Smallest step of a count of wheel turns; pulses are counted to one. Default 0.1 rev: default; judgement, no
    published source. Range: 0 to 10 rev.
    """

    tapeLimit: NotRequired[RatioQuantity]
    """Limit of the error of the tape, relative. It is common to all runs, so more runs do not average it out. Default 0.2
    %: a tape laid over uneven ground by hand, taken as rectangular; judgement, no published source. Range: 0 to 20 %.
    """

    repeatability: NotRequired[RatioQuantity]
    """Scatter of one run (standard deviation), counting and marking removed. Default 0.5 %: even, firm ground; judgement,
    4 degrees of freedom, no published source. Range: 0.01 to 30 %.
    """

    repeatabilityDegreesOfFreedom: NotRequired[float]
    """Degrees of freedom of that scatter. Default 4: judgement, no published source; the stated deviation is then
    uncertain by about 35 % (JCGM 100:2008, G.4.2).
    """

    valueInForce: NotRequired[ValueOfSensor]
    """The number that the controller holds now."""

    controllerEntry: NotRequired[EntryOfSensor]
    """How the controller takes the number; gives what to type in."""

    width: NotRequired[WidthOfMachine]
    """The width of the machine; gives overlap, and what a wrong width does to the rate."""

    meterDrive: NotRequired[Literal["rate-controlled", "ground-driven"]]
    """What turns the meters: `rate-controlled`, a drive that a controller sets by this sensor, or `ground-driven`, a wheel
    on the ground, so that a wrong value spoils the count of distance and area but not the rate. Default
    rate-controlled: common practice.
    """

    targetRate: NotRequired[MassPerAreaQuantity]
    """The rate to be applied; gives the effect of wrong numbers. No default. Range: above 0 and up to 100000 kg/ha."""

    area: NotRequired[AreaQuantity]
    """The area still to be seeded; gives mass and cost. No default. Range: above 0 and up to 1000000 ha."""

    price: NotRequired[Price]
    """Price of the product; gives the cost of wrong numbers."""

    tolerance: NotRequired[RatioQuantity]
    """Largest acceptable deviation of the value in force from the truth. Default 2 %: leaves most of the published 5 % on
    the rate to the metering; judgement, no published source. Range: 0.1 to 50 %.
    """

    wantedPrecision: NotRequired[RatioQuantity]
    """Largest acceptable expanded uncertainty of the result. Default 1 %: two good runs reach it; judgement, no published
    source. Range: 0.1 to 50 %.
    """

    secondRunChange: NotRequired[RatioQuantity]
    """Change from which a second run has to confirm. Default 10 %: twice the published 5 % on the rate, as for a catch
    test; judgement, no published source. Range: 0.1 to 100 %.
    """


class DriveWheelOfMachine(TypedDict):
    """A drive wheel: exactly one of circumference, measuredRun and diameter."""

    circumference: NotRequired[LengthQuantity]
    """Rolling circumference, measured under load on the ground. Default pi times the diameter, where that is given:
    judgement, a loaded tyre rolls shorter. Range: 0.1 to 30 m.
    """

    measuredRun: NotRequired[RollingRun]
    """Distance and turns from which the rolling circumference follows."""

    diameter: NotRequired[LengthQuantity]
    """Diameter of the wheel; the circumference is then reckoned, and a finding warns of it. No default. Range: 0.03 to 10
    m.
    """

    relativeUncertainty: NotRequired[RatioQuantity]
    """Standard uncertainty of the circumference, relative; 2 % where it is reckoned from the diameter. Default 0.5 %:
    measured on the ground; judgement, no published source. Range: 0 to 20 %.
    """


class DriveWheelTurnsAnswer(TypedDict):
    """Turns of a drive wheel, expected catches, and what turn tests say."""

    headline: str
    """The outcome in one or two sentences that can be shown as they are."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """What to do about the setting: `investigate` (the rate is implausible, or an outlet gave nothing), `repeat` (not sure
    enough, test again), `keep` (within tolerance of the target) or `correct` (take the corrected setting, then test
    again); `untested` without a turn test, `no-target` without a target rate.
    """

    reasons: list[ReasonAnswer]
    """Why; empty without a turn test or a target rate. Codes known today: `within-tolerance`, `rate-off-target`,
    `rate-not-shown`, `rate-implausible`, `outlet-gave-nothing`.
    """

    circumference: LengthQuantity
    """Rolling circumference in use."""

    circumferenceFrom: str
    """Where it comes from: `circumference` (stated), `measured-run` (distance over turns) or `diameter` (reckoned, and too
    long under load).
    """

    areaPerTurn: AreaQuantity
    """Ground that the machine covers in one turn of the wheel in the field."""

    turns: list[TurnsAnswer]
    """For each area asked for, in that order."""

    neededPerTurn: NotRequired[MassPerRevolutionQuantity]
    """Mass that one turn of the wheel has to deliver over the whole width for the target rate."""

    neededPerMeterRevolution: NotRequired[MassPerRevolutionQuantity]
    """The same for one revolution of the meter."""

    neededMeterRevolutionsPerTurn: NotRequired[RatioQuantity]
    """Meter revolutions per turn of the drive wheel that the target rate needs with the stated mass per revolution of the
    meter: the gear ratio to look for.
    """

    expectedRate: NotRequired[MassPerAreaQuantity]
    """Rate that the stated mass per revolution of the meter gives."""

    rate: NotRequired[MeasuredMassPerArea]
    """Rate that the turn tests give, with its uncertainty."""

    turnTests: list[TurnTestAnswer]
    """Every turn test in the order given."""

    acceptance: NotRequired[RateAcceptanceAnswer]
    """The rate against its target."""

    correction: NotRequired[CorrectionAnswer]
    """What would bring the rate to its target if it were proportional to the setting: a first step, test again."""

    outlets: list[OutletAnswer]
    """Outlets that were weighed one by one, over all tests; empty when they were not."""

    assumptions: list[AssumptionAnswer]
    """Values used that the question did not state."""

    findings: list[FindingAnswer]
    """What was noticed beyond the verdict. Codes known today: `catches-scatter-more-than-expected`,
    `circumference-from-diameter`, `skid-counted-twice`, `large-correction`, `rate-off-target`, `rate-implausible`,
    `outlet-gave-nothing`, `outlet-off-mean`.
    """

    cautions: list[CautionAnswer]
    """What can hurt somebody at the machine. Codes known today: `manual-first`, `unexpected-start`, `rotating-parts`,
    `stored-pressure`, `product-dust`, `tank-entry`, `jacked-machine`.
    """

    engineVersion: str
    """Version of the engine that answered."""


class DriveWheelTurnsAnswerBatchLine(TypedDict):
    """One line of the answer to many questions: the result of one of them, or the problem that it has."""

    line: int
    """The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the
    header being row 1.
    """

    test: NotRequired[str]
    """What the table calls the test; absent when no table was sent."""

    given: NotRequired[list[GivenCell]]
    """What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing
    there or no table was sent.
    """

    result: NotRequired[DriveWheelTurnsAnswer]
    """What the question would be answered alone; absent when there is a problem."""

    problem: NotRequired[Problem]
    """What the question would be refused with alone; absent when there is a result."""


class DriveWheelTurnsRequest(TypedDict):
    """A ground-driven machine, and what fell while its drive wheel was turned."""

    wheel: DriveWheelOfMachine
    """The wheel that drives the meters."""

    workingWidth: LengthQuantity
    """Working width: openers times spacing. Range: 0.01 to 200 m."""

    outlets: NotRequired[int]
    """Outlets over that width; gives the catch of each, and is needed when not all of them are caught. No default."""

    skid: NotRequired[RatioQuantity]
    """Share of its turns that the wheel lacks in the field: positive when it skids and turns less often than the distance
    asks for, so that it puts down as much less; negative when it turns more often. Leave it out when the circumference
    was measured at work: it holds the skid already. Default 0 %: none is reckoned with unless it is stated, although a
    wheel that skids puts down as much less; judgement, no published source. Range: -50 to 90 %.
    """

    areas: NotRequired[list[AreaQuantity]]
    """Areas for which the turns are wanted, for example 0.1 ha or 0.05 ac. Range: 0.0001 to 10000 ha."""

    targetRate: NotRequired[MassPerAreaQuantity]
    """The rate to be put down. No default. Range: above 0 and up to 100000 kg/ha."""

    meterRevolutionsPerTurn: NotRequired[RatioQuantity]
    """Meter revolutions per turn of the drive wheel. Left out, nothing is said of the meter. Default none: common
    practice, the wheel alone is counted. Range: 0.0001 to 10000.
    """

    massPerRevolution: NotRequired[MassPerRevolutionQuantity]
    """Mass per revolution of the meter over the whole width, where known; gives the rate to expect and, for a target rate,
    the gearing that it needs. Needs meterRevolutionsPerTurn or targetRate. No default. Range: above 0 and up to 1000
    kg/rev.
    """

    turnTests: NotRequired[list[TurnTestOfWheel]]
    """Turn tests, all with the same setting and the same outlets."""

    outletsCaught: NotRequired[int]
    """Outlets that were caught, the same ones each time. Default all of them, or as many as perOutlet lists: common
    practice.
    """

    outletSpread: NotRequired[RatioQuantity]
    """Standard deviation between outlets, relative; of use when not all were caught. Where three or more were weighed one
    by one, theirs is taken. Default 2.887 %: published limit of 5 % for each outlet (University of Georgia Extension;
    Field and Solie 2007), taken as rectangular. Range: 0 to 100 %.
    """

    scale: NotRequired[ScaleOfTest]
    """The scale that weighed the catches. Default an error of 0.5 % of the load and no rounding: judgement, no published
    source.
    """

    turnResolution: NotRequired[RevolutionsQuantity]
    """Smallest step of the count of turns. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10 rev."""

    setting: NotRequired[float]
    """The setting used, as a plain number on the machine's own marks; gives the corrected one. No default."""

    tolerance: NotRequired[RatioQuantity]
    """Largest acceptable deviation of the rate from its target, and of an outlet from the mean of the outlets. Default 5
    %: published acceptance limit: within 5 % of the target rate (Field and Solie 2007; University of Georgia
    Extension). Range: 0.1 to 50 %.
    """

    repeatability: NotRequired[RatioQuantity]
    """Repeatability of one test (standard deviation), scale and count removed. Default by the size of the catch, s^2 =
    (0.93 %)^2 + (14.3 % rev / turns)^2 + (0.49 % kg / mass)^2: 1 % at 14 kg and 40 rev, 2 % at 0.3 kg and 20 rev, 3 %
    at 5 rev: judgement, 4 degrees of freedom, no published source. Range: 0.01 to 30 %.
    """

    repeatabilityDegreesOfFreedom: NotRequired[float]
    """Degrees of freedom of the repeatability. Default 4: judgement, no published source; the stated deviation is then
    uncertain by about 35 % (JCGM 100:2008, G.4.2).
    """


class EarlierMassPerRevolution(TypedDict):
    """A mass per revolution that was found earlier."""

    value: float
    """The number, in the unit beside it. No default."""

    unit: MassPerRevolutionUnit
    """The unit, written exactly as in `GET /v1/units`."""

    relativeUncertainty: NotRequired[RatioQuantity]
    """Its standard uncertainty. Default 2 %: default of a value in force: judgement, no published source. Range: 0 to 100
    %.
    """


class EarlierProduct(TypedDict):
    """An earlier product on the same element."""

    massPerRevolution: EarlierMassPerRevolution | MassPerRevolutionQuantity
    """The mass per revolution that was found with it. Range: above 0 and up to 1000 kg/rev."""

    bulkDensity: DensityOfProduct | BulkDensityQuantity
    """Its bulk density. Range: 10 to 10000 kg/m3."""

    spread: NotRequired[RatioQuantity]
    """How much the fill efficiency of one element changes from one product to another. Default 5 %: change of fill
    efficiency from one product to another on the same element, standard deviation of its logarithm; judgement, no
    published source. Range: 0 to 100 %.
    """


class EarlierTestOfTest(TypedDict):
    """An earlier test: the mass per revolution that it found, and how sure it was. Set up apart means that the container
    was weighed again, the points were counted, element and product were looked at, and the meter was primed again.
    """

    value: float
    """The number, in the unit beside it. No default."""

    unit: MassPerRevolutionUnit
    """The unit, written exactly as in `GET /v1/units`."""

    catches: int
    """Catches that counted in it."""

    catchesUncertainty: NotRequired[RatioQuantity]
    """Relative standard uncertainty from its catches: the part `catches` of its uncertaintyParts. Default the
    repeatability of this test over the root of its number of catches. Range: above 0 and up to 100 %.
    """

    degreesOfFreedom: NotRequired[float]
    """Degrees of freedom of that part. Default those of the repeatability of this test, and one for each catch but the
    first.
    """

    sharedTareUncertainty: NotRequired[RatioQuantity]
    """Relative standard uncertainty of a tare that its catches shared: the part `shared-tare` of its uncertaintyParts.
    Default none. Range: 0 to 100 %.
    """

    scaleUncertainty: NotRequired[RatioQuantity]
    """Relative standard uncertainty of its scale: the part `scale` of its uncertaintyParts. Default that of this test.
    Range: 0 to 100 %.
    """

    fromAnotherScale: NotRequired[bool]
    """True when another scale weighed it, or the same one after another check: then no scale error cancels between the
    two. Default false.
    """

    occurredAt: NotRequired[str]
    """When it was made; the answer calls it by that day."""

    test: NotRequired[str]
    """What it is called: the id of its record, or the owner's own name for it."""


class EffectAnswer(TypedDict):
    """The effect of a wrong value."""

    appliedRate: MassPerAreaQuantity
    """The rate that is really applied."""

    massOverArea: NotRequired[MassQuantity]
    """Product too much over the stated area; negative when too little."""

    totalCost: NotRequired[Money]
    """Money for that product; negative when the crop gets too little."""


class EffectOfLot(TypedDict):
    """What is sown when something stays as it was."""

    setRate: MassPerAreaQuantity
    """The rate that the controller is told."""

    appliedRate: MassPerAreaQuantity
    """The rate that falls."""

    rateDeviation: MeasuredRatio
    """How much that is above the rate for the same seeds, or above the set rate where that is unknown; negative when
    below. The interval is that of the predicted mass per revolution.
    """

    seedsPerArea: NotRequired[CountPerAreaQuantity]
    """Pure seeds per area; absent without kernel masses."""

    seedsDeviation: NotRequired[RatioQuantity]
    """How much more seeds than before; negative for fewer."""

    plants: NotRequired[CountPerAreaQuantity]
    """Plants per area; absent without emergence and the germination of the new lot."""

    plantsDeviation: NotRequired[RatioQuantity]
    """How much more plants than before; absent unless both germinations are known."""

    massOverArea: NotRequired[MassQuantity]
    """Seed too much over the area, negative when too little; absent without an area."""

    totalCost: NotRequired[Money]
    """Cost of it; absent without an area and a price."""


class ElementAnswer(TypedDict):
    """One element."""

    name: str
    """Its name."""

    fits: bool
    """It serves every rate at every ground speed."""

    room: NotRequired[RatioQuantity]
    """Room to the nearer limit of its speed: 25 % means that the nearer limit is a factor of 1.25 away; negative when it
    does not fit; absent without limits.
    """

    corners: list[CornerAnswer]
    """Lowest and highest rate at lowest and highest ground speed."""

    speedWindows: list[SpeedWindowAnswer]
    """For each rate above zero, the ground speeds inside the limits."""

    rateWindows: list[RateWindowAnswer]
    """For each ground speed, the rates inside the limits."""


class ElementFitAnswer(TypedDict):
    """The displacements that keep a meter inside its speeds, and the elements at hand beside them."""

    headline: str
    """The outcome in a few sentences that can be shown as they are."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """Whether an element fits: `fits` (the nearest at hand does), `none-fits` (none at hand, but another displacement
    would), `none-stated` (no element was stated) or `none-can-fit` (no displacement serves all rates at all speeds).
    """

    window: DisplacementWindowAnswer
    """The displacements that serve every rate at every ground speed."""

    innerWindow: NotRequired[InnerWindowAnswer]
    """The part of the window that serves with the wanted probability; absent where nothing does."""

    highestNeed: ProductNeedAnswer
    """The combination that takes most product: it sets the lower end."""

    lowestNeed: ProductNeedAnswer
    """The combination that takes least product: it sets the upper end."""

    waysOut: NotRequired[WaysOutAnswer]
    """What would open an empty window; absent when it is open."""

    elements: list[FittingElementAnswer]
    """The elements at hand, nearest to the middle of the window first."""

    fillEfficiency: ExpectedRatio
    """Fill efficiency behind the window."""

    spreadParts: list[SpreadPart]
    """Parts of the spread of the window."""

    cautions: list[CautionAnswer]
    """What can hurt somebody who changes an element. Codes known today: `manual-first`, `unexpected-start`,
    `rotating-parts`, `product-dust`.
    """

    assumptions: list[AssumptionAnswer]
    """Values used that the question did not state."""

    findings: list[FindingAnswer]
    """What was noticed. No element was tested here. Codes known today: `no-displacement-serves`, `fit-not-sure`,
    `outside-meter-window`, `near-meter-limit`, `more-than-the-element-holds`, `fill-unlike-expected`.
    """

    engineVersion: str
    """Version of the engine that answered."""


class ElementFitAnswerBatchLine(TypedDict):
    """One line of the answer to many questions: the result of one of them, or the problem that it has."""

    line: int
    """The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the
    header being row 1.
    """

    test: NotRequired[str]
    """What the table calls the test; absent when no table was sent."""

    given: NotRequired[list[GivenCell]]
    """What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing
    there or no table was sent.
    """

    result: NotRequired[ElementFitAnswer]
    """What the question would be answered alone; absent when there is a problem."""

    problem: NotRequired[Problem]
    """What the question would be refused with alone; absent when there is a result."""


class ElementFitRequest(TypedDict):
    """What a meter has to put down, how fast it may turn, and the metering elements at hand."""

    bulkDensity: DensityOfProduct | BulkDensityQuantity
    """Bulk density of the product. Range: 10 to 10000 kg/m3."""

    coveredWidth: LengthQuantity
    """Width that the meter covers: the working width, or the meter's share of it. Range: 0.01 to 200 m."""

    rates: list[MassPerAreaQuantity]
    """Rates to be put down: one, the lowest and the highest, or all. Zero means off and is allowed beside others. Range: 0
    to 100000 kg/ha.
    """

    groundSpeeds: list[SpeedQuantity]
    """Ground speeds: one, the lowest and the highest, or all. Range: 0.01 to 100 km/h."""

    speedLimits: BothRotationLimits
    """Speeds that the meter has to keep to: of the element, of its drive and of its gears."""

    fillEfficiency: NotRequired[RatioQuantity]
    """Share of the swept volume that product fills; a little above 100 % where it settles. Default 90 %: median fill
    efficiency of metering elements; judgement, no published source. Range: 1 to 200 %.
    """

    fillEfficiencySpread: NotRequired[RatioQuantity]
    """How sure the fill efficiency is. Default 15 %: spread of fill efficiency from element to element, standard deviation
    of its logarithm; judgement, no published source. Range: 0 to 100 %.
    """

    elements: NotRequired[list[ElementToFit]]
    """Elements that could be fitted. Without any, only the displacements are found."""

    coverageProbability: NotRequired[float]
    """Probability with which an element should keep the meter inside its speeds. Default 0.95: common practice for
    expanded uncertainties, as in the examples of JCGM 100:2008.
    """


class ElementOfMachine(TypedDict):
    """A metering element: a roller, an auger."""

    name: str
    """What the owner calls it."""

    kind: NotRequired[Literal["closed-pockets", "open-flutes", "auger"]]
    """How it carries product, and with it which volume its displacement means: `closed-pockets` that are struck off (their
    volume; no more can come out), `open-flutes` (their volume; a layer beyond them is dragged along) or an `auger` (the
    volume between shaft and edge of the flight over one turn). Default not known.
    """

    displacementPerRevolution: NotRequired[VolumeQuantity]
    """Volume that one revolution displaces. No default. Range: above 0 and up to 1 m3."""

    speedLimits: NotRequired[RotationLimits]
    """Limits of its speed."""

    pocketsPerRevolution: NotRequired[int]
    """Pockets or flutes that discharge one after the other in one revolution. No default."""


class ElementOfMeter(TypedDict):
    """A metering element with one product. Exactly one of massPerRevolution and measuredAt."""

    name: str
    """What the owner calls it."""

    massPerRevolution: NotRequired[MassPerRevolutionQuantity]
    """Mass per revolution, the same at every speed. Give this or measuredAt. No default. Range: above 0 and up to 1000
    kg/rev.
    """

    measuredAt: NotRequired[list[DeliveryPoint]]
    """Mass per revolution measured at several meter speeds; straight lines are drawn between them."""

    speedLimits: NotRequired[RotationLimits]
    """Limits of its speed."""

    kind: NotRequired[Literal["closed-pockets", "open-flutes", "auger"]]
    """How it carries product, and with it which volume its displacement means: `closed-pockets` (their volume; no more can
    come out), `open-flutes` (their volume; a layer beyond them is dragged along) or an `auger` (the volume between
    shaft and edge of the flight over one turn). Default not known.
    """

    displacementPerRevolution: NotRequired[VolumeQuantity]
    """Volume that one revolution displaces; with the bulkDensity of the question it says what the mass per revolution can
    be. No default. Range: above 0 and up to 1 m3.
    """

    pocketsPerRevolution: NotRequired[int]
    """Pockets or flutes that discharge one after the other in one revolution; gives the spacing of discharges on the
    ground. No default.
    """


class ElementToFit(TypedDict):
    """A metering element that could be fitted."""

    name: str
    """What the owner calls it."""

    kind: NotRequired[Literal["closed-pockets", "open-flutes", "auger"]]
    """How it carries product, and with it which volume its displacement means: `closed-pockets` that are struck off (their
    volume; no more can come out), `open-flutes` (their volume; a layer beyond them is dragged along) or an `auger` (the
    volume between shaft and edge of the flight over one turn). Default not known.
    """

    displacement: DisplacementOfElement | VolumeQuantity
    """Volume that one revolution sweeps. Range: above 0 and up to 1000 L."""


class EntryAnswer(TypedDict):
    """A number for the controller."""

    form: str
    """The form in which the controller takes it. Known today: `mass-per-revolution`, `mass-per-revolutions`,
    `mass-per-pulse`, `volume-per-revolution`, `mass-per-time`.
    """

    revolutions: NotRequired[int]
    """Revolutions that the number stands for, in the form mass-per-revolutions."""

    value: float
    """The number to type in, already rounded to the controller's decimals."""

    unit: str
    """Its unit."""

    roundingError: RatioQuantity
    """Relative error that the rounding causes."""

    resultingMassPerRevolution: MassPerRevolutionQuantity
    """The mass per revolution that the controller then uses: the value in force once typed in."""


class EntryOfSensor(TypedDict):
    """How a controller takes the number."""

    form: Literal["pulses-per-distance", "distance-per-pulse", "wheel-circumference"]
    """The form: `pulses-per-distance`, `distance-per-pulse` or `wheel-circumference`."""

    distance: NotRequired[LengthQuantity]
    """Distance over which the controller counts pulses; only with that form. Default 100 m: a round distance that most
    fields have room for; judgement, no published source. Range: 1 to 10000 m.
    """

    unit: NotRequired[LengthUnit]
    """Unit of the number; needed for the two forms that are lengths."""

    decimals: int
    """Decimals that the controller takes."""


class Exclusion(TypedDict):
    """Why a catch is left out."""

    reason: str
    """The reason, in the sender's words."""


class ExpectedMassPerRevolution(TypedDict):
    """An expected mass per revolution. As likely too low as too high, with an interval that is longer upwards."""

    value: float
    """The number, in the unit beside it."""

    unit: MassPerRevolutionUnit
    """The unit, written exactly as in `GET /v1/units`."""

    lower: MassPerRevolutionQuantity
    """Lower end of the coverage interval."""

    upper: MassPerRevolutionQuantity
    """Upper end of the coverage interval."""

    coverageProbability: float
    """Probability of the interval."""

    spread: RatioQuantity
    """Standard deviation of the natural logarithm: the relative standard uncertainty."""


class ExpectedRatio(TypedDict):
    """An expected ratio. As likely too low as too high, with an interval that is longer upwards."""

    value: float
    """The number, in the unit beside it."""

    unit: RatioUnit
    """The unit, written exactly as in `GET /v1/units`."""

    lower: RatioQuantity
    """Lower end of the coverage interval."""

    upper: RatioQuantity
    """Upper end of the coverage interval."""

    coverageProbability: float
    """Probability of the interval."""

    spread: RatioQuantity
    """Standard deviation of the natural logarithm: the relative standard uncertainty."""


class ExpectedStand(TypedDict):
    """Plants per area; with an interval where uncertainties were stated."""

    value: float
    """The number, in the unit beside it."""

    unit: CountPerAreaUnit
    """The unit, written exactly as in `GET /v1/units`."""

    expandedUncertainty: NotRequired[float]
    """Half width of the coverage interval, in the unit beside it."""

    coverageFactor: NotRequired[float]
    """Factor by which the standard uncertainty was expanded."""

    coverageProbability: NotRequired[float]
    """Probability that the interval covers the true value, as far as the stated uncertainties go."""


class FactorAnswer(TypedDict):
    """An exact ratio of two whole numbers, both below 2^53."""

    numerator: int
    """Above the line."""

    denominator: int
    """Below the line."""


class FanAnswer(TypedDict):
    """Where the fan may stand for all products, and what its air carries."""

    headline: str
    """Where to set the fan, in a sentence that can be shown as it is."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """`suits` when the planned setting, or without a plan at least one, suits all products; `change` when another than the
    planned one does; `none-suits` when no setting does.
    """

    fanSpeeds: NotRequired[FanSpeedWindow]
    """Fan speeds that all products allow; absent when no product states any."""

    airFlows: NotRequired[AirFlowWindow]
    """Air flows that all products allow; absent when no product states any."""

    loads: list[AirLoadAnswer]
    """What the air carries at the lowest and the highest rates and ground speeds."""


class FanOfMachine(TypedDict):
    """One fan with the products that its air carries. All limits are yours, from the manual of the machine: the service
    knows no fan.
    """

    fanSpeed: NotRequired[RotationQuantity]
    """Planned fan speed. No default. Range: above 0 and up to 10000 rpm."""

    airFlow: NotRequired[VolumePerTimeQuantity]
    """Planned air flow; gives the product in each cubic metre of air. No default. Range: above 0 and up to 1000000 m3/h."""

    products: list[ProductInAir]
    """The products that share the air."""


class FanSpeedWindow(TypedDict):
    """The fan speeds that the limits of all products leave."""

    exists: bool
    """At least one fan speed suits all products; when false, the minimum of one lies above the maximum of another."""

    minimum: NotRequired[RotationQuantity]
    """Slowest: the highest of the minima; absent without any."""

    minimumOf: NotRequired[str]
    """The product that sets it."""

    maximum: NotRequired[RotationQuantity]
    """Fastest: the lowest of the maxima; absent without any."""

    maximumOf: NotRequired[str]
    """The product that sets it."""


class FilledTankOfProduct(TypedDict):
    """A tank that was filled."""

    mass: MassQuantity
    """Mass filled in. Range: above 0 and up to 1000 t."""

    volume: VolumeQuantity
    """Volume that it took. Range: above 0 and up to 1000 m3."""

    massTolerance: NotRequired[RatioQuantity]
    """Largest error of the mass. Default 1 %: largest error of the mass filled into a tank; judgement, no published
    source. Range: 0 to 50 %.
    """

    volumeTolerance: NotRequired[RatioQuantity]
    """Largest error of the volume. Default 5 %: largest error of the volume of a tank filled by eye; judgement, no
    published source. Range: 0 to 50 %.
    """


class FindingAnswer(TypedDict):
    """Something the engine noticed."""

    code: str
    """Stable code. Which ones can come stands at the list that holds it; `GET /v1/codes` explains each."""

    severity: str
    """How much it matters: `note` is worth knowing, `warning` wants a look, `stop` forbids seeding on this answer."""

    detail: str
    """A sentence that can be shown as it is."""

    parts: NotRequired[SentenceParts]
    """What the sentence is made of, for showing it in another language."""

    meter: NotRequired[str]
    """The meter it is about, where the question held several."""


class FittedElement(TypedDict):
    """The metering element that is fitted. With the bulk density of the product it says what a mass per revolution can be."""

    name: NotRequired[str]
    """What the owner calls it."""

    kind: NotRequired[Literal["closed-pockets", "open-flutes", "auger"]]
    """How it carries product, and with it which volume its displacement means: `closed-pockets` that are struck off (their
    volume; no more can come out), `open-flutes` (their volume; a layer beyond them is dragged along) or an `auger` (the
    volume between shaft and edge of the flight over one turn). Default not known.
    """

    displacementPerRevolution: VolumeQuantity
    """Volume that one revolution displaces. Range: above 0 and up to 1 m3."""


class FittingElementAnswer(TypedDict):
    """An element at hand."""

    name: str
    """Its name."""

    kind: NotRequired[str]
    """How it carries product; absent when it is not known. Known today: `closed-pockets`, `open-flutes`, `auger`."""

    displacement: VolumeQuantity
    """Its displacement."""

    fits: bool
    """It keeps the meter inside its speeds at every rate and ground speed."""

    lowestMeterSpeed: RotationQuantity
    """Meter speed at the lowest rate and ground speed."""

    highestMeterSpeed: RotationQuantity
    """Meter speed at the highest rate and ground speed."""

    tooSlowBy: NotRequired[RatioQuantity]
    """By how much the lowest meter speed would have to rise; absent when it is high enough."""

    tooFastBy: NotRequired[RatioQuantity]
    """By how much the highest meter speed is above its limit; absent when it is not."""

    distanceFromMiddle: float
    """Natural logarithm of its displacement divided by the middle of the window: below zero smaller, above zero larger."""

    probability: float
    """Probability that the meter stays inside its speeds at every rate and ground speed."""

    expected: ExpectedMassPerRevolution
    """Expected mass per revolution, as `volume-check` finds it."""


class GivenCell(TypedDict):
    """What a table says in a column of its sender."""

    column: str
    """Name of the column."""

    text: str
    """Its text; where the rows of a question differ, all of them, separated by semicolons."""


class GroundOfCount(TypedDict):
    """The ground of a count, in one of four forms: rowLength with rowSpacing, length with width, area, or hoopDiameter."""

    rowLength: NotRequired[LengthQuantity]
    """Length counted along each row. No default. Range: 0.01 to 1000 m."""

    rowSpacing: NotRequired[LengthQuantity]
    """Distance from row to row; goes with rowLength. No default. Range: 0.01 to 10 m."""

    rows: NotRequired[int]
    """Rows counted side by side. Default 1: common practice."""

    length: NotRequired[LengthQuantity]
    """One side of a frame. No default. Range: 0.01 to 1000 m."""

    width: NotRequired[LengthQuantity]
    """The other side of it. No default. Range: 0.01 to 1000 m."""

    area: NotRequired[AreaQuantity]
    """Area of a frame. No default. Range: 0.001 to 100000 m2."""

    hoopDiameter: NotRequired[LengthQuantity]
    """Inside diameter of a hoop. No default. Range: 0.01 to 10 m."""

    calledArea: NotRequired[AreaQuantity]
    """What the frame or hoop is called, for example a quarter of a square metre; it is checked and not computed with. No
    default. Range: 0.001 to 100000 m2.
    """


class HistoryItem(TypedDict):
    """One line of what happened."""

    kind: str
    """What it is: `catch-test`, `adoption` or `scale-check`."""

    id: str
    """Id of the record; read it whole under the path of its kind."""

    occurredAt: str
    """When it happened, with the offset it was entered with."""

    localDate: str
    """The date of that in the machine's time zone; UTC for scale checks."""

    receivedAt: str
    """When the service received it."""

    machine: NotRequired[str]
    """Id of the machine."""

    meter: NotRequired[str]
    """Position of the meter."""

    element: NotRequired[str]
    """Metering element."""

    setting: NotRequired[str]
    """Setting of the meter."""

    product: NotRequired[str]
    """Id of the product."""

    lot: NotRequired[str]
    """Id of the lot."""

    scale: NotRequired[str]
    """Id of the scale."""

    plan: NotRequired[str]
    """Id of the plan."""

    verdict: NotRequired[str]
    """Verdict of a test; passed or failed for a scale check. Known today: `investigate`, `repeat`, `keep`, `adopt`,
    `passed`, `failed`.
    """

    massPerRevolution: NotRequired[HistoryValue]
    """The mass per revolution found or adopted."""

    change: NotRequired[RatioQuantity]
    """Change that a test found."""

    scaleError: NotRequired[RatioQuantity]
    """Span error that a scale check found."""

    recordedBy: NotRequired[str]
    """Who recorded it."""

    supersedes: NotRequired[str]
    """The record that it took the place of."""

    reason: NotRequired[str]
    """Why it was adopted, or why it supersedes another."""

    despiteCode: NotRequired[str]
    """Code of what spoke against an adopted number when it was typed in, several separated by semicolons; absent when
    nothing did.
    """

    despiteReason: NotRequired[str]
    """Why the number was adopted all the same: one reason for each code, in the same order."""

    supersededBy: NotRequired[str]
    """The record that took its place; absent while it stands."""


class HistoryItemPage(TypedDict):
    """A page of a list."""

    items: list[HistoryItem]
    """The records of this page."""

    next: NotRequired[str]
    """Address of the next page; absent on the last one."""


class HistoryValue(TypedDict):
    """A mass per revolution in the history."""

    value: float
    """The number, in the unit beside it."""

    unit: MassPerRevolutionUnit
    """The unit, written exactly as in `GET /v1/units`."""

    expandedUncertainty: NotRequired[float]
    """Half width of the 95 % coverage interval; absent for an adoption."""


class InnerWindowAnswer(TypedDict):
    """The displacements, known exactly, that serve with a probability."""

    lower: VolumeQuantity
    """Smallest."""

    upper: VolumeQuantity
    """Largest."""

    coverageProbability: float
    """The probability."""


class KeyAnswer(TypedDict):
    """A key as the service keeps it: everything but its secret."""

    id: str
    """Id, a UUID of version 7."""

    start: str
    """What the text of the key begins with. It is no secret; it says which key a text belongs to."""

    workspace: str
    """Id of the workspace that it opens."""

    name: str
    """Who or what uses it."""

    scopes: list[str]
    """What it may do: `calculate`, `read`, `write`, `admin`; `operator` for keys that the command of the service made for
    whoever runs the installation.
    """

    state: str
    """`live`, `expired` or `revoked`."""

    createdAt: str
    """When it was made (UTC)."""

    createdBy: NotRequired[str]
    """Id of the key that made it; absent when the command of the service did."""

    expiresAt: NotRequired[str]
    """From when on it opens nothing (UTC); absent for never."""

    revokedAt: NotRequired[str]
    """When it was revoked (UTC); absent while it was not."""

    revokedBecause: NotRequired[str]
    """Why it was revoked."""

    replaces: NotRequired[str]
    """Id of the key that it takes the place of."""

    replacedBy: NotRequired[str]
    """Id of the key that takes its place."""

    lastUsedAt: NotRequired[str]
    """When it was used last (UTC), to about a minute; absent for never."""


class KeyAnswerPage(TypedDict):
    """A page of a list."""

    items: list[KeyAnswer]
    """The records of this page."""

    next: NotRequired[str]
    """Address of the next page; absent on the last one."""


class KeyRequest(TypedDict):
    """A new key."""

    id: NotRequired[str]
    """The sender's own id, a UUID of version 7 in lower case, for repeating the request safely. Default: the service makes
    one.
    """

    name: str
    """Who or what uses the key, so that it can be told apart later."""

    scopes: list[Literal["calculate", "read", "write", "admin"]]
    """What the key may do; none implies another. `calculate`: calculations, which store nothing. `read`: records and what
    follows from them. `write`: storing records. `admin`: keys and audit of the workspace.
    """

    expiresAt: NotRequired[str]
    """From when on it opens nothing, RFC 3339. Default never. A key that expires makes none that outlives it, so it has to
    give this.
    """


class KnownMassReadingOfCheck(TypedDict):
    """One reading of a known mass."""

    known: MassQuantity
    """The known mass. Range: above 0 and up to 1000 t."""

    indicated: MassQuantity
    """What the scale showed. Range: 0 to 1000 t."""

    knownUncertainty: NotRequired[MassQuantity]
    """Standard uncertainty of the known mass. Default 0: judgement, known masses are far better than the scale. Range: 0
    to 1000 kg.
    """


class KnownScaleErrorOfTest(TypedDict):
    """The span error of a scale."""

    error: RatioQuantity
    """Indicated minus true, divided by true: positive when the scale shows too much. Range: -20 to 20 %."""

    standardUncertainty: RatioQuantity
    """Standard uncertainty of that error, relative. Range: 0 to 20 %."""

    checkFailed: NotRequired[bool]
    """True when the scale failed that check: then nothing that it weighed is to be relied on. Default false."""


class LearnedAnswer(TypedDict):
    """A share learned from the counts and from what was expected before them."""

    reading: str
    """Which share: `survival` or `emergence`."""

    mean: RatioQuantity
    """Its mean; the next prior, with the standard deviation below and what seasons add to it."""

    standardDeviation: RatioQuantity
    """Its standard deviation."""

    lower: RatioQuantity
    """Lower end of its interval."""

    upper: RatioQuantity
    """Upper end of its interval."""

    weightOfCounts: RatioQuantity
    """How much of it the counts carried, as seeds looked at; the prior carried the rest."""


class LengthQuantity(TypedDict):
    """A length."""

    value: float
    """The number, in the unit beside it."""

    unit: LengthUnit
    """The unit, written exactly as in `GET /v1/units`."""


class LikelyMistakeAnswer(TypedDict):
    """A mistake that would explain a test."""

    code: str
    """Stable code; a code that has been checked can be sent back in ruledOutMistakes."""

    catch: NotRequired[str]
    """JSON pointer to the catch in the question; absent when it would be in the whole test."""

    probability: float
    """Probability that it happened, after the masses were looked at. Rests on prior probabilities that are judgement."""

    bayesFactor: float
    """How many times better it explains the masses than an ordinary change of the meter does; 1000000000 at most."""

    cannotBeToldApart: bool
    """The masses alone do not tell it from the others of this list that are marked so too: do the check of each."""

    detail: str
    """What was seen and how the mistake explains it."""

    parts: NotRequired[SentenceParts]
    """What the sentence is made of, for showing it in another language."""

    check: str
    """The one thing to look at."""


class LimitSourceAnswer(TypedDict):
    """A publication that states limits."""

    key: str
    """Its key in kebab case; `stated` for a limit of the question."""

    publisher: str
    """Who publishes it."""

    title: str
    """Its title or subject."""

    year: NotRequired[int]
    """Year of the edition; absent when the copy that was read shows none."""

    region: str
    """The place that it is for."""

    address: NotRequired[str]
    """Where it was read."""


class LocalLimitWithSeed(TypedDict):
    """A limit from the caller's own guidance."""

    source: str
    """Where it is printed; answers name it."""

    nutrient: Literal["N", "urea-N", "urea-and-sulfate-N", "N-beside-phosphates", "P2O5", "K2O", "N-plus-K2O", "S", "all", "phosphate-N"]
    """What it counts."""

    rate: MassPerAreaQuantity
    """The most that it allows with the seed. Range: 0 to 100000 kg/ha."""


class LotAnswer(TypedDict):
    """A lot as stored."""

    name: str
    """What the owner calls it."""

    retired: bool
    """No longer in use: takes no new evidence, and lists leave it out unless asked. Default false."""

    note: NotRequired[str]
    """A remark in the owner's words."""

    product: str
    """Id of the product."""

    thousandKernelMass: NotRequired[MassPerThousandQuantity]
    """Thousand-kernel mass as sown, treatment included."""

    germination: NotRequired[RatioQuantity]
    """Germination."""

    purity: NotRequired[RatioQuantity]
    """Purity."""

    bulkDensity: NotRequired[BulkDensityQuantity]
    """Bulk density; goes before that of the product."""

    moisture: NotRequired[RatioQuantity]
    """Moisture by mass."""

    treatment: NotRequired[str]
    """Treatment, in the owner's words; none when absent."""

    id: str
    """Id, a UUID of version 7."""

    revision: int
    """1 when created, one more with each change."""

    createdAt: str
    """When it was created (UTC)."""

    updatedAt: str
    """When it was changed last (UTC)."""


class LotAnswerPage(TypedDict):
    """A page of a list."""

    items: list[LotAnswer]
    """The records of this page."""

    next: NotRequired[str]
    """Address of the next page; absent on the last one."""


class LotOfChange(TypedDict):
    """What is known of a lot. The more, the surer the answer."""

    name: NotRequired[str]
    """What the owner calls it."""

    thousandKernelMass: NotRequired[MassPerThousandQuantity]
    """Mass of a thousand kernels as sown, treatment included. No default. Range: above 0 and up to 5000 g/1000."""

    bulkDensity: NotRequired[DensityOfLot | BulkDensityQuantity]
    """Bulk density as it lies in the tank. No default. Range: 10 to 10000 kg/m3."""

    germination: NotRequired[RatioQuantity]
    """Share of the pure seeds that germinate. No default. Range: above 0 and up to 100 %."""

    purity: NotRequired[RatioQuantity]
    """Share of the mass that is pure seed. Default 100 %: not stated, so all of the mass is taken as pure seed; judgement,
    no published source; the seed tag says it. Range: above 0 and up to 100 %.
    """

    treatment: NotRequired[str]
    """Treatment in the owner's words; leave it out for untreated seed. Two lots have the same treatment when the words are
    the same, or both have none.
    """


class LotReason(TypedDict):
    """A reason for when to test."""

    code: str
    """Stable code. Which ones can come stands at the list that holds it; `GET /v1/codes` explains each."""

    detail: str
    """A sentence that can be shown as it is."""

    parts: NotRequired[SentenceParts]
    """What the sentence is made of, for showing it in another language."""


class LotRequest(TypedDict):
    """A lot of a product: a delivery, a seed lot, a treatment of its own."""

    id: NotRequired[str]
    """The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at
    any time. Default: the service makes one. May be repeated, unchanged, when replacing.
    """

    name: str
    """What the owner calls it."""

    retired: NotRequired[bool]
    """No longer in use: takes no new evidence, and lists leave it out unless asked. Default false."""

    note: NotRequired[str]
    """A remark in the owner's words."""

    product: str
    """Id of the product."""

    thousandKernelMass: NotRequired[MassPerThousandQuantity]
    """Thousand-kernel mass as sown, treatment included. No default. Range: above 0 and up to 5000 g/1000."""

    germination: NotRequired[RatioQuantity]
    """Germination. No default. Range: above 0 and up to 100 %."""

    purity: NotRequired[RatioQuantity]
    """Purity. No default. Range: above 0 and up to 100 %."""

    bulkDensity: NotRequired[BulkDensityQuantity]
    """Bulk density; goes before that of the product. No default. Range: 10 to 10000 kg/m3."""

    moisture: NotRequired[RatioQuantity]
    """Moisture by mass. No default. Range: 0 to 100 %."""

    treatment: NotRequired[str]
    """Treatment, in the owner's words; none when absent."""


class LotUncertainty(TypedDict):
    """One part of the uncertainty of a prediction."""

    source: str
    """Where it comes from. Known today: `value-in-force`, `density-before`, `density-of-new-lot`, `unknown-density`,
    `day-to-day`, `fill-of-lots`, `fill-of-treatments`.
    """

    relative: RatioQuantity
    """Standard uncertainty, relative; of unknown-density and the two fills the scale of a t distribution with 3 degrees of
    freedom.
    """


class MachineAnswer(TypedDict):
    """A machine as stored."""

    name: str
    """What the owner calls it."""

    retired: bool
    """No longer in use: takes no new evidence, and lists leave it out unless asked. Default false."""

    note: NotRequired[str]
    """A remark in the owner's words."""

    timeZone: NotRequired[str]
    """Time zone by its IANA name, for example Europe/Vienna: days and months in answers are those of this zone. Default
    Etc/UTC.
    """

    workingWidth: NotRequired[LengthQuantity]
    """Width that the machine works."""

    rowSpacing: NotRequired[LengthQuantity]
    """Distance between two rows."""

    opener: NotRequired[str]
    """Its openers."""

    seedRowWidth: NotRequired[LengthQuantity]
    """Width over which an opener spreads seed and fertilizer, measured in the field; at most the row spacing."""

    drive: NotRequired[str]
    """How its meters are driven: `separate` drives (the default) or a `shared-shaft`."""

    tanks: NotRequired[list[TankOfMachine]]
    """Its tanks."""

    meters: list[MeterOfMachine]
    """Its meters, each under one position."""

    restorePoints: NotRequired[list[RestorePoint]]
    """What a test disturbs on this machine and has to be put back, in the owner's words."""

    id: str
    """Id, a UUID of version 7."""

    revision: int
    """1 when created, one more with each change."""

    createdAt: str
    """When it was created (UTC)."""

    updatedAt: str
    """When it was changed last (UTC)."""


class MachineAnswerPage(TypedDict):
    """A page of a list."""

    items: list[MachineAnswer]
    """The records of this page."""

    next: NotRequired[str]
    """Address of the next page; absent on the last one."""


class MachineRequest(TypedDict):
    """A seeding machine with its tanks, meters and what a test disturbs on it."""

    id: NotRequired[str]
    """The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at
    any time. Default: the service makes one. May be repeated, unchanged, when replacing.
    """

    name: str
    """What the owner calls it."""

    retired: NotRequired[bool]
    """No longer in use: takes no new evidence, and lists leave it out unless asked. Default false."""

    note: NotRequired[str]
    """A remark in the owner's words."""

    timeZone: NotRequired[str]
    """Time zone by its IANA name, for example Europe/Vienna: days and months in answers are those of this zone. Default
    Etc/UTC.
    """

    workingWidth: NotRequired[LengthQuantity]
    """Width that the machine works. No default. Range: above 0 and up to 200 m."""

    rowSpacing: NotRequired[LengthQuantity]
    """Distance between two rows. No default. Range: above 0 and up to 5 m."""

    opener: NotRequired[Literal["double-disc", "disc", "knife", "spoon", "hoe", "sweep"]]
    """Its openers."""

    seedRowWidth: NotRequired[LengthQuantity]
    """Width over which an opener spreads seed and fertilizer, measured in the field; at most the row spacing. No default.
    Range: above 0 and up to 5 m.
    """

    drive: NotRequired[Literal["separate", "shared-shaft"]]
    """How its meters are driven: `separate` drives (the default) or a `shared-shaft`."""

    tanks: NotRequired[list[TankOfMachine]]
    """Its tanks."""

    meters: list[MeterOfMachine]
    """Its meters, each under one position."""

    restorePoints: NotRequired[list[RestorePoint]]
    """What a test disturbs on this machine and has to be put back, in the owner's words."""


class MarginAnswer(TypedDict):
    """The margin of a rate over the one at the mean."""

    relative: RatioQuantity
    """The margin over the rate at the mean."""

    seedsPerArea: CountPerAreaQuantity
    """Extra seeds per area."""

    rate: NotRequired[MassPerAreaQuantity]
    """Extra mass per area; absent without a kernel mass."""

    costPerArea: NotRequired[CostPerUnit]
    """What the extra seed costs on one unit of area; absent without price and kernel mass."""

    totalCost: NotRequired[Money]
    """What the extra seed costs on the whole area; absent without it."""


class MassPerAreaQuantity(TypedDict):
    """An application rate by mass."""

    value: float
    """The number, in the unit beside it."""

    unit: MassPerAreaUnit
    """The unit, written exactly as in `GET /v1/units`."""


class MassPerRevolutionQuantity(TypedDict):
    """The mass a meter delivers per revolution."""

    value: float
    """The number, in the unit beside it."""

    unit: MassPerRevolutionUnit
    """The unit, written exactly as in `GET /v1/units`."""


class MassPerRevolutionToCheck(TypedDict):
    """A mass per revolution to be checked."""

    value: float
    """The number, in the unit beside it. No default."""

    unit: MassPerRevolutionUnit
    """The unit, written exactly as in `GET /v1/units`."""

    relativeUncertainty: NotRequired[RatioQuantity]
    """Its standard uncertainty. Default 2 %: default of a value in force: judgement, no published source. Range: 0 to 100
    %.
    """

    inForce: NotRequired[bool]
    """True when the controller uses it now; otherwise it was measured. Default false."""


class MassPerThousandQuantity(TypedDict):
    """The mass of a thousand kernels."""

    value: float
    """The number, in the unit beside it."""

    unit: MassPerThousandUnit
    """The unit, written exactly as in `GET /v1/units`."""


class MassPerTimeQuantity(TypedDict):
    """A mass flow."""

    value: float
    """The number, in the unit beside it."""

    unit: MassPerTimeUnit
    """The unit, written exactly as in `GET /v1/units`."""


class MassQuantity(TypedDict):
    """A mass."""

    value: float
    """The number, in the unit beside it."""

    unit: MassUnit
    """The unit, written exactly as in `GET /v1/units`."""


class MeasuredBulkDensity(TypedDict):
    """A bulk density with its uncertainty; names as open metrology formats use them."""

    value: float
    """The number, in the unit beside it."""

    unit: BulkDensityUnit
    """The unit, written exactly as in `GET /v1/units`."""

    expandedUncertainty: float
    """Half width of the coverage interval, in the unit beside it."""

    coverageFactor: float
    """Factor by which the standard uncertainty was expanded."""

    coverageProbability: float
    """Probability that the interval covers the true value."""

    degreesOfFreedom: NotRequired[float]
    """Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt."""


class MeasuredLength(TypedDict):
    """A measured length with its uncertainty."""

    value: float
    """The number, in the unit beside it."""

    unit: LengthUnit
    """The unit, written exactly as in `GET /v1/units`."""

    expandedUncertainty: float
    """Half width of the coverage interval, in the unit beside it."""

    coverageFactor: float
    """Factor by which the standard uncertainty was expanded."""

    coverageProbability: float
    """Probability that the interval covers the true value."""

    degreesOfFreedom: NotRequired[float]
    """Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt.
    The coverage factor is not looked up with them: scatter and the parts known beforehand are expanded each with its
    own factor.
    """


class MeasuredMassPerArea(TypedDict):
    """A measured rate with its uncertainty."""

    value: float
    """The number, in the unit beside it."""

    unit: MassPerAreaUnit
    """The unit, written exactly as in `GET /v1/units`."""

    expandedUncertainty: float
    """Half width of the coverage interval, in the unit beside it."""

    coverageFactor: float
    """Factor by which the standard uncertainty was expanded."""

    coverageProbability: float
    """Probability that the interval covers the true value."""

    degreesOfFreedom: NotRequired[float]
    """Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt.
    The coverage factor is not looked up with them: scatter and the parts known beforehand are expanded each with its
    own factor.
    """


class MeasuredMassPerRevolution(TypedDict):
    """A measured mass per revolution with its uncertainty; names as open metrology formats use them."""

    value: float
    """The number, in the unit beside it."""

    unit: MassPerRevolutionUnit
    """The unit, written exactly as in `GET /v1/units`."""

    expandedUncertainty: float
    """Half width of the coverage interval, in the unit beside it."""

    coverageFactor: float
    """Factor by which the standard uncertainty was expanded."""

    coverageProbability: float
    """Probability that the interval covers the true value."""

    degreesOfFreedom: NotRequired[float]
    """Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt.
    The coverage factor is not looked up with them: the scatter of the catches and the parts known beforehand are
    expanded each with its own factor.
    """


class MeasuredPulsesPerDistance(TypedDict):
    """A measured number of pulses per distance with its uncertainty."""

    value: float
    """The number, in the unit beside it."""

    unit: PulsesPerDistanceUnit
    """The unit, written exactly as in `GET /v1/units`."""

    expandedUncertainty: float
    """Half width of the coverage interval, in the unit beside it."""

    coverageFactor: float
    """Factor by which the standard uncertainty was expanded."""

    coverageProbability: float
    """Probability that the interval covers the true value."""

    degreesOfFreedom: NotRequired[float]
    """Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt.
    The coverage factor is not looked up with them: scatter and the parts known beforehand are expanded each with its
    own factor.
    """


class MeasuredRatio(TypedDict):
    """A measured ratio with its uncertainty; names as open metrology formats use them."""

    value: float
    """The number, in the unit beside it."""

    unit: RatioUnit
    """The unit, written exactly as in `GET /v1/units`."""

    expandedUncertainty: float
    """Half width of the coverage interval, in the unit beside it."""

    coverageFactor: float
    """Factor by which the standard uncertainty was expanded."""

    coverageProbability: float
    """Probability that the interval covers the true value."""

    degreesOfFreedom: NotRequired[float]
    """Effective degrees of freedom of the standard uncertainty, for information; absent when it is known without doubt.
    The coverage factor is not looked up with them: the scatter of the catches and the parts known beforehand are
    expanded each with its own factor.
    """


class MeterOfFieldPlan(TypedDict):
    """What one meter puts down."""

    meter: str
    """Position of the meter on the machine."""

    element: str
    """Metering element fitted."""

    setting: NotRequired[str]
    """Setting of the meter, in the owner's words, for example a gear; none when absent."""

    product: str
    """Id of the product."""

    lot: NotRequired[str]
    """Id of the lot."""

    targetRate: NotRequired[MassPerAreaQuantity]
    """Target rate; for a variable rate, the one to be tested at. Leave it out where the rate follows from stand, or from
    the nutrients of the plan. No default. Range: above 0 and up to 100000 kg/ha.
    """

    stand: NotRequired[StandOfPlan]
    """The stand that is wanted; with the lot, the target rate follows from it."""

    withSeed: NotRequired[bool]
    """The product is laid in the seed row, with the seed; needs the seedRow of the plan. Default false."""

    startValue: NotRequired[ReferenceOfTest | MassPerRevolutionQuantity]
    """A predicted mass per revolution, used while no value is in force. No default. Range: above 0 and up to 1000 kg/rev."""


class MeterOfMachine(TypedDict):
    """A meter at its place on the machine."""

    position: str
    """Where it is, in the owner's words, for example front; unique on the machine."""

    tank: NotRequired[str]
    """Name of the tank that feeds it."""

    coveredWidth: LengthQuantity
    """Width that it covers. Range: above 0 and up to 200 m."""

    outlets: NotRequired[int]
    """Outlets that it feeds. No default."""

    elements: list[ElementOfMachine]
    """Metering elements it can be fitted with; names are unique within the meter. At most 1280 on all meters of the
    machine together.
    """

    speedLimits: NotRequired[RotationLimits]
    """Limits of its speed, for elements that do not name their own."""

    counterResolution: NotRequired[RevolutionsQuantity]
    """Smallest step of its revolution counter. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10
    rev.
    """

    pulsesPerRevolution: NotRequired[PulsesPerRevolutionQuantity]
    """Sensor pulses per revolution. No default. Range: above 0 and up to 1000000 pulses/rev."""

    meterRevolutionsPerTurn: NotRequired[RatioQuantity]
    """Meter revolutions per turn of the crank or wheel. No default. Range: 0.0001 to 10000."""

    controllerEntry: NotRequired[ControllerEntryOfTest]
    """The form in which its controller takes the value."""


class MeterOfPlan(TypedDict):
    """One meter of a run. Exactly one of valueInForce and startValue."""

    meter: str
    """What the owner calls the meter."""

    product: str
    """What it meters."""

    material: NotRequired[Literal["free-flowing", "small-seed", "dusty"]]
    """How the product flows: `free-flowing`, `small-seed` or `dusty`. Default: small-seed when even the longest run does
    not bring 6.8 kg, else free-flowing.
    """

    coveredWidth: LengthQuantity
    """Width that the meter covers. Range: above 0 and up to 200 m."""

    targetRate: MassPerAreaQuantity
    """Target rate; for a variable rate, the one to be tested at. Range: above 0 and up to 100000 kg/ha."""

    bulkDensity: NotRequired[BulkDensityQuantity]
    """Bulk density of the product; needed where a container of known volume bounds the catch. No default. Range: 10 to
    10000 kg/m3.
    """

    fittedElement: NotRequired[FittedElement]
    """The metering element that is fitted; with the bulk density it says what the value to plan with can be."""

    valueInForce: NotRequired[ReferenceOfTest | MassPerRevolutionQuantity]
    """The mass per revolution that the controller uses now. Default of its `relativeUncertainty` 2 %: default of a value
    in force: judgement, no published source. Range: above 0 and up to 1000 kg/rev.
    """

    startValue: NotRequired[ReferenceOfTest | MassPerRevolutionQuantity]
    """A predicted mass per revolution where none is in force yet. Default of its `relativeUncertainty` 10 %: a predicted
    start value may be 20 % off; judgement, no published source. Range: above 0 and up to 1000 kg/rev.
    """

    speedLimits: NotRequired[RotationLimits]
    """Limits of the meter speed."""

    container: NotRequired[ContainerOfPlan]
    """Its own container."""

    repeatability: NotRequired[RatioQuantity]
    """Repeatability of one catch (standard deviation). Default by the size of the catch, s^2 = (0.93 %)^2 + (14.3 % rev /
    turns)^2 + (0.49 % kg / mass)^2: 1 % at 14 kg and 40 rev, 2 % at 0.3 kg and 20 rev, 3 % at 5 rev; with 2.9 % in
    place of 0.93 % for dusty or caking products: judgement, 4 degrees of freedom, no published source. Range: 0.01 to
    30 %.
    """

    pocketsPerRevolution: NotRequired[int]
    """Pockets or flutes that discharge one after the other in one revolution, where known. No default."""


class MeterPlanAnswer(TypedDict):
    """One meter of the plan."""

    meter: str
    """The meter."""

    product: str
    """What it meters."""

    catchMass: MassQuantity
    """Net mass to catch."""

    revolutions: RevolutionsQuantity
    """Revolutions to turn; whole, except on a shared shaft."""

    simulatedSpeed: SpeedQuantity
    """Ground speed to simulate: the one of the question where it does, else the nearest that keeps the meter within its
    limits and the run long enough.
    """

    runTime: TimeQuantity
    """Run time at the simulated ground speed."""

    meterSpeed: RotationQuantity
    """Meter speed at the simulated ground speed."""

    withinLimits: bool
    """The meter speed is inside its limits."""

    speedChecks: NotRequired[list[SpeedCheckAnswer]]
    """Meter speeds at the ends of the working range; absent when it was not stated."""

    containerFill: NotRequired[RatioQuantity]
    """Share of the container's volume that the catch fills; absent without volume."""

    simulatedArea: AreaQuantity
    """Area that the catch would have covered."""

    catches: NotRequired[int]
    """Catches for the wanted precision; absent when no number of catches reaches it."""

    expectedPrecision: RatioQuantity
    """Expanded uncertainty to expect of that many catches, relative; of one catch when none reach the wanted one."""

    containerForLongRun: NotRequired[VolumeQuantity]
    """Volume of a container that would allow the shortest run; absent where the run is long enough or another bound acts."""

    catchesForLongRun: NotRequired[int]
    """Catches that together run as long as the shortest run; absent where one catch does."""

    limitedBy: BoundAnswer
    """The bound that acts."""

    bounds: list[BoundAnswer]
    """Every bound, acting or not."""


class MeterSetUpAnswer(TypedDict):
    """Rates and set-up of one meter."""

    meter: str
    """Position of the meter."""

    element: str
    """The element that the plan names."""

    product: str
    """Name of the product."""

    lot: NotRequired[str]
    """Name of the lot; absent when the plan names none."""

    rate: NotRequired[MassPerAreaQuantity]
    """Rate to be put down; absent while it cannot be told."""

    rateFrom: str
    """Where the rate comes from: the plan's own `target-rate`, its `stand`, or its `nutrients`."""

    seedingRate: NotRequired[SeedingRateAnswer]
    """How the rate follows from the stand; absent otherwise."""

    values: list[ValueOfElement]
    """The masses per revolution behind meterSpeed, one for each element of which something is known."""

    meterSpeed: NotRequired[MeterSpeedAnswer]
    """Meter speeds, windows and the best element; absent without a rate or a mass per revolution, and at a rate of zero."""

    newLot: NotRequired[NewLotAnswer]
    """What it means that the lot is another one than when the value in force was adopted; absent when it is the same, when
    one of the two is not known, and at a rate of zero.
    """


class MeterSpeedAnswer(TypedDict):
    """Meter speeds, windows and the order of the elements."""

    headline: str
    """The outcome in one or two sentences that can be shown as they are."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """`fits` when the best element serves every rate at every ground speed, otherwise `none-fits`; `fan-unsuited` when an
    element does, but the fan has to be set otherwise.
    """

    elements: list[ElementAnswer]
    """The elements, best first."""

    capacity: list[CapacityAnswer]
    """Field capacity at each ground speed."""

    fan: NotRequired[FanAnswer]
    """The air stream; absent when none was asked about."""

    cautions: list[CautionAnswer]
    """What can hurt somebody who sets the fan; empty without one. Codes known today: `manual-first`, `unexpected-start`,
    `stored-pressure`.
    """

    assumptions: list[AssumptionAnswer]
    """Values used that the question did not state."""

    findings: list[FindingAnswer]
    """What was noticed. Codes known today: `unusual-field-efficiency`, `outside-fan-window`, `near-fan-limit`,
    `no-common-fan-window`, `fan-limit-not-checked`, `near-meter-limit`, `outside-measured-speeds`,
    `outside-meter-window`, `more-than-the-element-holds`, `fill-unlike-expected`.
    """

    engineVersion: str
    """Version of the engine that answered."""


class MeterSpeedAnswerBatchLine(TypedDict):
    """One line of the answer to many questions: the result of one of them, or the problem that it has."""

    line: int
    """The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the
    header being row 1.
    """

    test: NotRequired[str]
    """What the table calls the test; absent when no table was sent."""

    given: NotRequired[list[GivenCell]]
    """What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing
    there or no table was sent.
    """

    result: NotRequired[MeterSpeedAnswer]
    """What the question would be answered alone; absent when there is a problem."""

    problem: NotRequired[Problem]
    """What the question would be refused with alone; absent when there is a result."""


class MeterSpeedRequest(TypedDict):
    """What is asked of a meter, and the metering elements it can be fitted with."""

    coveredWidth: LengthQuantity
    """Width that the meter covers. Range: 0.01 to 200 m."""

    rates: list[MassPerAreaQuantity]
    """Rates to be put down: one, or those of all zones of a variable-rate field. Zero means off and is allowed beside
    others. Range: 0 to 100000 kg/ha.
    """

    groundSpeeds: list[SpeedQuantity]
    """Ground speeds: one, or the slowest and the fastest of the field. Range: 0.01 to 100 km/h."""

    bulkDensity: NotRequired[BulkDensityQuantity]
    """Bulk density of the product; with the displacement of an element it says what its mass per revolution can be. No
    default. Range: 10 to 10000 kg/m3.
    """

    elements: list[ElementOfMeter]
    """The metering elements that the machine has for this meter."""

    speedLimits: NotRequired[RotationLimits]
    """Limits of the meter speed for elements that do not name their own."""

    workingWidth: NotRequired[LengthQuantity]
    """Width that the machine works, for the area per hour. Default the covered width: judgement, no overlap between
    passes. Range: 0.01 to 200 m.
    """

    fieldEfficiency: NotRequired[RatioQuantity]
    """Share of the time spent working at that width and speed. Default 70 %: from memory: ASAE D497 lists grain drills at
    55 to 80 %, typically 70 %. Range: 1 to 100 %.
    """

    stops: NotRequired[StopsInField]
    """Turns and refills, from which the field efficiency follows at each ground speed. Give this or fieldEfficiency."""

    area: NotRequired[AreaQuantity]
    """Area to be worked; gives the time in the field. No default. Range: above 0 and up to 1000000 ha."""

    timePerDay: NotRequired[TimeQuantity]
    """Time in the field on one day; gives the area of a day. No default. Range: above 0 and up to 24 h."""

    fan: NotRequired[FanOfMachine]
    """The air stream that carries this product and others."""


class MissingOfPlan(TypedDict):
    """Something that keeps a part of the set-up from being computed."""

    pointer: str
    """The member of the plan that it is about."""

    kind: str
    """What it is: a `missing-value` of the plan or of a record that it names, a `record-at-odds` with the plan by now, a
    question that a calculation `refused`, or something that `no-published-number` settles, so that somebody has to be
    asked.
    """

    detail: str
    """What is missing or wrong, and what to do."""

    parts: NotRequired[SentenceParts]
    """What the sentence is made of, for showing it in another language."""


MoistureAnswer = TypedDict(
    "MoistureAnswer",
    {
        "from": "RatioQuantity",
        "to": "RatioQuantity",
        "basis": "str",
        "densityFrom": "BulkDensityQuantity",
        "densityTo": "BulkDensityQuantity",
        "changePerPoint": "RatioQuantity",
        "source": "str",
    },
)
"""A published study of density against moisture."""


class Money(TypedDict):
    """An amount of money."""

    value: float
    """The amount."""

    currency: str
    """ISO 4217 currency code."""


class NewKeyAnswer(TypedDict):
    """A new key."""

    id: str
    """Id, a UUID of version 7."""

    start: str
    """What the text of the key begins with. It is no secret; it says which key a text belongs to."""

    workspace: str
    """Id of the workspace that it opens."""

    name: str
    """Who or what uses it."""

    scopes: list[str]
    """What it may do: `calculate`, `read`, `write`, `admin`; `operator` for keys that the command of the service made for
    whoever runs the installation.
    """

    state: str
    """`live`, `expired` or `revoked`."""

    createdAt: str
    """When it was made (UTC)."""

    createdBy: NotRequired[str]
    """Id of the key that made it; absent when the command of the service did."""

    expiresAt: NotRequired[str]
    """From when on it opens nothing (UTC); absent for never."""

    revokedAt: NotRequired[str]
    """When it was revoked (UTC); absent while it was not."""

    revokedBecause: NotRequired[str]
    """Why it was revoked."""

    replaces: NotRequired[str]
    """Id of the key that it takes the place of."""

    replacedBy: NotRequired[str]
    """Id of the key that takes its place."""

    lastUsedAt: NotRequired[str]
    """When it was used last (UTC), to about a minute; absent for never."""

    key: NotRequired[str]
    """The key itself. It is shown in this answer only; a repetition of the request does not show it again."""


class NewLotAnswer(TypedDict):
    """What another lot or treatment changes."""

    headline: str
    """The outcome in a few sentences that can be shown as they are."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """When to make a catch test: `test-now` (before sowing this lot), `test-at-next-fill` or `no-test-needed` (not because
    of this lot).
    """

    reasons: list[LotReason]
    """Why. Codes known today: `density-unknown`, `density-differs`, `other-lot`, `treatment-changed`,
    `kernels-of-one-lot-differ`, `nothing-changed`, `within-tolerance`, `within-tolerance-not-shown`.
    """

    predictedMassPerRevolution: MeasuredMassPerRevolution
    """The mass per revolution expected of the new lot, with its interval: the value in force times the ratio of the bulk
    densities.
    """

    predictedChange: RatioQuantity
    """How much that is above the value in force; negative when below."""

    uncertaintyParts: list[LotUncertainty]
    """Where its uncertainty comes from: relative, their squares add up."""

    probabilityWithinTolerance: float
    """Probability that the value in force is within the tolerance of the truth."""

    probabilityWithinToleranceOfPrediction: float
    """Probability that the truth is within the tolerance of the predicted value, were that typed in."""

    startValue: StartValueOfLot
    """What a catch plan takes as startValue."""

    rate: NotRequired[RateOfLot]
    """The rate for the new lot; absent when nothing says how many seeds there were."""

    effectIfValueStays: NotRequired[EffectOfLot]
    """What is sown when the rate is set anew, where it can be, and the value in force stays; absent without a rate."""

    effectIfNothingIsChanged: NotRequired[EffectOfLot]
    """What is sown when neither rate nor value is touched; absent when the rate cannot be computed."""

    assumptions: list[AssumptionAnswer]
    """Values used that the question did not state."""

    findings: list[FindingAnswer]
    """What was noticed beyond the verdict. Codes known today: `rate-not-recomputed`, `densities-far-apart`,
    `germination-changed`.
    """

    cautions: list[CautionAnswer]
    """What can hurt a person. The product label goes first. Codes known today: `treated-seed`."""

    engineVersion: str
    """Version of the engine that answered."""


class NewLotAnswerBatchLine(TypedDict):
    """One line of the answer to many questions: the result of one of them, or the problem that it has."""

    line: int
    """The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the
    header being row 1.
    """

    test: NotRequired[str]
    """What the table calls the test; absent when no table was sent."""

    given: NotRequired[list[GivenCell]]
    """What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing
    there or no table was sent.
    """

    result: NotRequired[NewLotAnswer]
    """What the question would be answered alone; absent when there is a problem."""

    problem: NotRequired[Problem]
    """What the question would be refused with alone; absent when there is a result."""


class NewLotRequest(TypedDict):
    """A value in force, the lot behind it, and the lot that goes into the tank now."""

    valueInForce: ValueOfLotBefore | MassPerRevolutionQuantity
    """The mass per revolution that the controller uses now. Range: above 0 and up to 1000 kg/rev."""

    lotBefore: LotOfChange
    """The lot with which that value was found."""

    newLot: LotOfChange
    """The lot that goes into the tank now."""

    sameLot: NotRequired[bool]
    """Both are the same lot: another delivery of it, or it was treated meanwhile. Default false."""

    rate: NotRequired[MassPerAreaQuantity]
    """Rate by mass that was sown with the lot before; with both kernel masses it gives the rate for the same seeds. Give
    this or seedsPerArea. No default. Range: above 0 and up to 100000 kg/ha.
    """

    seedsPerArea: NotRequired[CountPerAreaQuantity]
    """Pure seeds per area that are to stay the same. No default. Range: above 0 and up to 100000 /m2."""

    emergence: NotRequired[RatioQuantity]
    """Field emergence: plants per seed that can germinate. With the germination of the new lot it gives plants. No
    default. Range: above 0 and up to 100 %.
    """

    area: NotRequired[AreaQuantity]
    """Area to be sown with the new lot; gives mass and cost. No default. Range: above 0 and up to 1000000 ha."""

    price: NotRequired[Price]
    """Price of the new lot."""

    tolerance: NotRequired[RatioQuantity]
    """Largest acceptable deviation of the value in force from the truth. Default 5 %: published acceptance limit: within 5
    % of the target rate (Field and Solie 2007; University of Georgia Extension). Range: 0.1 to 50 %.
    """

    dayToDay: NotRequired[RatioQuantity]
    """Standard deviation of the mass per revolution from day to day. Default 1 %: default until the series has five tests;
    judgement, no published source. Range: above 0 and up to 50 %.
    """

    fillChangeOfLot: NotRequired[RatioQuantity]
    """How far the fill of the element changes from lot to lot beyond density, as the scale of a t distribution. Default 4
    %: another lot fills the element differently even at the same density; judgement, 3 degrees of freedom, no published
    source. Range: above 0 and up to 50 %.
    """

    fillChangeOfTreatment: NotRequired[RatioQuantity]
    """The same with another treatment. Default 4 %: a coating changes friction; judgement, 3 degrees of freedom, no
    published source. Range: above 0 and up to 50 %.
    """

    unknownDensityChange: NotRequired[RatioQuantity]
    """How far bulk density changes where it is not known of both lots, as the scale of a t distribution. Default 7 % with
    a new lot; judgement, 3 degrees of freedom, no published source. Default 2 % with another delivery of the same lot;
    judgement, 3 degrees of freedom, no published source. Range: above 0 and up to 50 %.
    """


class NutrientLine(TypedDict):
    """One nutrient: asked for, there already, brought, left over."""

    nutrient: str
    """The nutrient in the form of all amounts beside it: that of its target, else the first one named. Known today: `N`,
    `P2O5`, `P`, `K2O`, `K`, `S`, `SO4-S`, `SO3`, `SO4`.
    """

    target: NotRequired[MassPerAreaQuantity]
    """The amount of its target; absent without one."""

    kind: NotRequired[str]
    """How the target is meant; absent without one. Known today: `at-least`, `exactly`, `at-most`."""

    credits: MassPerAreaQuantity
    """What is there already."""

    fromFixedRates: MassPerAreaQuantity
    """What products of fixed rate bring."""

    fromComputedRates: MassPerAreaQuantity
    """What the products bring whose rates were computed."""

    total: MassPerAreaQuantity
    """All of it together."""

    surplus: NotRequired[MassPerAreaQuantity]
    """The total less the target: what remains over, or below zero what is missing (of an at-most target, the room left);
    absent without a target.
    """

    met: bool
    """The target is met; true without one."""

    costOfNextUnit: NotRequired[CostPerUnit]
    """What one more mass unit of the target would cost with these products while every limit stays: the price of this
    nutrient here. Zero where enough is there anyway, below zero where more of it would save money. Absent without
    prices, without a target, for an at-most target, or when no more can be had.
    """

    costOfLimit: NotRequired[CostPerUnit]
    """What the limit of this nutrient (most, or an at-most target) costs: what one more mass unit allowed would save. Zero
    where the limit does not bind. Absent without prices, without a limit, or when not all targets are met.
    """


class NutrientLoadAnswer(TypedDict):
    """A nutrient with the seed."""

    nutrient: str
    """What is counted. Known today: `N`, `urea-N`, `urea-and-sulfate-N`, `N-beside-phosphates`, `P2O5`, `K2O`,
    `N-plus-K2O`, `S`, `all`, `phosphate-N`.
    """

    rate: MassPerAreaQuantity
    """The heaviest load of all zones."""

    zone: int
    """The zone with that load, counted from 1."""


class ObstacleOfPlan(TypedDict):
    """Something that stands against going on."""

    meter: NotRequired[str]
    """Position of the meter; absent when it is about the field."""

    detail: str
    """What it is, and what to do."""

    parts: NotRequired[SentenceParts]
    """What the sentence is made of, for showing it in another language."""


class OtherContainerOfTest(TypedDict):
    """Another container at hand."""

    name: NotRequired[str]
    """What the owner calls it."""

    tare: MassQuantity
    """Mass of the empty container. Range: 0 to 10 t."""


class OtherDeliveryOfTest(TypedDict):
    """What another metering element or another product would give."""

    name: NotRequired[str]
    """What the owner calls it."""

    massPerRevolution: MassPerRevolutionQuantity
    """The mass per revolution to expect of it. Range: above 0 and up to 1000 kg/rev."""

    bulkDensity: NotRequired[BulkDensityQuantity]
    """Of another product: its bulk density, where the mass per revolution was found by tests. With that of the product
    tested the two are compared. No default. Range: 10 to 10000 kg/m3.
    """


class OutletAnswer(TypedDict):
    """One outlet over all tests."""

    caught: MassQuantity
    """Net mass caught."""

    deviation: RatioQuantity
    """Deviation from the mean of the outlets."""

    withinTolerance: bool
    """The deviation is within the tolerance."""


class PackageOfSeed(TypedDict):
    """A bag or box of seed: of a mass or of a count of pure seeds, exactly one of the two."""

    mass: NotRequired[MassQuantity]
    """Mass of the seed in one package. No default. Range: above 0 and up to 1000 t."""

    seeds: NotRequired[float]
    """Pure seeds in one package. No default."""

    price: NotRequired[PackagePrice]
    """Price of one package."""


class PackagePrice(TypedDict):
    """A price of one package."""

    value: float
    """Amount of money."""

    currency: str
    """ISO 4217 currency code, for example EUR."""


class PackagesAnswer(TypedDict):
    """Seed in packages."""

    mass: MassQuantity
    """Mass of one package."""

    areaPerPackage: AreaQuantity
    """Area that one package sows."""

    needed: NotRequired[float]
    """Packages that the area takes, not rounded; absent without an area."""

    whole: NotRequired[float]
    """The same rounded up to whole packages."""

    leftOver: NotRequired[MassQuantity]
    """What stays in the last package."""


class PlanAnswer(TypedDict):
    """A plan as stored."""

    name: str
    """What the owner calls it."""

    retired: bool
    """No longer in use: takes no new evidence, and lists leave it out unless asked. Default false."""

    note: NotRequired[str]
    """A remark in the owner's words."""

    machine: str
    """Id of the machine."""

    scale: str
    """Id of the scale that will weigh the catches."""

    container: NotRequired[str]
    """Id of the container for the catches."""

    groundSpeed: SpeedQuantity
    """Planned ground speed."""

    workingSpeeds: NotRequired[SpeedRange]
    """Ground speeds between which the field will be worked."""

    area: NotRequired[AreaQuantity]
    """Area to be seeded."""

    wantedPrecision: NotRequired[RatioQuantity]
    """Largest acceptable expanded uncertainty of a catch test. Default 3 %: default; judgement, no published source."""

    maximumRunTime: NotRequired[TimeQuantity]
    """Longest run of one catch. Default 300 s: default; judgement, no published source."""

    minimumRunTime: NotRequired[TimeQuantity]
    """Shortest run of one catch, not above the longest. A drive takes some seconds to settle. Default 20 s: a drive takes
    some seconds to settle; judgement, no published source.
    """

    containersAtHand: NotRequired[int]
    """How many of the container are at hand. With fewer than meters, the catch plan says so."""

    liftLimit: NotRequired[MassQuantity]
    """Mass that one person lifts, container included. Default 25 kg: mass one person lifts, container included; judgement,
    local rules first.
    """

    fieldEfficiency: NotRequired[RatioQuantity]
    """Share of the time spent working, for the area per hour. Default 70 %: from memory: ASAE D497 lists grain drills at
    55 to 80 %, typically 70 %.
    """

    nutrients: NotRequired[list[WantedNutrient]]
    """Nutrients wanted on this field. Products of known analysis that have no rate of their own get it from here, at least
    cost.
    """

    nutrientCredits: NotRequired[list[CreditedNutrient]]
    """Nutrients that are there already: applied earlier, or supplied by the soil."""

    seedRow: NotRequired[SeedRowOfPlan]
    """The seed row of this field; what is placed with the seed is compared with published limits and your own."""

    sowingConditions: NotRequired[Conditions]
    """Conditions expected while seeding; tests under others get a finding."""

    meters: list[MeterOfFieldPlan]
    """What each meter puts down."""

    id: str
    """Id, a UUID of version 7."""

    revision: int
    """1 when created, one more with each change."""

    createdAt: str
    """When it was created (UTC)."""

    updatedAt: str
    """When it was changed last (UTC)."""


class PlanAnswerPage(TypedDict):
    """A page of a list."""

    items: list[PlanAnswer]
    """The records of this page."""

    next: NotRequired[str]
    """Address of the next page; absent on the last one."""


class PlanRequest(TypedDict):
    """A plan for a field: which meter puts down which product at which rate, and the catch test that goes before."""

    id: NotRequired[str]
    """The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at
    any time. Default: the service makes one. May be repeated, unchanged, when replacing.
    """

    name: str
    """What the owner calls it."""

    retired: NotRequired[bool]
    """No longer in use: takes no new evidence, and lists leave it out unless asked. Default false."""

    note: NotRequired[str]
    """A remark in the owner's words."""

    machine: str
    """Id of the machine."""

    scale: str
    """Id of the scale that will weigh the catches."""

    container: NotRequired[str]
    """Id of the container for the catches."""

    groundSpeed: SpeedQuantity
    """Planned ground speed. Range: above 0 and up to 100 km/h."""

    workingSpeeds: NotRequired[SpeedRange]
    """Ground speeds between which the field will be worked."""

    area: NotRequired[AreaQuantity]
    """Area to be seeded. No default. Range: above 0 and up to 1000000 ha."""

    wantedPrecision: NotRequired[RatioQuantity]
    """Largest acceptable expanded uncertainty of a catch test. Default 3 %: default; judgement, no published source.
    Range: 0.1 to 50 %.
    """

    maximumRunTime: NotRequired[TimeQuantity]
    """Longest run of one catch. Default 300 s: default; judgement, no published source. Range: above 0 and up to 24 h."""

    minimumRunTime: NotRequired[TimeQuantity]
    """Shortest run of one catch, not above the longest. A drive takes some seconds to settle. Default 20 s: a drive takes
    some seconds to settle; judgement, no published source. Range: above 0 and up to 24 h.
    """

    containersAtHand: NotRequired[int]
    """How many of the container are at hand. With fewer than meters, the catch plan says so. No default."""

    liftLimit: NotRequired[MassQuantity]
    """Mass that one person lifts, container included. Default 25 kg: mass one person lifts, container included; judgement,
    local rules first. Range: above 0 and up to 1000 t.
    """

    fieldEfficiency: NotRequired[RatioQuantity]
    """Share of the time spent working, for the area per hour. Default 70 %: from memory: ASAE D497 lists grain drills at
    55 to 80 %, typically 70 %. Range: above 0 and up to 100 %.
    """

    nutrients: NotRequired[list[WantedNutrient]]
    """Nutrients wanted on this field. Products of known analysis that have no rate of their own get it from here, at least
    cost.
    """

    nutrientCredits: NotRequired[list[CreditedNutrient]]
    """Nutrients that are there already: applied earlier, or supplied by the soil."""

    seedRow: NotRequired[SeedRowOfPlan]
    """The seed row of this field; what is placed with the seed is compared with published limits and your own."""

    sowingConditions: NotRequired[Conditions]
    """Conditions expected while seeding; tests under others get a finding."""

    meters: list[MeterOfFieldPlan]
    """What each meter puts down."""


class PlanSetUpAnswer(TypedDict):
    """Rates and set-up of a field: every calculation that the plan and its records allow, each as its own operation would
    answer it.
    """

    headline: str
    """The outcome in a few sentences that can be shown as they are."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """Whether the field can be begun. `ready`: every meter has a rate and a mass per revolution, its element serves that
    rate at the planned ground speeds, all that lies with the seed has a limit and is within it, the fan suits all
    products, the nutrients are met, no lot asks for a test first, and nothing is missing. `incomplete`: nothing is
    known to stand in the way, but something is missing. `blocked`: something stands in the way.
    """

    obstacles: list[ObstacleOfPlan]
    """What stands against going on, the worst first: a rate that a meter cannot reach, then too much with the seed, then a
    meter that turns too slowly, the air, nutrients, a lot to be tested. Empty when nothing is. What is not known yet is
    under missing.
    """

    meters: list[MeterSetUpAnswer]
    """The meters, in the order of the plan."""

    nutrients: NotRequired[ProductRateAnswer]
    """How the products supply the nutrients that are wanted; absent when the plan wants none, or a rate or an analysis is
    missing. Where several meters share a product, its line is for all of them together, on the whole field.
    """

    seedRow: NotRequired[SeedRowLimitAnswer]
    """What lies with the seed against published limits; absent when nothing is placed with the seed, or something that it
    needs is missing.
    """

    fan: NotRequired[FanAnswer]
    """Where the fan may stand for all products, and what the air carries; absent when no product states its fan speeds.
    Compared with the fan speed of the sowing conditions.
    """

    missing: list[MissingOfPlan]
    """What could not be computed, and what to add."""

    cautions: list[CautionAnswer]
    """What can hurt people or the crop. Codes known today: `local-guidance-first`, `limit-is-no-promise`,
    `spread-to-be-measured`, `soil-test-first`, `seed-row-has-its-own-limit`, `not-all-products-mix`, `treated-seed`,
    `manual-first`, `unexpected-start`, `stored-pressure`.
    """

    engineVersion: str
    """Version of the engine that answered."""


class PredictedValueOfTest(TypedDict):
    """What another lot is expected to give."""

    value: float
    """The number, in the unit beside it. No default."""

    unit: MassPerRevolutionUnit
    """The unit, written exactly as in `GET /v1/units`."""

    relativeUncertainty: NotRequired[RatioQuantity]
    """Its own standard uncertainty, relative. Default 5 %: judgement, no published source. Range: 0 to 100 %."""


class PressureQuantity(TypedDict):
    """A pressure above that of the air around."""

    value: float
    """The number, in the unit beside it."""

    unit: PressureUnit
    """The unit, written exactly as in `GET /v1/units`."""


class Price(TypedDict):
    """A price per mass."""

    value: float
    """Amount of money for one `per`."""

    currency: str
    """ISO 4217 currency code, for example EUR."""

    per: MassUnit
    """The mass that the amount buys, as a unit of mass."""


class PrintedLimit(TypedDict):
    """A number as a source prints it."""

    geometry: str
    """The geometry that it is printed for."""

    limit: MassPerAreaQuantity
    """The number, in the unit of the source."""


class PriorOfShare(TypedDict):
    """A share of seeds expected before counting."""

    reading: Literal["survival", "emergence"]
    """Which share: `survival` (plants per pure seed) or `emergence` (plants per viable seed)."""

    mean: RatioQuantity
    """Its mean. Range: 1 to 99.9 %."""

    spread: RatioQuantity
    """Its standard deviation from field to field and season to season. Range: 0.1 to 50 %."""


Problem = TypedDict(
    "Problem",
    {
        "type": "str",
        "title": "str",
        "status": "int",
        "detail": "str",
        "traceId": "str",
        "violated-policies": "NotRequired[list[str]]",
        "errors": "list[ProblemError]",
    },
)
"""What went wrong and what to do about it (RFC 9457)."""


class ProblemError(TypedDict):
    """One error of a request."""

    pointer: NotRequired[str]
    """Where in the body, as an RFC 6901 JSON pointer in its URI fragment form, for example `#/catches/0/gross`; absent
    when it is not about the body.
    """

    parameter: NotRequired[str]
    """The query parameter it is about; absent when it is not about the query."""

    header: NotRequired[str]
    """The header it is about; absent when it is not about a header."""

    row: NotRequired[int]
    """The row of a table it is about, as a spreadsheet counts it: the header is row 1. Absent when what was sent is no
    table.
    """

    column: NotRequired[str]
    """The column of a table it is about, as its header writes it; absent when it is about no single column."""

    code: str
    """Stable code. Those with which the engine refuses stand at the status 422 of the operation; `GET /v1/codes` explains
    each. Known today: `already-superseded`, `body-too-large`, `body-too-slow`, `catches-all-excluded`,
    `credentials-broken`, `cursor-invalid`, `database-restored`, `density-missing`, `element-not-in-meter`,
    `encoding-unsupported`, `id-taken`, `id-unknown`, `idempotency-in-flight`, `idempotency-key-reused`,
    `internal-error`, `json-broken`, `key-expired`, `key-invalid`, `key-missing`, `key-revoked`, `line-too-long`,
    `media-type-unsupported`, `member-duplicate`, `member-missing`, `member-unknown`, `meter-not-on-machine`,
    `method-not-allowed`, `net-negative`, `not-acceptable`, `not-found`, `number-ambiguous`, `number-out-of-range`,
    `precondition-failed`, `precondition-required`, `rate-exceeded`, `record-retired`, `records-at-odds`,
    `request-broken`, `revolutions-not-positive`, `rows-apart`, `scope-missing`, `service-busy`, `settings-at-odds`,
    `storage-unavailable`, `tare-above-gross`, `text-too-long`, `text-wrong`, `time-wrong`, `too-few`, `too-many`,
    `type-wrong`, `unit-ambiguous`, `unit-missing`, `unit-unknown`, `unit-wrong-dimension`, `value-missing`,
    `word-unknown`, `workspace-retired`.
    """

    detail: str
    """What is wrong and what to do."""


class ProductAnswer(TypedDict):
    """A product as stored."""

    name: str
    """What the owner calls it."""

    retired: bool
    """No longer in use: takes no new evidence, and lists leave it out unless asked. Default false."""

    note: NotRequired[str]
    """A remark in the owner's words."""

    material: NotRequired[str]
    """How it flows: `free-flowing`, `small-seed` or `dusty` (also sticky or caking)."""

    bulkDensity: NotRequired[BulkDensityQuantity]
    """Usual bulk density; a lot may have its own."""

    analysis: NotRequired[list[ShareOfNutrient]]
    """Its nutrients, each as a share of its mass in a stated form; for a fertilizer."""

    nitrogenForm: NotRequired[str]
    """Form of its nitrogen. When it is not stated, all nitrogen beside the seed counts as urea."""

    fanSpeedLimits: NotRequired[RotationLimits]
    """Fan speeds that the product may have on this machine; yours, from the machine's manual."""

    price: NotRequired[Price]
    """Price."""

    id: str
    """Id, a UUID of version 7."""

    revision: int
    """1 when created, one more with each change."""

    createdAt: str
    """When it was created (UTC)."""

    updatedAt: str
    """When it was changed last (UTC)."""


class ProductAnswerPage(TypedDict):
    """A page of a list."""

    items: list[ProductAnswer]
    """The records of this page."""

    next: NotRequired[str]
    """Address of the next page; absent on the last one."""


class ProductInAir(TypedDict):
    """A product in the air stream."""

    name: str
    """What the owner calls it."""

    rates: NotRequired[list[MassPerAreaQuantity]]
    """Its rates; those of the question when left out. Range: 0 to 100000 kg/ha."""

    coveredWidth: NotRequired[LengthQuantity]
    """Width that its meter covers; that of the question when left out. No default. Range: 0.01 to 200 m."""

    fanSpeedLimits: NotRequired[RotationLimits]
    """Fan speeds that this product may have."""

    airFlowLimits: NotRequired[AirFlowLimits]
    """Air flows that this product may have."""


class ProductLoadAnswer(TypedDict):
    """What the air carries of one product."""

    name: str
    """The product."""

    massFlow: MassPerTimeQuantity
    """Its mass flow: rate times width times ground speed."""

    massPerAir: NotRequired[BulkDensityQuantity]
    """Its mass in a volume of air; absent without a planned air flow."""


class ProductNeedAnswer(TypedDict):
    """A combination of rate and ground speed."""

    rate: MassPerAreaQuantity
    """The rate."""

    groundSpeed: SpeedQuantity
    """The ground speed."""

    massFlow: MassPerTimeQuantity
    """Product that the meter has to deliver."""


class ProductOfTest(TypedDict):
    """The product of a catch test."""

    name: NotRequired[str]
    """What the owner calls it."""

    material: NotRequired[Literal["free-flowing", "small-seed", "dusty"]]
    """How it flows: `free-flowing`, `small-seed` or `dusty` (also sticky or caking)."""

    bulkDensity: NotRequired[BulkDensityQuantity]
    """Bulk density; needed when the controller takes a volume per revolution. With it the container and the element say
    what a catch can be. No default. Range: 10 to 10000 kg/m3.
    """

    price: NotRequired[Price]
    """Price; gives the cost of a wrong value."""


class ProductOffer(TypedDict):
    """A product that can be applied."""

    name: str
    """What you call it."""

    analysis: list[ShareOfNutrient]
    """Its nutrients, each as a share of its mass in a stated form. A grade such as 11-52-0 states N, P2O5 and K2O in most
    countries, but the elements N, P and K in some: look on the label.
    """

    price: NotRequired[Price]
    """Price. Default none: without prices the rates are those of least total mass."""

    minimumRate: NotRequired[MassPerAreaQuantity]
    """It is applied at no less than this rate. None when left out. No default. Range: 0 to 100000 kg/ha."""

    maximumRate: NotRequired[MassPerAreaQuantity]
    """It is applied at no more than this rate, for example because of a limit for the seed row or of the meter. No limit
    when left out. No default. Range: 0 to 100000 kg/ha.
    """

    fixedRate: NotRequired[MassPerAreaQuantity]
    """Its rate is decided already, as for a starter; its nutrients count like credits and its cost is added. Excludes
    minimumRate and maximumRate. No default. Range: 0 to 100000 kg/ha.
    """

    packageMass: NotRequired[MassQuantity]
    """Mass of one package; left out for bulk. No default. Range: 0.1 to 100000 kg."""


class ProductRateAnswer(TypedDict):
    """Rates of products, what they supply and what they cost."""

    headline: str
    """The outcome in one or two sentences that can be shown as they are."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """Whether all targets are `met`; when `missed`, the rates are the nearest that can be had, and a finding says why for
    each target missed.
    """

    products: list[ProductRateLine]
    """The products, in the order of the question."""

    nutrients: list[NutrientLine]
    """Each nutrient that a target, a credit or a product names."""

    totalRate: MassPerAreaQuantity
    """Mass of all products together."""

    blend: list[BlendShare]
    """Analysis of a blend of the products whose rates were computed; empty when none of them is applied."""

    costPerArea: NotRequired[CostPerUnit]
    """Cost of all products per area; absent without prices."""

    totalCost: NotRequired[Money]
    """Cost of all products over the area; absent without prices or area."""

    assumptions: list[AssumptionAnswer]
    """Values used that the question did not state."""

    findings: list[FindingAnswer]
    """What was noticed. Codes known today: `nutrient-without-source`, `credits-above-target`, `most-rate-binds`,
    `least-rate-binds`, `targets-conflict`, `large-surplus`, `unusual-product-rate`, `element-or-oxide`.
    """

    cautions: list[CautionAnswer]
    """What can hurt people or the crop. Codes known today: `soil-test-first`, `seed-row-has-its-own-limit`,
    `not-all-products-mix`.
    """

    engineVersion: str
    """Version of the engine that answered."""


class ProductRateAnswerBatchLine(TypedDict):
    """One line of the answer to many questions: the result of one of them, or the problem that it has."""

    line: int
    """The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the
    header being row 1.
    """

    test: NotRequired[str]
    """What the table calls the test; absent when no table was sent."""

    given: NotRequired[list[GivenCell]]
    """What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing
    there or no table was sent.
    """

    result: NotRequired[ProductRateAnswer]
    """What the question would be answered alone; absent when there is a problem."""

    problem: NotRequired[Problem]
    """What the question would be refused with alone; absent when there is a result."""


class ProductRateLine(TypedDict):
    """One product."""

    name: str
    """Its name."""

    rate: MassPerAreaQuantity
    """Its rate."""

    isFixed: bool
    """True when the question fixed the rate."""

    supplies: list[SuppliedNutrient]
    """What it brings of each nutrient that it holds."""

    costPerArea: NotRequired[CostPerUnit]
    """Its cost per area; absent without prices."""

    totalMass: NotRequired[MassQuantity]
    """Its mass over the area; absent without an area."""

    packages: NotRequired[int]
    """Whole packages that hold that mass; absent without an area or for bulk."""

    totalCost: NotRequired[Money]
    """Cost of that mass, not of whole packages; absent without prices or area."""

    nutrientCost: NotRequired[CostOfNutrient]
    """Cost of its nutrient per mass, where it holds only one; absent without prices."""


class ProductRateRequest(TypedDict):
    """Nutrients that are wanted, and the products that can supply them."""

    targets: list[WantedNutrient]
    """What is wanted of each nutrient: nitrogen, phosphorus, potassium, sulfur. One target for each nutrient."""

    products: list[ProductOffer]
    """The products at hand. Among choices of equal cost and mass, earlier ones are taken before later ones. Either all
    have a price, in one currency, or none has.
    """

    credits: NotRequired[list[CreditedNutrient]]
    """What is there already and need not be bought: applied earlier, or supplied by the soil. Credits of one nutrient add
    up.
    """

    area: NotRequired[AreaQuantity]
    """Area to be covered; gives totals and packages. No default. Range: above 0 and up to 1000000 ha."""


class ProductRequest(TypedDict):
    """A product that meters put down."""

    id: NotRequired[str]
    """The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at
    any time. Default: the service makes one. May be repeated, unchanged, when replacing.
    """

    name: str
    """What the owner calls it."""

    retired: NotRequired[bool]
    """No longer in use: takes no new evidence, and lists leave it out unless asked. Default false."""

    note: NotRequired[str]
    """A remark in the owner's words."""

    material: NotRequired[Literal["free-flowing", "small-seed", "dusty"]]
    """How it flows: `free-flowing`, `small-seed` or `dusty` (also sticky or caking)."""

    bulkDensity: NotRequired[BulkDensityQuantity]
    """Usual bulk density; a lot may have its own. No default. Range: 10 to 10000 kg/m3."""

    analysis: NotRequired[list[ShareOfNutrient]]
    """Its nutrients, each as a share of its mass in a stated form; for a fertilizer."""

    nitrogenForm: NotRequired[Literal["urea", "urea-ammonium-nitrate", "ammonium-sulfate", "ammonium-phosphate", "ammonium-nitrate", "other", "urea-with-inhibitor"]]
    """Form of its nitrogen. When it is not stated, all nitrogen beside the seed counts as urea."""

    fanSpeedLimits: NotRequired[RotationLimits]
    """Fan speeds that the product may have on this machine; yours, from the machine's manual."""

    price: NotRequired[Price]
    """Price."""


class ProductWithSeed(TypedDict):
    """A product placed with the seed: its analysis with rates, or nutrients at rates of their own."""

    name: str
    """What the owner calls it."""

    analysis: NotRequired[list[ShareOfNutrient]]
    """Its nutrients, each as a share of its mass in a stated form. Give it with rates."""

    rates: NotRequired[list[MassPerAreaQuantity]]
    """Rates of the product: one that holds everywhere, or one for each zone of a variable rate, in the same order for all
    products. Zero is allowed. Range: 0 to 100000 kg/ha.
    """

    nutrients: NotRequired[list[AmountOfNutrient]]
    """Nutrients per area, the same everywhere. Give them in place of analysis and rates."""

    nitrogenForm: NotRequired[Literal["urea", "urea-ammonium-nitrate", "ammonium-sulfate", "ammonium-phosphate", "ammonium-nitrate", "other", "urea-with-inhibitor"]]
    """Form of its nitrogen. Coated or treated urea is `urea`, for no source has a number for it, but `urea-with-inhibitor`
    where the treatment is a urease inhibitor: published limits count that as urea, and the stand-loss model has its own
    slope. Default urea, the form that harms most: judgement.
    """


class PublishedDensityAnswer(TypedDict):
    """A published bulk density, in the unit in which it was printed."""

    low: BulkDensityQuantity
    """Lowest printed value."""

    high: BulkDensityQuantity
    """Highest printed value; the lowest where one value is printed."""

    kind: str
    """What the values are; a legal bushel weight is no measured density. Known today: `typical-range`, `measured-range`,
    `legal-bushel-weight`, `storage-factor`.
    """

    source: str
    """The publication."""


class PulsesPerDistanceQuantity(TypedDict):
    """Sensor pulses per distance driven."""

    value: float
    """The number, in the unit beside it."""

    unit: PulsesPerDistanceUnit
    """The unit, written exactly as in `GET /v1/units`."""


class PulsesPerRevolutionQuantity(TypedDict):
    """Sensor pulses per revolution."""

    value: float
    """The number, in the unit beside it."""

    unit: PulsesPerRevolutionUnit
    """The unit, written exactly as in `GET /v1/units`."""


class RateAcceptanceAnswer(TypedDict):
    """A rate against its target."""

    deviation: MeasuredRatio
    """Rate over target, less 1, with its interval: positive when too much."""

    withinTolerance: bool
    """The rate found is within the tolerance of the target."""

    probabilityWithinTolerance: float
    """Probability that the true rate is."""


class RateAnswer(TypedDict):
    """A rate and the stand that comes of it."""

    seedsPerArea: CountPerAreaQuantity
    """Pure seeds per area."""

    rate: NotRequired[MassPerAreaQuantity]
    """Mass per area; absent without a kernel mass."""

    expectedStand: CountPerAreaQuantity
    """The stand in the mean of all seasons."""

    standReached: CountPerAreaQuantity
    """The stand that is reached with the wanted probability."""

    probabilityReached: float
    """Probability that the minimum stand is reached."""


class RateFromElsewhere(TypedDict):
    """A rate from a table, a label or a sum on paper."""

    value: float
    """The number, in the unit beside it. No default."""

    unit: MassPerAreaUnit
    """The unit, written exactly as in `GET /v1/units`."""

    madeBy: NotRequired[Literal["exact-units", "divide-by-ten"]]
    """How it was made, where known: `divide-by-ten` is the trade's shortcut for lb/ac (plants per square foot times grams
    per thousand over survival over 10), `exact-units` has no such shortcut in it. Left out, a rate in lb/ac is judged
    by how far it is off.
    """


class RateOfLot(TypedDict):
    """Rates for the new lot."""

    seedsPerArea: CountPerAreaQuantity
    """Pure seeds per area, as with the lot before."""

    forSameSeeds: NotRequired[MassPerAreaQuantity]
    """Mass per area that holds them now; absent without the kernel mass of the new lot."""

    forSameStand: NotRequired[MassPerAreaQuantity]
    """Mass per area that brings up as many plants as before; absent unless both germinations are known."""


class RateWindowAnswer(TypedDict):
    """The rates that can be put down at a ground speed."""

    groundSpeed: SpeedQuantity
    """The ground speed."""

    minimum: NotRequired[MassPerAreaQuantity]
    """Lowest; absent without a lower limit."""

    maximum: NotRequired[MassPerAreaQuantity]
    """Highest; absent without an upper limit."""


class RatioQuantity(TypedDict):
    """A ratio of like quantities."""

    value: float
    """The number, in the unit beside it."""

    unit: RatioUnit
    """The unit, written exactly as in `GET /v1/units`."""


class ReasonAnswer(TypedDict):
    """A reason for a verdict."""

    code: str
    """Stable code. Which ones can come stands at the list that holds it; `GET /v1/codes` explains each."""

    detail: str
    """A sentence that can be shown as it is."""

    parts: NotRequired[SentenceParts]
    """What the sentence is made of, for showing it in another language."""


class RecomputationAnswer(TypedDict):
    """Whether a stored test, evaluated again, gives what it gave."""

    equal: bool
    """Every value is the same."""

    engineVersionThen: str
    """Version of the engine that evaluated it first."""

    engineVersionNow: str
    """Version of the engine now."""

    differences: list[DifferenceAnswer]
    """What differs; empty when equal."""


class RecordCatchTestRequest(TypedDict):
    """A catch test to be kept as evidence. What is known of machine, product and scale comes from their records."""

    tareReading: NotRequired[Literal["each", "shared", "zeroed"]]
    """How the empty container was taken into account: `each` catch has its own tare reading, one reading is `shared` by
    all, or the scale was `zeroed` with the empty container on it. Default: each, or shared when sharedTare is given.
    """

    sharedTare: NotRequired[MassQuantity]
    """The one tare reading that serves all catches. No default. Range: above 0 and up to 1000 t."""

    countStart: NotRequired[Literal["free", "on-edge"]]
    """Where a count begins within its smallest step: `free` (anywhere, the default) or `on-edge` of the sensor."""

    turnResolution: NotRequired[RevolutionsQuantity]
    """Smallest step of the count of turns. Default 0.1 rev: default; judgement, no published source. Range: 0 to 10 rev."""

    meterSpeed: NotRequired[RotationQuantity]
    """Steady meter speed; needed when catches give a run time or the controller takes a mass per time. No default. Range:
    above 0 and up to 10000 rpm.
    """

    timeResolution: NotRequired[TimeQuantity]
    """Smallest step of the run time. Default 0.5 s: default; judgement, no published source. Range: 0 to 60 s."""

    valueTypedIn: NotRequired[MassPerRevolutionQuantity]
    """The value that was typed into the controller while it indicated a mass; default the value in force. Range: above 0
    and up to 1000 kg/rev.
    """

    indicatedMassResolution: NotRequired[MassQuantity]
    """Smallest step of the indicated mass. Default 0.1 kg: default; judgement, no published source. Range: 0 to 100 kg."""

    caughtPoints: NotRequired[CaughtPointsOfTest]
    """Only some of the points that the meter feeds were caught, the same ones each time."""

    valueInForce: NotRequired[ReferenceOfTest | MassPerRevolutionQuantity]
    """The mass per revolution that the controller uses now: the number typed in. Default the value adopted for this meter,
    element, setting and product, where there is one and no startValue is given. Range: above 0 and up to 1000 kg/rev.
    """

    startValue: NotRequired[ReferenceOfTest | MassPerRevolutionQuantity]
    """A predicted value to compare with where none is in force yet. No default. Range: above 0 and up to 1000 kg/rev."""

    predictedValue: NotRequired[PredictedValueOfTest | MassPerRevolutionQuantity]
    """What another lot is expected to give where that is not the value in force, for example the prediction for a new lot:
    the limit secondTestChange then counts from it, and mistakes are judged against it. No default. Range: above 0 and
    up to 1000 kg/rev.
    """

    earlierTest: NotRequired[EarlierTestOfTest]
    """An earlier test of the same meter, element, setting, product and lot, set up apart from this one since the value in
    force was adopted. A change of at least secondTestChange is adopted when the two agree. A test before the last
    adoption is not combined. Default the stored test of the same meter, element, setting, product and lot since the
    value in force was adopted, not superseded, that bears this one out. Range: above 0 and up to 1000 kg/rev.
    """

    targetRate: NotRequired[MassPerAreaQuantity]
    """The rate to be applied; gives the effect of a wrong value. Default that of the plan named. Range: above 0 and up to
    100000 kg/ha.
    """

    area: NotRequired[AreaQuantity]
    """The area still to be seeded; gives mass and cost. Default that of the plan named. Range: above 0 and up to 1000000
    ha.
    """

    catches: list[CatchOfTest]
    """The catches in the order in which they were made."""

    newLot: NotRequired[bool]
    """The product is of another lot than the one behind the value compared with: a larger change is then ordinary. Default
    false.
    """

    catchPoints: NotRequired[int]
    """Points or outlets whose product is meant to fall into the container; tells what one missed point would look like.
    Default the points caught, or the outlets of the meter.
    """

    ruledOutMistakes: NotRequired[list[Literal["pounds-as-kilograms", "kilograms-as-pounds", "tare-not-taken-off", "tare-taken-off-twice", "tare-of-another-container", "decimal-slip", "digit-wrong", "count-doubled", "count-halved", "meter-not-primed", "container-overflowed", "tank-bridged-or-empty", "meter-isolated", "catch-point-missed", "half-of-points-as-whole", "container-not-emptied", "counter-not-reset", "residue-in-container", "wind-or-hand", "ounces-as-decimals", "pulses-per-revolution-wrong", "turns-of-another-shaft", "another-element", "another-product", "value-in-another-unit", "value-in-force-wrong", "start-value-wrong", "something-else"]]]
    """Codes of likely mistakes that somebody has checked and that did not happen; they are left out of the judgement."""

    repeatability: NotRequired[RatioQuantity]
    """Repeatability of one catch (standard deviation), scale and counter parts removed. Default by the size of the catch,
    s^2 = (0.93 %)^2 + (14.3 % rev / turns)^2 + (0.49 % kg / mass)^2: 1 % at 14 kg and 40 rev, 2 % at 0.3 kg and 20 rev,
    3 % at 5 rev; with 2.9 % in place of 0.93 % for dusty or caking products: judgement, 4 degrees of freedom, no
    published source. Default from the catches of earlier tests of this meter, element, setting and product, once there
    are enough; before that as said above. Range: 0.01 to 30 %.
    """

    repeatabilityDegreesOfFreedom: NotRequired[float]
    """Degrees of freedom of the repeatability. Default 4: judgement, no published source; the stated deviation is then
    uncertain by about 35 % (JCGM 100:2008, G.4.2). With a repeatability from earlier tests the default is theirs.
    """

    dayToDay: NotRequired[RatioQuantity]
    """Standard deviation from day to day beyond the scatter of catches. Default from the earlier tests of this meter,
    element, setting and product, once there are five; before that: Default 1 %: default until the series has five
    tests; judgement, no published source. Range: 0 to 20 %.
    """

    tolerance: NotRequired[RatioQuantity]
    """Largest acceptable deviation of the value in force from the truth. Default 5 %: published acceptance limit: within 5
    % of the target rate (Field and Solie 2007; University of Georgia Extension). Range: 0.1 to 50 %.
    """

    wantedPrecision: NotRequired[RatioQuantity]
    """Largest acceptable expanded uncertainty of the result. Default that of the plan named; without one: Default 3 %:
    default; judgement, no published source. Range: 0.1 to 50 %.
    """

    precisionProbability: NotRequired[RatioQuantity]
    """Probability with which the number of further catches that a repeat asks for reaches the wanted precision. Default 80
    %: probability with which the number of catches asked for is enough; judgement, no published source. Range: 50 to 99
    %.
    """

    secondTestChange: NotRequired[RatioQuantity]
    """Change from what was expected, from which a second test, set up anew, has to agree before anything is adopted.
    Default twice the tolerance. Default 10 %: twice the tolerance, by default twice the published 5 %: less can be one
    tolerance each of the old value and the new; judgement. Range: 0.1 to 100 %.
    """

    coverageProbability: NotRequired[float]
    """Coverage probability of expanded uncertainties. Default 0.95: common practice for expanded uncertainties, as in the
    examples of JCGM 100:2008.
    """

    id: NotRequired[str]
    """The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at
    any time. Default: the service makes one.
    """

    machine: str
    """Id of the machine."""

    meter: str
    """Position of the meter on the machine."""

    element: str
    """Metering element fitted."""

    setting: NotRequired[str]
    """Setting of the meter, in the owner's words, for example a gear; none when absent."""

    product: str
    """Id of the product."""

    lot: NotRequired[str]
    """Id of the lot."""

    scale: str
    """Id of the scale."""

    container: NotRequired[str]
    """Id of the container that the catches fell into."""

    plan: NotRequired[str]
    """Id of the plan that the test belongs to; gives target rate, area and sowing conditions."""

    occurredAt: str
    """When the test was made, RFC 3339 with offset. The offset is given back as entered."""

    recordedBy: str
    """Who made it."""

    conditions: NotRequired[Conditions]
    """Conditions during the test."""

    note: NotRequired[str]
    """A remark in the sender's words."""

    supersedes: NotRequired[Supersedes]
    """The wrong record of the same kind that this one takes the place of."""


class ReferenceAnswer(TypedDict):
    """A density beside the published ones for its material. Information and a check: a measured density always goes first."""

    material: str
    """The material. Known today: `alfalfa`, `ammonium-nitrate-low-density`, `ammonium-nitrate-prilled`,
    `ammonium-sulfate-crystal`, `ammonium-sulfate-granular`, `barley`, `birdsfoot-trefoil`, `bluegrass`, `brome-grass`,
    `canary-seed`, `canola`, `chickpea`, `clover`, `cowpea`, `diammonium-phosphate`, `faba-bean`, `flax`, `lupin`,
    `corn`, `millet`, `monoammonium-phosphate`, `oat`, `orchard-grass`, `pea`, `potassium-chloride-granular`,
    `potassium-chloride-soluble`, `potassium-magnesium-sulfate`, `rice`, `rye`, `safflower`, `sorghum`, `soybean`,
    `sudan-grass`, `sugar-beet`, `sunflower`, `tall-fescue`, `timothy`, `triple-superphosphate`, `triticale`,
    `urea-granular`, `vetch`, `wheat`.
    """

    minimum: BulkDensityQuantity
    """The lightest published value."""

    maximum: BulkDensityQuantity
    """The densest published value."""

    beyond: RatioQuantity
    """How far the density is outside the published range, relative to its nearer end: above zero denser, below zero
    lighter, zero inside.
    """

    published: list[PublishedDensityAnswer]
    """Every published value as printed, with its source. Where sources differ, all are here."""

    moisture: list[MoistureAnswer]
    """How the density of the material was found to change with moisture. Information only: nothing was corrected."""


class ReferenceOfTest(TypedDict):
    """A mass per revolution to compare with."""

    value: float
    """The number, in the unit beside it. No default."""

    unit: MassPerRevolutionUnit
    """The unit, written exactly as in `GET /v1/units`."""

    relativeUncertainty: NotRequired[RatioQuantity]
    """Its own standard uncertainty, relative, where known. Default 2 %: default of a value in force: judgement, no
    published source. For a start value 10 %: a predicted start value may be 20 % off; judgement, no published source.
    Range: 0 to 100 %.
    """

    fromAnotherScale: NotRequired[bool]
    """True when another scale, or the same one after another check, stands behind it: then no scale error cancels in the
    change. Default false.
    """

    scaleErrorFoundLater: NotRequired[KnownScaleErrorOfTest]
    """Error of the scale behind it that was found only after it was adopted, beyond what was corrected then: where that
    alone explains a change, the answer says so first.
    """

    measuredAt: NotRequired[str]
    """For a start value that a test measured and nobody adopted: when that test was made; the answer calls it by that day."""


class RefusalItem(TypedDict):
    """How often requests were turned away on a day."""

    day: str
    """The day in UTC."""

    key: NotRequired[str]
    """Id of the key that was shown; absent where none is known."""

    code: str
    """Why: the code of the problem that was answered. Known today: `key-missing`, `key-invalid`, `key-expired`,
    `key-revoked`, `workspace-retired`, `scope-missing`, `credentials-broken`.
    """

    count: int
    """How often."""

    lastAt: str
    """The last time (UTC)."""


class RefusalItemPage(TypedDict):
    """A page of a list."""

    items: list[RefusalItem]
    """The records of this page."""

    next: NotRequired[str]
    """Address of the next page; absent on the last one."""


class RestorePoint(TypedDict):
    """Something that the test disturbs, in the owner's words."""

    name: str
    """What it is, for example a cover or a hose."""

    toOpen: NotRequired[str]
    """What is done to it before the catch."""

    toRestore: NotRequired[str]
    """How it is put back."""


class RevocationRequest(TypedDict):
    """Ends a key."""

    reason: str
    """Why, for whoever looks at it later."""


class RevolutionsQuantity(TypedDict):
    """A number of revolutions, whole or not."""

    value: float
    """The number, in the unit beside it."""

    unit: RevolutionsUnit
    """The unit, written exactly as in `GET /v1/units`."""


class RiskPart(TypedDict):
    """One part of the risk."""

    source: str
    """Where it comes from: `share-of-seeds` (emergence or survival), `germination-test`, `kernel-mass` or `metering`."""

    relative: RatioQuantity
    """Standard deviation, relative."""


class RollingRun(TypedDict):
    """How far a wheel rolled in how many turns."""

    distance: LengthQuantity
    """Distance rolled. Range: 0.1 to 10000 m."""

    turns: RevolutionsQuantity
    """Turns counted. Range: 0.1 to 100000 rev."""


class RotationLimits(TypedDict):
    """Meter speeds between which an element turns evenly and its drive keeps up."""

    minimum: NotRequired[RotationQuantity]
    """Slowest. No default. Range: 0 to 10000 rpm."""

    maximum: NotRequired[RotationQuantity]
    """Fastest. No default. Range: above 0 and up to 10000 rpm."""


class RotationQuantity(TypedDict):
    """The speed of a meter shaft."""

    value: float
    """The number, in the unit beside it."""

    unit: RotationUnit
    """The unit, written exactly as in `GET /v1/units`."""


class RotationRequest(TypedDict):
    """A key takes the place of another."""

    id: NotRequired[str]
    """The sender's own id for the new key, a UUID of version 7 in lower case. Default: the service makes one."""

    until: str
    """Until when the old key goes on, RFC 3339; it does not outlive its own expiry. Now ends it at once."""

    expiresAt: NotRequired[str]
    """From when on the new key opens nothing, RFC 3339. Default: it gets as long a life as the old one was given. It
    cannot outlive the key that makes it.
    """


class RunAgreementAnswer(TypedDict):
    """How runs agree."""

    spread: RatioQuantity
    """Standard deviation of the runs, relative; zero for one run."""

    q: float
    """Sum of squared deviations over the variances expected of them."""

    qProbability: float
    """How often chance alone gives at least this Q."""

    directionDifference: NotRequired[RatioQuantity]
    """Counts per distance there over those back, less 1; absent unless both ways were driven."""

    agree: bool
    """No test speaks against the runs; all tests together err in 5 of 100 honest cases."""


class RunAnswer(TypedDict):
    """One run as evaluated."""

    distance: LengthQuantity
    """Distance driven."""

    pulsesPerDistance: NotRequired[PulsesPerDistanceQuantity]
    """Pulses per distance of this run alone."""

    distancePerTurn: NotRequired[LengthQuantity]
    """Distance per turn of the wheel of this run alone."""

    deviation: RatioQuantity
    """Its counts per distance against those of all runs together."""

    groundSpeed: NotRequired[SpeedQuantity]
    """Distance over time; absent without a time."""


class RunOfSensor(TypedDict):
    """One run: the distance, and either pulses or turns."""

    distance: LengthQuantity
    """Distance driven, as measured with a tape. Range: 1 to 10000 m."""

    pulses: NotRequired[float]
    """Sensor pulses over it, a plain count. No default."""

    turns: NotRequired[RevolutionsQuantity]
    """Turns of the wheel over it, in place of pulses. No default. Range: 0.1 to 1000000 rev."""

    distanceUncertainty: NotRequired[LengthQuantity]
    """Standard uncertainty of this distance, beside the limit of the tape. Default as the distance resolution says: common
    practice, for two marks. Range: 0 to 100 m.
    """

    direction: NotRequired[Literal["there", "back"]]
    """Which way it was driven: `there` or `back`. With runs of both kinds the two ways are compared."""

    time: NotRequired[TimeQuantity]
    """Time taken for the distance at an even speed; gives the ground speed. No default. Range: above 0 and up to 24 h."""


class RunUncertaintyPart(TypedDict):
    """One part of the uncertainty."""

    source: str
    """Where it comes from: `runs` (scatter, counting, marking) or `tape` (common to all)."""

    relative: RatioQuantity
    """Standard uncertainty, relative."""


class SampleOfSeed(TypedDict):
    """Seeds that were counted and weighed together."""

    seeds: int
    """Seeds counted."""

    mass: MassQuantity
    """Their mass together. Range: above 0 and up to 1000 t."""


class ScaleAnswer(TypedDict):
    """A scale as stored."""

    name: str
    """What the owner calls it."""

    retired: bool
    """No longer in use: takes no new evidence, and lists leave it out unless asked. Default false."""

    note: NotRequired[str]
    """A remark in the owner's words."""

    division: MassQuantity
    """Smallest step of the display."""

    accuracyClass: NotRequired[str]
    """Class on the data plate of a verified scale, as OIML R 76 names it: I, II, III or IIII."""

    verificationInterval: NotRequired[MassQuantity]
    """Verification interval e of the data plate. Default the division: common practice, as on most verified scales (OIML R
    76).
    """

    statedAccuracy: NotRequired[MassQuantity]
    """Limit of error stated by the maker or owner; goes before the class."""

    capacity: NotRequired[MassQuantity]
    """Largest load, container included."""

    daysBetweenChecks: NotRequired[int]
    """Days after which a check is overdue. Default 365: judgement, no published source."""

    id: str
    """Id, a UUID of version 7."""

    revision: int
    """1 when created, one more with each change."""

    createdAt: str
    """When it was created (UTC)."""

    updatedAt: str
    """When it was changed last (UTC)."""


class ScaleAnswerPage(TypedDict):
    """A page of a list."""

    items: list[ScaleAnswer]
    """The records of this page."""

    next: NotRequired[str]
    """Address of the next page; absent on the last one."""


class ScaleCheckAnswer(TypedDict):
    """A stored check of a scale."""

    id: str
    """Id, a UUID of version 7."""

    occurredAt: str
    """When it was made, with the offset it was entered with."""

    receivedAt: str
    """When the service received it."""

    headline: str
    """The outcome in one sentence that can be shown as it is."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """`passed` when every reading is inside the limit of the scale, otherwise `failed`."""

    error: RatioQuantity
    """Span error: indicated minus true over true. Later tests on this scale are corrected for it."""

    standardUncertainty: RatioQuantity
    """Standard uncertainty of that error."""

    largestDeviation: MassQuantity
    """The deviation that comes nearest to its limit or exceeds it most."""

    limit: MassQuantity
    """The limit at that load."""

    limitOrigin: str
    """Where the limit comes from."""

    entered: ScaleCheckRequest
    """The request exactly as entered."""

    supersededBy: NotRequired[Supersedes]
    """The record that took its place, with the reason; absent while it stands."""


class ScaleCheckRequest(TypedDict):
    """A check of a scale against known masses."""

    id: NotRequired[str]
    """The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at
    any time. Default: the service makes one.
    """

    scale: str
    """Id of the scale."""

    readings: list[KnownMassReadingOfCheck]
    """The readings, each of one known mass."""

    occurredAt: str
    """When the check was made, RFC 3339 with offset."""

    recordedBy: str
    """Who made it."""

    note: NotRequired[str]
    """A remark, for example which masses were used."""

    supersedes: NotRequired[Supersedes]
    """The wrong check that this one takes the place of."""


class ScaleOfTest(TypedDict):
    """A scale."""

    division: MassQuantity
    """Smallest step of the display. Range: above 0 and up to 100 kg."""

    accuracyClass: NotRequired[Literal["I", "II", "III", "IIII"]]
    """Class on the data plate of a verified scale, as OIML R 76 names it: I, II, III or IIII."""

    verificationInterval: NotRequired[MassQuantity]
    """Verification interval e of the data plate. Default the division: common practice, as on most verified scales (OIML R
    76). Range: above 0 and up to 100 kg.
    """

    statedAccuracy: NotRequired[MassQuantity]
    """Limit of error stated by the maker or owner; goes before the class. No default. Range: above 0 and up to 1000 kg."""

    knownError: NotRequired[KnownScaleErrorOfTest]
    """Span error found by a check against known masses: it is corrected, and only its uncertainty remains."""

    capacity: NotRequired[MassQuantity]
    """Largest load, container included. No default. Range: above 0 and up to 1000 t."""

    readingScatter: NotRequired[MassQuantity]
    """Standard deviation of a reading of a load that swings or creeps, beyond the division. No default. Range: 0 to 100
    kg.
    """


class ScaleRequest(TypedDict):
    """A scale. Its span error comes from its checks, which are evidence of their own."""

    id: NotRequired[str]
    """The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at
    any time. Default: the service makes one. May be repeated, unchanged, when replacing.
    """

    name: str
    """What the owner calls it."""

    retired: NotRequired[bool]
    """No longer in use: takes no new evidence, and lists leave it out unless asked. Default false."""

    note: NotRequired[str]
    """A remark in the owner's words."""

    division: MassQuantity
    """Smallest step of the display. Range: above 0 and up to 100 kg."""

    accuracyClass: NotRequired[Literal["I", "II", "III", "IIII"]]
    """Class on the data plate of a verified scale, as OIML R 76 names it: I, II, III or IIII."""

    verificationInterval: NotRequired[MassQuantity]
    """Verification interval e of the data plate. Default the division: common practice, as on most verified scales (OIML R
    76). Range: above 0 and up to 100 kg.
    """

    statedAccuracy: NotRequired[MassQuantity]
    """Limit of error stated by the maker or owner; goes before the class. No default. Range: above 0 and up to 1000 kg."""

    capacity: NotRequired[MassQuantity]
    """Largest load, container included. No default. Range: above 0 and up to 1000 t."""

    daysBetweenChecks: NotRequired[int]
    """Days after which a check is overdue. Default 365: judgement, no published source."""


class ScatterAnswer(TypedDict):
    """How counts scatter from spot to spot."""

    coefficientOfVariation: RatioQuantity
    """Standard deviation of the densities of the spots over the density of all."""

    beyondChance: RatioQuantity
    """The part of it that chance does not explain; zero when chance explains all."""

    indexOfDispersion: float
    """Variance of the counts over what chance gives: about 1 for plants placed by chance, more when they stand clumped."""

    probabilityByChance: float
    """How often chance alone scatters counts at least so much."""


class SecondTestAnswer(TypedDict):
    """An earlier test beside this one."""

    test: NotRequired[str]
    """What the earlier test is called."""

    occurredAt: NotRequired[str]
    """When it was made, as the question said it."""

    massPerRevolution: MassPerRevolutionQuantity
    """The mass per revolution that it found."""

    difference: RatioQuantity
    """This test over the earlier one, less 1."""

    largestHonestDifference: RatioQuantity
    """The largest difference, on the natural logarithm, of two honest tests like these, at the coverage probability."""

    agrees: bool
    """The two differ by no more than honest tests do."""

    confirms: bool
    """They agree, and each alone shows a change on the same side: the change is confirmed."""

    combined: MeasuredMassPerRevolution
    """Both values together; what is adopted when the change is confirmed."""


class SeedCostAnswer(TypedDict):
    """What the seed costs."""

    costPerArea: CostPerUnit
    """Cost per area."""

    totalCost: NotRequired[Money]
    """Cost of the seed that the area takes; absent without an area."""

    inWholePackages: NotRequired[Money]
    """Cost of the packages rounded up; absent without an area or a package."""


class SeedRowLimitAnswer(TypedDict):
    """What lies with the seed, and what published limits say to it. No answer says that a load is safe."""

    headline: str
    """The outcome in one or two sentences that can be shown as they are; they name crop, place and source."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """The outcome over all limits: `above` when any is exceeded, `within` when none is, `no-published-limit` when none has
    a number for anything placed.
    """

    seedbedUtilisation: RatioQuantity
    """Spread divided by row spacing."""

    loads: list[NutrientLoadAnswer]
    """What lies with the seed: the sum over all products, in the zone where it is heaviest."""

    limits: list[SeedRowLimitOfSource]
    """Every limit for this crop and region: those exceeded first, the worst at the head; those without a number last."""

    standLoss: NotRequired[StandLossAnswer]
    """The loss of stand that the linear model of South Dakota State University lets expect; absent for crops that it has
    no slope for. Judged in South Dakota, shown elsewhere.
    """

    reductions: list[StatedReductionAnswer]
    """Reductions that sources state for such a seedbed or such products. They hold for the limits of their own source
    only.
    """

    assumptions: list[AssumptionAnswer]
    """Values used that the question did not state."""

    findings: list[FindingAnswer]
    """What was noticed. Codes known today: `above-published-limit`, `no-published-limit`, `nutrient-without-limit`,
    `sources-disagree`, `region-not-stated`, `nitrogen-form-not-stated`, `between-published-limits`, `limit-reduced`,
    `spread-unusual`, `stand-loss-above-accepted`.
    """

    cautions: list[CautionAnswer]
    """What can hurt the stand; always to be shown with the limits. Codes known today: `local-guidance-first`,
    `limit-is-no-promise`, `spread-to-be-measured`.
    """

    engineVersion: str
    """Version of the engine that answered."""


class SeedRowLimitAnswerBatchLine(TypedDict):
    """One line of the answer to many questions: the result of one of them, or the problem that it has."""

    line: int
    """The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the
    header being row 1.
    """

    test: NotRequired[str]
    """What the table calls the test; absent when no table was sent."""

    given: NotRequired[list[GivenCell]]
    """What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing
    there or no table was sent.
    """

    result: NotRequired[SeedRowLimitAnswer]
    """What the question would be answered alone; absent when there is a problem."""

    problem: NotRequired[Problem]
    """What the question would be refused with alone; absent when there is a result."""


class SeedRowLimitOfSource(TypedDict):
    """One limit against what lies with the seed."""

    verdict: str
    """`within`: not above the limit. `above`: above it. `no-published-limit`: the source has no number for this case; the
    reason says why.
    """

    nutrient: str
    """What the limit counts. Known today: `N`, `urea-N`, `urea-and-sulfate-N`, `N-beside-phosphates`, `P2O5`, `K2O`,
    `N-plus-K2O`, `S`, `all`, `phosphate-N`.
    """

    load: MassPerAreaQuantity
    """The heaviest load of what it counts, over all zones."""

    zone: int
    """The zone with that load, counted from 1."""

    limit: NotRequired[MassPerAreaQuantity]
    """The limit, after the reduction that its source states for such a seedbed; absent without a number."""

    margin: NotRequired[MassPerAreaQuantity]
    """Limit less load: negative is the excess; absent without a number."""

    asPrinted: NotRequired[MassPerAreaQuantity]
    """The number as the source prints it, in its own unit; absent without one."""

    basis: NotRequired[str]
    """How the number was found: `published-cell` is printed for this geometry, the others take a stricter printed number.
    Absent without one. Known today: `published-cell`, `stricter-of-two-cells`, `widest-cell`.
    """

    cells: list[PrintedLimit]
    """The printed numbers that it rests on."""

    reason: NotRequired[str]
    """Why there is no number; absent with one."""

    conditions: str
    """Conditions as the source states them."""

    source: LimitSourceAnswer
    """The publication."""


class SeedRowLimitRequest(TypedDict):
    """What is placed with the seed, where and with which opener."""

    crop: Literal["wheat", "barley", "oat", "rye", "corn", "soybean", "pea", "lentil", "chickpea", "dry-bean", "canola", "flax", "sunflower", "alfalfa", "red-clover", "vetch", "ryegrass", "timothy", "other"]
    """The crop. A limit of one crop is never used for another; `other` gets no number."""

    soil: Literal["light", "medium", "heavy"]
    """Texture of the soil: `light` is sandy loam or lighter, `medium` loam to clay loam, `heavy` clay to heavy clay. Take
    the lightest one of the field.
    """

    moisture: Literal["good", "dry"]
    """Moisture of the seedbed: `good` is at or near field capacity and expected to stay so. In doubt, and in drying
    weather, it is `dry`.
    """

    region: NotRequired[Literal["CA-MB", "CA-SK", "CA-AB", "US-KS", "US-ND", "US-SD", "elsewhere"]]
    """Where the field lies. Without it limits of all regions are shown; `elsewhere` is any place without a word here."""

    rowSpacing: LengthQuantity
    """Distance between rows. Range: above 0 and up to 5 m."""

    seedRowWidth: LengthQuantity
    """Width over which the opener spreads seed and fertilizer, measured in the field; at most the row spacing. Range:
    above 0 and up to 5 m.
    """

    opener: NotRequired[Literal["double-disc", "disc", "knife", "spoon", "hoe", "sweep"]]
    """The opener. A source rules one out on light soil, and pairs each with a usual spread."""

    products: list[ProductWithSeed]
    """Everything that goes into the seed row together; their sum counts."""

    sources: NotRequired[list[Literal["ccc-20", "ccc-sp", "ksu-corn", "ksu-wheat", "mb-dry", "mb-safe-p", "mb-sbu", "mb-sbu2", "mb-soy", "mpsg-pea", "ndsu-cpr", "ndsu-flax", "saskflax", "sdsu-dry", "sdsu-model", "sk-canola", "sk-safe-p", "usask-pulse"]]]
    """Keys of the sources to look at, as answers name them. Without it all are looked at."""

    acceptableStandLoss: NotRequired[RatioQuantity]
    """Loss of stand from fertilizer with the seed that you accept, for the stand-loss model. Default 10 %: the loss of
    stand of the tables published by South Dakota State University; its worksheet is preset to 15 %. Range: above 0 and
    up to 50 %.
    """

    localLimits: NotRequired[list[LocalLimitWithSeed]]
    """Limits from your own guidance, for this very crop, soil, moisture and opener. They are judged beside the published
    ones.
    """


class SeedRowOfPlan(TypedDict):
    """What decides how much may be placed with the seed on a field; row spacing and opener are those of the machine."""

    crop: Literal["wheat", "barley", "oat", "rye", "corn", "soybean", "pea", "lentil", "chickpea", "dry-bean", "canola", "flax", "sunflower", "alfalfa", "red-clover", "vetch", "ryegrass", "timothy", "other"]
    """The crop."""

    soil: Literal["light", "medium", "heavy"]
    """Texture of the soil; the lightest one of the field."""

    moisture: Literal["good", "dry"]
    """Moisture of the seedbed; in doubt `dry`."""

    region: NotRequired[Literal["CA-MB", "CA-SK", "CA-AB", "US-KS", "US-ND", "US-SD", "elsewhere"]]
    """Where the field lies; without it limits of all regions are shown."""

    acceptableStandLoss: NotRequired[RatioQuantity]
    """Loss of stand from fertilizer with the seed that you accept, for the stand-loss model. Default 10 %: the loss of
    stand of the tables published by South Dakota State University; its worksheet is preset to 15 %. Range: above 0 and
    up to 50 %.
    """

    localLimits: NotRequired[list[LocalLimitWithSeed]]
    """Limits from your own guidance, for this very crop, soil, moisture and opener. They are judged beside the published
    ones.
    """


class SeedingRateAnswer(TypedDict):
    """A seeding rate with what it holds, brings up and costs."""

    headline: str
    """The outcome in one or two sentences that can be shown as they are."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """What it is good for: `usable`, `check-first` (a finding warns) or `do-not-use` (one stops)."""

    rate: MassPerAreaQuantity
    """Mass to sow per area, with what is no pure seed."""

    seedsPerArea: CountPerAreaQuantity
    """Pure seeds per area."""

    germinableSeedsPerArea: NotRequired[CountPerAreaQuantity]
    """Pure seeds per area that can germinate; absent without germination."""

    plants: NotRequired[ExpectedStand]
    """Plants expected per area; absent when germination and emergence, or survival, are not given."""

    seedsPerRow: NotRequired[CountPerLengthQuantity]
    """Pure seeds per length of row; absent without a row spacing."""

    plantsPerRow: NotRequired[CountPerLengthQuantity]
    """Plants expected per length of row; absent without a row spacing or plants."""

    thousandKernelMass: MassPerThousandQuantity
    """Mass of a thousand kernels."""

    seedsPerMass: CountPerMassQuantity
    """Seeds per mass of pure seed."""

    survival: NotRequired[RatioQuantity]
    """Plants per pure seed: germination times emergence, or as given."""

    pureLiveSeed: NotRequired[RatioQuantity]
    """Share of the mass that is pure and germinates: purity times germination; absent without germination."""

    massForOnePureLive: NotRequired[RatioQuantity]
    """Mass that holds one mass of pure live seed; always with the unit 1. Absent without germination."""

    massOverArea: NotRequired[MassQuantity]
    """Seed for the whole area; absent without an area."""

    packages: NotRequired[PackagesAnswer]
    """Packages; absent when none is described."""

    cost: NotRequired[SeedCostAnswer]
    """What the seed costs; absent without a price."""

    statedRate: NotRequired[StatedRateAnswer]
    """The rate from elsewhere, compared; absent when none was stated."""

    uncertaintyParts: list[StandUncertainty]
    """Where the uncertainty of the stand comes from: standard uncertainties, relative; their squares add up. Empty when
    none was stated.
    """

    assumptions: list[AssumptionAnswer]
    """Values used that the question did not state."""

    findings: list[FindingAnswer]
    """What was noticed; unusual is possible and is not refused. Codes known today: `divide-by-ten`, `stated-rate-differs`,
    `small-sample`, `kernel-mass-unusual`, `germination-low`, `germination-not-used`, `emergence-unusual`,
    `seeds-above-published`.
    """

    cautions: list[CautionAnswer]
    """What can hurt a person. The product label goes first. Codes known today: `treated-seed`."""

    engineVersion: str
    """Version of the engine that answered."""


class SeedingRateAnswerBatchLine(TypedDict):
    """One line of the answer to many questions: the result of one of them, or the problem that it has."""

    line: int
    """The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the
    header being row 1.
    """

    test: NotRequired[str]
    """What the table calls the test; absent when no table was sent."""

    given: NotRequired[list[GivenCell]]
    """What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing
    there or no table was sent.
    """

    result: NotRequired[SeedingRateAnswer]
    """What the question would be answered alone; absent when there is a problem."""

    problem: NotRequired[Problem]
    """What the question would be refused with alone; absent when there is a result."""


class SeedingRateRequest(TypedDict):
    """What is fixed of a seeding rate (exactly one of targetStand, seedsPerArea, germinableSeedsPerArea, seedsPerRow and
    rate), and what is known of the seed.
    """

    targetStand: NotRequired[CountPerAreaQuantity]
    """Plants per area that are to stand. Needs germination and emergence, or survival. No default. Range: above 0 and up
    to 100000 /m2.
    """

    seedsPerArea: NotRequired[CountPerAreaQuantity]
    """Pure seeds per area that are to be sown. No default. Range: above 0 and up to 100000 /m2."""

    germinableSeedsPerArea: NotRequired[CountPerAreaQuantity]
    """Pure seeds per area that can germinate and are to be sown: seeds times germination. Needs germination. No default.
    Range: above 0 and up to 100000 /m2.
    """

    seedsPerRow: NotRequired[CountPerLengthQuantity]
    """Pure seeds per length of row that are to be sown. Needs rowSpacing. No default. Range: above 0 and up to 100000 /m."""

    rate: NotRequired[MassPerAreaQuantity]
    """Mass per area that is sown: the answer tells what it puts down and what stand it gives. No default. Range: above 0
    and up to 100000 kg/ha.
    """

    thousandKernelMass: NotRequired[MassPerThousandQuantity]
    """Mass of a thousand kernels as sown, treatment included. Exactly one of this, seedsPerMass and sample. No default.
    Range: above 0 and up to 5000 g/1000.
    """

    seedsPerMass: NotRequired[CountPerMassQuantity]
    """Seeds per mass, as a seed tag tells it. No default. Range: 200 to 1000000000 /kg."""

    sample: NotRequired[SampleOfSeed]
    """A sample that was counted and weighed."""

    kernelMassUncertainty: NotRequired[RatioQuantity]
    """Standard uncertainty of the kernel mass, relative; goes into the interval of the stand. No default. Range: above 0
    and up to 50 %.
    """

    germination: NotRequired[RatioQuantity]
    """Share of the pure seeds that germinate. No default. Range: above 0 and up to 100 %."""

    germinationSeedsTested: NotRequired[int]
    """Seeds in the germination test, for example 400; gives its uncertainty. No default."""

    emergence: NotRequired[RatioQuantity]
    """Field emergence: plants per seed that can germinate. Goes with germination, never with survival. No default. Range:
    above 0 and up to 100 %.
    """

    emergenceRange: NotRequired[ShareRange]
    """Lowest and highest emergence that you think possible, around the emergence; gives its uncertainty."""

    survival: NotRequired[RatioQuantity]
    """Plants per pure seed, germination included, as many tables print it. Takes the place of germination and emergence.
    No default. Range: above 0 and up to 100 %.
    """

    survivalRange: NotRequired[ShareRange]
    """Lowest and highest survival that you think possible, around the survival; gives its uncertainty."""

    purity: NotRequired[RatioQuantity]
    """Share of the mass that is pure seed. Default 100 %: not stated, so all of the mass is taken as pure seed; judgement,
    no published source; the seed tag says it. Range: above 0 and up to 100 %.
    """

    crop: NotRequired[Literal["wheat", "barley", "oat", "rye", "corn", "soybean", "pea", "lentil", "chickpea", "dry-bean", "canola", "flax", "sunflower", "alfalfa", "red-clover", "vetch", "ryegrass", "timothy", "other"]]
    """The crop; kernel mass, germination and emergence are compared with what is published for it."""

    rowSpacing: NotRequired[LengthQuantity]
    """Distance between two rows; gives seeds and plants per length of row. No default. Range: above 0 and up to 10 m."""

    area: NotRequired[AreaQuantity]
    """Area to be sown; gives seed, packages and cost for it. No default. Range: above 0 and up to 1000000 ha."""

    package: NotRequired[PackageOfSeed]
    """How the seed is packed."""

    price: NotRequired[Price]
    """Price of the seed by mass. Give this or the price of a package."""

    statedRate: NotRequired[RateFromElsewhere | MassPerAreaQuantity]
    """A rate that you have from elsewhere; the answer compares it. Not with rate. No default. Range: above 0 and up to
    100000 kg/ha.
    """


class SensorEntryAnswer(TypedDict):
    """A number for the controller."""

    form: str
    """The form in which the controller takes it: `pulses-per-distance`, `distance-per-pulse` or `wheel-circumference`."""

    value: float
    """The number to type in, already rounded to the controller's decimals: a count of pulses over `distance`, or a length
    in `unit`.
    """

    unit: NotRequired[str]
    """Its unit; absent for a count of pulses."""

    distance: NotRequired[LengthQuantity]
    """Distance over which the pulses are counted; absent for a length."""

    roundingError: RatioQuantity
    """Relative error of the pulses per distance that the rounding causes: positive when the controller then counts too
    little distance.
    """


class SentenceParts(TypedDict):
    """What a sentence is made of. Absent where the sentence holds no values: it is its own template then."""

    template: str
    """The sentence with the name of each value in braces in its place. With the texts of the values filled in it is the
    sentence again. Look up your translation by it.
    """

    values: list[SentenceValue]
    """The values, each name once."""


class SentenceValue(TypedDict):
    """A value in a sentence."""

    name: str
    """Its name in the template."""

    text: str
    """As the sentence writes it: rounded, with its unit; or a word."""

    value: NotRequired[float]
    """Where it is a quantity or a number, that number, not rounded for reading."""

    unit: NotRequired[str]
    """The unit of a quantity."""


class ShareEstimate(TypedDict):
    """A share of the seeds with its interval; above 100 % when more plants were counted than seeds sown."""

    estimate: RatioQuantity
    """The estimate."""

    lower: RatioQuantity
    """Lower end of the interval."""

    upper: RatioQuantity
    """Upper end of the interval."""

    coverageProbability: float
    """Probability that the interval covers the true value."""


class ShareOfNutrient(TypedDict):
    """A nutrient as a share of a product."""

    nutrient: Literal["N", "P2O5", "P", "K2O", "K", "S", "SO4-S", "SO3", "SO4"]
    """The nutrient in the form that the share is stated in."""

    share: RatioQuantity
    """Its share of the mass of the product. Range: 0 to 250 %."""


class ShareOfRatesAnswer(TypedDict):
    """Rates that one of several elements serves."""

    minimumRate: MassPerAreaQuantity
    """Lowest of them."""

    maximumRate: MassPerAreaQuantity
    """Highest of them: there the next element takes over."""

    window: DisplacementWindowAnswer
    """The displacements that serve them."""


class ShareRange(TypedDict):
    """Two shares, the lower one first."""

    minimum: RatioQuantity
    """The lower one. Range: above 0 and up to 100 %."""

    maximum: RatioQuantity
    """The higher one. Range: above 0 and up to 100 %."""


class ShareToCome(TypedDict):
    """A share of seeds in the season to come: as mean and spread, or as counted in one stand."""

    mean: NotRequired[RatioQuantity]
    """Its mean. Give mean with spread, or counted. No default. Range: 0.1 to 100 %."""

    spread: NotRequired[RatioQuantity]
    """Its standard deviation from field to field and season to season; goes with mean. No default. Range: 0 to 50 %."""

    counted: NotRequired[CountedShare]
    """What a stand count answered as survival or emergence."""

    seasonSpread: NotRequired[RatioQuantity]
    """Standard deviation of the share from season to season, beside what the count leaves open; goes with counted. Without
    it the margin is too small. No default. Range: 0 to 50 %.
    """


class SownSeed(TypedDict):
    """What was sown, as seeds per area or as a mass per area with the mass of a kernel."""

    seedsPerArea: NotRequired[CountPerAreaQuantity]
    """Pure seeds sown per area. Give this, or rate with thousandKernelMass. No default. Range: above 0 and up to 100000
    /m2.
    """

    rate: NotRequired[MassPerAreaQuantity]
    """Mass sown per area. No default. Range: above 0 and up to 100000 kg/ha."""

    thousandKernelMass: NotRequired[MassPerThousandQuantity]
    """Thousand-kernel mass of the seed as sown; goes with rate. No default. Range: above 0 and up to 5000 g/1000."""

    purity: NotRequired[RatioQuantity]
    """Share of the mass that is pure seed; goes with rate. Default 100 %: not stated, so all of the mass is taken as pure
    seed; judgement, no published source; the seed tag says it. Range: above 0 and up to 100 %.
    """

    germination: NotRequired[RatioQuantity]
    """Germination; with it emergence is told beside survival. No default. Range: above 0 and up to 100 %."""

    uncertainty: NotRequired[RatioQuantity]
    """Relative standard uncertainty of the seeds that were put down. Default 2.887 %: published acceptance limit of 5 % of
    the rate (Field and Solie 2007), taken as rectangular. Range: 0 to 50 %.
    """


class SpeedCheckAnswer(TypedDict):
    """Meter speed at another ground speed."""

    groundSpeed: SpeedQuantity
    """The ground speed."""

    meterSpeed: RotationQuantity
    """The meter speed there."""

    withinLimits: bool
    """Inside the limits."""


class SpeedQuantity(TypedDict):
    """A ground speed."""

    value: float
    """The number, in the unit beside it."""

    unit: SpeedUnit
    """The unit, written exactly as in `GET /v1/units`."""


class SpeedRange(TypedDict):
    """A range of ground speeds."""

    minimum: SpeedQuantity
    """Slowest. Range: above 0 and up to 100 km/h."""

    maximum: SpeedQuantity
    """Fastest. Range: above 0 and up to 100 km/h."""


class SpeedWindowAnswer(TypedDict):
    """The ground speeds at which a rate can be put down."""

    rate: MassPerAreaQuantity
    """The rate."""

    minimum: NotRequired[SpeedQuantity]
    """Slowest; absent without a lower limit."""

    maximum: NotRequired[SpeedQuantity]
    """Fastest; absent without an upper limit."""


class SpreadPart(TypedDict):
    """A part of the spread."""

    source: str
    """Where it comes from: `density`, `displacement`, `fill-efficiency`; or, learned from an earlier product,
    `earlier-density`, `earlier-value` and `product-to-product`.
    """

    relative: RatioQuantity
    """Standard deviation, relative."""


class StandCountAnswer(TypedDict):
    """The stand, how sure it is, and the share of the seeds that it makes."""

    headline: str
    """The outcome in a few sentences that can be shown as they are."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """What it is good for: `usable`, `check-first` (a finding warns) or `do-not-use` (one stops)."""

    stand: StandEstimate
    """Plants per area: all plants over all ground, with the interval."""

    plantsCounted: int
    """All plants counted."""

    areaCounted: AreaQuantity
    """All ground counted."""

    counts: list[CountAnswer]
    """Every count in the order given."""

    scatter: NotRequired[ScatterAnswer]
    """How the counts scatter; absent for one count and when no plant was found."""

    countsNeeded: NotRequired[int]
    """Number of counts like these that the wanted precision takes; absent for one count, which does not show how counts
    scatter, and when no practical number does.
    """

    seedsSown: NotRequired[CountPerAreaQuantity]
    """Pure seeds sown; absent when nothing is known of them."""

    survival: NotRequired[ShareEstimate]
    """Plants per pure seed: germination times emergence."""

    emergence: NotRequired[ShareEstimate]
    """Plants per viable seed, germination taken out."""

    learned: NotRequired[LearnedAnswer]
    """The share between the prior and the counts; absent without a prior."""

    deviation: NotRequired[RatioQuantity]
    """Stand over target less 1; absent without a target."""

    probabilityBelowMinimum: NotRequired[float]
    """Probability that the true stand is below the minimum; absent without one."""

    assumptions: list[AssumptionAnswer]
    """Values used that the question did not state."""

    findings: list[FindingAnswer]
    """What was noticed. Codes known today: `sample-area-miscalled`, `divide-by-ten`, `counts-at-odds-with-prior`,
    `stated-stand-differs`, `no-plants-found`, `single-reading`, `few-counts`, `more-counts-needed`, `strongly-clumped`,
    `counts-in-same-row`, `more-plants-than-seeds`, `prior-outweighs-counts`, `stand-below-minimum`.
    """

    engineVersion: str
    """Version of the engine that answered."""


class StandCountAnswerBatchLine(TypedDict):
    """One line of the answer to many questions: the result of one of them, or the problem that it has."""

    line: int
    """The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the
    header being row 1.
    """

    test: NotRequired[str]
    """What the table calls the test; absent when no table was sent."""

    given: NotRequired[list[GivenCell]]
    """What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing
    there or no table was sent.
    """

    result: NotRequired[StandCountAnswer]
    """What the question would be answered alone; absent when there is a problem."""

    problem: NotRequired[Problem]
    """What the question would be refused with alone; absent when there is a result."""


class StandCountRequest(TypedDict):
    """Plants counted at some spots of a field, and what is known about what was sown there."""

    ground: NotRequired[GroundOfCount]
    """The ground of each count that does not name its own: how long a row, how large a frame or hoop."""

    counts: list[CountOfPlants]
    """The counts."""

    sown: NotRequired[SownSeed]
    """What was sown; gives survival and, with germination, emergence."""

    prior: NotRequired[PriorOfShare]
    """The share of seeds expected before counting; the answer shrinks the counted one towards it."""

    targetStand: NotRequired[CountPerAreaQuantity]
    """The stand that was aimed at. No default. Range: above 0 and up to 100000 /m2."""

    minimumStand: NotRequired[CountPerAreaQuantity]
    """The stand below which something would be done. No default. Range: above 0 and up to 100000 /m2."""

    statedStand: NotRequired[CountPerAreaQuantity]
    """A stand that somebody made of these counts; it is compared, and known shortcuts are named. No default. Range: above
    0 and up to 100000 /m2.
    """

    wantedPrecision: NotRequired[RatioQuantity]
    """Half width of the interval over the stand that is wanted; gives the number of counts. Default 15 %: judgement, no
    published source: about what ten counts of 20 plants give. Range: 1 to 100 %.
    """

    coverageProbability: NotRequired[float]
    """Coverage probability of the intervals. Default 0.95: common practice for expanded uncertainties, as in the examples
    of JCGM 100:2008.
    """


class StandEstimate(TypedDict):
    """Plants per area with their interval."""

    estimate: CountPerAreaQuantity
    """The estimate."""

    lower: CountPerAreaQuantity
    """Lower end of the interval."""

    upper: CountPerAreaQuantity
    """Upper end of the interval."""

    coverageProbability: float
    """Probability that the interval covers the true value."""


class StandLossAnswer(TypedDict):
    """Expected loss of stand: slope of crop and material times rate times row spacing over the width of the furrow."""

    accepted: RatioQuantity
    """Loss of stand that is accepted."""

    expected: NotRequired[RatioQuantity]
    """Loss that the products with a slope let expect together, in the zone where it is largest; absent when none has a
    number.
    """

    isWhole: bool
    """Every product with nutrients has a slope; otherwise more may be lost than expected."""

    zone: int
    """The zone with that loss, counted from 1."""

    judged: bool
    """The verdict counts it, because the field lies where the model is for."""

    products: list[StandLossOfProduct]
    """The products, in the order given."""

    reason: NotRequired[str]
    """Why there is no number; absent with one."""

    conditions: str
    """Conditions of the model."""

    source: LimitSourceAnswer
    """The publication."""


class StandLossOfProduct(TypedDict):
    """A product in the stand-loss model."""

    name: str
    """Name of the product."""

    material: NotRequired[str]
    """The material whose slope was taken; absent when none that was read fits it."""

    expected: NotRequired[RatioQuantity]
    """Loss that it lets expect by itself; absent without a number."""

    maximum: NotRequired[MassPerAreaQuantity]
    """The most of it that alone keeps to the accepted loss; absent without a number."""


class StandOfPlan(TypedDict):
    """A stand that is wanted. Give emergence, with a lot of known germination, or survival."""

    plants: CountPerAreaQuantity
    """Plants per area that are to stand. Range: above 0 and up to 100000 /m2."""

    emergence: NotRequired[RatioQuantity]
    """Field emergence: plants per seed that can germinate. Goes with the germination of the lot. No default. Range: above
    0 and up to 100 %.
    """

    survival: NotRequired[RatioQuantity]
    """Plants per pure seed, germination included. Takes the place of germination and emergence. No default. Range: above 0
    and up to 100 %.
    """


class StandRiskAnswer(TypedDict):
    """The rate for a minimum stand, what its margin costs, and how a rate of your own does."""

    headline: str
    """The outcome in a few sentences that can be shown as they are."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """What it is good for: `usable`, `check-first` (a finding warns) or `do-not-use` (one stops)."""

    probability: float
    """Probability with which the minimum stand has to be reached."""

    needed: NotRequired[RateAnswer]
    """The rate that reaches the minimum stand with that probability; absent when no sensible rate does."""

    atMean: RateAnswer
    """The rate that would just do in the mean of all seasons."""

    margin: NotRequired[MarginAnswer]
    """What the needed rate is more than the rate at the mean; absent without a needed rate."""

    given: NotRequired[RateAnswer]
    """The rate of the question; absent without one."""

    uncertaintyParts: list[RiskPart]
    """What makes the stand uncertain before it is sown: relative standard deviations."""

    assumptions: list[AssumptionAnswer]
    """Values used that the question did not state."""

    findings: list[FindingAnswer]
    """What was noticed. Codes known today: `stand-at-risk`, `rate-above-maximum`, `probability-out-of-reach`,
    `season-spread-missing`, `unusual-share-of-seeds`.
    """

    engineVersion: str
    """Version of the engine that answered."""


class StandRiskAnswerBatchLine(TypedDict):
    """One line of the answer to many questions: the result of one of them, or the problem that it has."""

    line: int
    """The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the
    header being row 1.
    """

    test: NotRequired[str]
    """What the table calls the test; absent when no table was sent."""

    given: NotRequired[list[GivenCell]]
    """What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing
    there or no table was sent.
    """

    result: NotRequired[StandRiskAnswer]
    """What the question would be answered alone; absent when there is a problem."""

    problem: NotRequired[Problem]
    """What the question would be refused with alone; absent when there is a result."""


class StandRiskRequest(TypedDict):
    """A minimum stand, what is known of the seed, and how much of it may come up."""

    minimumStand: CountPerAreaQuantity
    """The stand that has to be reached. Range: above 0 and up to 100000 /m2."""

    probability: NotRequired[float]
    """Probability with which it has to be reached. Default 0.9, nine seasons of ten; judgement, no published source."""

    emergence: NotRequired[ShareToCome]
    """Plants per viable seed; needs germination. Give this or survival."""

    survival: NotRequired[ShareToCome]
    """Plants per pure seed, germination being part of it. Give this or emergence."""

    germination: NotRequired[RatioQuantity]
    """Germination; goes with emergence. No default. Range: above 0 and up to 100 %."""

    germinationSeedsTested: NotRequired[int]
    """Seeds that the germination test counted. Default 400 seeds, as the international rules for seed testing count; from
    memory.
    """

    thousandKernelMass: NotRequired[MassPerThousandQuantity]
    """Thousand-kernel mass of the seed as sown; gives rates by mass. No default. Range: above 0 and up to 5000 g/1000."""

    kernelMassUncertainty: NotRequired[RatioQuantity]
    """Relative standard uncertainty of the kernel mass. Default 2 %: judgement, no published source: a thousand kernels
    counted and weighed twice. Range: 0 to 50 %.
    """

    purity: NotRequired[RatioQuantity]
    """Share of the mass that is pure seed; goes with thousandKernelMass. Default 100 %: not stated, so all of the mass is
    taken as pure seed; judgement, no published source; the seed tag says it. Range: above 0 and up to 100 %.
    """

    meteringUncertainty: NotRequired[RatioQuantity]
    """Relative standard uncertainty of what the meter puts down. Default 2.887 %: published acceptance limit of 5 % of the
    rate (Field and Solie 2007), taken as rectangular. Range: 0 to 50 %.
    """

    seedsPerArea: NotRequired[CountPerAreaQuantity]
    """A rate of your own, in pure seeds per area. Give this or rate; the answer has its probability. No default. Range:
    above 0 and up to 100000 /m2.
    """

    rate: NotRequired[MassPerAreaQuantity]
    """A rate of your own by mass; needs thousandKernelMass. No default. Range: above 0 and up to 100000 kg/ha."""

    maximumSeedsPerArea: NotRequired[CountPerAreaQuantity]
    """The highest rate that may be sown, in pure seeds per area. Give this or maximumRate. No default. Range: above 0 and
    up to 100000 /m2.
    """

    maximumRate: NotRequired[MassPerAreaQuantity]
    """The highest rate that may be sown by mass; needs thousandKernelMass. No default. Range: above 0 and up to 100000
    kg/ha.
    """

    price: NotRequired[Price]
    """Price of the seed; with thousandKernelMass the answer has what the margin costs."""

    area: NotRequired[AreaQuantity]
    """Area to be sown, for the cost of the margin on all of it; goes with price. No default. Range: above 0 and up to
    1000000 ha.
    """


class StandUncertainty(TypedDict):
    """One part of the uncertainty of a stand."""

    source: str
    """Where it comes from. Known today: `kernel-mass`, `germination-test`, `emergence`."""

    relative: RatioQuantity
    """Standard uncertainty, relative."""


class StartValueOfLot(TypedDict):
    """A value to plan a catch with."""

    value: float
    """The number, in the unit beside it."""

    unit: MassPerRevolutionUnit
    """The unit, written exactly as in `GET /v1/units`."""

    relativeUncertainty: RatioQuantity
    """Its standard uncertainty, relative."""


class StatedDensityOfProduct(TypedDict):
    """A density that somebody stated."""

    value: float
    """The number, in the unit beside it. No default."""

    unit: BulkDensityUnit
    """The unit, written exactly as in `GET /v1/units`."""

    relativeUncertainty: NotRequired[RatioQuantity]
    """Its standard uncertainty. Default 5 %: a density that somebody stated; judgement, no published source. Range: 0 to
    50 %.
    """


class StatedRateAnswer(TypedDict):
    """A rate from elsewhere beside the one computed here."""

    rate: MassPerAreaQuantity
    """The rate stated."""

    difference: RatioQuantity
    """How much it is above the rate of this answer; negative when below."""

    seedsPerArea: CountPerAreaQuantity
    """Pure seeds per area that it puts down."""

    plants: NotRequired[CountPerAreaQuantity]
    """Plants that it brings up; absent when the establishment is unknown."""

    fromDivideByTen: bool
    """It comes from dividing by 10: you said so, or it is in lb/ac, nobody said how it was made, and it is 4.13 % high."""


class StatedReductionAnswer(TypedDict):
    """A reduction that a source states for its own limits."""

    detail: str
    """What the source says."""

    parts: NotRequired[SentenceParts]
    """What the sentence is made of, for showing it in another language."""

    left: NotRequired[RatioQuantity]
    """Share of the limit that is left; absent when it depends on the case."""

    applied: bool
    """It was applied to a limit of this answer. Where the limits of that source are not held, nothing could be."""

    source: LimitSourceAnswer
    """The publication."""


class StepAnswer(TypedDict):
    """One step."""

    id: str
    """Identifier within the plan."""

    after: list[str]
    """Steps that come before."""

    detail: str
    """What to do."""

    parts: NotRequired[SentenceParts]
    """What the sentence is made of, for showing it in another language."""

    meter: NotRequired[str]
    """The meter it is about, if one."""


class StopAnswer(TypedDict):
    """The stop of one meter."""

    meter: str
    """The meter."""

    time: TimeQuantity
    """Time from the common start."""

    group: int
    """Number of the group, from 1; stops closer than ten seconds have the same."""


class StopsInField(TypedDict):
    """What keeps the machine from working. turnTime goes with runLength, refillTime with areaPerFill."""

    turnTime: NotRequired[TimeQuantity]
    """Time of one turn at the end of a run. No default. Range: above 0 and up to 1 h."""

    runLength: NotRequired[LengthQuantity]
    """Length of a run. No default. Range: 1 to 100000 m."""

    refillTime: NotRequired[TimeQuantity]
    """Time of one refill, from stop to start. No default. Range: above 0 and up to 24 h."""

    areaPerFill: NotRequired[AreaQuantity]
    """Area that a fill covers. No default. Range: 0.001 to 100000 ha."""


class Supersedes(TypedDict):
    """A correction: which record was wrong, and why."""

    record: str
    """Id of the record that was wrong."""

    reason: str
    """What was wrong with it."""


class SuppliedNutrient(TypedDict):
    """An amount of a nutrient."""

    nutrient: str
    """The nutrient in the form that the amount is stated in. Known today: `N`, `P2O5`, `P`, `K2O`, `K`, `S`, `SO4-S`,
    `SO3`, `SO4`.
    """

    amount: MassPerAreaQuantity
    """The amount."""


class TankAnswer(TypedDict):
    """What a tank holds."""

    mass: MassQuantity
    """Mass of a fill."""

    lowerMass: MassQuantity
    """Mass at the lower end of the interval of the density."""

    upperMass: MassQuantity
    """Mass at the upper end."""

    area: NotRequired[AreaQuantity]
    """Area that a fill covers; absent without a rate."""


class TankOfMachine(TypedDict):
    """A tank."""

    name: str
    """What the owner calls it."""

    volume: NotRequired[VolumeQuantity]
    """Its volume. No default. Range: above 0 and up to 1000 m3."""


class TankOfProduct(TypedDict):
    """A tank to be filled."""

    volume: VolumeQuantity
    """Its volume, taken as exact. Range: above 0 and up to 1000 m3."""

    fill: NotRequired[RatioQuantity]
    """Share of it that is filled. Default 100 %: the stated volume of the tank is taken as what it holds; judgement, no
    published source. Range: 1 to 100 %.
    """

    targetRate: NotRequired[MassPerAreaQuantity]
    """Rate at which its content is put down; gives the area of a fill. No default. Range: above 0 and up to 100000 kg/ha."""


class TemperatureQuantity(TypedDict):
    """A temperature."""

    value: float
    """The number, in the unit beside it."""

    unit: TemperatureUnit
    """The unit, written exactly as in `GET /v1/units`."""


class TestWeightOfProduct(TypedDict):
    """A test weight."""

    value: float
    """The number, in the unit beside it. No default."""

    unit: BulkDensityUnit
    """The unit, written exactly as in `GET /v1/units`."""

    relativeUncertainty: NotRequired[RatioQuantity]
    """Its standard uncertainty as the density in a tank. Default 2 %: a test weight stands for a small cleaned sample;
    judgement, no published source. Range: 0 to 50 %.
    """


class TimeQuantity(TypedDict):
    """A time span."""

    value: float
    """The number, in the unit beside it."""

    unit: TimeUnit
    """The unit, written exactly as in `GET /v1/units`."""


class TurnTestAnswer(TypedDict):
    """One turn test as evaluated."""

    turns: RevolutionsQuantity
    """Turns of the drive wheel."""

    area: AreaQuantity
    """Area that the machine would have worked meanwhile."""

    metered: MassQuantity
    """Mass from all outlets, those not caught included."""

    rate: MassPerAreaQuantity
    """Rate of this test alone."""


class TurnTestOfWheel(TypedDict):
    """One turn test: turns, and what fell meanwhile, as exactly one of caught and perOutlet."""

    turns: RevolutionsQuantity
    """Turns of the drive wheel. Range: 0.1 to 100000 rev."""

    caught: NotRequired[MassQuantity]
    """Net mass from all outlets that were caught together. No default. Range: above 0 and up to 1000 t."""

    perOutlet: NotRequired[list[MassQuantity]]
    """Net mass outlet by outlet; the outlets are then compared with their mean. Range: 0 to 1000 t."""


class TurnsAnswer(TypedDict):
    """Turns for one area."""

    area: AreaQuantity
    """The area."""

    distance: LengthQuantity
    """Distance that the machine drives over it."""

    turns: RevolutionsQuantity
    """Turns of the drive wheel."""

    wholeTurns: RevolutionsQuantity
    """The nearest whole number of turns, which is easier to count."""

    meterRevolutions: NotRequired[RevolutionsQuantity]
    """Revolutions of the meter over the area."""

    catchInAll: NotRequired[MassQuantity]
    """Mass from all outlets over the area at the target rate."""

    catchPerOutlet: NotRequired[MassQuantity]
    """Mass from each outlet."""

    catchOfWholeTurns: NotRequired[MassQuantity]
    """Mass from all outlets in the whole turns."""

    catchPerOutletOfWholeTurns: NotRequired[MassQuantity]
    """Mass from each outlet in the whole turns."""


class TypedNumber(TypedDict):
    """A number as typed into a controller."""

    value: float
    """The number."""

    unit: NotRequired[Literal["kg/rev", "g/rev", "lb/rev", "oz/rev", "kg", "g", "t", "lb", "oz", "ton-us", "ton-uk", "L", "m3", "bu-us", "bu-imp", "ft3", "kg/min", "g/s", "lb/min"]]
    """Its unit: of mass per revolution, or that of the form in which the meter's controller takes it."""


class UncertaintyPart(TypedDict):
    """One part of the uncertainty."""

    source: str
    """Where it comes from: `catches` (scatter, weighing, counting), `scale` (span, common to all), `shared-tare` or
    `points-not-caught`.
    """

    relative: RatioQuantity
    """Standard uncertainty, relative."""


class UnitAnswer(TypedDict):
    """One unit."""

    symbol: str
    """The symbol as payloads write it; case counts."""

    dimension: str
    """What it measures, as the schemas of quantities are named: `mass` for MassQuantity."""

    toSi: FactorAnswer
    """Exact factor: a value in this unit times the factor, plus `offsetInSi` where there is one, is the value in the SI
    unit of the dimension (kg, m, s, Pa, K, revolutions as a plain count).
    """

    offsetInSi: NotRequired[float]
    """What is added after the factor: the SI value of zero in this unit, in kelvin for a temperature. Absent for zero,
    which every other unit has.
    """

    ucum: NotRequired[str]
    """Code in the Unified Code for Units of Measure."""

    unitedNations: NotRequired[str]
    """Common code of UN/ECE Recommendation 20."""

    adapt: NotRequired[str]
    """Unit code of the AgGateway ADAPT standard."""

    note: NotRequired[str]
    """What a reader must know, for example which acre is meant."""


class UnitsAnswer(TypedDict):
    """Every unit that payloads take."""

    units: list[UnitAnswer]
    """The units, ordered by dimension; the first of each dimension is its usual metric unit."""


class UsedDayToDay(TypedDict):
    """Day-to-day component from history."""

    value: RatioQuantity
    """Standard deviation between days, relative, as counted; a finding says when the history shows more."""

    tests: int
    """Tests that it comes from."""


class UsedEarlierTest(TypedDict):
    """An earlier test that was used."""

    test: str
    """Id of the test."""

    occurredAt: str
    """When it was made."""


class UsedHistory(TypedDict):
    """What a stored test took from the history instead of defaults; absent members took nothing from it."""

    repeatability: NotRequired[UsedRepeatability]
    """Repeatability from earlier catches of the series (meter, element, setting and product)."""

    dayToDay: NotRequired[UsedDayToDay]
    """Day-to-day component from earlier tests of the series."""

    scaleCheck: NotRequired[UsedScaleCheck]
    """The check of the scale whose error was corrected."""

    valueInForce: NotRequired[UsedValueInForce]
    """The adopted value that the test was compared with."""

    startValue: NotRequired[UsedStartValue]
    """The last test of the series, which the test was compared with because nothing had been adopted."""

    earlierTest: NotRequired[UsedEarlierTest]
    """The stored test of another set-up that was put beside this one; the evaluation says under secondTest whether it
    bears this one out.
    """


class UsedRepeatability(TypedDict):
    """Repeatability from history."""

    value: RatioQuantity
    """Standard deviation of one catch, relative."""

    degreesOfFreedom: float
    """Its degrees of freedom, at most 15."""

    tests: int
    """Tests that it comes from."""

    catches: int
    """Catches that it comes from."""


class UsedScaleCheck(TypedDict):
    """A scale check that was used."""

    check: str
    """Id of the check."""

    occurredAt: str
    """When it was made."""

    error: RatioQuantity
    """The span error that was corrected."""

    standardUncertainty: RatioQuantity
    """Its standard uncertainty."""

    failed: NotRequired[bool]
    """True when the scale failed it; absent when it passed."""


class UsedStartValue(TypedDict):
    """A value that was measured and never adopted, to compare with."""

    test: str
    """Id of the test that measured it."""

    occurredAt: str
    """When that was made."""

    value: ReferenceOfTest | MassPerRevolutionQuantity
    """The value."""


class UsedValueInForce(TypedDict):
    """A value in force that was used."""

    adoption: str
    """Id of the adoption."""

    since: str
    """Since when it is in force."""

    value: ReferenceOfTest | MassPerRevolutionQuantity
    """The value."""


class ValueInForceAnswer(TypedDict):
    """A value in force: the number in the controller, since when, and under which conditions it was found."""

    machine: str
    """Id of the machine."""

    meter: str
    """Position of the meter."""

    element: str
    """Metering element."""

    setting: NotRequired[str]
    """Setting of the meter; absent for none."""

    product: str
    """Id of the product."""

    headline: str
    """The value, and the gravest of what was noticed about it, in sentences that can be shown as they are."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """What it is good for: `usable`, `check-first` (a finding warns) or `do-not-use` (one stops)."""

    massPerRevolution: MassPerRevolutionQuantity
    """The mass per revolution that the controller uses."""

    typedIn: AnyQuantity
    """The number typed in."""

    adoption: str
    """Id of the adoption."""

    since: str
    """Since when, with the offset it was entered with."""

    sinceLocalDate: str
    """The date of that in the machine's time zone."""

    recordedBy: str
    """Who adopted it."""

    reason: str
    """Why."""

    despite: NotRequired[list[Despite]]
    """All that spoke against the number when it was typed in, each with the reason given; absent when nothing did."""

    lot: NotRequired[str]
    """Id of the lot that it was found with."""

    treatment: NotRequired[str]
    """Treatment of that lot."""

    test: NotRequired[str]
    """Id of the test that it rests on; absent when stated by hand."""

    measured: NotRequired[MeasuredMassPerRevolution]
    """What that test measured."""

    conditions: NotRequired[Conditions]
    """Conditions of that test, as entered."""

    basisSupersededBy: NotRequired[Supersedes]
    """The test that superseded the one it rests on: adopt its value."""

    findings: list[FindingAnswer]
    """What was noticed. Codes known today: `adopted-despite`, `fits-other-product`, `adopted-otherwise`,
    `basis-superseded`, `scale-check-failed-later`, `more-than-the-element-holds`, `fill-unlike-expected`,
    `unlike-other-products`.
    """


class ValueInForceAnswerPage(TypedDict):
    """A page of a list."""

    items: list[ValueInForceAnswer]
    """The records of this page."""

    next: NotRequired[str]
    """Address of the next page; absent on the last one."""


ValueOfElement = TypedDict(
    "ValueOfElement",
    {
        "value": "float",
        "unit": "MassPerRevolutionUnit",
        "element": "str",
        "from": "str",
    },
)
"""Mass per revolution of an element with the product."""


class ValueOfLotBefore(TypedDict):
    """A mass per revolution in force."""

    value: float
    """The number, in the unit beside it. No default."""

    unit: MassPerRevolutionUnit
    """The unit, written exactly as in `GET /v1/units`."""

    relativeUncertainty: NotRequired[RatioQuantity]
    """Its standard uncertainty, relative. Default 2 %: default of a value in force: judgement, no published source. Range:
    above 0 and up to 50 %.
    """


class ValueOfSensor(TypedDict):
    """A number as a controller holds it: exactly one of pulsesPerDistance, pulses with their distance, distancePerPulse
    and wheelCircumference.
    """

    pulsesPerDistance: NotRequired[PulsesPerDistanceQuantity]
    """Pulses per distance. No default. Range: above 0 and up to 10000000 pulses/100m."""

    pulses: NotRequired[float]
    """Pulses as the controller shows them, a plain count over `distance`. No default."""

    distance: NotRequired[LengthQuantity]
    """Distance over which the controller counts these pulses, for example 150 m; goes with pulses. No default. Range: 1 to
    10000 m.
    """

    distancePerPulse: NotRequired[LengthQuantity]
    """Distance driven from one pulse to the next. No default. Range: above 0 and up to 100 m."""

    wheelCircumference: NotRequired[LengthQuantity]
    """Rolling circumference of the wheel. No default. Range: above 0 and up to 100 m."""


class VolumeCheckAnswer(TypedDict):
    """What an element should deliver, and how a value compares with it."""

    headline: str
    """The outcome in one or two sentences that can be shown as they are."""

    headlineParts: NotRequired[SentenceParts]
    """What the headline is made of, for showing it in another language; its code is the verdict."""

    verdict: str
    """What it is good for: `usable`, `check-first` (a finding warns) or `do-not-use` (one stops)."""

    expected: ExpectedMassPerRevolution
    """Expected mass per revolution: displacement times bulk density times fill efficiency."""

    fillEfficiency: ExpectedRatio
    """Fill efficiency behind it."""

    spreadParts: list[SpreadPart]
    """Parts of the spread of the expected value."""

    startValue: ReferenceOfTest | MassPerRevolutionQuantity
    """The expected value as the start value of a catch plan takes it."""

    checked: NotRequired[CheckedAnswer]
    """How the checked value compares; absent without one."""

    assumptions: list[AssumptionAnswer]
    """Values used that the question did not state."""

    findings: list[FindingAnswer]
    """What was noticed. No element was tested here. Codes known today: `more-than-the-element-holds`,
    `fill-unlike-expected`.
    """

    engineVersion: str
    """Version of the engine that answered."""


class VolumeCheckAnswerBatchLine(TypedDict):
    """One line of the answer to many questions: the result of one of them, or the problem that it has."""

    line: int
    """The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the
    header being row 1.
    """

    test: NotRequired[str]
    """What the table calls the test; absent when no table was sent."""

    given: NotRequired[list[GivenCell]]
    """What the table says in the columns `note`, `meter` and any whose name begins with `x-`; absent when it says nothing
    there or no table was sent.
    """

    result: NotRequired[VolumeCheckAnswer]
    """What the question would be answered alone; absent when there is a problem."""

    problem: NotRequired[Problem]
    """What the question would be refused with alone; absent when there is a result."""


class VolumeCheckRequest(TypedDict):
    """A metering element and a product. The fill efficiency is stated, or learnedFrom an earlier product, or taken by
    default.
    """

    element: NotRequired[str]
    """What the owner calls the element."""

    elementKind: NotRequired[Literal["closed-pockets", "open-flutes", "auger"]]
    """How the element carries product: `closed-pockets` that are struck off (no more than 105 % of them can come out),
    `open-flutes` or an `auger` (up to 160 %, because a layer beyond them is dragged along; judgement). Default not
    known, which allows as much as open flutes.
    """

    displacement: DisplacementOfElement | VolumeQuantity
    """Volume that one revolution of the element sweeps. Range: above 0 and up to 1000 L."""

    bulkDensity: DensityOfProduct | BulkDensityQuantity
    """Bulk density of the product. Range: 10 to 10000 kg/m3."""

    fillEfficiency: NotRequired[RatioQuantity]
    """Share of the swept volume that product fills; a little above 100 % where it settles. Default 90 %: median fill
    efficiency of metering elements; judgement, no published source. Range: 1 to 200 %.
    """

    fillEfficiencySpread: NotRequired[RatioQuantity]
    """How sure the fill efficiency is. Default 15 %: spread of fill efficiency from element to element, standard deviation
    of its logarithm; judgement, no published source. Range: 0 to 100 %.
    """

    learnedFrom: NotRequired[EarlierProduct]
    """An earlier product on the same element, from which the fill efficiency is learned."""

    massPerRevolution: NotRequired[MassPerRevolutionToCheck | MassPerRevolutionQuantity]
    """A mass per revolution to be checked. No default. Range: above 0 and up to 1000 kg/rev."""

    coverageProbability: NotRequired[float]
    """Coverage probability of the intervals. Default 0.95: common practice for expanded uncertainties, as in the examples
    of JCGM 100:2008.
    """


class VolumePerTimeQuantity(TypedDict):
    """A volume flow, such as that of air."""

    value: float
    """The number, in the unit beside it."""

    unit: VolumePerTimeUnit
    """The unit, written exactly as in `GET /v1/units`."""


class VolumeQuantity(TypedDict):
    """A volume."""

    value: float
    """The number, in the unit beside it."""

    unit: VolumeUnit
    """The unit, written exactly as in `GET /v1/units`."""


class WantedNutrient(TypedDict):
    """A nutrient that is wanted, or limited."""

    nutrient: Literal["N", "P2O5", "P", "K2O", "K", "S", "SO4-S", "SO3", "SO4"]
    """The nutrient in the form that the amount is stated in, as the element (N, P, K, S, and SO4-S for sulfur in sulfate)
    or as P2O5, K2O, SO3 or SO4. The answer speaks of it in the same form.
    """

    amount: MassPerAreaQuantity
    """Amount per area. Zero only with `at-most` or `exactly`. Range: 0 to 10000 kg/ha."""

    kind: NotRequired[Literal["at-least", "exactly", "at-most"]]
    """How the amount is meant: `at-least`, `exactly` or `at-most`. Default at-least: common practice, no published source."""

    maximum: NotRequired[MassPerAreaQuantity]
    """With at-least: the most that may be given, credits included. No limit when left out. No default. Range: 0 to 10000
    kg/ha.
    """


class WaysOutAnswer(TypedDict):
    """What would open an empty window, each by itself; absent where that alone is not enough."""

    maximumGroundSpeed: NotRequired[SpeedQuantity]
    """Highest ground speed, beside the lowest of the question."""

    minimumGroundSpeed: NotRequired[SpeedQuantity]
    """Lowest ground speed, beside the highest of the question."""

    maximumRate: NotRequired[MassPerAreaQuantity]
    """Highest rate, beside the lowest of the question."""

    minimumRate: NotRequired[MassPerAreaQuantity]
    """Lowest rate, beside the highest of the question."""

    shares: list[ShareOfRatesAnswer]
    """The rates shared out among as few elements as serve all ground speeds; empty where up to four do not."""


class WeighedVolumeOfProduct(TypedDict):
    """Weighings of one container, filled anew and struck off level each time."""

    volume: VolumeQuantity
    """Volume of the container. Range: above 0 and up to 1000 m3."""

    volumeTolerance: NotRequired[RatioQuantity]
    """Largest error of that volume. Default 2 %: largest error of the volume of a bucket or box; judgement, no published
    source. Range: 0 to 50 %.
    """

    scale: NotRequired[ScaleOfTest]
    """The scale. Default 0.5 %: largest error of a scale of which nothing is stated, as a share of the load; judgement, no
    published source.
    """

    sharedTare: NotRequired[MassQuantity]
    """Mass of the empty container, read once for all weighings. No default. Range: above 0 and up to 1000 t."""

    repeatability: NotRequired[RatioQuantity]
    """Standard deviation of one filling. Default 2 %: one filling of a container, struck off level; judgement, 4 degrees
    of freedom, no published source. Range: 0.01 to 30 %.
    """

    weighings: list[WeighingOfProduct]
    """The weighings."""


class WeighingAnswer(TypedDict):
    """One weighing."""

    net: MassQuantity
    """Net mass, a known error of the scale corrected."""

    bulkDensity: BulkDensityQuantity
    """Its bulk density."""


class WeighingOfProduct(TypedDict):
    """One weighing, as gross and tare (or the sharedTare) or as net."""

    gross: NotRequired[MassQuantity]
    """Mass with the container. No default. Range: above 0 and up to 1000 t."""

    tare: NotRequired[MassQuantity]
    """Mass of the empty container. No default. Range: above 0 and up to 1000 t."""

    net: NotRequired[MassQuantity]
    """Net mass, where the scale was zeroed with the container. No default. Range: above 0 and up to 1000 t."""


class WidthAnswer(TypedDict):
    """The width of a machine."""

    nominal: LengthQuantity
    """Openers times spacing."""

    effective: LengthQuantity
    """Width that each pass covers anew."""

    inForce: LengthQuantity
    """Width that the controller reckons with."""

    overlap: LengthQuantity
    """Nominal less effective width: positive where passes overlap, negative where strips are left."""

    overlapShare: RatioQuantity
    """Overlap as a share of the width covered anew: product that a field takes beyond its area."""


class WidthOfMachine(TypedDict):
    """The width of a machine: built, driven and typed in."""

    openers: int
    """Number of openers."""

    spacing: LengthQuantity
    """Distance between neighbouring openers. Range: 0.01 to 10 m."""

    passToPass: NotRequired[LengthQuantity]
    """Measured distance from a mark on the machine to the same mark in the next pass. Default openers times spacing:
    judgement, no overlap and no gap between passes. Range: 0.01 to 200 m.
    """

    inForce: NotRequired[LengthQuantity]
    """Width typed into the controller. Default openers times spacing: common practice. Range: 0.01 to 200 m."""


class WorkspaceAnswer(TypedDict):
    """A workspace as stored."""

    id: str
    """Its id; `local` for the one that every database begins with."""

    revision: int
    """1 when created, one more with each change."""

    retired: bool
    """Its keys open nothing; everything stays stored."""

    createdAt: str
    """When it was created (UTC)."""

    updatedAt: str
    """When it was changed last (UTC)."""

    name: str
    """What it is called."""


class WorkspaceAnswerPage(TypedDict):
    """A page of a list."""

    items: list[WorkspaceAnswer]
    """The records of this page."""

    next: NotRequired[str]
    """Address of the next page; absent on the last one."""


class WorkspaceRequest(TypedDict):
    """A workspace: what one farm, dealer or customer keeps, and what only its keys open."""

    id: NotRequired[str]
    """The sender's own id, a UUID of version 7 in lower case, for repeating the request safely. Default: the service makes
    one. May be repeated, unchanged, when replacing.
    """

    name: str
    """What it is called."""

    retired: NotRequired[bool]
    """Its keys open nothing; everything stays stored. Default false."""
