from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_quantity import MassQuantity

@dataclass
class BoundAnswer(AdditionalDataHolder, Parsable):
    """
    One bound on a catch.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # What bounds it. Known today: `container`, `scale-capacity`, `lift-limit`, `longest-run`, `shared-shaft`.
    bound: Optional[str] = None
    # Largest net mass that it allows; for the container with its overflow margin.
    mass: Optional[MassQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> BoundAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: BoundAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return BoundAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_quantity import MassQuantity

        from .mass_quantity import MassQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "bound": lambda n : setattr(self, 'bound', n.get_str_value()),
            "mass": lambda n : setattr(self, 'mass', n.get_object_value(MassQuantity)),
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
        writer.write_str_value("bound", self.bound)
        writer.write_object_value("mass", self.mass)
        writer.write_additional_data_value(self.additional_data)
    

