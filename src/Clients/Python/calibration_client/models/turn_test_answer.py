from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .mass_quantity import MassQuantity
    from .revolutions_quantity import RevolutionsQuantity

@dataclass
class TurnTestAnswer(AdditionalDataHolder, Parsable):
    """
    One turn test as evaluated.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Area that the machine would have worked meanwhile.
    area: Optional[AreaQuantity] = None
    # Mass from all outlets, those not caught included.
    metered: Optional[MassQuantity] = None
    # Rate of this test alone.
    rate: Optional[MassPerAreaQuantity] = None
    # Turns of the drive wheel.
    turns: Optional[RevolutionsQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> TurnTestAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: TurnTestAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return TurnTestAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_quantity import MassQuantity
        from .revolutions_quantity import RevolutionsQuantity

        from .area_quantity import AreaQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_quantity import MassQuantity
        from .revolutions_quantity import RevolutionsQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "area": lambda n : setattr(self, 'area', n.get_object_value(AreaQuantity)),
            "metered": lambda n : setattr(self, 'metered', n.get_object_value(MassQuantity)),
            "rate": lambda n : setattr(self, 'rate', n.get_object_value(MassPerAreaQuantity)),
            "turns": lambda n : setattr(self, 'turns', n.get_object_value(RevolutionsQuantity)),
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
        writer.write_object_value("metered", self.metered)
        writer.write_object_value("rate", self.rate)
        writer.write_object_value("turns", self.turns)
        writer.write_additional_data_value(self.additional_data)
    

