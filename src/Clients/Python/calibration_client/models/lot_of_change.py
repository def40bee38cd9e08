from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .density_of_lot import DensityOfLot
    from .mass_per_thousand_quantity import MassPerThousandQuantity
    from .ratio_quantity import RatioQuantity

@dataclass
class LotOfChange(Parsable):
    """
    What is known of a lot. The more, the surer the answer.
    """
    # Bulk density as it lies in the tank. No default. Range: 10 to 10000 kg/m3.
    bulk_density: Optional[DensityOfLot] = None
    # Share of the pure seeds that germinate. No default. Range: above 0 and up to 100 %.
    germination: Optional[RatioQuantity] = None
    # What the owner calls it.
    name: Optional[str] = None
    # Share of the mass that is pure seed. Default 100 %: not stated, so all of the mass is taken as pure seed; judgement, no published source; the seed tag says it. Range: above 0 and up to 100 %.
    purity: Optional[RatioQuantity] = None
    # Mass of a thousand kernels as sown, treatment included. No default. Range: above 0 and up to 5000 g/1000.
    thousand_kernel_mass: Optional[MassPerThousandQuantity] = None
    # Treatment in the owner's words; leave it out for untreated seed. Two lots have the same treatment when the words are the same, or both have none.
    treatment: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> LotOfChange:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: LotOfChange
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return LotOfChange()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .density_of_lot import DensityOfLot
        from .mass_per_thousand_quantity import MassPerThousandQuantity
        from .ratio_quantity import RatioQuantity

        from .density_of_lot import DensityOfLot
        from .mass_per_thousand_quantity import MassPerThousandQuantity
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "bulkDensity": lambda n : setattr(self, 'bulk_density', n.get_object_value(DensityOfLot)),
            "germination": lambda n : setattr(self, 'germination', n.get_object_value(RatioQuantity)),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "purity": lambda n : setattr(self, 'purity', n.get_object_value(RatioQuantity)),
            "thousandKernelMass": lambda n : setattr(self, 'thousand_kernel_mass', n.get_object_value(MassPerThousandQuantity)),
            "treatment": lambda n : setattr(self, 'treatment', n.get_str_value()),
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
        writer.write_object_value("bulkDensity", self.bulk_density)
        writer.write_object_value("germination", self.germination)
        writer.write_str_value("name", self.name)
        writer.write_object_value("purity", self.purity)
        writer.write_object_value("thousandKernelMass", self.thousand_kernel_mass)
        writer.write_str_value("treatment", self.treatment)
    

