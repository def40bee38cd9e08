from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .bulk_density_request_reference import BulkDensityRequest_reference
    from .filled_tank_of_product import FilledTankOfProduct
    from .ratio_quantity import RatioQuantity
    from .stated_density_of_product import StatedDensityOfProduct
    from .tank_of_product import TankOfProduct
    from .test_weight_of_product import TestWeightOfProduct
    from .weighed_volume_of_product import WeighedVolumeOfProduct

@dataclass
class BulkDensityRequest(Parsable):
    """
    A product whose bulk density is wanted. At most one of weighed, testWeight, filledTank and statedDensity; without any, a reference gives a value to start from.
    """
    # Coverage probability of the intervals. Default 0.95: common practice for expanded uncertainties, as in the examples of JCGM 100:2008.
    coverage_probability: Optional[float] = None
    # A tank that was filled with a known mass.
    filled_tank: Optional[FilledTankOfProduct] = None
    # Standard uncertainty of one lot about a published value, where nothing but the reference is given. Default 5 %: one lot about a published value; judgement, no published source. Range: 0 to 50 %.
    lot_to_lot: Optional[RatioQuantity] = None
    # What the owner calls the product.
    product: Optional[str] = None
    # The material whose published densities are compared; needed where nothing else is given.
    reference: Optional[BulkDensityRequest_reference] = None
    # A density that somebody stated; it is challenged when it is far from what is published for the reference. No default. Range: 10 to 10000 kg/m3.
    stated_density: Optional[StatedDensityOfProduct] = None
    # A tank to be filled with the product: what does it hold, and how far does that go?
    tank: Optional[TankOfProduct] = None
    # A test weight, for example from the elevator. A bushel is always named. No default. Range: 10 to 10000 kg/m3.
    test_weight: Optional[TestWeightOfProduct] = None
    # Weighings of a container of known volume; the best evidence.
    weighed: Optional[WeighedVolumeOfProduct] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> BulkDensityRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: BulkDensityRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return BulkDensityRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .bulk_density_request_reference import BulkDensityRequest_reference
        from .filled_tank_of_product import FilledTankOfProduct
        from .ratio_quantity import RatioQuantity
        from .stated_density_of_product import StatedDensityOfProduct
        from .tank_of_product import TankOfProduct
        from .test_weight_of_product import TestWeightOfProduct
        from .weighed_volume_of_product import WeighedVolumeOfProduct

        from .bulk_density_request_reference import BulkDensityRequest_reference
        from .filled_tank_of_product import FilledTankOfProduct
        from .ratio_quantity import RatioQuantity
        from .stated_density_of_product import StatedDensityOfProduct
        from .tank_of_product import TankOfProduct
        from .test_weight_of_product import TestWeightOfProduct
        from .weighed_volume_of_product import WeighedVolumeOfProduct

        fields: dict[str, Callable[[Any], None]] = {
            "coverageProbability": lambda n : setattr(self, 'coverage_probability', n.get_float_value()),
            "filledTank": lambda n : setattr(self, 'filled_tank', n.get_object_value(FilledTankOfProduct)),
            "lotToLot": lambda n : setattr(self, 'lot_to_lot', n.get_object_value(RatioQuantity)),
            "product": lambda n : setattr(self, 'product', n.get_str_value()),
            "reference": lambda n : setattr(self, 'reference', n.get_enum_value(BulkDensityRequest_reference)),
            "statedDensity": lambda n : setattr(self, 'stated_density', n.get_object_value(StatedDensityOfProduct)),
            "tank": lambda n : setattr(self, 'tank', n.get_object_value(TankOfProduct)),
            "testWeight": lambda n : setattr(self, 'test_weight', n.get_object_value(TestWeightOfProduct)),
            "weighed": lambda n : setattr(self, 'weighed', n.get_object_value(WeighedVolumeOfProduct)),
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
        writer.write_float_value("coverageProbability", self.coverage_probability)
        writer.write_object_value("filledTank", self.filled_tank)
        writer.write_object_value("lotToLot", self.lot_to_lot)
        writer.write_str_value("product", self.product)
        writer.write_enum_value("reference", self.reference)
        writer.write_object_value("statedDensity", self.stated_density)
        writer.write_object_value("tank", self.tank)
        writer.write_object_value("testWeight", self.test_weight)
        writer.write_object_value("weighed", self.weighed)
    

