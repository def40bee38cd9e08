from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .assumption_answer import AssumptionAnswer
    from .count_answer import CountAnswer
    from .count_per_area_quantity import CountPerAreaQuantity
    from .finding_answer import FindingAnswer
    from .learned_answer import LearnedAnswer
    from .ratio_quantity import RatioQuantity
    from .scatter_answer import ScatterAnswer
    from .share_estimate import ShareEstimate
    from .stand_estimate import StandEstimate

@dataclass
class StandCountAnswer(AdditionalDataHolder, Parsable):
    """
    The stand, how sure it is, and the share of the seeds that it makes.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # All ground counted.
    area_counted: Optional[AreaQuantity] = None
    # Values used that the question did not state.
    assumptions: Optional[list[AssumptionAnswer]] = None
    # Every count in the order given.
    counts: Optional[list[CountAnswer]] = None
    # Number of counts like these that the wanted precision takes; absent for one count, which does not show how counts scatter, and when no practical number does.
    counts_needed: Optional[int] = None
    # Stand over target less 1; absent without a target.
    deviation: Optional[RatioQuantity] = None
    # Plants per viable seed, germination taken out.
    emergence: Optional[ShareEstimate] = None
    # Version of the engine that answered.
    engine_version: Optional[str] = None
    # What was noticed.
    findings: Optional[list[FindingAnswer]] = None
    # The outcome in a few sentences that can be shown as they are.
    headline: Optional[str] = None
    # The share between the prior and the counts; absent without a prior.
    learned: Optional[LearnedAnswer] = None
    # All plants counted.
    plants_counted: Optional[int] = None
    # Probability that the true stand is below the minimum; absent without one.
    probability_below_minimum: Optional[float] = None
    # How the counts scatter; absent for one count and when no plant was found.
    scatter: Optional[ScatterAnswer] = None
    # Pure seeds sown; absent when nothing is known of them.
    seeds_sown: Optional[CountPerAreaQuantity] = None
    # Plants per area: all plants over all ground, with the interval.
    stand: Optional[StandEstimate] = None
    # Plants per pure seed: germination times emergence.
    survival: Optional[ShareEstimate] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> StandCountAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: StandCountAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return StandCountAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .assumption_answer import AssumptionAnswer
        from .count_answer import CountAnswer
        from .count_per_area_quantity import CountPerAreaQuantity
        from .finding_answer import FindingAnswer
        from .learned_answer import LearnedAnswer
        from .ratio_quantity import RatioQuantity
        from .scatter_answer import ScatterAnswer
        from .share_estimate import ShareEstimate
        from .stand_estimate import StandEstimate

        from .area_quantity import AreaQuantity
        from .assumption_answer import AssumptionAnswer
        from .count_answer import CountAnswer
        from .count_per_area_quantity import CountPerAreaQuantity
        from .finding_answer import FindingAnswer
        from .learned_answer import LearnedAnswer
        from .ratio_quantity import RatioQuantity
        from .scatter_answer import ScatterAnswer
        from .share_estimate import ShareEstimate
        from .stand_estimate import StandEstimate

        fields: dict[str, Callable[[Any], None]] = {
            "areaCounted": lambda n : setattr(self, 'area_counted', n.get_object_value(AreaQuantity)),
            "assumptions": lambda n : setattr(self, 'assumptions', n.get_collection_of_object_values(AssumptionAnswer)),
            "counts": lambda n : setattr(self, 'counts', n.get_collection_of_object_values(CountAnswer)),
            "countsNeeded": lambda n : setattr(self, 'counts_needed', n.get_int_value()),
            "deviation": lambda n : setattr(self, 'deviation', n.get_object_value(RatioQuantity)),
            "emergence": lambda n : setattr(self, 'emergence', n.get_object_value(ShareEstimate)),
            "engineVersion": lambda n : setattr(self, 'engine_version', n.get_str_value()),
            "findings": lambda n : setattr(self, 'findings', n.get_collection_of_object_values(FindingAnswer)),
            "headline": lambda n : setattr(self, 'headline', n.get_str_value()),
            "learned": lambda n : setattr(self, 'learned', n.get_object_value(LearnedAnswer)),
            "plantsCounted": lambda n : setattr(self, 'plants_counted', n.get_int_value()),
            "probabilityBelowMinimum": lambda n : setattr(self, 'probability_below_minimum', n.get_float_value()),
            "scatter": lambda n : setattr(self, 'scatter', n.get_object_value(ScatterAnswer)),
            "seedsSown": lambda n : setattr(self, 'seeds_sown', n.get_object_value(CountPerAreaQuantity)),
            "stand": lambda n : setattr(self, 'stand', n.get_object_value(StandEstimate)),
            "survival": lambda n : setattr(self, 'survival', n.get_object_value(ShareEstimate)),
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
        writer.write_object_value("areaCounted", self.area_counted)
        writer.write_collection_of_object_values("assumptions", self.assumptions)
        writer.write_collection_of_object_values("counts", self.counts)
        writer.write_int_value("countsNeeded", self.counts_needed)
        writer.write_object_value("deviation", self.deviation)
        writer.write_object_value("emergence", self.emergence)
        writer.write_str_value("engineVersion", self.engine_version)
        writer.write_collection_of_object_values("findings", self.findings)
        writer.write_str_value("headline", self.headline)
        writer.write_object_value("learned", self.learned)
        writer.write_int_value("plantsCounted", self.plants_counted)
        writer.write_float_value("probabilityBelowMinimum", self.probability_below_minimum)
        writer.write_object_value("scatter", self.scatter)
        writer.write_object_value("seedsSown", self.seeds_sown)
        writer.write_object_value("stand", self.stand)
        writer.write_object_value("survival", self.survival)
        writer.write_additional_data_value(self.additional_data)
    

