from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .count_per_area_quantity import CountPerAreaQuantity
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .mass_per_thousand_quantity import MassPerThousandQuantity
    from .ratio_quantity import RatioQuantity

@dataclass
class SownSeed(Parsable):
    """
    What was sown, as seeds per area or as a mass per area with the mass of a kernel.
    """
    # Germination; with it emergence is told beside survival. No default. Range: above 0 and up to 100 %.
    germination: Optional[RatioQuantity] = None
    # Share of the mass that is pure seed; goes with rate. Default 100 %: not stated, so all of the mass is taken as pure seed; judgement, no published source; the seed tag says it. Range: above 0 and up to 100 %.
    purity: Optional[RatioQuantity] = None
    # Mass sown per area. No default. Range: above 0 and up to 100000 kg/ha.
    rate: Optional[MassPerAreaQuantity] = None
    # Pure seeds sown per area. Give this, or rate with thousandKernelMass. No default. Range: above 0 and up to 100000 /m2.
    seeds_per_area: Optional[CountPerAreaQuantity] = None
    # Thousand-kernel mass of the seed as sown; goes with rate. No default. Range: above 0 and up to 5000 g/1000.
    thousand_kernel_mass: Optional[MassPerThousandQuantity] = None
    # Relative standard uncertainty of the seeds that were put down. Default 2.887 %: published acceptance limit of 5 % of the rate (Field and Solie 2007), taken as rectangular. Range: 0 to 50 %.
    uncertainty: Optional[RatioQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> SownSeed:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: SownSeed
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return SownSeed()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .count_per_area_quantity import CountPerAreaQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_per_thousand_quantity import MassPerThousandQuantity
        from .ratio_quantity import RatioQuantity

        from .count_per_area_quantity import CountPerAreaQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_per_thousand_quantity import MassPerThousandQuantity
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "germination": lambda n : setattr(self, 'germination', n.get_object_value(RatioQuantity)),
            "purity": lambda n : setattr(self, 'purity', n.get_object_value(RatioQuantity)),
            "rate": lambda n : setattr(self, 'rate', n.get_object_value(MassPerAreaQuantity)),
            "seedsPerArea": lambda n : setattr(self, 'seeds_per_area', n.get_object_value(CountPerAreaQuantity)),
            "thousandKernelMass": lambda n : setattr(self, 'thousand_kernel_mass', n.get_object_value(MassPerThousandQuantity)),
            "uncertainty": lambda n : setattr(self, 'uncertainty', n.get_object_value(RatioQuantity)),
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
        writer.write_object_value("germination", self.germination)
        writer.write_object_value("purity", self.purity)
        writer.write_object_value("rate", self.rate)
        writer.write_object_value("seedsPerArea", self.seeds_per_area)
        writer.write_object_value("thousandKernelMass", self.thousand_kernel_mass)
        writer.write_object_value("uncertainty", self.uncertainty)
    

