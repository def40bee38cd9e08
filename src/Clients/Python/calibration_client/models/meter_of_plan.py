from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .bulk_density_quantity import BulkDensityQuantity
    from .container_of_plan import ContainerOfPlan
    from .length_quantity import LengthQuantity
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .meter_of_plan_material import MeterOfPlan_material
    from .ratio_quantity import RatioQuantity
    from .reference_of_test import ReferenceOfTest
    from .rotation_limits import RotationLimits

@dataclass
class MeterOfPlan(Parsable):
    """
    One meter of a run. Exactly one of valueInForce and startValue.
    """
    # Bulk density of the product; needed where a container of known volume bounds the catch. No default. Range: 10 to 10000 kg/m3.
    bulk_density: Optional[BulkDensityQuantity] = None
    # Its own container.
    container: Optional[ContainerOfPlan] = None
    # Width that the meter covers. Range: above 0 and up to 200 m.
    covered_width: Optional[LengthQuantity] = None
    # How the product flows: `free-flowing`, `small-seed` or `dusty`. Default: small-seed when even the longest run does not bring 6.8 kg, else free-flowing.
    material: Optional[MeterOfPlan_material] = None
    # What the owner calls the meter.
    meter: Optional[str] = None
    # Pockets or flutes that discharge one after the other in one revolution, where known. No default.
    pockets_per_revolution: Optional[int] = None
    # What it meters.
    product: Optional[str] = None
    # Repeatability of one catch (standard deviation). Default 1 % for a catch of at least 5 kg and 20 rev, 2 % below, 3 % for dusty or caking products or under 5 rev: judgement, 4 degrees of freedom, no published source. Range: 0.01 to 30 %.
    repeatability: Optional[RatioQuantity] = None
    # Limits of the meter speed.
    speed_limits: Optional[RotationLimits] = None
    # A predicted mass per revolution where none is in force yet. Default of its `relativeUncertainty` 10 %: a predicted start value may be 20 % off; judgement, no published source. Range: above 0 and up to 1000 kg/rev.
    start_value: Optional[ReferenceOfTest] = None
    # Target rate; for a variable rate, the one to be tested at. Range: above 0 and up to 100000 kg/ha.
    target_rate: Optional[MassPerAreaQuantity] = None
    # The mass per revolution that the controller uses now. Default of its `relativeUncertainty` 2 %: default for a value in force; judgement, no published source. Range: above 0 and up to 1000 kg/rev.
    value_in_force: Optional[ReferenceOfTest] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> MeterOfPlan:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: MeterOfPlan
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return MeterOfPlan()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .bulk_density_quantity import BulkDensityQuantity
        from .container_of_plan import ContainerOfPlan
        from .length_quantity import LengthQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .meter_of_plan_material import MeterOfPlan_material
        from .ratio_quantity import RatioQuantity
        from .reference_of_test import ReferenceOfTest
        from .rotation_limits import RotationLimits

        from .bulk_density_quantity import BulkDensityQuantity
        from .container_of_plan import ContainerOfPlan
        from .length_quantity import LengthQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .meter_of_plan_material import MeterOfPlan_material
        from .ratio_quantity import RatioQuantity
        from .reference_of_test import ReferenceOfTest
        from .rotation_limits import RotationLimits

        fields: dict[str, Callable[[Any], None]] = {
            "bulkDensity": lambda n : setattr(self, 'bulk_density', n.get_object_value(BulkDensityQuantity)),
            "container": lambda n : setattr(self, 'container', n.get_object_value(ContainerOfPlan)),
            "coveredWidth": lambda n : setattr(self, 'covered_width', n.get_object_value(LengthQuantity)),
            "material": lambda n : setattr(self, 'material', n.get_enum_value(MeterOfPlan_material)),
            "meter": lambda n : setattr(self, 'meter', n.get_str_value()),
            "pocketsPerRevolution": lambda n : setattr(self, 'pockets_per_revolution', n.get_int_value()),
            "product": lambda n : setattr(self, 'product', n.get_str_value()),
            "repeatability": lambda n : setattr(self, 'repeatability', n.get_object_value(RatioQuantity)),
            "speedLimits": lambda n : setattr(self, 'speed_limits', n.get_object_value(RotationLimits)),
            "startValue": lambda n : setattr(self, 'start_value', n.get_object_value(ReferenceOfTest)),
            "targetRate": lambda n : setattr(self, 'target_rate', n.get_object_value(MassPerAreaQuantity)),
            "valueInForce": lambda n : setattr(self, 'value_in_force', n.get_object_value(ReferenceOfTest)),
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
        writer.write_object_value("bulkDensity", self.bulk_density)
        writer.write_object_value("container", self.container)
        writer.write_object_value("coveredWidth", self.covered_width)
        writer.write_enum_value("material", self.material)
        writer.write_str_value("meter", self.meter)
        writer.write_int_value("pocketsPerRevolution", self.pockets_per_revolution)
        writer.write_str_value("product", self.product)
        writer.write_object_value("repeatability", self.repeatability)
        writer.write_object_value("speedLimits", self.speed_limits)
        writer.write_object_value("startValue", self.start_value)
        writer.write_object_value("targetRate", self.target_rate)
        writer.write_object_value("valueInForce", self.value_in_force)
    

