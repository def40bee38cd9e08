from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .ratio_quantity import RatioQuantity
    from .start_value_of_lot_unit import StartValueOfLot_unit

@dataclass
class StartValueOfLot(AdditionalDataHolder, Parsable):
    """
    A value to plan a catch with.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Its standard uncertainty, relative.
    relative_uncertainty: Optional[RatioQuantity] = None
    # The unit, written exactly as in `GET /v1/units`.
    unit: Optional[StartValueOfLot_unit] = None
    # The number, in the unit beside it.
    value: Optional[float] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> StartValueOfLot:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: StartValueOfLot
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return StartValueOfLot()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .ratio_quantity import RatioQuantity
        from .start_value_of_lot_unit import StartValueOfLot_unit

        from .ratio_quantity import RatioQuantity
        from .start_value_of_lot_unit import StartValueOfLot_unit

        fields: dict[str, Callable[[Any], None]] = {
            "relativeUncertainty": lambda n : setattr(self, 'relative_uncertainty', n.get_object_value(RatioQuantity)),
            "unit": lambda n : setattr(self, 'unit', n.get_enum_value(StartValueOfLot_unit)),
            "value": lambda n : setattr(self, 'value', n.get_float_value()),
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
        writer.write_object_value("relativeUncertainty", self.relative_uncertainty)
        writer.write_enum_value("unit", self.unit)
        writer.write_float_value("value", self.value)
        writer.write_additional_data_value(self.additional_data)
    

