from __future__ import annotations
import datetime
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .conditions import Conditions
    from .credited_nutrient import CreditedNutrient
    from .mass_quantity import MassQuantity
    from .meter_of_field_plan import MeterOfFieldPlan
    from .ratio_quantity import RatioQuantity
    from .seed_row_of_plan import SeedRowOfPlan
    from .speed_quantity import SpeedQuantity
    from .speed_range import SpeedRange
    from .time_quantity import TimeQuantity
    from .wanted_nutrient import WantedNutrient

@dataclass
class PlanAnswer(AdditionalDataHolder, Parsable):
    """
    A plan as stored.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Area to be seeded.
    area: Optional[AreaQuantity] = None
    # Id of the container for the catches.
    container: Optional[str] = None
    # When it was created (UTC).
    created_at: Optional[datetime.datetime] = None
    # Share of the time spent working, for the area per hour. Default 70 %: from memory: ASAE D497 lists grain drills at 55 to 80 %, typically 70 %.
    field_efficiency: Optional[RatioQuantity] = None
    # Planned ground speed.
    ground_speed: Optional[SpeedQuantity] = None
    # Id, a UUID of version 7.
    id: Optional[str] = None
    # Mass that one person lifts, container included. Default 25 kg: mass one person lifts, container included; judgement, local rules first.
    lift_limit: Optional[MassQuantity] = None
    # Longest run of one catch. Default 300 s: default; judgement, no published source.
    longest_run: Optional[TimeQuantity] = None
    # Id of the machine.
    machine: Optional[str] = None
    # What each meter puts down.
    meters: Optional[list[MeterOfFieldPlan]] = None
    # What the owner calls it.
    name: Optional[str] = None
    # A remark in the owner's words.
    note: Optional[str] = None
    # Nutrients that are there already: applied earlier, or supplied by the soil.
    nutrient_credits: Optional[list[CreditedNutrient]] = None
    # Nutrients wanted on this field. Products of known analysis that have no rate of their own get it from here, at least cost.
    nutrients: Optional[list[WantedNutrient]] = None
    # No longer in use: takes no new evidence, and lists leave it out unless asked. Default false.
    retired: Optional[bool] = None
    # 1 when created, one more with each change.
    revision: Optional[int] = None
    # Id of the scale that will weigh the catches.
    scale: Optional[str] = None
    # The seed row of this field; what is placed with the seed is compared with published limits and your own.
    seed_row: Optional[SeedRowOfPlan] = None
    # Conditions expected while seeding; tests under others get a finding.
    sowing_conditions: Optional[Conditions] = None
    # When it was changed last (UTC).
    updated_at: Optional[datetime.datetime] = None
    # Largest acceptable expanded uncertainty of a catch test. Default 3 %: default; judgement, no published source.
    wanted_precision: Optional[RatioQuantity] = None
    # Ground speeds between which the field will be worked.
    working_speeds: Optional[SpeedRange] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> PlanAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: PlanAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return PlanAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .conditions import Conditions
        from .credited_nutrient import CreditedNutrient
        from .mass_quantity import MassQuantity
        from .meter_of_field_plan import MeterOfFieldPlan
        from .ratio_quantity import RatioQuantity
        from .seed_row_of_plan import SeedRowOfPlan
        from .speed_quantity import SpeedQuantity
        from .speed_range import SpeedRange
        from .time_quantity import TimeQuantity
        from .wanted_nutrient import WantedNutrient

        from .area_quantity import AreaQuantity
        from .conditions import Conditions
        from .credited_nutrient import CreditedNutrient
        from .mass_quantity import MassQuantity
        from .meter_of_field_plan import MeterOfFieldPlan
        from .ratio_quantity import RatioQuantity
        from .seed_row_of_plan import SeedRowOfPlan
        from .speed_quantity import SpeedQuantity
        from .speed_range import SpeedRange
        from .time_quantity import TimeQuantity
        from .wanted_nutrient import WantedNutrient

        fields: dict[str, Callable[[Any], None]] = {
            "area": lambda n : setattr(self, 'area', n.get_object_value(AreaQuantity)),
            "container": lambda n : setattr(self, 'container', n.get_str_value()),
            "createdAt": lambda n : setattr(self, 'created_at', n.get_datetime_value()),
            "fieldEfficiency": lambda n : setattr(self, 'field_efficiency', n.get_object_value(RatioQuantity)),
            "groundSpeed": lambda n : setattr(self, 'ground_speed', n.get_object_value(SpeedQuantity)),
            "id": lambda n : setattr(self, 'id', n.get_str_value()),
            "liftLimit": lambda n : setattr(self, 'lift_limit', n.get_object_value(MassQuantity)),
            "longestRun": lambda n : setattr(self, 'longest_run', n.get_object_value(TimeQuantity)),
            "machine": lambda n : setattr(self, 'machine', n.get_str_value()),
            "meters": lambda n : setattr(self, 'meters', n.get_collection_of_object_values(MeterOfFieldPlan)),
            "name": lambda n : setattr(self, 'name', n.get_str_value()),
            "note": lambda n : setattr(self, 'note', n.get_str_value()),
            "nutrientCredits": lambda n : setattr(self, 'nutrient_credits', n.get_collection_of_object_values(CreditedNutrient)),
            "nutrients": lambda n : setattr(self, 'nutrients', n.get_collection_of_object_values(WantedNutrient)),
            "retired": lambda n : setattr(self, 'retired', n.get_bool_value()),
            "revision": lambda n : setattr(self, 'revision', n.get_int_value()),
            "scale": lambda n : setattr(self, 'scale', n.get_str_value()),
            "seedRow": lambda n : setattr(self, 'seed_row', n.get_object_value(SeedRowOfPlan)),
            "sowingConditions": lambda n : setattr(self, 'sowing_conditions', n.get_object_value(Conditions)),
            "updatedAt": lambda n : setattr(self, 'updated_at', n.get_datetime_value()),
            "wantedPrecision": lambda n : setattr(self, 'wanted_precision', n.get_object_value(RatioQuantity)),
            "workingSpeeds": lambda n : setattr(self, 'working_speeds', n.get_object_value(SpeedRange)),
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
        writer.write_str_value("container", self.container)
        writer.write_datetime_value("createdAt", self.created_at)
        writer.write_object_value("fieldEfficiency", self.field_efficiency)
        writer.write_object_value("groundSpeed", self.ground_speed)
        writer.write_str_value("id", self.id)
        writer.write_object_value("liftLimit", self.lift_limit)
        writer.write_object_value("longestRun", self.longest_run)
        writer.write_str_value("machine", self.machine)
        writer.write_collection_of_object_values("meters", self.meters)
        writer.write_str_value("name", self.name)
        writer.write_str_value("note", self.note)
        writer.write_collection_of_object_values("nutrientCredits", self.nutrient_credits)
        writer.write_collection_of_object_values("nutrients", self.nutrients)
        writer.write_bool_value("retired", self.retired)
        writer.write_int_value("revision", self.revision)
        writer.write_str_value("scale", self.scale)
        writer.write_object_value("seedRow", self.seed_row)
        writer.write_object_value("sowingConditions", self.sowing_conditions)
        writer.write_datetime_value("updatedAt", self.updated_at)
        writer.write_object_value("wantedPrecision", self.wanted_precision)
        writer.write_object_value("workingSpeeds", self.working_speeds)
        writer.write_additional_data_value(self.additional_data)
    

