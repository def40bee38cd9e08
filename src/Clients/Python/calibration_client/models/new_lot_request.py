from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .count_per_area_quantity import CountPerAreaQuantity
    from .lot_of_change import LotOfChange
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .price import Price
    from .ratio_quantity import RatioQuantity
    from .value_of_lot_before import ValueOfLotBefore

@dataclass
class NewLotRequest(Parsable):
    """
    A value in force, the lot behind it, and the lot that goes into the tank now.
    """
    # Area to be sown with the new lot; gives mass and cost. No default. Range: above 0 and up to 1000000 ha.
    area: Optional[AreaQuantity] = None
    # Standard deviation of the mass per revolution from day to day. Default 1 %: default until the series has five tests; judgement, no published source. Range: above 0 and up to 50 %.
    day_to_day: Optional[RatioQuantity] = None
    # Field emergence: plants per seed that can germinate. With the germination of the new lot it gives plants. No default. Range: above 0 and up to 100 %.
    emergence: Optional[RatioQuantity] = None
    # How far the fill of the element changes from lot to lot beyond density, as the scale of a t distribution. Default 4 %: another lot fills the element differently even at the same density; judgement, 3 degrees of freedom, no published source. Range: above 0 and up to 50 %.
    fill_change_of_lot: Optional[RatioQuantity] = None
    # The same with another treatment. Default 4 %: a coating changes friction; judgement, 3 degrees of freedom, no published source. Range: above 0 and up to 50 %.
    fill_change_of_treatment: Optional[RatioQuantity] = None
    # The lot with which that value was found.
    lot_before: Optional[LotOfChange] = None
    # The lot that goes into the tank now.
    new_lot: Optional[LotOfChange] = None
    # Price of the new lot.
    price: Optional[Price] = None
    # Rate by mass that was sown with the lot before; with both kernel masses it gives the rate for the same seeds. Give this or seedsPerArea. No default. Range: above 0 and up to 100000 kg/ha.
    rate: Optional[MassPerAreaQuantity] = None
    # Both are the same lot: another delivery of it, or it was treated meanwhile. Default false.
    same_lot: Optional[bool] = None
    # Pure seeds per area that are to stay the same. No default. Range: above 0 and up to 100000 /m2.
    seeds_per_area: Optional[CountPerAreaQuantity] = None
    # Largest acceptable deviation of the value in force from the truth. Default 5 %: published acceptance limit: within 5 % of the target rate (Field and Solie 2007; University of Georgia Extension). Range: 0.1 to 50 %.
    tolerance: Optional[RatioQuantity] = None
    # How far bulk density changes where it is not known of both lots, as the scale of a t distribution. Default 7 % with a new lot; judgement, 3 degrees of freedom, no published source. Default 2 % with another delivery of the same lot; judgement, 3 degrees of freedom, no published source. Range: above 0 and up to 50 %.
    unknown_density_change: Optional[RatioQuantity] = None
    # The mass per revolution that the controller uses now. Range: above 0 and up to 1000 kg/rev.
    value_in_force: Optional[ValueOfLotBefore] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> NewLotRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: NewLotRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return NewLotRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .count_per_area_quantity import CountPerAreaQuantity
        from .lot_of_change import LotOfChange
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .price import Price
        from .ratio_quantity import RatioQuantity
        from .value_of_lot_before import ValueOfLotBefore

        from .area_quantity import AreaQuantity
        from .count_per_area_quantity import CountPerAreaQuantity
        from .lot_of_change import LotOfChange
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .price import Price
        from .ratio_quantity import RatioQuantity
        from .value_of_lot_before import ValueOfLotBefore

        fields: dict[str, Callable[[Any], None]] = {
            "area": lambda n : setattr(self, 'area', n.get_object_value(AreaQuantity)),
            "dayToDay": lambda n : setattr(self, 'day_to_day', n.get_object_value(RatioQuantity)),
            "emergence": lambda n : setattr(self, 'emergence', n.get_object_value(RatioQuantity)),
            "fillChangeOfLot": lambda n : setattr(self, 'fill_change_of_lot', n.get_object_value(RatioQuantity)),
            "fillChangeOfTreatment": lambda n : setattr(self, 'fill_change_of_treatment', n.get_object_value(RatioQuantity)),
            "lotBefore": lambda n : setattr(self, 'lot_before', n.get_object_value(LotOfChange)),
            "newLot": lambda n : setattr(self, 'new_lot', n.get_object_value(LotOfChange)),
            "price": lambda n : setattr(self, 'price', n.get_object_value(Price)),
            "rate": lambda n : setattr(self, 'rate', n.get_object_value(MassPerAreaQuantity)),
            "sameLot": lambda n : setattr(self, 'same_lot', n.get_bool_value()),
            "seedsPerArea": lambda n : setattr(self, 'seeds_per_area', n.get_object_value(CountPerAreaQuantity)),
            "tolerance": lambda n : setattr(self, 'tolerance', n.get_object_value(RatioQuantity)),
            "unknownDensityChange": lambda n : setattr(self, 'unknown_density_change', n.get_object_value(RatioQuantity)),
            "valueInForce": lambda n : setattr(self, 'value_in_force', n.get_object_value(ValueOfLotBefore)),
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
        writer.write_object_value("dayToDay", self.day_to_day)
        writer.write_object_value("emergence", self.emergence)
        writer.write_object_value("fillChangeOfLot", self.fill_change_of_lot)
        writer.write_object_value("fillChangeOfTreatment", self.fill_change_of_treatment)
        writer.write_object_value("lotBefore", self.lot_before)
        writer.write_object_value("newLot", self.new_lot)
        writer.write_object_value("price", self.price)
        writer.write_object_value("rate", self.rate)
        writer.write_bool_value("sameLot", self.same_lot)
        writer.write_object_value("seedsPerArea", self.seeds_per_area)
        writer.write_object_value("tolerance", self.tolerance)
        writer.write_object_value("unknownDensityChange", self.unknown_density_change)
        writer.write_object_value("valueInForce", self.value_in_force)
    

