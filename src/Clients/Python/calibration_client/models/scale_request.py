from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_quantity import MassQuantity
    from .scale_request_accuracy_class import ScaleRequest_accuracyClass

@dataclass
class ScaleRequest(Parsable):
    """
    A scale. Its span error comes from its checks, which are evidence of their own.
    """
    # Class on the data plate of a verified scale, as OIML R 76 names it: I, II, III or IIII.
    accuracy_class: Optional[ScaleRequest_accuracyClass] = None
    # Largest load, container included. No default. Range: above 0 and up to 1000 t.
    capacity: Optional[MassQuantity] = None
    # Days after which a check is overdue. Default 365: judgement, no published source.
    days_between_checks: Optional[int] = None
    # Smallest step of the display. Range: above 0 and up to 100 kg.
    division: Optional[MassQuantity] = None
    # The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default: the service makes one. May be repeated, unchanged, when replacing.
    id: Optional[str] = None
    # What the owner calls it.
    name: Optional[str] = None
    # A remark in the owner's words.
    note: Optional[str] = None
    # No longer in use: takes no new evidence, and lists leave it out unless asked. Default false.
    retired: Optional[bool] = None
    # Limit of error stated by the maker or owner; goes before the class. No default. Range: above 0 and up to 1000 kg.
    stated_accuracy: Optional[MassQuantity] = None
    # Verification interval e of the data plate. Default the division: common practice, as on most verified scales (OIML R 76). Range: above 0 and up to 100 kg.
    verification_interval: Optional[MassQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ScaleRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ScaleRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ScaleRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_quantity import MassQuantity
        from .scale_request_accuracy_class import ScaleRequest_accuracyClass

        from .mass_quantity import MassQuantity
        from .scale_request_accuracy_class import ScaleRequest_accuracyClass

        fields: dict[str, Callable[[Any], None]] = {
            "accuracyClass": lambda n : setattr(self, 'accuracy_class', n.get_enum_value(ScaleRequest_accuracyClass)),
            "capacity": lambda n : setattr(self, 'capacity', n.get_object_value(MassQuantity)),
            "daysBetweenChecks": lambda n : setattr(self, 'days_between_checks', n.get_int_value()),
            "division": lambda n : setattr(self, 'division', n.get_object_value(MassQuantity)),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "note": lambda n : setattr(self, 'note', n.get_str_value()),
            "retired": lambda n : setattr(self, 'retired', n.get_bool_value()),
            "statedAccuracy": lambda n : setattr(self, 'stated_accuracy', n.get_object_value(MassQuantity)),
            "verificationInterval": lambda n : setattr(self, 'verification_interval', n.get_object_value(MassQuantity)),
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
        writer.write_enum_value("accuracyClass", self.accuracy_class)
        writer.write_object_value("capacity", self.capacity)
        writer.write_int_value("daysBetweenChecks", self.days_between_checks)
        writer.write_object_value("division", self.division)
        writer.write_str_value("id", self.id)
        writer.write_str_value("name", self.name)
        writer.write_str_value("note", self.note)
        writer.write_bool_value("retired", self.retired)
        writer.write_object_value("statedAccuracy", self.stated_accuracy)
        writer.write_object_value("verificationInterval", self.verification_interval)
    

