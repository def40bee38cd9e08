from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .density_of_product import DensityOfProduct
    from .displacement_of_element import DisplacementOfElement
    from .earlier_product import EarlierProduct
    from .mass_per_revolution_to_check import MassPerRevolutionToCheck
    from .ratio_quantity import RatioQuantity

@dataclass
class VolumeCheckRequest(Parsable):
    """
    A metering element and a product. The fill efficiency is stated, or learnedFrom an earlier product, or taken by default.
    """
    # Bulk density of the product. Range: 10 to 10000 kg/m3.
    bulk_density: Optional[DensityOfProduct] = None
    # Coverage probability of the intervals. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM 100:2008.
    coverage_probability: Optional[float] = None
    # Volume that one revolution of the element sweeps. Range: above 0 and up to 1000 L.
    displacement: Optional[DisplacementOfElement] = None
    # What the owner calls the element.
    element: Optional[str] = None
    # Share of the swept volume that product fills; a little above 100 % where it settles. Default 90 %: median fill efficiency of metering elements; judgement, no published source. Range: 1 to 200 %.
    fill_efficiency: Optional[RatioQuantity] = None
    # How sure the fill efficiency is. Default 15 %: spread of fill efficiency from element to element, standard deviation of its logarithm; judgement, no published source. Range: 0 to 100 %.
    fill_efficiency_spread: Optional[RatioQuantity] = None
    # An earlier product on the same element, from which the fill efficiency is learned.
    learned_from: Optional[EarlierProduct] = None
    # A mass per revolution to be checked. No default. Range: above 0 and up to 1000 kg/rev.
    mass_per_revolution: Optional[MassPerRevolutionToCheck] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> VolumeCheckRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: VolumeCheckRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return VolumeCheckRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .density_of_product import DensityOfProduct
        from .displacement_of_element import DisplacementOfElement
        from .earlier_product import EarlierProduct
        from .mass_per_revolution_to_check import MassPerRevolutionToCheck
        from .ratio_quantity import RatioQuantity

        from .density_of_product import DensityOfProduct
        from .displacement_of_element import DisplacementOfElement
        from .earlier_product import EarlierProduct
        from .mass_per_revolution_to_check import MassPerRevolutionToCheck
        from .ratio_quantity import RatioQuantity

        fields: dict[str, Callable[[Any], None]] = {
            "bulkDensity": lambda n : setattr(self, 'bulk_density', n.get_object_value(DensityOfProduct)),
            "coverageProbability": lambda n : setattr(self, 'coverage_probability', n.get_float_value()),
            "displacement": lambda n : setattr(self, 'displacement', n.get_object_value(DisplacementOfElement)),
            "element": lambda n : setattr(self, 'element', n.get_str_value()),
            "fillEfficiency": lambda n : setattr(self, 'fill_efficiency', n.get_object_value(RatioQuantity)),
            "fillEfficiencySpread": lambda n : setattr(self, 'fill_efficiency_spread', n.get_object_value(RatioQuantity)),
            "learnedFrom": lambda n : setattr(self, 'learned_from', n.get_object_value(EarlierProduct)),
            "massPerRevolution": lambda n : setattr(self, 'mass_per_revolution', n.get_object_value(MassPerRevolutionToCheck)),
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
        writer.write_float_value("coverageProbability", self.coverage_probability)
        writer.write_object_value("displacement", self.displacement)
        writer.write_str_value("element", self.element)
        writer.write_object_value("fillEfficiency", self.fill_efficiency)
        writer.write_object_value("fillEfficiencySpread", self.fill_efficiency_spread)
        writer.write_object_value("learnedFrom", self.learned_from)
        writer.write_object_value("massPerRevolution", self.mass_per_revolution)
    

