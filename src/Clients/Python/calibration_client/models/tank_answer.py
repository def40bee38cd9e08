from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .mass_quantity import MassQuantity

@dataclass
class TankAnswer(AdditionalDataHolder, Parsable):
    """
    What a tank holds.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Area that a fill covers; absent without a rate.
    area: Optional[AreaQuantity] = None
    # Mass at the lower end of the interval of the density.
    least_mass: Optional[MassQuantity] = None
    # Mass of a fill.
    mass: Optional[MassQuantity] = None
    # Mass at the upper end.
    most_mass: Optional[MassQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> TankAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: TankAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return TankAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .mass_quantity import MassQuantity

        from .area_quantity import AreaQuantity
        from .mass_quantity import MassQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "area": lambda n : setattr(self, 'area', n.get_object_value(AreaQuantity)),
            "leastMass": lambda n : setattr(self, 'least_mass', n.get_object_value(MassQuantity)),
            "mass": lambda n : setattr(self, 'mass', n.get_object_value(MassQuantity)),
            "mostMass": lambda n : setattr(self, 'most_mass', n.get_object_value(MassQuantity)),
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
        writer.write_object_value("leastMass", self.least_mass)
        writer.write_object_value("mass", self.mass)
        writer.write_object_value("mostMass", self.most_mass)
        writer.write_additional_data_value(self.additional_data)
    

