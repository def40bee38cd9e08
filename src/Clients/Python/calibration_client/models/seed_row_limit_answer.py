from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .assumption_answer import AssumptionAnswer
    from .caution_answer import CautionAnswer
    from .finding_answer import FindingAnswer
    from .nutrient_load_answer import NutrientLoadAnswer
    from .ratio_quantity import RatioQuantity
    from .seed_row_limit_of_source import SeedRowLimitOfSource
    from .stated_reduction_answer import StatedReductionAnswer

@dataclass
class SeedRowLimitAnswer(AdditionalDataHolder, Parsable):
    """
    What lies with the seed, and what published limits say to it. No answer says that a load is safe.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Values used that the question did not state.
    assumptions: Optional[list[AssumptionAnswer]] = None
    # What can hurt the stand; always to be shown with the limits.
    cautions: Optional[list[CautionAnswer]] = None
    # Version of the engine that answered.
    engine_version: Optional[str] = None
    # What was noticed.
    findings: Optional[list[FindingAnswer]] = None
    # The outcome in one or two sentences that can be shown as they are; they name crop, place and source.
    headline: Optional[str] = None
    # Every limit for this crop and region: those exceeded first, the worst at the head; those without a number last.
    limits: Optional[list[SeedRowLimitOfSource]] = None
    # What lies with the seed: the sum over all products, in the zone where it is heaviest.
    loads: Optional[list[NutrientLoadAnswer]] = None
    # Reductions that sources state for such a seedbed or such products. They hold for the limits of their own source only.
    reductions: Optional[list[StatedReductionAnswer]] = None
    # Spread divided by row spacing.
    seedbed_utilisation: Optional[RatioQuantity] = None
    # The outcome over all limits: `above` when any is exceeded, `within` when none is, `no-published-limit` when none has a number for anything placed.
    verdict: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> SeedRowLimitAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: SeedRowLimitAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return SeedRowLimitAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .assumption_answer import AssumptionAnswer
        from .caution_answer import CautionAnswer
        from .finding_answer import FindingAnswer
        from .nutrient_load_answer import NutrientLoadAnswer
        from .ratio_quantity import RatioQuantity
        from .seed_row_limit_of_source import SeedRowLimitOfSource
        from .stated_reduction_answer import StatedReductionAnswer

        from .assumption_answer import AssumptionAnswer
        from .caution_answer import CautionAnswer
        from .finding_answer import FindingAnswer
        from .nutrient_load_answer import NutrientLoadAnswer
        from .ratio_quantity import RatioQuantity
        from .seed_row_limit_of_source import SeedRowLimitOfSource
        from .stated_reduction_answer import StatedReductionAnswer

        fields: dict[str, Callable[[Any], None]] = {
            "assumptions": lambda n : setattr(self, 'assumptions', n.get_collection_of_object_values(AssumptionAnswer)),
            "cautions": lambda n : setattr(self, 'cautions', n.get_collection_of_object_values(CautionAnswer)),
            "engineVersion": lambda n : setattr(self, 'engine_version', n.get_str_value()),
            "findings": lambda n : setattr(self, 'findings', n.get_collection_of_object_values(FindingAnswer)),
            "headline": lambda n : setattr(self, 'headline', n.get_str_value()),
            "limits": lambda n : setattr(self, 'limits', n.get_collection_of_object_values(SeedRowLimitOfSource)),
            "loads": lambda n : setattr(self, 'loads', n.get_collection_of_object_values(NutrientLoadAnswer)),
            "reductions": lambda n : setattr(self, 'reductions', n.get_collection_of_object_values(StatedReductionAnswer)),
            "seedbedUtilisation": lambda n : setattr(self, 'seedbed_utilisation', n.get_object_value(RatioQuantity)),
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
        writer.write_collection_of_object_values("assumptions", self.assumptions)
        writer.write_collection_of_object_values("cautions", self.cautions)
        writer.write_str_value("engineVersion", self.engine_version)
        writer.write_collection_of_object_values("findings", self.findings)
        writer.write_str_value("headline", self.headline)
        writer.write_collection_of_object_values("limits", self.limits)
        writer.write_collection_of_object_values("loads", self.loads)
        writer.write_collection_of_object_values("reductions", self.reductions)
        writer.write_object_value("seedbedUtilisation", self.seedbed_utilisation)
        writer.write_str_value("verdict", self.verdict)
        writer.write_additional_data_value(self.additional_data)
    

