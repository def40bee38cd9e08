from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .agreement_answer import AgreementAnswer
    from .assumption_answer import AssumptionAnswer
    from .catch_answer import CatchAnswer
    from .effect_answer import EffectAnswer
    from .entry_answer import EntryAnswer
    from .finding_answer import FindingAnswer
    from .likely_mistake_answer import LikelyMistakeAnswer
    from .mass_per_revolution_quantity import MassPerRevolutionQuantity
    from .measured_mass_per_revolution import MeasuredMassPerRevolution
    from .measured_ratio import MeasuredRatio
    from .reason_answer import ReasonAnswer
    from .uncertainty_part import UncertaintyPart

@dataclass
class CatchTestAnswer(AdditionalDataHolder, Parsable):
    """
    The evaluation of a catch test.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # How the catches that count agree.
    agreement: Optional[AgreementAnswer] = None
    # Values used that the question did not state.
    assumptions: Optional[list[AssumptionAnswer]] = None
    # Every catch in the order given.
    catches: Optional[list[CatchAnswer]] = None
    # Change against the value in force or the start value, with its interval; absent without either.
    change: Optional[MeasuredRatio] = None
    # What the change is measured from: `value-in-force` or `start-value`.
    change_from: Optional[str] = None
    # Old and new value combined; offered when the uncertainty of the old one is known and no change was detected.
    combined_with_previous: Optional[MeasuredMassPerRevolution] = None
    # What happens if the value in force stays although the meter delivers something else.
    effect_if_value_in_force_stays: Optional[EffectAnswer] = None
    # Version of the engine that answered.
    engine_version: Optional[str] = None
    # What to type in; given with the verdict adopt when the controller's form is known.
    enter: Optional[EntryAnswer] = None
    # What was noticed beyond the verdict.
    findings: Optional[list[FindingAnswer]] = None
    # The outcome in one or two sentences that can be shown as they are.
    headline: Optional[str] = None
    # Mistakes that would explain the test, the most probable first; those under a probability of 10 % are left out. Empty when none stands out.
    likely_mistakes: Optional[list[LikelyMistakeAnswer]] = None
    # The mass per revolution found, with its uncertainty.
    mass_per_revolution: Optional[MeasuredMassPerRevolution] = None
    # Plain mean of the ratios of the catches: can be redone on paper.
    mean_of_ratios: Optional[MassPerRevolutionQuantity] = None
    # How many more catches a repeat takes; absent for other verdicts and when no number of catches would help.
    more_catches: Optional[int] = None
    # Probability that the true mass per revolution is within the tolerance of the value compared with.
    probability_within_tolerance: Optional[float] = None
    # Why.
    reasons: Optional[list[ReasonAnswer]] = None
    # Total mass over total revolutions: can be redone on paper.
    total_mass_over_total_revolutions: Optional[MassPerRevolutionQuantity] = None
    # Where the uncertainty comes from: standard uncertainties, relative; their squares add up.
    uncertainty_parts: Optional[list[UncertaintyPart]] = None
    # What to do: `investigate` (something is wrong with the test), `repeat` (not sure enough yet), `keep` (the value in force is good enough) or `adopt` (type in the new value).
    verdict: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CatchTestAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CatchTestAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CatchTestAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .agreement_answer import AgreementAnswer
        from .assumption_answer import AssumptionAnswer
        from .catch_answer import CatchAnswer
        from .effect_answer import EffectAnswer
        from .entry_answer import EntryAnswer
        from .finding_answer import FindingAnswer
        from .likely_mistake_answer import LikelyMistakeAnswer
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .measured_mass_per_revolution import MeasuredMassPerRevolution
        from .measured_ratio import MeasuredRatio
        from .reason_answer import ReasonAnswer
        from .uncertainty_part import UncertaintyPart

        from .agreement_answer import AgreementAnswer
        from .assumption_answer import AssumptionAnswer
        from .catch_answer import CatchAnswer
        from .effect_answer import EffectAnswer
        from .entry_answer import EntryAnswer
        from .finding_answer import FindingAnswer
        from .likely_mistake_answer import LikelyMistakeAnswer
        from .mass_per_revolution_quantity import MassPerRevolutionQuantity
        from .measured_mass_per_revolution import MeasuredMassPerRevolution
        from .measured_ratio import MeasuredRatio
        from .reason_answer import ReasonAnswer
        from .uncertainty_part import UncertaintyPart

        fields: dict[str, Callable[[Any], None]] = {
            "agreement": lambda n : setattr(self, 'agreement', n.get_object_value(AgreementAnswer)),
            "assumptions": lambda n : setattr(self, 'assumptions', n.get_collection_of_object_values(AssumptionAnswer)),
            "catches": lambda n : setattr(self, 'catches', n.get_collection_of_object_values(CatchAnswer)),
            "change": lambda n : setattr(self, 'change', n.get_object_value(MeasuredRatio)),
            "changeFrom": lambda n : setattr(self, 'change_from', n.get_str_value()),
            "combinedWithPrevious": lambda n : setattr(self, 'combined_with_previous', n.get_object_value(MeasuredMassPerRevolution)),
            "effectIfValueInForceStays": lambda n : setattr(self, 'effect_if_value_in_force_stays', n.get_object_value(EffectAnswer)),
            "engineVersion": lambda n : setattr(self, 'engine_version', n.get_str_value()),
            "enter": lambda n : setattr(self, 'enter', n.get_object_value(EntryAnswer)),
            "findings": lambda n : setattr(self, 'findings', n.get_collection_of_object_values(FindingAnswer)),
            "headline": lambda n : setattr(self, 'headline', n.get_str_value()),
            "likelyMistakes": lambda n : setattr(self, 'likely_mistakes', n.get_collection_of_object_values(LikelyMistakeAnswer)),
            "massPerRevolution": lambda n : setattr(self, 'mass_per_revolution', n.get_object_value(MeasuredMassPerRevolution)),
            "meanOfRatios": lambda n : setattr(self, 'mean_of_ratios', n.get_object_value(MassPerRevolutionQuantity)),
            "moreCatches": lambda n : setattr(self, 'more_catches', n.get_int_value()),
            "probabilityWithinTolerance": lambda n : setattr(self, 'probability_within_tolerance', n.get_float_value()),
            "reasons": lambda n : setattr(self, 'reasons', n.get_collection_of_object_values(ReasonAnswer)),
            "totalMassOverTotalRevolutions": lambda n : setattr(self, 'total_mass_over_total_revolutions', n.get_object_value(MassPerRevolutionQuantity)),
            "uncertaintyParts": lambda n : setattr(self, 'uncertainty_parts', n.get_collection_of_object_values(UncertaintyPart)),
            "verdict": lambda n : setattr(self, 'verdict', n.get_str_value()),
        }
        return fields
    
    def serialize(self,writer: SerializationWriter) -> None:
        """
        Serializes information the current object
        param writer: Serialization writer to use to serialize this model
        Returns: None
        """
        if writer is None:
            raise TypeError("writer cannot be null.")
        writer.write_object_value("agreement", self.agreement)
        writer.write_collection_of_object_values("assumptions", self.assumptions)
        writer.write_collection_of_object_values("catches", self.catches)
        writer.write_object_value("change", self.change)
        writer.write_str_value("changeFrom", self.change_from)
        writer.write_object_value("combinedWithPrevious", self.combined_with_previous)
        writer.write_object_value("effectIfValueInForceStays", self.effect_if_value_in_force_stays)
        writer.write_str_value("engineVersion", self.engine_version)
        writer.write_object_value("enter", self.enter)
        writer.write_collection_of_object_values("findings", self.findings)
        writer.write_str_value("headline", self.headline)
        writer.write_collection_of_object_values("likelyMistakes", self.likely_mistakes)
        writer.write_object_value("massPerRevolution", self.mass_per_revolution)
        writer.write_object_value("meanOfRatios", self.mean_of_ratios)
        writer.write_int_value("moreCatches", self.more_catches)
        writer.write_float_value("probabilityWithinTolerance", self.probability_within_tolerance)
        writer.write_collection_of_object_values("reasons", self.reasons)
        writer.write_object_value("totalMassOverTotalRevolutions", self.total_mass_over_total_revolutions)
        writer.write_collection_of_object_values("uncertaintyParts", self.uncertainty_parts)
        writer.write_str_value("verdict", self.verdict)
        writer.write_additional_data_value(self.additional_data)
    

