from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .rotation_quantity import RotationQuantity
    from .supersedes import Supersedes
    from .typed_number import TypedNumber

@dataclass
class AdoptionRequest(Parsable):
    """
    A value that was typed into a controller: who, why, from which test or stated by hand.
    """
    # Metering element fitted.
    element: Optional[str] = None
    # The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default: the service makes one.
    id: Optional[str] = None
    # Id of the lot in the tank.
    lot: Optional[str] = None
    # Id of the machine.
    machine: Optional[str] = None
    # Position of the meter on the machine.
    meter: Optional[str] = None
    # The meter speed at which a mass per time applies; needed for that form only. No default. Range: above 0 and up to 10000 rpm.
    meter_speed: Optional[RotationQuantity] = None
    # When it was typed in, RFC 3339 with offset.
    occurred_at: Optional[datetime.datetime] = None
    # Id of the product.
    product: Optional[str] = None
    # Who typed it in.
    recorded_by: Optional[str] = None
    # Setting of the meter; none when absent.
    setting: Optional[str] = None
    # The wrong adoption that this one takes the place of.
    supersedes: Optional[Supersedes] = None
    # Id of the catch test that the value rests on; absent when it is stated by hand.
    test: Optional[str] = None
    # The number that was typed in, in the unit of the controller's form.
    typed_in: Optional[TypedNumber] = None
    # Why it was adopted.
    why: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> AdoptionRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: AdoptionRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return AdoptionRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .rotation_quantity import RotationQuantity
        from .supersedes import Supersedes
        from .typed_number import TypedNumber

        from .rotation_quantity import RotationQuantity
        from .supersedes import Supersedes
        from .typed_number import TypedNumber

        fields: dict[str, Callable[[Any], None]] = {
            "element": lambda n : setattr(self, 'element', n.get_str_value()),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "lot": lambda n : setattr(self, 'lot', n.get_str_value()),
            "machine": lambda n : setattr(self, 'machine', n.get_str_value()),
            "meter": lambda n : setattr(self, 'meter', n.get_str_value()),
            "meterSpeed": lambda n : setattr(self, 'meter_speed', n.get_object_value(RotationQuantity)),
            "occurredAt": lambda n : setattr(self, 'occurred_at', n.get_datetime_value()),
            "product": lambda n : setattr(self, 'product', n.get_str_value()),
            "recordedBy": lambda n : setattr(self, 'recorded_by', n.get_str_value()),
            "setting": lambda n : setattr(self, 'setting', n.get_str_value()),
            "supersedes": lambda n : setattr(self, 'supersedes', n.get_object_value(Supersedes)),
            "test": lambda n : setattr(self, 'test', n.get_str_value()),
            "typedIn": lambda n : setattr(self, 'typed_in', n.get_object_value(TypedNumber)),
            "why": lambda n : setattr(self, 'why', n.get_str_value()),
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
        writer.write_str_value("id", self.id)
        writer.write_str_value("lot", self.lot)
        writer.write_str_value("machine", self.machine)
        writer.write_str_value("meter", self.meter)
        writer.write_object_value("meterSpeed", self.meter_speed)
        writer.write_datetime_value("occurredAt", self.occurred_at)
        writer.write_str_value("product", self.product)
        writer.write_str_value("recordedBy", self.recorded_by)
        writer.write_str_value("setting", self.setting)
        writer.write_object_value("supersedes", self.supersedes)
        writer.write_str_value("test", self.test)
        writer.write_object_value("typedIn", self.typed_in)
        writer.write_str_value("why", self.why)
    

