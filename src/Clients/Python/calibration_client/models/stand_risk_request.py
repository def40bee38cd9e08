from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .count_per_area_quantity import CountPerAreaQuantity
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .mass_per_thousand_quantity import MassPerThousandQuantity
    from .price import Price
    from .ratio_quantity import RatioQuantity
    from .share_to_come import ShareToCome

@dataclass
class StandRiskRequest(Parsable):
    """
    A minimum stand, what is known of the seed, and how much of it may come up.
    """
    # Area to be sown, for the cost of the margin on all of it; goes with price. No default. Range: above 0 and up to 1000000 ha.
    area: Optional[AreaQuantity] = None
    # Plants per viable seed; needs germination. Give this or survival.
    emergence: Optional[ShareToCome] = None
    # Germination; goes with emergence. No default. Range: above 0 and up to 100 %.
    germination: Optional[RatioQuantity] = None
    # Seeds that the germination test counted. Default 400 seeds, as the international rules for seed testing count; from memory.
    germination_seeds_tested: Optional[int] = None
    # Relative standard uncertainty of the kernel mass. Default 2 %: judgement, no published source: a thousand kernels counted and weighed twice. Range: 0 to 50 %.
    kernel_mass_uncertainty: Optional[RatioQuantity] = None
    # The highest rate that may be sown by mass; needs thousandKernelMass. No default. Range: above 0 and up to 100000 kg/ha.
    maximum_rate: Optional[MassPerAreaQuantity] = None
    # The highest rate that may be sown, in pure seeds per area. Give this or maximumRate. No default. Range: above 0 and up to 100000 /m2.
    maximum_seeds_per_area: Optional[CountPerAreaQuantity] = None
    # Relative standard uncertainty of what the meter puts down. Default 2.887 %: published acceptance limit of 5 % of the rate (Field and Solie 2007), taken as rectangular. Range: 0 to 50 %.
    metering_uncertainty: Optional[RatioQuantity] = None
    # The stand that has to be reached. Range: above 0 and up to 100000 /m2.
    minimum_stand: Optional[CountPerAreaQuantity] = None
    # Price of the seed; with thousandKernelMass the answer has what the margin costs.
    price: Optional[Price] = None
    # Probability with which it has to be reached. Default 0.9, nine seasons of ten; judgement, no published source.
    probability: Optional[float] = None
    # Share of the mass that is pure seed; goes with thousandKernelMass. Default 100 %: not stated, so all of the mass is taken as pure seed; judgement, no published source; the seed tag says it. Range: above 0 and up to 100 %.
    purity: Optional[RatioQuantity] = None
    # A rate of your own by mass; needs thousandKernelMass. No default. Range: above 0 and up to 100000 kg/ha.
    rate: Optional[MassPerAreaQuantity] = None
    # A rate of your own, in pure seeds per area. Give this or rate; the answer has its probability. No default. Range: above 0 and up to 100000 /m2.
    seeds_per_area: Optional[CountPerAreaQuantity] = None
    # Plants per pure seed, germination being part of it. Give this or emergence.
    survival: Optional[ShareToCome] = None
    # Thousand-kernel mass of the seed as sown; gives rates by mass. No default. Range: above 0 and up to 5000 g/1000.
    thousand_kernel_mass: Optional[MassPerThousandQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> StandRiskRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: StandRiskRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return StandRiskRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .count_per_area_quantity import CountPerAreaQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_per_thousand_quantity import MassPerThousandQuantity
        from .price import Price
        from .ratio_quantity import RatioQuantity
        from .share_to_come import ShareToCome

        from .area_quantity import AreaQuantity
        from .count_per_area_quantity import CountPerAreaQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_per_thousand_quantity import MassPerThousandQuantity
        from .price import Price
        from .ratio_quantity import RatioQuantity
        from .share_to_come import ShareToCome

        fields: dict[str, Callable[[Any], None]] = {
            "area": lambda n : setattr(self, 'area', n.get_object_value(AreaQuantity)),
            "emergence": lambda n : setattr(self, 'emergence', n.get_object_value(ShareToCome)),
            "germination": lambda n : setattr(self, 'germination', n.get_object_value(RatioQuantity)),
            "germinationSeedsTested": lambda n : setattr(self, 'germination_seeds_tested', n.get_int_value()),
            "kernelMassUncertainty": lambda n : setattr(self, 'kernel_mass_uncertainty', n.get_object_value(RatioQuantity)),
            "maximumRate": lambda n : setattr(self, 'maximum_rate', n.get_object_value(MassPerAreaQuantity)),
            "maximumSeedsPerArea": lambda n : setattr(self, 'maximum_seeds_per_area', n.get_object_value(CountPerAreaQuantity)),
            "meteringUncertainty": lambda n : setattr(self, 'metering_uncertainty', n.get_object_value(RatioQuantity)),
            "minimumStand": lambda n : setattr(self, 'minimum_stand', n.get_object_value(CountPerAreaQuantity)),
            "price": lambda n : setattr(self, 'price', n.get_object_value(Price)),
            "probability": lambda n : setattr(self, 'probability', n.get_float_value()),
            "purity": lambda n : setattr(self, 'purity', n.get_object_value(RatioQuantity)),
            "rate": lambda n : setattr(self, 'rate', n.get_object_value(MassPerAreaQuantity)),
            "seedsPerArea": lambda n : setattr(self, 'seeds_per_area', n.get_object_value(CountPerAreaQuantity)),
            "survival": lambda n : setattr(self, 'survival', n.get_object_value(ShareToCome)),
            "thousandKernelMass": lambda n : setattr(self, 'thousand_kernel_mass', n.get_object_value(MassPerThousandQuantity)),
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
        writer.write_object_value("area", self.area)
        writer.write_object_value("emergence", self.emergence)
        writer.write_object_value("germination", self.germination)
        writer.write_int_value("germinationSeedsTested", self.germination_seeds_tested)
        writer.write_object_value("kernelMassUncertainty", self.kernel_mass_uncertainty)
        writer.write_object_value("maximumRate", self.maximum_rate)
        writer.write_object_value("maximumSeedsPerArea", self.maximum_seeds_per_area)
        writer.write_object_value("meteringUncertainty", self.metering_uncertainty)
        writer.write_object_value("minimumStand", self.minimum_stand)
        writer.write_object_value("price", self.price)
        writer.write_float_value("probability", self.probability)
        writer.write_object_value("purity", self.purity)
        writer.write_object_value("rate", self.rate)
        writer.write_object_value("seedsPerArea", self.seeds_per_area)
        writer.write_object_value("survival", self.survival)
        writer.write_object_value("thousandKernelMass", self.thousand_kernel_mass)
    

