from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .used_day_to_day import UsedDayToDay
    from .used_repeatability import UsedRepeatability
    from .used_scale_check import UsedScaleCheck
    from .used_value_in_force import UsedValueInForce

@dataclass
class UsedHistory(AdditionalDataHolder, Parsable):
    """
    What a stored test took from the history instead of defaults; absent members took nothing from it.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Day-to-day component from earlier tests of the series.
    day_to_day: Optional[UsedDayToDay] = None
    # Repeatability from earlier catches of the series (meter, element, setting and product).
    repeatability: Optional[UsedRepeatability] = None
    # The check of the scale whose error was corrected.
    scale_check: Optional[UsedScaleCheck] = None
    # The adopted value that the test was compared with.
    value_in_force: Optional[UsedValueInForce] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> UsedHistory:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: UsedHistory
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return UsedHistory()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .used_day_to_day import UsedDayToDay
        from .used_repeatability import UsedRepeatability
        from .used_scale_check import UsedScaleCheck
        from .used_value_in_force import UsedValueInForce

        from .used_day_to_day import UsedDayToDay
        from .used_repeatability import UsedRepeatability
        from .used_scale_check import UsedScaleCheck
        from .used_value_in_force import UsedValueInForce

        fields: dict[str, Callable[[Any], None]] = {
            "dayToDay": lambda n : setattr(self, 'day_to_day', n.get_object_value(UsedDayToDay)),
            "repeatability": lambda n : setattr(self, 'repeatability', n.get_object_value(UsedRepeatability)),
            "scaleCheck": lambda n : setattr(self, 'scale_check', n.get_object_value(UsedScaleCheck)),
            "valueInForce": lambda n : setattr(self, 'value_in_force', n.get_object_value(UsedValueInForce)),
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
        writer.write_object_value("dayToDay", self.day_to_day)
        writer.write_object_value("repeatability", self.repeatability)
        writer.write_object_value("scaleCheck", self.scale_check)
        writer.write_object_value("valueInForce", self.value_in_force)
        writer.write_additional_data_value(self.additional_data)
    

