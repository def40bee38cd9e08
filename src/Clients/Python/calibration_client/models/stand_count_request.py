from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .count_of_plants import CountOfPlants
    from .count_per_area_quantity import CountPerAreaQuantity
    from .ground_of_count import GroundOfCount
    from .prior_of_share import PriorOfShare
    from .ratio_quantity import RatioQuantity
    from .sown_seed import SownSeed

@dataclass
class StandCountRequest(Parsable):
    """
    Plants counted at some spots of a field, and what is known about what was sown there.
    """
    # The counts.
    counts: Optional[list[CountOfPlants]] = None
    # Coverage probability of the intervals. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM 100:2008.
    coverage_probability: Optional[float] = None
    # The ground of each count that does not name its own: how long a row, how large a frame or hoop.
    ground: Optional[GroundOfCount] = None
    # The stand below which something would be done. No default. Range: above 0 and up to 100000 /m2.
    minimum_stand: Optional[CountPerAreaQuantity] = None
    # The share of seeds expected before counting; the answer shrinks the counted one towards it.
    prior: Optional[PriorOfShare] = None
    # What was sown; gives survival and, with germination, emergence.
    sown: Optional[SownSeed] = None
    # A stand that somebody made of these counts; it is compared, and known shortcuts are named. No default. Range: above 0 and up to 100000 /m2.
    stated_stand: Optional[CountPerAreaQuantity] = None
    # The stand that was aimed at. No default. Range: above 0 and up to 100000 /m2.
    target_stand: Optional[CountPerAreaQuantity] = None
    # Half width of the interval over the stand that is wanted; gives the number of counts. Default 15 %: judgement, no published source: about what ten counts of 20 plants give. Range: 1 to 100 %.
    wanted_precision: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> StandCountRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: StandCountRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return StandCountRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .count_of_plants import CountOfPlants
        from .count_per_area_quantity import CountPerAreaQuantity
        from .ground_of_count import GroundOfCount
        from .prior_of_share import PriorOfShare
        from .ratio_quantity import RatioQuantity
        from .sown_seed import SownSeed

        from .count_of_plants import CountOfPlants
        from .count_per_area_quantity import CountPerAreaQuantity
        from .ground_of_count import GroundOfCount
        from .prior_of_share import PriorOfShare
        from .ratio_quantity import RatioQuantity
        from .sown_seed import SownSeed

        fields: dict[str, Callable[[Any], None]] = {
            "counts": lambda n : setattr(self, 'counts', n.get_collection_of_object_values(CountOfPlants)),
            "coverageProbability": lambda n : setattr(self, 'coverage_probability', n.get_float_value()),
            "ground": lambda n : setattr(self, 'ground', n.get_object_value(GroundOfCount)),
            "minimumStand": lambda n : setattr(self, 'minimum_stand', n.get_object_value(CountPerAreaQuantity)),
            "prior": lambda n : setattr(self, 'prior', n.get_object_value(PriorOfShare)),
            "sown": lambda n : setattr(self, 'sown', n.get_object_value(SownSeed)),
            "statedStand": lambda n : setattr(self, 'stated_stand', n.get_object_value(CountPerAreaQuantity)),
            "targetStand": lambda n : setattr(self, 'target_stand', n.get_object_value(CountPerAreaQuantity)),
            "wantedPrecision": lambda n : setattr(self, 'wanted_precision', n.get_object_value(RatioQuantity)),
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
        writer.write_collection_of_object_values("counts", self.counts)
        writer.write_float_value("coverageProbability", self.coverage_probability)
        writer.write_object_value("ground", self.ground)
        writer.write_object_value("minimumStand", self.minimum_stand)
        writer.write_object_value("prior", self.prior)
        writer.write_object_value("sown", self.sown)
        writer.write_object_value("statedStand", self.stated_stand)
        writer.write_object_value("targetStand", self.target_stand)
        writer.write_object_value("wantedPrecision", self.wanted_precision)
    

