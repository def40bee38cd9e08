from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .disturbed_point_of_plan import DisturbedPointOfPlan
    from .length_quantity import LengthQuantity
    from .meter_of_machine import MeterOfMachine
    from .tank_of_machine import TankOfMachine

@dataclass
class MachineAnswer(AdditionalDataHolder, Parsable):
    """
    A machine as stored.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # When it was created (UTC).
    created_at: Optional[datetime.datetime] = None
    # How its meters are driven: `separate` drives (the default) or a `shared-shaft`.
    drive: Optional[str] = None
    # Id, a UUID of version 7.
    id: Optional[str] = None
    # Its meters, each under one position.
    meters: Optional[list[MeterOfMachine]] = None
    # What the owner calls it.
    name: Optional[str] = None
    # A remark in the owner's words.
    note: Optional[str] = None
    # Its openers.
    opener: Optional[str] = None
    # Width over which an opener spreads seed and fertilizer, measured in the field; at most the row spacing.
    opener_spread: Optional[LengthQuantity] = None
    # What a test disturbs on this machine and has to be put back, in the owner's words.
    restore_points: Optional[list[DisturbedPointOfPlan]] = None
    # No longer in use: takes no new evidence, and lists leave it out unless asked. Default false.
    retired: Optional[bool] = None
    # 1 when created, one more with each change.
    revision: Optional[int] = None
    # Distance between two rows.
    row_spacing: Optional[LengthQuantity] = None
    # Its tanks.
    tanks: Optional[list[TankOfMachine]] = None
    # Time zone by its IANA name, for example Europe/Vienna: days and months in answers are those of this zone. Default Etc/UTC.
    time_zone: Optional[str] = None
    # When it was changed last (UTC).
    updated_at: Optional[datetime.datetime] = None
    # Width that the machine works.
    working_width: Optional[LengthQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> MachineAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: MachineAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return MachineAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .disturbed_point_of_plan import DisturbedPointOfPlan
        from .length_quantity import LengthQuantity
        from .meter_of_machine import MeterOfMachine
        from .tank_of_machine import TankOfMachine

        from .disturbed_point_of_plan import DisturbedPointOfPlan
        from .length_quantity import LengthQuantity
        from .meter_of_machine import MeterOfMachine
        from .tank_of_machine import TankOfMachine

        fields: dict[str, Callable[[Any], None]] = {
            "createdAt": lambda n : setattr(self, 'created_at', n.get_datetime_value()),
            "drive": lambda n : setattr(self, 'drive', n.get_str_value()),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "meters": lambda n : setattr(self, 'meters', n.get_collection_of_object_values(MeterOfMachine)),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "note": lambda n : setattr(self, 'note', n.get_str_value()),
            "opener": lambda n : setattr(self, 'opener', n.get_str_value()),
            "openerSpread": lambda n : setattr(self, 'opener_spread', n.get_object_value(LengthQuantity)),
            "restorePoints": lambda n : setattr(self, 'restore_points', n.get_collection_of_object_values(DisturbedPointOfPlan)),
            "retired": lambda n : setattr(self, 'retired', n.get_bool_value()),
            "revision": lambda n : setattr(self, 'revision', n.get_int_value()),
            "rowSpacing": lambda n : setattr(self, 'row_spacing', n.get_object_value(LengthQuantity)),
            "tanks": lambda n : setattr(self, 'tanks', n.get_collection_of_object_values(TankOfMachine)),
            "timeZone": lambda n : setattr(self, 'time_zone', n.get_str_value()),
            "updatedAt": lambda n : setattr(self, 'updated_at', n.get_datetime_value()),
            "workingWidth": lambda n : setattr(self, 'working_width', n.get_object_value(LengthQuantity)),
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
        writer.write_datetime_value("createdAt", self.created_at)
        writer.write_str_value("drive", self.drive)
        writer.write_str_value("id", self.id)
        writer.write_collection_of_object_values("meters", self.meters)
        writer.write_str_value("name", self.name)
        writer.write_str_value("note", self.note)
        writer.write_str_value("opener", self.opener)
        writer.write_object_value("openerSpread", self.opener_spread)
        writer.write_collection_of_object_values("restorePoints", self.restore_points)
        writer.write_bool_value("retired", self.retired)
        writer.write_int_value("revision", self.revision)
        writer.write_object_value("rowSpacing", self.row_spacing)
        writer.write_collection_of_object_values("tanks", self.tanks)
        writer.write_str_value("timeZone", self.time_zone)
        writer.write_datetime_value("updatedAt", self.updated_at)
        writer.write_object_value("workingWidth", self.working_width)
        writer.write_additional_data_value(self.additional_data)
    

