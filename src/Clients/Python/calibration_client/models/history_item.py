from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .history_value import HistoryValue
    from .ratio_quantity import RatioQuantity

@dataclass
class HistoryItem(AdditionalDataHolder, Parsable):
    """
    One line of what happened.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Change that a test found.
    change: Optional[RatioQuantity] = None
    # Metering element.
    element: Optional[str] = None
    # Id of the record; read it whole under the path of its kind.
    id: Optional[str] = None
    # What it is: `catch-test`, `adoption` or `scale-check`.
    kind: Optional[str] = None
    # The date of that in the machine's time zone; UTC for scale checks.
    local_date: Optional[datetime.date] = None
    # Id of the lot.
    lot: Optional[str] = None
    # Id of the machine.
    machine: Optional[str] = None
    # The mass per revolution found or adopted.
    mass_per_revolution: Optional[HistoryValue] = None
    # Position of the meter.
    meter: Optional[str] = None
    # When it happened, with the offset it was entered with.
    occurred_at: Optional[datetime.datetime] = None
    # Id of the plan.
    plan: Optional[str] = None
    # Id of the product.
    product: Optional[str] = None
    # Why it was adopted, or why it supersedes another.
    reason: Optional[str] = None
    # When the service received it.
    received_at: Optional[datetime.datetime] = None
    # Who recorded it.
    recorded_by: Optional[str] = None
    # Id of the scale.
    scale: Optional[str] = None
    # Span error that a scale check found.
    scale_error: Optional[RatioQuantity] = None
    # Setting of the meter.
    setting: Optional[str] = None
    # The record that took its place; absent while it stands.
    superseded_by: Optional[str] = None
    # The record that it took the place of.
    supersedes: Optional[str] = None
    # Verdict of a test; passed or failed for a scale check. Known today: `investigate`, `repeat`, `keep`, `adopt`, `passed`, `failed`.
    verdict: Optional[str] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> HistoryItem:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: HistoryItem
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return HistoryItem()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .history_value import HistoryValue
        from .ratio_quantity import RatioQuantity

        from .history_value import HistoryValue
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "change": lambda n : setattr(self, 'change', n.get_object_value(RatioQuantity)),
            "element": lambda n : setattr(self, 'element', n.get_str_value()),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "kind": lambda n : setattr(self, 'kind', n.get_str_value()),
            "localDate": lambda n : setattr(self, 'local_date', n.get_date_value()),
            "lot": lambda n : setattr(self, 'lot', n.get_str_value()),
            "machine": lambda n : setattr(self, 'machine', n.get_str_value()),
            "massPerRevolution": lambda n : setattr(self, 'mass_per_revolution', n.get_object_value(HistoryValue)),
            "meter": lambda n : setattr(self, 'meter', n.get_str_value()),
            "occurredAt": lambda n : setattr(self, 'occurred_at', n.get_datetime_value()),
            "plan": lambda n : setattr(self, 'plan', n.get_str_value()),
            "product": lambda n : setattr(self, 'product', n.get_str_value()),
            "reason": lambda n : setattr(self, 'reason', n.get_str_value()),
            "receivedAt": lambda n : setattr(self, 'received_at', n.get_datetime_value()),
            "recordedBy": lambda n : setattr(self, 'recorded_by', n.get_str_value()),
            "scale": lambda n : setattr(self, 'scale', n.get_str_value()),
            "scaleError": lambda n : setattr(self, 'scale_error', n.get_object_value(RatioQuantity)),
            "setting": lambda n : setattr(self, 'setting', n.get_str_value()),
            "supersededBy": lambda n : setattr(self, 'superseded_by', n.get_str_value()),
            "supersedes": lambda n : setattr(self, 'supersedes', n.get_str_value()),
            "verdict": lambda n : setattr(self, 'verdict', n.get_str_value()),
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
        writer.write_object_value("change", self.change)
        writer.write_str_value("element", self.element)
        writer.write_str_value("id", self.id)
        writer.write_str_value("kind", self.kind)
        writer.write_date_value("localDate", self.local_date)
        writer.write_str_value("lot", self.lot)
        writer.write_str_value("machine", self.machine)
        writer.write_object_value("massPerRevolution", self.mass_per_revolution)
        writer.write_str_value("meter", self.meter)
        writer.write_datetime_value("occurredAt", self.occurred_at)
        writer.write_str_value("plan", self.plan)
        writer.write_str_value("product", self.product)
        writer.write_str_value("reason", self.reason)
        writer.write_datetime_value("receivedAt", self.received_at)
        writer.write_str_value("recordedBy", self.recorded_by)
        writer.write_str_value("scale", self.scale)
        writer.write_object_value("scaleError", self.scale_error)
        writer.write_str_value("setting", self.setting)
        writer.write_str_value("supersededBy", self.superseded_by)
        writer.write_str_value("supersedes", self.supersedes)
        writer.write_str_value("verdict", self.verdict)
        writer.write_additional_data_value(self.additional_data)
    

