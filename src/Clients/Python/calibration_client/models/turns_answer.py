from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .length_quantity import LengthQuantity
    from .mass_quantity import MassQuantity
    from .revolutions_quantity import RevolutionsQuantity

@dataclass
class TurnsAnswer(AdditionalDataHolder, Parsable):
    """
    Turns for one area.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The area.
    area: Optional[AreaQuantity] = None
    # Mass from all outlets over the area at the target rate.
    catch_in_all: Optional[MassQuantity] = None
    # Mass from all outlets in the whole turns.
    catch_of_whole_turns: Optional[MassQuantity] = None
    # Mass from each outlet.
    catch_per_outlet: Optional[MassQuantity] = None
    # Mass from each outlet in the whole turns.
    catch_per_outlet_of_whole_turns: Optional[MassQuantity] = None
    # Distance that the machine drives over it.
    distance: Optional[LengthQuantity] = None
    # Revolutions of the meter over the area.
    meter_revolutions: Optional[RevolutionsQuantity] = None
    # Turns of the drive wheel.
    turns: Optional[RevolutionsQuantity] = None
    # The nearest whole number of turns, which is easier to count.
    whole_turns: Optional[RevolutionsQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> TurnsAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: TurnsAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return TurnsAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .length_quantity import LengthQuantity
        from .mass_quantity import MassQuantity
        from .revolutions_quantity import RevolutionsQuantity

        from .area_quantity import AreaQuantity
        from .length_quantity import LengthQuantity
        from .mass_quantity import MassQuantity
        from .revolutions_quantity import RevolutionsQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "area": lambda n : setattr(self, 'area', n.get_object_value(AreaQuantity)),
            "catchInAll": lambda n : setattr(self, 'catch_in_all', n.get_object_value(MassQuantity)),
            "catchOfWholeTurns": lambda n : setattr(self, 'catch_of_whole_turns', n.get_object_value(MassQuantity)),
            "catchPerOutlet": lambda n : setattr(self, 'catch_per_outlet', n.get_object_value(MassQuantity)),
            "catchPerOutletOfWholeTurns": lambda n : setattr(self, 'catch_per_outlet_of_whole_turns', n.get_object_value(MassQuantity)),
            "distance": lambda n : setattr(self, 'distance', n.get_object_value(LengthQuantity)),
            "meterRevolutions": lambda n : setattr(self, 'meter_revolutions', n.get_object_value(RevolutionsQuantity)),
            "turns": lambda n : setattr(self, 'turns', n.get_object_value(RevolutionsQuantity)),
            "wholeTurns": lambda n : setattr(self, 'whole_turns', n.get_object_value(RevolutionsQuantity)),
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
        writer.write_object_value("area", self.area)
        writer.write_object_value("catchInAll", self.catch_in_all)
        writer.write_object_value("catchOfWholeTurns", self.catch_of_whole_turns)
        writer.write_object_value("catchPerOutlet", self.catch_per_outlet)
        writer.write_object_value("catchPerOutletOfWholeTurns", self.catch_per_outlet_of_whole_turns)
        writer.write_object_value("distance", self.distance)
        writer.write_object_value("meterRevolutions", self.meter_revolutions)
        writer.write_object_value("turns", self.turns)
        writer.write_object_value("wholeTurns", self.whole_turns)
        writer.write_additional_data_value(self.additional_data)
    

