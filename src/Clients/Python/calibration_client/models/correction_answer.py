from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .ratio_quantity import RatioQuantity

@dataclass
class CorrectionAnswer(AdditionalDataHolder, Parsable):
    """
    A correction in proportion.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Target over rate found: what to multiply the setting by.
    factor: Optional[RatioQuantity] = None
    # Meter revolutions per turn times that factor, for a machine that is set by its gears; absent when no gearing was stated.
    meter_revolutions_per_turn: Optional[RatioQuantity] = None
    # The setting times that factor, as a plain number on the machine's own marks; absent when no setting was stated.
    setting: Optional[float] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> CorrectionAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: CorrectionAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return CorrectionAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .ratio_quantity import RatioQuantity

        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "factor": lambda n : setattr(self, 'factor', n.get_object_value(RatioQuantity)),
            "meterRevolutionsPerTurn": lambda n : setattr(self, 'meter_revolutions_per_turn', n.get_object_value(RatioQuantity)),
            "setting": lambda n : setattr(self, 'setting', n.get_float_value()),
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
        writer.write_object_value("factor", self.factor)
        writer.write_object_value("meterRevolutionsPerTurn", self.meter_revolutions_per_turn)
        writer.write_float_value("setting", self.setting)
        writer.write_additional_data_value(self.additional_data)
    

