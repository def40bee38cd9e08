from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_quantity import MassQuantity

@dataclass
class ScaleAnswer(AdditionalDataHolder, Parsable):
    """
    A scale as stored.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Class on the data plate of a verified scale, as OIML R 76 names it: I, II, III or IIII.
    accuracy_class: Optional[str] = None
    # Largest load, container included.
    capacity: Optional[MassQuantity] = None
    # When it was created (UTC).
    created_at: Optional[datetime.datetime] = None
    # Days after which a check is overdue. Default 365: judgement, no published source.
    days_between_checks: Optional[int] = None
    # Smallest step of the display.
    division: Optional[MassQuantity] = None
    # Id, a UUID of version 7.
    id: Optional[str] = None
    # What the owner calls it.
    name: Optional[str] = None
    # A remark in the owner's words.
    note: Optional[str] = None
    # No longer in use: takes no new evidence, and lists leave it out unless asked. Default false.
    retired: Optional[bool] = None
    # 1 when created, one more with each change.
    revision: Optional[int] = None
    # Limit of error stated by the maker or owner; goes before the class.
    stated_accuracy: Optional[MassQuantity] = None
    # When it was changed last (UTC).
    updated_at: Optional[datetime.datetime] = None
    # Verification interval e of the data plate. Default the division: common practice, as on most verified scales (OIML R 76).
    verification_interval: Optional[MassQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> ScaleAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: ScaleAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return ScaleAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_quantity import MassQuantity

        from .mass_quantity import MassQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "accuracyClass": lambda n : setattr(self, 'accuracy_class', n.get_str_value()),
            "capacity": lambda n : setattr(self, 'capacity', n.get_object_value(MassQuantity)),
            "createdAt": lambda n : setattr(self, 'created_at', n.get_datetime_value()),
            "daysBetweenChecks": lambda n : setattr(self, 'days_between_checks', n.get_int_value()),
            "division": lambda n : setattr(self, 'division', n.get_object_value(MassQuantity)),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "note": lambda n : setattr(self, 'note', n.get_str_value()),
            "retired": lambda n : setattr(self, 'retired', n.get_bool_value()),
            "revision": lambda n : setattr(self, 'revision', n.get_int_value()),
            "statedAccuracy": lambda n : setattr(self, 'stated_accuracy', n.get_object_value(MassQuantity)),
            "updatedAt": lambda n : setattr(self, 'updated_at', n.get_datetime_value()),
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
        writer.write_str_value("accuracyClass", self.accuracy_class)
        writer.write_object_value("capacity", self.capacity)
        writer.write_datetime_value("createdAt", self.created_at)
        writer.write_int_value("daysBetweenChecks", self.days_between_checks)
        writer.write_object_value("division", self.division)
        writer.write_str_value("id", self.id)
        writer.write_str_value("name", self.name)
        writer.write_str_value("note", self.note)
        writer.write_bool_value("retired", self.retired)
        writer.write_int_value("revision", self.revision)
        writer.write_object_value("statedAccuracy", self.stated_accuracy)
        writer.write_datetime_value("updatedAt", self.updated_at)
        writer.write_object_value("verificationInterval", self.verification_interval)
        writer.write_additional_data_value(self.additional_data)
    

