from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .reference_of_test import ReferenceOfTest
    from .stand_of_plan import StandOfPlan

@dataclass
class MeterOfFieldPlan(Parsable):
    """
    What one meter puts down.
    """
    # Metering element fitted.
    element: Optional[str] = None
    # Id of the lot.
    lot: Optional[str] = None
    # Position of the meter on the machine.
    meter: Optional[str] = None
    # Id of the product.
    product: Optional[str] = None
    # Setting of the meter, in the owner's words, for example a gear; none when absent.
    setting: Optional[str] = None
    # The stand that is wanted; with the lot, the target rate follows from it.
    stand: Optional[StandOfPlan] = None
    # A predicted mass per revolution, used while no value is in force. No default. Range: above 0 and up to 1000 kg/rev.
    start_value: Optional[ReferenceOfTest] = None
    # Target rate; for a variable rate, the one to be tested at. Leave it out where the rate follows from stand, or from the nutrients of the plan. No default. Range: above 0 and up to 100000 kg/ha.
    target_rate: Optional[MassPerAreaQuantity] = None
    # The product is laid in the seed row, with the seed; needs the seedRow of the plan. Default false.
    with_seed: Optional[bool] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> MeterOfFieldPlan:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: MeterOfFieldPlan
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return MeterOfFieldPlan()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .reference_of_test import ReferenceOfTest
        from .stand_of_plan import StandOfPlan

        from .mass_per_area_quantity import MassPerAreaQuantity
        from .reference_of_test import ReferenceOfTest
        from .stand_of_plan import StandOfPlan

        fields: dict[str, Callable[[Any], None]] = {
            "element": lambda n : setattr(self, 'element', n.get_str_value()),
            "lot": lambda n : setattr(self, 'lot', n.get_str_value()),
            "meter": lambda n : setattr(self, 'meter', n.get_str_value()),
            "product": lambda n : setattr(self, 'product', n.get_str_value()),
            "setting": lambda n : setattr(self, 'setting', n.get_str_value()),
            "stand": lambda n : setattr(self, 'stand', n.get_object_value(StandOfPlan)),
            "startValue": lambda n : setattr(self, 'start_value', n.get_object_value(ReferenceOfTest)),
            "targetRate": lambda n : setattr(self, 'target_rate', n.get_object_value(MassPerAreaQuantity)),
            "withSeed": lambda n : setattr(self, 'with_seed', n.get_bool_value()),
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
        writer.write_str_value("product", self.product)
        writer.write_str_value("setting", self.setting)
        writer.write_object_value("stand", self.stand)
        writer.write_object_value("startValue", self.start_value)
        writer.write_object_value("targetRate", self.target_rate)
        writer.write_bool_value("withSeed", self.with_seed)
    

