from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .meter_speed_answer import MeterSpeedAnswer
    from .new_lot_answer import NewLotAnswer
    from .seeding_rate_answer import SeedingRateAnswer
    from .value_of_element import ValueOfElement

@dataclass
class MeterSetUpAnswer(AdditionalDataHolder, Parsable):
    """
    Rates and set-up of one meter.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The element that the plan names.
    element: Optional[str] = None
    # Name of the lot; absent when the plan names none.
    lot: Optional[str] = None
    # Position of the meter.
    meter: Optional[str] = None
    # Meter speeds, windows and the best element; absent without a rate or a mass per revolution, and at a rate of zero.
    meter_speed: Optional[MeterSpeedAnswer] = None
    # What it means that the lot is another one than when the value in force was adopted; absent when it is the same, when one of the two is not known, and at a rate of zero.
    new_lot: Optional[NewLotAnswer] = None
    # Name of the product.
    product: Optional[str] = None
    # Rate to be put down; absent while it cannot be told.
    rate: Optional[MassPerAreaQuantity] = None
    # Where the rate comes from: the plan's own `target-rate`, its `stand`, or its `nutrients`.
    rate_from: Optional[str] = None
    # How the rate follows from the stand; absent otherwise.
    seeding_rate: Optional[SeedingRateAnswer] = None
    # The masses per revolution behind meterSpeed, one for each element of which something is known.
    values: Optional[list[ValueOfElement]] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> MeterSetUpAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: MeterSetUpAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return MeterSetUpAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .meter_speed_answer import MeterSpeedAnswer
        from .new_lot_answer import NewLotAnswer
        from .seeding_rate_answer import SeedingRateAnswer
        from .value_of_element import ValueOfElement

        from .mass_per_area_quantity import MassPerAreaQuantity
        from .meter_speed_answer import MeterSpeedAnswer
        from .new_lot_answer import NewLotAnswer
        from .seeding_rate_answer import SeedingRateAnswer
        from .value_of_element import ValueOfElement

        fields: dict[str, Callable[[Any], None]] = {
            "element": lambda n : setattr(self, 'element', n.get_str_value()),
            "lot": lambda n : setattr(self, 'lot', n.get_str_value()),
            "meter": lambda n : setattr(self, 'meter', n.get_str_value()),
            "meterSpeed": lambda n : setattr(self, 'meter_speed', n.get_object_value(MeterSpeedAnswer)),
            "newLot": lambda n : setattr(self, 'new_lot', n.get_object_value(NewLotAnswer)),
            "product": lambda n : setattr(self, 'product', n.get_str_value()),
            "rate": lambda n : setattr(self, 'rate', n.get_object_value(MassPerAreaQuantity)),
            "rateFrom": lambda n : setattr(self, 'rate_from', n.get_str_value()),
            "seedingRate": lambda n : setattr(self, 'seeding_rate', n.get_object_value(SeedingRateAnswer)),
            "values": lambda n : setattr(self, 'values', n.get_collection_of_object_values(ValueOfElement)),
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
        writer.write_str_value("element", self.element)
        writer.write_str_value("lot", self.lot)
        writer.write_str_value("meter", self.meter)
        writer.write_object_value("meterSpeed", self.meter_speed)
        writer.write_object_value("newLot", self.new_lot)
        writer.write_str_value("product", self.product)
        writer.write_object_value("rate", self.rate)
        writer.write_str_value("rateFrom", self.rate_from)
        writer.write_object_value("seedingRate", self.seeding_rate)
        writer.write_collection_of_object_values("values", self.values)
        writer.write_additional_data_value(self.additional_data)
    

